package pairwright.lab;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pairwright.advice.Offer;
import pairwright.model.MicType;
import pairwright.model.Pattern;
import pairwright.model.PatternData;
import pairwright.model.Source;

/** One microphone on a floor: where it stands and where it looks. */
final class PlaceKind implements Kind {
    private static final KindInfo INFO = new KindInfo("place", "Place it",
            "Put a microphone where its source is heard as wanted and the others are not, and turn its deaf side to use.",
            "How the player likes it. A plan is flat: heights are those of the usual places.",
            List.of("It stands: turn it", "Place and turn it, one other plays", "One other plays, in a room that answers", "Two others play", "Two others play, in a room that answers"),
            List.of(10, 15, 15, 20, 25), false);
    private static final List<Pattern> TURNED = List.of(Pattern.CARDIOID, Pattern.SUPERCARDIOID, Pattern.HYPERCARDIOID, Pattern.FIGURE_8);
    /** So many places are tried for one that has to be turned. */
    private static final int STANDS = 4;
    private static final double WALL_M = 0.7;
    private static final double APART_M = 1.2;

    /** Nor a turn that does hardly more than looking straight at it. */
    private static final double LEAST_TURN_DB = 2;
    /** What is not heard over the others at the best spot is nothing to learn from. */
    private static final double LEAST_HEARD_DB = 3;

    @Override
    public KindInfo info() {
        return INFO;
    }

    @Override
    public Optional<Case> draw(Draw draw, int level, Lab lab) {
        List<MicType> types = OneMic.types(lab).stream().filter(type -> !patterns(type).isEmpty()).toList();
        if (types.isEmpty()) {
            return Optional.empty();
        }
        MicType type = draw.one(types);
        List<Source> sources = OneMic.sources(lab, 2).stream().filter(source -> source.body() != null && OneMic.BESIDE.test(source)).toList();
        Case drawn = Case.empty().with("types", type.id()).with("pattern", draw.one(patterns(type)).id())
                .with("widthM", draw.between(5, 8, 0.5)).with("depthM", draw.between(4.5, 7, 0.5)).with("heightM", ReckonProblem.plain(draw.between(2.8, 4.4, 0.4)))
                .with("reverbTimeS", level == 3 || level == 5 ? ReckonProblem.plain(draw.between(0.7, 1.4, 0.1)) : level == 1 ? "0.12" : "0.25")
                .with("sources", draw.some(level >= 4 ? 3 : 2, sources).stream().map(Source::id).toList());
        Optional<Case> seated = seated(draw, drawn, level == 1 ? 1.6 : 2.6);
        return seated.flatMap(there -> asked(draw, there, level, OnFloor.of(there, lab)));
    }

    private static List<Pattern> patterns(MicType type) {
        return type.patterns().stream().filter(pattern -> pattern.coefficient() != null).map(PatternData::pattern).filter(TURNED::contains).toList();
    }

    /** The first near the middle, the others round it; empty where they would sit on each other. */
    private static Optional<Case> seated(Draw draw, Case drawn, double mostM) {
        List<String> x = new ArrayList<>();
        List<String> y = new ArrayList<>();
        List<String> facing = new ArrayList<>();
        double width = drawn.number("widthM");
        double depth = drawn.number("depthM");
        double ownX = Math.round(width * (0.4 + 0.2 * draw.share()) * 10) / 10.0;
        double ownY = Math.round(depth * (0.4 + 0.2 * draw.share()) * 10) / 10.0;
        for (int i = 0; i < drawn.all("sources").size(); i++) {
            double round = Math.toRadians(draw.between(0, 330, 30));
            double far = i == 0 ? 0 : draw.between(1.2, mostM, 0.2);
            double atX = Math.max(WALL_M, Math.min(width - WALL_M, ownX + far * Math.sin(round)));
            double atY = Math.max(WALL_M, Math.min(depth - WALL_M, ownY + far * Math.cos(round)));
            for (int j = 0; j < i; j++) {
                if (Math.hypot(Double.parseDouble(x.get(j)) - atX, Double.parseDouble(y.get(j)) - atY) < APART_M) {
                    return Optional.empty();
                }
            }
            x.add(ReckonProblem.plain(Math.round(atX * 100) / 100.0));
            y.add(ReckonProblem.plain(Math.round(atY * 100) / 100.0));
            facing.add(Integer.toString(draw.below(8) * 45));
        }
        return Optional.of(drawn.with("xM", x).with("yM", y).with("facing", facing));
    }

    /** With the best spot that was found, and in the first level with where it stands. */
    private static Optional<Case> asked(Draw draw, Case drawn, int level, OnFloor floor) {
        List<Offer> tried = floor.tried();
        if (tried.isEmpty() || tried.get(0).centipoints() <= 0 || OnFloor.separationDb(tried.get(0)) < LEAST_HEARD_DB) {
            return Optional.empty();
        }
        Optional<Spotted> best = level > 1 ? Spotted.best(floor, tried) : draw.some(STANDS, tried).stream()
                .flatMap(offer -> Spotted.turned(floor, floor.spot(offer), OnFloor::quietest).filter(spot -> matters(floor, spot)).stream()).findFirst();
        return best.filter(spot -> spot.points() > 0 && OnFloor.separationDb(spot.stood().offer()) >= LEAST_HEARD_DB)
                .map(spot -> drawn.with("spotXM", spot.xM()).with("spotYM", spot.yM()).with("looks", spot.lookDegrees()));
    }

    /** Whether a turn does clearly more than to look straight at the source. */
    private static boolean matters(OnFloor floor, Spotted spot) {
        double straightDb = OnFloor.separationDb(floor.judged(spot.at(), List.of(OnFloor.turns(spot.at()).get(0))).get(0).offer());
        return OnFloor.separationDb(spot.stood().offer()) - straightDb >= LEAST_TURN_DB;
    }

    @Override
    public Exercise of(Case drawn, int level, Lab lab) {
        return new PlaceExercise(drawn, level, OnFloor.of(drawn, lab), lab);
    }
}
