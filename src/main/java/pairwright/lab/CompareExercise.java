package pairwright.lab;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;
import pairwright.advice.Offer;
import pairwright.advice.OfferedMic;
import pairwright.model.Caution;
import pairwright.model.MicType;
import pairwright.model.MoveKind;
import pairwright.model.Option;

/** One comparison of two. */
final class CompareExercise implements Exercise {
    private static final String GAIN = "gain";
    private static final String MOST = "most";
    private static final String BLIND = "blind";
    private static final String FIRST = "1";
    private static final String SECOND = "2";
    private static final String NEITHER = "0";
    /** Louder sounds better; by less nobody hears it. */
    private static final double MATCHED_DB = 0.5;
    /** Units of one type differ by about as much in sensitivity, and players from take to take. */
    private static final double WITHIN_DB = 2;

    private final Case drawn;
    private final OneMic one;
    private final Lab lab;
    private final List<Offer> setUps;
    private final OfferedMic first;
    private final OfferedMic second;
    private final List<Trait> asked;
    private final Trait most;
    private final MoveKind differs;

    CompareExercise(Case drawn, OneMic one, Lab lab) {
        this.drawn = drawn;
        this.one = one;
        this.lab = lab;
        this.setUps = drawn.all("setUps").stream().map(one::named).toList();
        this.first = OneMic.mic(setUps.get(0));
        this.second = OneMic.mic(setUps.get(1));
        this.differs = Arrays.stream(MoveKind.values()).filter(kind -> kind.id().equals(drawn.one("differs"))).findFirst().orElseThrow();
        this.asked = drawn.all("asked").stream().map(Trait::of).toList();
        this.most = asked.stream().max(Comparator.comparingDouble(trait -> Math.abs(trait.moreDb(first, second)))).orElseThrow();
    }

    @Override
    public Handout handout() {
        List<Caution> cautions = one.explain(setUps).cautions(setUps);
        List<String> hands = HandsOn.cautions(one.setting(), types(), List.of(first.position(), second.position()), cautions);
        List<String> said = new ArrayList<>(one.situation());
        said.add("Set-up 1: " + words(first) + ". Set-up 2: " + words(second) + ".");
        said.add(differs() + " All else stays: player, instrument and piece, its place in the room, preamplifiers of one kind, filters and pads out unless both have them.");
        said.add("Before you listen, write down what you expect. Then record both at once, or the same phrase twice where they cannot stand side by side.");
        said.add("Match the levels: an even phrase of ten seconds, both on the same averaging meter, the louder turned down until they read the same within " + MATCHED_DB
                + " dB. Write down by how much the gains differ.");
        said.add("The instructor plays them as A and B in an order that was drawn and that nobody else knows. Listen to one thing at a time: "
                + String.join("; ", asked.stream().map(Trait::listen).toList()) + ".");
        return new Handout("Compare two: " + lab.source(drawn.one("source")).name(), hands, said, List.of(), items());
    }

    private List<Item> items() {
        List<Item> items = new ArrayList<>();
        items.add(new Item.Amount(GAIN, "How many decibels more gain than set-up 1 does set-up 2 need to be as loud? If it needs less, write a minus before the number.", "dB", -30, 30));
        for (Trait trait : asked) {
            items.add(new Item.OneOf(trait.id(), "Which of the two has more " + trait.asWords() + "?", List.of(new Item.Opt(FIRST, "Set-up 1"), new Item.Opt(SECOND, "Set-up 2"),
                    new Item.Opt(NEITHER, "Neither: nobody could tell"))));
        }
        items.add(new Item.Amount(MOST, "Of all of these, take the one in which they differ most: by how many decibels?", "dB", 0.5, 25));
        items.add(new Item.OneOf(BLIND, "By ear: which is A?", List.of(new Item.Opt(FIRST, "Set-up 1"), new Item.Opt(SECOND, "Set-up 2"))));
        return items;
    }

