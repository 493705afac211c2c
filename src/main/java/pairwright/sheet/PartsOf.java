package pairwright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import pairwright.drawing.Reader;
import pairwright.model.Answer;
import pairwright.model.Catalogue;
import pairwright.model.Character;
import pairwright.model.Limits;
import pairwright.model.Naming;
import pairwright.model.Neighbour;
import pairwright.model.Question;
import pairwright.model.Room;
import pairwright.model.Source;
import pairwright.model.Technique;
import pairwright.model.Vocabulary;

/** Fills the controls from a question as it was understood. */
final class PartsOf {
    private static final int MOST_OPTIONS = 6;
    private static final int MOST_CHANNELS = 4;
    /** What stands in the row for another neighbour until somebody says otherwise. */
    private static final double BESIDE_M = 2;

    private final Catalogue catalogue;
    private final Question meant;
    private final Answer.Numbers numbers;
    private final Reader reader;

    private PartsOf(Catalogue catalogue, Answer.Asked asked, Reader reader) {
        this.catalogue = catalogue;
        this.meant = asked.meant();
        this.numbers = asked.numbers();
        this.reader = reader;
    }

    static Parts of(Catalogue catalogue, Answer.Asked asked, Reader reader) {
        return new PartsOf(catalogue, asked, reader).parts();
    }

    private Parts parts() {
        Limits limits = meant.limits();
        Vocabulary vocabulary = catalogue.words();
        Source source = meant.source() == null ? null : catalogue.sources().get(meant.source());
        return new Parts(
                meant.words(),
                HeardQuery.written(meant.source(), meant.heard()),
                Choices.sources(catalogue, meant.source()),
                source != null,
                oneEach(Choices.of(catalogue.characters().values(), Character::id, Character::name, List.of()), meant.character(), "Nothing more"),
                rooms(),
                source == null ? List.of() : Choices.of(source.ways(), way -> way.id(), way -> wayName(vocabulary, way.id()), meant.ways()),
                withNone("As usual", Choices.of(vocabulary.dynamics(), Vocabulary.Dynamic::id, Vocabulary.Dynamic::name, meant.dynamics())),
                neighbours(),
                mics(limits),
                List.of(new Choice("yes", "May be used", !Boolean.FALSE.equals(limits.phantom())),
                        new Choice("no", "None at all", Boolean.FALSE.equals(limits.phantom()))),
                limits.preampGainDb() == null ? "" : reader.number(limits.preampGainDb(), 1),
                numbers == null ? "" : reader.number(numbers.preampGainDb(), 1),
                limits.preampNoiseDbu() == null ? "" : reader.number(limits.preampNoiseDbu(), 1),
                Choices.families(catalogue, limits.onlyFamilies()),
                Choices.families(catalogue, limits.withoutFamilies()),
                Choices.families(catalogue, meant.wishes()),
                types(limits),
                Choices.of(vocabulary.circumstances(), Vocabulary.Circumstance::id, Vocabulary.Circumstance::name, meant.circumstances()),
                meant.player() == null ? "" : meant.player(),
                oneEach(Choices.of(catalogue.techniques().values(), Technique::id, Technique::name, List.of()), meant.techniques(), "Whichever is best"),
                IntStream.rangeClosed(1, MOST_OPTIONS).mapToObj(count -> new Choice(Integer.toString(count), Integer.toString(count),
                        count == meant.options())).toList());
    }

    static String wayName(Vocabulary vocabulary, String id) {
        return vocabulary.ways().stream().filter(way -> way.id().equals(id)).map(Vocabulary.WayWords::name).findFirst().orElse(id);
    }

    private List<Choice> rooms() {
        List<Choice> rooms = new ArrayList<>();
        if (meant.room() == null) {
            rooms.add(new Choice("", "Not said", true));
        }
        rooms.addAll(Choices.of(catalogue.rooms().values(), Room::id, Room::name, meant.room() == null ? List.of() : List.of(meant.room())));
        return rooms;
    }

    private List<Choice> mics(Limits limits) {
        List<Choice> mics = new ArrayList<>();
        mics.add(new Choice(AskQuery.ANY, "Not said", limits.mics() == null));
        int most = limits.mics() == null ? MOST_CHANNELS : Math.max(MOST_CHANNELS, limits.mics());
        IntStream.rangeClosed(1, most).forEach(count -> mics.add(new Choice(Integer.toString(count), count == 1 ? "1 channel" : count + " channels",
                limits.mics() != null && limits.mics() == count)));
        return mics;
    }

    /** A list for each that is chosen, and one more to add to them. */
    private static List<List<Choice>> oneEach(List<Choice> all, List<String> chosen, String none) {
        List<List<Choice>> lists = new ArrayList<>();
        for (String id : chosen) {
            List<Choice> list = new ArrayList<>();
            list.add(new Choice("", none, false));
            all.forEach(one -> list.add(new Choice(one.value(), one.label(), one.value().equals(id))));
            lists.add(list);
        }
        lists.add(withNone(none, all.stream().filter(one -> !chosen.contains(one.value())).toList()));
        return lists;
    }

    private static List<Choice> withNone(String label, List<Choice> all) {
        List<Choice> list = new ArrayList<>();
        list.add(new Choice("", label, all.stream().noneMatch(Choice::chosen)));
        list.addAll(all);
        return list;
    }

    private List<Parts.Row> neighbours() {
        List<Parts.Row> rows = new ArrayList<>();
        for (Neighbour neighbour : meant.neighbours()) {
            rows.add(new Parts.Row(rows.size() + 1, catalogue.sources().get(neighbour.source()).name(), Choices.sources(catalogue, neighbour.source()),
                    typed(neighbour.distanceM()), reader.number(neighbour.angleDegrees(), 1)));
        }
        rows.add(new Parts.Row(rows.size() + 1, "", Choices.sources(catalogue, null), typed(BESIDE_M), "90"));
        return rows;
    }

    /** Fine enough that what is sent back is what was meant, to a millimetre. */
    private String typed(double metres) {
        return reader.imperial() ? reader.number(metres / 0.3048, 2) + " ft" : reader.number(metres, 3) + " m";
    }

    private List<Parts.Kept> types(Limits limits) {
        List<Parts.Kept> kept = new ArrayList<>();
        limits.onlyMicTypes().forEach(id -> kept.add(new Parts.Kept("onlyType", id, "Only " + Naming.small(catalogue.mics().get(id).name()))));
        limits.withoutMicTypes().forEach(id -> kept.add(new Parts.Kept("withoutType", id, "Not " + Naming.small(catalogue.mics().get(id).name()))));
        return kept;
    }
}
