package pairwright.lab;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import pairwright.acoustics.OctaveCurve;
import pairwright.advice.Offer;
import pairwright.advice.OfferedMic;
import pairwright.model.MicType;
import pairwright.model.Reason;

/** Predicted tones to be matched to the microphones that make them. */
final class CurvesKind implements Kind {
    private static final KindInfo INFO = new KindInfo("curves", "Which makes which",
            "Say beforehand what a type, a place, a pattern and a distance make of a sound.",
            "What one likes. The curves are predicted for a usual instrument; yours and your room add to them.",
            List.of("Four types at one place", "Four types and places", "Five types and places", "One type, three places", "One type, three places or distances"),
            List.of(10, 12, 15, 15, 15), false);
    private static final int[] SET_UPS = {4, 4, 5, 3, 3};
    /** Two curves that are nearer to each other than that, on average over the octaves, are one guess. */
    private static final double LEAST_APART_DB = 2;
    /** From 63 Hz to 16 kHz. */
    private static final int FIRST_BAND = 0;
    private static final int LAST_BAND = 8;

    @Override
    public KindInfo info() {
        return INFO;
    }

    @Override
    public Optional<Case> draw(Draw draw, int level, Lab lab) {
        List<MicType> types = OneMic.types(lab);
        int many = level >= 4 ? 1 : Math.min(types.size(), 8);
        Case drawn = Case.empty().with("source", draw.one(OneMic.sources(lab, 3)).id()).with("types", draw.some(many, types).stream().map(MicType::id).sorted().toList());
        OneMic one = OneMic.of(drawn, lab);
        List<Offer> chosen = new ArrayList<>();
        Set<String> seen = new HashSet<>();
        String place = level == 1 && !one.none() ? OneMic.mic(draw.one(one.all())).position().id() : null;
        for (Offer offer : draw.shuffled(one.all())) {
            OfferedMic mic = OneMic.mic(offer);
            boolean fits = place == null || mic.position().id().equals(place);
            String what = level == 4 ? mic.position().id() : level == 1 ? mic.micType().id() : mic.micType().id() + mic.position().id() + mic.distanceM();
            if (fits && chosen.size() < SET_UPS[level - 1] && chosen.stream().allMatch(other -> apartDb(other, offer) >= LEAST_APART_DB) && seen.add(what)) {
                chosen.add(offer);
            }
        }
        if (chosen.size() < SET_UPS[level - 1] || rests(chosen, one).isEmpty()) {
            return Optional.empty();
        }
        List<Integer> order = IntStream.range(0, chosen.size()).boxed().toList();
        return Optional.of(drawn.with("setUps", chosen.stream().map(OneMic::name).toList())
                .with("curves", draw.shuffled(order).stream().map(i -> OneMic.name(chosen.get(i))).toList()));
    }

    private static double apartDb(Offer one, Offer other) {
        return apartDb(OneMic.mic(one).predicted().colourDb(), OneMic.mic(other).predicted().colourDb());
    }

    private static double apartDb(OctaveCurve one, OctaveCurve other) {
        OctaveCurve difference = one.minus(other);
        double mean = difference.meanDb(FIRST_BAND, LAST_BAND);
        double squares = 0;
        for (int band = FIRST_BAND; band <= LAST_BAND; band++) {
            squares += Math.pow(difference.at(band) - mean, 2);
        }
        return Math.sqrt(squares / (LAST_BAND - FIRST_BAND + 1));
    }

    /** The rules that judge these tones, and the calculations behind them. */
    private static Set<String> rests(List<Offer> setUps, OneMic one) {
        one.explain(setUps);
        return setUps.stream().flatMap(offer -> Stream.concat(Formulas.tone(OneMic.mic(offer)).stream(),
                one.option(offer).reasons().stream().map(Reason::rule).filter(one::ofTone))).collect(Collectors.toCollection(LinkedHashSet::new));
    }

    @Override
    public Exercise of(Case drawn, int level, Lab lab) {
        return new Curves(drawn, OneMic.of(drawn, lab), lab);
    }

    private static final class Curves implements Exercise {
        private final OneMic one;
        private final Lab lab;
        private final Case drawn;
        private final List<Offer> setUps;
        private final List<Offer> curves;

        Curves(Case drawn, OneMic one, Lab lab) {
            this.drawn = drawn;
            this.one = one;
            this.lab = lab;
            this.setUps = drawn.all("setUps").stream().map(one::named).toList();
            this.curves = drawn.all("curves").stream().map(one::named).toList();
        }

        private static String item(int setUp) {
            return "set-up-" + (setUp + 1);
        }

        private String letter(int setUp) {
            return letters().get(curves.indexOf(setUps.get(setUp))).id();
        }