    private List<MicType> types() {
        return Stream.of(first, second).map(OfferedMic::micType).distinct().toList();
    }

    private String differs() {
        return switch (differs) {
            case DISTANCE -> "One thing differs: the distance.";
            case PATTERN -> "One thing differs: the pattern.";
            case ANGLE -> "One thing differs: where it looks.";
            case POSITION -> "One thing differs: the place.";
            default -> first.pattern() == second.pattern() ? "One thing differs: the type." : "The type differs, and the pattern with it.";
        };
    }

    private static String words(OfferedMic mic) {
        String turned = mic.aimDegrees() == 0 ? "" : ", turned " + Math.round(Math.abs(mic.aimDegrees())) + "\u00b0 off the line to the source";
        return OneMic.called(mic.micType(), mic.pattern()) + ", " + mic.position().name() + ", " + ChooseExercise.far(mic.distanceM()) + turned;
    }

    private double moreGainDb() {
        return second.predicted().gainDb() - first.predicted().gainDb();
    }

    private double mostDb() {
        return Math.abs(most.moreDb(first, second));
    }

    private String right(Trait trait) {
        return switch (trait.which(first, second).orElseThrow(() -> new IllegalArgumentException("It is not clear any more which of the two has more " + trait.asWords()))) {
            case FIRST -> FIRST;
            case SECOND -> SECOND;
            case NEITHER -> NEITHER;
        };
    }

    private String why(Trait trait) {
        double moreDb = trait.moreDb(first, second);
        return right(trait).equals(NEITHER) ? "Predicted, the two are within half a decibel there."
                : "Predicted, set-up " + right(trait) + " has " + decibels(Math.abs(moreDb)) + " more " + trait.asWords() + ". " + reason(trait);
    }

    /** What brings the difference about. */
    private String reason(Trait trait) {
        double liftDb = second.predicted().proximityDb() - first.predicted().proximityDb();
        if (trait == Trait.LOW && Math.abs(liftDb) >= 1) {
            return "Closeness lifts the bass by " + decibels(Math.abs(liftDb)) + " more at set-up " + (liftDb > 0 ? SECOND : FIRST) + ".";
        }
        return trait == Trait.ROOM ? "Set-up 1 stands at " + ratio(first) + " times the distance at which source and room are as loud, set-up 2 at " + ratio(second) + "."
                : switch (differs) {
                    case POSITION -> "Set-up 1: " + first.position().brings() + "; set-up 2: " + second.position().brings() + ".";
                    case ANGLE -> "What comes from the side is heard with less of its top.";
                    case PATTERN -> "That is what the pattern hears from its sides, and of closeness.";
                    case DISTANCE -> "The distance does that.";
                    default -> "That is in the response of the types.";
                };
    }

    private static String ratio(OfferedMic mic) {
        return String.format(Locale.ROOT, "%.2f", mic.placed().distanceRatio());
    }

    /** What a trait rests on. */
    private List<String> rests(Trait trait) {
        if (trait == Trait.ROOM) {
            return List.of("critical-distance");
        }
        Set<String> rests = new LinkedHashSet<>();
        if (trait == Trait.LOW && first.predicted().proximityDb() != second.predicted().proximityDb()) {
            rests.add("proximity");
        }
        Behind.all(option(0), option(1)).stream().filter(one::ofTone).forEach(rests::add);
        return List.copyOf(rests);
    }

    private Option option(int which) {
        return one.explain(setUps).option(setUps.get(which));
    }

