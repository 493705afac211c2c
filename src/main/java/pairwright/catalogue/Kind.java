package pairwright.catalogue;

import java.util.List;
import java.util.Map;
import java.util.function.Function;
import pairwright.model.Catalogue;
import pairwright.model.Character;
import pairwright.model.Complaint;
import pairwright.model.Custom;
import pairwright.model.Grade;
import pairwright.model.Lead;
import pairwright.model.Lesson;
import pairwright.model.MicType;
import pairwright.model.Room;
import pairwright.model.Source;
import pairwright.model.Task;
import pairwright.model.Technique;
import pairwright.model.Vocabulary;

/** What the folders of a catalogue hold. */
final class Kind {
    private Kind() {
    }

    /**
     * A kind of entry, one a file.
     *
     * @param folder in the catalogue
     * @param says how a sentence names it
     * @param schema name of its schema
     * @param record what it is read into
     * @param in where a catalogue keeps it
     */
    record Entries<T>(String folder, String says, String schema, Class<T> record, Function<Catalogue, Map<String, T>> in) {
    }

    /**
     * A list of words, one file each.
     *
     * @param name of the file
     * @param record what each item is read into
     * @param in where the vocabulary keeps it
     * @param key what two items that replace each other share
     */
    record Words<T>(String name, Class<T> record, Function<Vocabulary, List<T>> in, Function<T, Object> key) {
        String schema() {
            return "words-" + name;
        }

        String file() {
            return name + ".yaml";
        }
    }

    static final Entries<MicType> MICS = new Entries<>("mics", "mic type", "mic-type", MicType.class, Catalogue::mics);
    static final Entries<Source> SOURCES = new Entries<>("sources", "source", "source", Source.class, Catalogue::sources);
    static final Entries<Room> ROOMS = new Entries<>("rooms", "room", "room", Room.class, Catalogue::rooms);
    static final Entries<Character> CHARACTERS =
            new Entries<>("characters", "character", "character", Character.class, Catalogue::characters);
    static final Entries<Technique> TECHNIQUES =
            new Entries<>("techniques", "technique", "technique", Technique.class, Catalogue::techniques);
    static final Entries<Complaint> COMPLAINTS =
            new Entries<>("complaints", "complaint", "complaint", Complaint.class, Catalogue::complaints);
    static final Entries<Grade> GRADES = new Entries<>("grades", "grade", "grade", Grade.class, Catalogue::grades);
    static final Entries<Task> TASKS = new Entries<>("tasks", "task", "task", Task.class, Catalogue::tasks);
    static final Entries<Custom> CUSTOMS = new Entries<>("customs", "custom", "custom", Custom.class, Catalogue::customs);
    static final Entries<Lead> LEADS = new Entries<>("leads", "lead", "lead", Lead.class, Catalogue::leads);
    static final Entries<Lesson> LESSONS = new Entries<>("lessons", "lesson", "lesson", Lesson.class, Catalogue::lessons);
    static final List<Entries<?>> ENTRIES = List.of(MICS, SOURCES, ROOMS, CHARACTERS, TECHNIQUES, COMPLAINTS, GRADES, TASKS, CUSTOMS, LEADS, LESSONS);

    static final String WORDS_FOLDER = "words";
    static final Words<Vocabulary.WayWords> WAYS =
            new Words<>("ways", Vocabulary.WayWords.class, Vocabulary::ways, Vocabulary.WayWords::id);
    static final Words<Vocabulary.Dynamic> DYNAMICS =
            new Words<>("dynamics", Vocabulary.Dynamic.class, Vocabulary::dynamics, Vocabulary.Dynamic::id);
    static final Words<Vocabulary.LimitWords> LIMITS =
            new Words<>("limits", Vocabulary.LimitWords.class, Vocabulary::limits, Vocabulary.LimitWords::id);
    static final Words<Vocabulary.NeighbourWords> NEIGHBOURS =
            new Words<>("neighbours", Vocabulary.NeighbourWords.class, Vocabulary::neighbours, Vocabulary.NeighbourWords::id);
    static final Words<Vocabulary.Ambiguity> AMBIGUITIES =
            new Words<>("ambiguities", Vocabulary.Ambiguity.class, Vocabulary::ambiguities, Vocabulary.Ambiguity::words);
    static final Words<Vocabulary.Circumstance> CIRCUMSTANCES =
            new Words<>("circumstances", Vocabulary.Circumstance.class, Vocabulary::circumstances, Vocabulary.Circumstance::id);
    static final Words<Vocabulary.FamilyWords> FAMILIES =
            new Words<>("families", Vocabulary.FamilyWords.class, Vocabulary::families, Vocabulary.FamilyWords::id);
    static final Words<String> IGNORED = new Words<>("ignored", String.class, Vocabulary::ignored, word -> word);
    static final Words<Vocabulary.SourceWords> NAMES =
            new Words<>("names", Vocabulary.SourceWords.class, Vocabulary::names, Vocabulary.SourceWords::source);
    static final Words<Vocabulary.Opposite> OPPOSITES =
            new Words<>("opposites", Vocabulary.Opposite.class, Vocabulary::opposites, Vocabulary.Opposite::character);
    static final Words<Vocabulary.Combination> COMBINATIONS = new Words<>("combinations", Vocabulary.Combination.class,
            Vocabulary::combinations, combination -> List.of(combination.of(), combination.with()));
    static final Words<Vocabulary.ModifierWords> MODIFIERS =
            new Words<>("modifiers", Vocabulary.ModifierWords.class, Vocabulary::modifiers, Vocabulary.ModifierWords::id);
    static final Words<Vocabulary.NumberWords> NUMBERS =
            new Words<>("numbers", Vocabulary.NumberWords.class, Vocabulary::numbers, Vocabulary.NumberWords::value);
    static final Words<Vocabulary.QuantityWords> QUANTITIES =
            new Words<>("quantities", Vocabulary.QuantityWords.class, Vocabulary::quantities, Vocabulary.QuantityWords::id);
    static final Words<String> PLAYERS = new Words<>("players", String.class, Vocabulary::players, word -> word);
    static final List<Words<?>> WORDS = List.of(WAYS, DYNAMICS, LIMITS, NEIGHBOURS, AMBIGUITIES, CIRCUMSTANCES, FAMILIES, IGNORED,
            NAMES, OPPOSITES, COMBINATIONS, MODIFIERS, NUMBERS, QUANTITIES, PLAYERS);
}
