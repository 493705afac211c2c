package pairwright.lab;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pairwright.advice.Offer;
import pairwright.model.MicType;
import pairwright.model.Pattern;
import pairwright.model.PatternData;
import pairwright.model.Source;
import pairwright.model.SourceFamily;

/** One microphone on a floor: where it stands and where it looks. */
final class PlaceKind implements Kind {
    private static final KindInfo INFO = new KindInfo("place", "Place it",
            "Put a microphone where its source is heard as wanted and the others are not, and turn its deaf side to use.",
            "How the player likes it. A plan is flat: heights are those of the usual places.",
            List.of("It stands: turn it", "Place and turn it, one other plays", "One other plays, in a room that answers", "Two others play", "Two others play, in a room that answers"),
            List.of(10, 15, 15, 20, 25), false);
    private static final List<Pattern> TURNED = List.of(Pattern.CARDIOID, Pattern.SUPERCARDIOID, Pattern.HYPERCARDIOID, Pattern.FIGURE_8);
    private static final double WALL_M = 0.7;
    private static final double APART_M = 1.2;
    /** A turn that loses no more than that against the best is no question. */
    private static final double LEAST_AT_STAKE_DB = 6;

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
        List<Source> sources = OneMic.sources(lab, 2).stream().filter(source -> source.body() != null && source.family() != SourceFamily.AMBIENCE).toList();
        Case drawn = Case.empty().with("types", type.id()).with("pattern", draw.one(patterns(type)).id())
                .with("widthM", draw.between(5, 8, 0.5)).with("depthM", draw.between(4.5, 7, 0.5)).with("heightM", draw.between(2.8, 4.4, 0.4))
                .with("reverbTimeS", level == 3 || level == 5 ? draw.between(0.7, 1.4, 0.1) : 0.25)
                .with("sources", draw.some(level >= 4 ? 3 : 2, sources).stream().map(Source::id).toList());
        Optional<Case> seated = seated(draw, drawn);
        return seated.flatMap(there -> asked(there, level, OnFloor.of(there, lab)));
    }

    private static List<Pattern> patterns(MicType type) {
        return type.patterns().stream().filter(pattern -> pattern.coefficient() != null).map(PatternData::pattern).filter(TURNED::contains).toList();
    }

    /** The first near the middle, the others round it; empty where they would sit on each other. */
    private static Optional<Case> seated(Draw draw, Case drawn) {
        List<String> x = new ArrayList<>();
        List<String> y = new ArrayList<>();
        List<String> facing = new ArrayList<>();
        double width = drawn.number("widthM");
        double depth = drawn.number("depthM");
        double ownX = Math.round(width * (0.4 + 0.2 * draw.share()) * 10) / 10.0;
        double ownY = Math.round(depth * (0.4 + 0.2 * draw.share()) * 10) / 10.0;
        for (int i = 0; i < drawn.all("sources").size(); i++) {
            double round = Math.toRadians(draw.between(0, 330, 30));
            double far = i == 0 ? 0 : draw.between(1.4, 2.6, 0.2);
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
    private static Optional<Case> asked(Case drawn, int level, OnFloor floor) {
        List<Offer> tried = floor.tried();
        if (tried.isEmpty()) {
            return Optional.empty();
        }
        Optional<Spotted> best = level == 1 ? Spotted.turnedBest(floor, floor.spot(tried.get(0))) : Spotted.best(floor, tried);
        if (best.isEmpty()) {
            return Optional.empty();
        }
        Spotted spot = best.get();
        double least = floor.judged(spot.at(), OnFloor.allRound()).stream().mapToDouble(OnFloor::separationDb).sorted().skip(18).findFirst().orElse(0);
        if (OnFloor.separationDb(spot.stood()) - least < LEAST_AT_STAKE_DB) {
            return Optional.empty();
        }
        return Optional.of(drawn.with("spotXM", spot.xM()).with("spotYM", spot.yM()).with("looks", spot.lookDegrees()));
    }

    @Override
    public Exercise of(Case drawn, int level, Lab lab) {
        return new PlaceExercise(drawn, level, OnFloor.of(drawn, lab), lab);
    }
}