    @Override
    public Key key() {
        List<Key.Entry> entries = new ArrayList<>();
        Answer best = Answer.NOTHING.with(GAIN, rounded(moreGainDb()));
        entries.add(new Key.Entry(GAIN, Math.abs(rounded(moreGainDb())) < 0.05 ? "None: 0 dB" : decibels(moreGainDb()), List.of(), List.of("Level and sensitivity: set-up 1 needs " + decibels(first.predicted().gainDb()) + ", set-up 2 "
                + decibels(second.predicted().gainDb()) + "."), List.of("gain")));
        for (Trait trait : asked) {
            best = best.with(trait.id(), right(trait));
            entries.add(new Key.Entry(trait.id(), right(trait).equals(NEITHER) ? "Neither" : "Set-up " + right(trait), List.of(right(trait)), List.of(why(trait)), rests(trait)));
        }
        entries.add(new Key.Entry(MOST, decibels(mostDb()) + ", in " + most.asWords(), List.of(), List.of(why(most)), rests(most)));
        entries.add(new Key.Entry(BLIND, "A is set-up " + drawn.one("a"), List.of(drawn.one("a")), List.of("As it was drawn: play set-up " + drawn.one("a") + " as A."), List.of()));
        return new Key(best.with(MOST, rounded(mostDb())).with(BLIND, drawn.one("a")), entries,
                List.of("What is predicted is a usual unit and instrument of each kind: where all ears agree against it, the ears are right, and the reason is worth finding."));
    }

    private static double rounded(double db) {
        return Math.round(db * 10) / 10.0;
    }

    private static String decibels(double db) {
        return String.format(Locale.ROOT, "%.1f dB", rounded(db) + 0.0).replace('-', '\u2212');
    }

    @Override
    public Mark mark(Answer answer) {
        Mark.Sum sum = new Mark.Sum();
        amount(sum, "The gain", GAIN, answer, moreGainDb(), 2, GAIN);
        boolean all = true;
        for (Trait trait : asked) {
            boolean right = right(trait).equals(answer.one(trait.id()));
            all &= right;
            sum.add("More " + trait.id(), right ? 1 : 0, 1, (right ? "Yes. " : "") + why(trait), rests(trait).stream().findFirst().orElse(null));
        }
        sum.add("All of them", all ? 1 : 0, asked.size(), all ? "The whole difference was foreseen." : "Not all of the difference was foreseen.", null);
        amount(sum, "The largest difference", MOST, answer, mostDb(), 2, rests(most).stream().findFirst().orElse(null));
        boolean heard = drawn.one("a").equals(answer.one(BLIND));
        sum.add("By ear", heard ? 1 : 0, 1, heard ? "Yes." : "A was set-up " + drawn.one("a") + ". Listen again for " + most.listen() + ".", null);
        return sum.mark();
    }

    private static void amount(Mark.Sum sum, String name, String item, Answer answer, double right, double of, String rests) {
        OptionalDouble given = Reckoned.in("dB", answer, item);
        double off = given.isEmpty() ? Double.MAX_VALUE : Math.abs(given.getAsDouble() - right);
        double share = off <= WITHIN_DB ? 1 : off <= 2 * WITHIN_DB ? 0.5 : 0;
        sum.add(name, share, of, (given.isEmpty() ? "No number in dB. " : share == 1 ? "Right: " : share > 0 ? "Near: " : "") + (Math.abs(rounded(right)) < 0.05 ? "They differ by nothing." : "It is " + decibels(right) + "."), rests);
    }

    /** The nearer one has more of everything but the room, and both are as loud. */
    @Override
    public Answer usual() {
        String near = second.distanceM() < first.distanceM() ? SECOND : FIRST;
        String far = near.equals(FIRST) ? SECOND : FIRST;
        Answer usual = Answer.NOTHING.with(GAIN, 0).with(MOST, 3).with(BLIND, FIRST);
        for (Trait trait : asked) {
            usual = usual.with(trait.id(), trait == Trait.ROOM ? far : near);
        }
        return usual;
    }

    @Override
    public List<Need> kit() {
        List<MicType> types = types();
        return types.stream().map(type -> new Need(type.id(), types.size() == 1 ? 2 : 1)).toList();
    }

    @Override
    public Set<String> restsOn() {
        Set<String> rests = new LinkedHashSet<>(List.of(GAIN));
        asked.stream().filter(trait -> !right(trait).equals(NEITHER)).forEach(trait -> rests.addAll(rests(trait)));
        return rests;
    }
}
