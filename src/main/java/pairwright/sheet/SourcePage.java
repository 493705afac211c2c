package pairwright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import pairwright.acoustics.OctaveCurve;
import pairwright.model.Habit;
import pairwright.model.HabitRank;
import pairwright.model.KeepClear;
import pairwright.model.MicType;
import pairwright.model.PairRecipe;
import pairwright.model.Position;
import pairwright.model.Source;
import pairwright.model.Technique;
import pairwright.model.Way;
import pairwright.rules.Figure;
import pairwright.rules.RuleInfo;
import pairwright.sheet.ReadingParts.Fact;
import pairwright.sheet.ReadingParts.Grounds;
import pairwright.sheet.ReadingParts.Link;
import pairwright.sheet.ReadingParts.Mention;
import pairwright.sheet.ReadingParts.Plot;

/** A source to read. */
public final class SourcePage {
    /** The rule that speaks of every place above people. */
    private static final String ABOVE_PEOPLE = "SAF-003";

    private final Desk desk;
    private final Source source;
    private final References named;

    private SourcePage(Desk desk, Source source) {
        this.desk = desk;
        this.source = source;
        this.named = new References(desk);
    }

    /** What the page shows. */
    public record Content(String says, List<String> words, Link ask, List<String> care, List<Fact> facts, Plot spectrum, Plot directivity, List<Played> ways,
            List<Place> places, List<Mention> first, List<Mention> second, List<Mention> avoid, List<Two> pairs, List<Mention> complaints,
            List<Mention> ambiguities, Grounds grounds) {
    }

    /** A way of playing; the plot is null where the tone stays. */
    public record Played(String name, String says, List<Fact> facts, Plot tone) {
    }

    /** A caution and the rule that gives it. */
    public record Warning(String says, Link rule) {
    }

    /** A place for a microphone; the plot is null where the tone is that of the source, the warning where it is above nobody. */
    public record Place(String id, String name, String brings, Warning abovePeople, List<String> dangers, List<String> keepClear, String side, String distance, String angle,
            List<Fact> facts, Plot tone) {
    }

    /** A pair. */
    public record Two(Link technique, boolean seldom, Half first, Half second, String why) {
    }

    /** One half of a pair; no types for any. */
    public record Half(Link place, List<Link> types) {
    }

    static Page of(Desk desk, Source source) {
        return desk.page("source", desk.entry(Shelf.SOURCES, source.name(), ReadingWords.family(source.family())), "source",
                new SourcePage(desk, source).content());
    }

    private Content content() {
        return new Content(desk.measures().sentence(source.says()), source.words(), desk.at().ask(source.name()), desk.measures().sentences(source.care()),
                facts(),
                Plots.octaves(desk, "spectrum", "Its average spectrum, the strongest octave at 0 dB", "Spectrum", source.spectrumDb()),
                OctaveCurve.ZERO.equals(source.directivityIndexDb()) || source.directivityIndexDb() == null ? null : Plots.octaves(desk, "directivity",
                        "How much more of it goes to the front than all round", "Directivity index", source.directivityIndexDb()),
                source.ways().stream().map(this::played).toList(), source.positions().stream().map(this::place).toList(),
                habits(HabitRank.FIRST), habits(HabitRank.SECOND), habits(HabitRank.AVOID), source.pairs().stream().map(this::two).filter(Objects::nonNull).toList(),
                named.complaints(source), named.ambiguities(source), desk.grounds(source.confidence(), source.basis()));
    }

    private List<Fact> facts() {
        Measures measures = desk.measures();
        List<Fact> all = new ArrayList<>();
        if (source.level() != null) {
            all.add(new Fact("Level at " + desk.visit().reader().distance(1), measures.with(source.level().typicalDbSpl(), 0, "dB SPL"),
                    "Running level from mezzo-forte to forte. A player may differ by " + measures.with(source.level().toleranceDb(), 0, "dB") + " either way."));
            all.add(new Fact("Peak at " + desk.visit().reader().distance(1), measures.with(source.level().peakDbSpl(), 0, "dB SPL"), "True peak of loud playing."));
        }
        if (source.lead() != null) {
            all.add(new Fact("Level on the lead", measures.with(source.lead().typicalDbu(), 0, "dBu"),
                    "Running; the loudest peak reaches " + measures.with(source.lead().peakDbu(), 0, "dBu") + "."));
            all.add(new Fact("Impedance", measures.sentence(Figure.forPeople(source.lead().sourceOhm(), "ohm")), "What drives the lead."));
        }
        all.add(new Fact("Peak over running level", measures.range(source.crestDb(), 0, "dB"), "Of one note."));
        all.add(new Fact("Fundamentals", measures.frequencies(source.fundamentalHz()), "What sounds lowest in a note; overtones go far higher."));
        all.add(new Fact("Attack", ReadingWords.words(source.attack()), "How fast it starts."));
        all.add(new Fact("Width", desk.visit().reader().distance(source.sizeM()), "Of what sounds, as the microphone sees it."));
        all.add(new Fact("Stereo", source.wide() ? "Usually wanted" : "Seldom wanted", source.wide() ? "Where channels allow." : ""));
        return all;
    }