        private List<Item.Opt> letters() {
            return Item.Opt.lettered(IntStream.range(0, curves.size()).mapToObj(i -> "Curve " + "ABCDEFGH".charAt(i)).toList());
        }

        private String words(int setUp) {
            OfferedMic mic = OneMic.mic(setUps.get(setUp));
            String turned = mic.aimDegrees() == 0 ? "" : ", turned " + Math.round(Math.abs(mic.aimDegrees())) + "\u00b0 off";
            return OneMic.called(mic.micType(), mic.pattern()) + ", " + mic.position().name() + ", " + ChooseExercise.far(mic.distanceM()) + turned;
        }

        @Override
        public Handout handout() {
            List<Shown.Curve> shown = IntStream.range(0, curves.size())
                    .mapToObj(i -> new Shown.Curve(letters().get(i).says(), OneMic.mic(curves.get(i)).predicted().colourDb())).toList();
            return new Handout("Which makes which: " + lab.source(drawn.one("source")).name(), List.of(), one.situation(),
                    List.of(new Shown.Curves("What each makes of the source as it is, level apart", shown)),
                    IntStream.range(0, setUps.size()).mapToObj(i -> (Item) new Item.OneOf(item(i), words(i), letters())).toList());
        }

        @Override
        public Key key() {
            Answer best = Answer.NOTHING;
            List<Key.Entry> entries = new ArrayList<>();
            for (int i = 0; i < setUps.size(); i++) {
                best = best.with(item(i), letter(i));
                entries.add(new Key.Entry(item(i), "Curve " + letter(i).toUpperCase(java.util.Locale.ROOT), List.of(letter(i)), List.of(why(i)), rests(setUps.get(i))));
            }
            return new Key(best, entries, List.of());
        }

        private List<String> rests(Offer setUp) {
            return List.copyOf(CurvesKind.rests(List.of(setUp), one));
        }

        /** Where it stands out from the others, and what does that. */
        private String why(int setUp) {
            OfferedMic mic = OneMic.mic(setUps.get(setUp));
            List<String> said = new ArrayList<>();
            if (mic.predicted().proximityDb() > 1) {
                said.add("closeness lifts 100 Hz by " + Math.round(mic.predicted().proximityDb()) + " dB");
            }
            said.add("low end " + signed(mic.predicted().lowDb()));
            said.add("presence " + signed(mic.predicted().presenceDb()));
            said.add("air " + signed(mic.predicted().airDb()));
            return mic.position().brings() + "; " + String.join(", ", said) + ".";
        }

        private static String signed(double db) {
            long whole = Math.round(Math.abs(db));
            return (whole == 0 ? "" : db < 0 ? "\u2212" : "+") + whole + " dB";
        }

        @Override
        public Mark mark(Answer answer) {
            Mark.Sum sum = new Mark.Sum();
            boolean all = true;
            for (int i = 0; i < setUps.size(); i++) {
                String given = answer.one(item(i));
                boolean right = letter(i).equals(given);
                all &= right;
                sum.add("Set-up " + (i + 1), right ? 1 : 0, 2, (right ? "Yes: " : "Curve " + letter(i).toUpperCase(java.util.Locale.ROOT) + ": ") + why(i), rests(setUps.get(i)).stream().findFirst().orElse(null));
            }
            sum.add("All of them", all ? 1 : 0, setUps.size(), all ? "Each is told from all others." : "Not all are told apart yet.", null);
            return sum.mark();
        }

        /** Goes by the response on the axis and by how near it is, and forgets what the place and the angle do. */
        @Override
        public Answer usual() {
            Answer usual = Answer.NOTHING;
            List<Integer> left = new ArrayList<>(IntStream.range(0, curves.size()).boxed().toList());
            for (int i = 0; i < setUps.size(); i++) {
                OctaveCurve sheet = onSheet(OneMic.mic(setUps.get(i)));
                Integer nearest = left.stream().min(Comparator.comparingDouble(curve -> apartDb(OneMic.mic(curves.get(curve)).predicted().colourDb(), sheet))).orElseThrow();
                left.remove(nearest);
                usual = usual.with(item(i), letters().get(nearest).id());
            }
            return usual;
        }

        private static OctaveCurve onSheet(OfferedMic mic) {
            double liftDb = mic.predicted().proximityDb();
            return mic.micType().responseDb().plus(OctaveCurve.of(liftDb, liftDb, liftDb / 3, 0, 0, 0, 0, 0, 0));
        }

        @Override
        public List<Need> kit() {
            return List.of();
        }

        @Override
        public Set<String> restsOn() {
            return CurvesKind.rests(setUps, one);
        }
    }
}