    private Played played(Way way) {
        List<Fact> facts = new ArrayList<>();
        facts.add(new Fact("Level", desk.measures().change(way.levelDb()), ""));
        facts.add(new Fact("Peak", desk.measures().change(way.peakDb()), ""));
        if (way.attack() != null) {
            facts.add(new Fact("Attack", ReadingWords.words(way.attack()), ""));
        }
        String name = named.way(way.id());
        return new Played(name.substring(0, 1).toUpperCase(Locale.ROOT) + name.substring(1), desk.measures().sentence(way.says()), facts,
                tone("way-" + way.id(), "What changes in its spectrum", way.toneDb()));
    }

    private Plot tone(String id, String caption, OctaveCurve toneDb) {
        return toneDb == null || toneDb.equals(OctaveCurve.ZERO) ? null : Plots.octaves(desk, id, caption, "Change", toneDb);
    }

    private Place place(Position position) {
        Measures measures = desk.measures();
        List<Fact> facts = new ArrayList<>();
        facts.add(new Fact("Aim", measures.degrees(position.aimDegrees()), "How far it may be turned off the line to the source."));
        if (position.heightM() != null) {
            facts.add(new Fact("Height", desk.visit().reader().distance(position.heightM()), "Above the floor."));
        }
        facts.add(new Fact("Held by", ReadingWords.mount(position.mount()), ""));
        if (position.levelDb() != 0) {
            facts.add(new Fact("Level", measures.change(position.levelDb()), "Against the level of the source at that distance."));
        }
        if (position.opposite()) {
            facts.add(new Fact("Polarity", "opposite", "The surface moves the other way than at the front."));
        }
        if (position.pathM() != null) {
            facts.add(new Fact("Path", desk.visit().reader().distance(position.pathM()) + " longer", "So much farther the sound has come already."));
        }
        if (position.notAlone()) {
            facts.add(new Fact("Alone", "no", "Only a part of the source is heard there."));
        }
        if (!position.onlyFamilies().isEmpty()) {
            facts.add(new Fact("Only", String.join(", ", position.onlyFamilies().stream().map(ReadingWords::family).toList()), ""));
        }
        if (!position.onlyWays().isEmpty()) {
            facts.add(new Fact("Only when played", String.join(" or ", position.onlyWays().stream().map(named::way).toList()), ""));
        }
        if (position.rearClosed()) {
            facts.add(new Fact("Rear openings", "closed by hands", "No pattern lifts the bass there."));
        }
        List<String> dangers = new ArrayList<>();
        position.dangers().forEach(danger -> dangers.add(measures.sentence(danger.says()) + " Reaches " + desk.visit().reader().distance(danger.withinM()) + "."));
        return new Place(position.id(), position.name(), measures.sentence(position.brings()),
                position.overPeople() ? abovePeople() : null, dangers, position.keepClear().stream().map(this::kept).toList(),
                ReadingWords.words(position.side()), measures.distances(position.distanceM()), measures.degrees(position.offAxisDegrees()), facts,
                tone("tone-" + position.id(), "What is heard there, against its average spectrum", position.toneDb()));
    }

    private Warning abovePeople() {
        RuleInfo rule = RulePages.find(desk, ABOVE_PEOPLE);
        return new Warning(Sentences.words(desk, rule.says()), desk.at().rule(rule));
    }

    private String kept(KeepClear keep) {
        return desk.measures().sentence(keep.of()) + ", " + desk.visit().reader().distance(keep.distanceM());
    }

    private List<Mention> habits(HabitRank rank) {
        List<Mention> all = new ArrayList<>();
        for (Habit habit : source.habits()) {
            MicType mic = desk.catalogue().mics().get(habit.micType());
            if (habit.rank() == rank && mic != null) {
                all.add(new Mention(desk.at().mic(mic), "", named.when(source, habit), desk.measures().sentence(habit.why())));
            }
        }
        return all;
    }

    private Two two(PairRecipe pair) {
        Technique technique = desk.catalogue().techniques().get(pair.technique());
        return technique == null ? null : new Two(desk.at().technique(technique), pair.seldom(), half(pair.first()), half(pair.second()),
                desk.measures().sentence(pair.why()));
    }

    private Half half(PairRecipe.Part part) {
        return new Half(new Link("#place-" + part.position(), References.place(source, part.position())),
                part.micTypes().stream().map(desk.catalogue().mics()::get).filter(Objects::nonNull).map(desk.at()::mic).toList());
    }
}
