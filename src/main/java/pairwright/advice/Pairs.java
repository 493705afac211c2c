package pairwright.advice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import pairwright.acoustics.Delay;
import pairwright.acoustics.OctaveCurve;
import pairwright.acoustics.StereoPair;
import pairwright.model.Arrangement;
import pairwright.model.MicType;
import pairwright.model.PairRecipe;
import pairwright.model.Pattern;
import pairwright.model.PatternData;
import pairwright.model.Technique;
import pairwright.model.Together;
import pairwright.rules.Paired;
import pairwright.rules.Placed;

/** Combines the best placements of a source into the pairs its catalogue entry names, and predicts what the two do together. */
final class Pairs {
    /** So many types are tried in each place of a pair; the best of each type only. */
    private static final int TYPES_TRIED = 6;
    /** A far microphone stands at least so many times as far as the near one. */
    private static final double FAR_OVER_NEAR = 3;
    /** Paths closer than this count as equal: the first null lies beyond hearing. */
    private static final double ONE_PLANE_M = 0.005;
    /** The ripple of two equal signals has no bottom; a real one is about this deep. */
    private static final double DEEPEST_RIPPLE_DB = 40;
    /** Side over mid at which a mid/side pair of a cardioid mid is judged. */
    private static final double SIDE_OVER_MID = 0.7071;
    /** A recipe names types in the order they are reached for; a later one is as well known, only less often taken. */
    private static final double SHARE_PER_PLACE = 0.15;
    private static final double LEAST_SHARE = 0.4;

    private final Scene scene;
    private final Rack rack;
    private final int typesTried;
    private final Map<String, List<Judged>> byPosition = new TreeMap<>();
    private final Map<Angled, OptionalDouble> recordingDegrees = new HashMap<>();

    private Pairs(Scene scene, List<Judged> judged, Rack rack, int typesTried) {
        this.scene = scene;
        this.rack = rack;
        this.typesTried = typesTried;
        for (Judged one : judged) {
            if (!one.ruledOut() && one.placed().mic().channels() == 1 && rack.useful(one.placed().mic())) {
                byPosition.computeIfAbsent(one.placed().position().id(), id -> new ArrayList<>()).add(one);
            }
        }
        byPosition.values().forEach(list -> list.sort(
                Comparator.comparingLong(Judged::centipoints).reversed().thenComparing(one -> one.placed().index())));
    }

    /** Two judged placements and how they relate. */
    record Pair(Judged first, Judged second, Paired paired) {
        /** The same two places, of units that were not matched. */
        Pair unmatched() {
            return new Pair(first, second, new Paired(paired.first(), paired.second(), paired.technique(), paired.known(), paired.knownShare(), paired.asked(),
                    paired.why(), paired.secondInverted(), paired.unitsKnown(), false, paired.together()));
        }
    }

    /** The pairs worth judging, in a stable order. */
    static List<Pair> of(Scene scene, List<Judged> judged) {
        return of(scene, judged, scene.supply().atHand());
    }

    /** Those of them that can be made of some units. Of a locker all types are tried: which pairs there are must not depend on what else is free. */
    static List<Pair> of(Scene scene, List<Judged> judged, Rack rack) {
        return of(scene, judged, rack, rack.everything() ? TYPES_TRIED : Integer.MAX_VALUE);
    }

    /** The same of all types, locker or not. */
    static List<Pair> ofAllTypes(Scene scene, List<Judged> judged) {
        return of(scene, judged, scene.supply().atHand(), Integer.MAX_VALUE);
    }

    private static List<Pair> of(Scene scene, List<Judged> judged, Rack rack, int typesTried) {
        if (scene.setting().channels() < 2) {
            return List.of();
        }
        Pairs pairs = new Pairs(scene, judged, rack, typesTried);
        List<Pair> found = new ArrayList<>();
        for (PairRecipe recipe : scene.setting().source().pairs()) {
            Technique technique = scene.catalogue().techniques().get(recipe.technique());
            if (technique.stereo() && scene.setting().monoWanted()) {
                continue;
            }
            pairs.combine(recipe, technique, found);
        }
        return found;
    }

    /** Nothing to choose from: for pairs that are put together one by one. */
    static Pairs none(Scene scene) {
        return new Pairs(scene, List.of(), scene.supply().atHand(), 0);
    }

    /** Any two as a recipe has them, whether or not they would have been tried. */
    Paired paired(PairRecipe recipe, Placed first, Placed second) {
        return paired(recipe, scene.catalogue().techniques().get(recipe.technique()), first, second);
    }

    private void combine(PairRecipe recipe, Technique technique, List<Pair> found) {
        boolean onePlace = recipe.first().position().equals(recipe.second().position());
        for (Judged first : best(recipe.first(), technique, technique.firstPatterns())) {
            if (technique.sameType() && onePlace) {
                if (named(recipe.second(), first.placed().mic()) && rack.both(first.placed().mic(), first.placed().mic())) {
                    found.add(new Pair(first, first, paired(recipe, technique, first.placed(), first.placed())));
                }
                continue;
            }
            List<String> types = new ArrayList<>();
            for (Judged second : at(recipe.second(), technique, technique.secondPatterns(), technique.arrangement() == Arrangement.MID_SIDE)) {
                if (types.size() < typesTried && first != second && !types.contains(rack.kind(second.placed().mic()))
                        && belong(technique, first.placed(), second.placed())) {
                    types.add(rack.kind(second.placed().mic()));
                    found.add(new Pair(first, second, paired(recipe, technique, first.placed(), second.placed())));
                }
            }
        }
    }

    /** The best of each type at a place, best first; for a stereo pair the best at each distance, since that sets its angle. */
    private List<Judged> best(PairRecipe.Part part, Technique technique, List<Pattern> patterns) {
        List<Judged> best = new ArrayList<>();
        List<String> types = new ArrayList<>();
        List<String> shown = new ArrayList<>();
        for (Judged one : at(part, technique, patterns, false)) {
            String type = rack.kind(one.placed().mic());
            String kind = technique.stereo() ? type + " " + one.placed().distanceM() : type;
            if (shown.contains(kind) || types.size() == typesTried && !types.contains(type)) {
                continue;
            }
            shown.add(kind);
            best.add(one);
            if (!types.contains(type)) {
                types.add(type);
            }
        }
        return best;
    }

    private List<Judged> at(PairRecipe.Part part, Technique technique, List<Pattern> patterns, boolean side) {
        return byPosition.getOrDefault(part.position(), List.of()).stream()
                .filter(one -> named(part, one.placed().mic()))
                .filter(one -> patterns.isEmpty() || patterns.contains(one.placed().pattern()))
                .filter(one -> Placements.isSide(one.placed()) == side)
                .filter(one -> side || !technique.stereo() || straight(one.placed()))
                .toList();
    }

    private static boolean named(PairRecipe.Part part, MicType mic) {
        return part.micTypes().isEmpty() || part.micTypes().contains(mic.id());
    }

    private boolean belong(Technique technique, Placed first, Placed second) {
        if (!rack.both(first.mic(), second.mic())) {
            return false;
        }
        if (technique.sameType() && !(first.mic().id().equals(second.mic().id()) && first.pattern() == second.pattern())) {
            return false;
        }
        return switch (technique.arrangement()) {
            case SAME_SPOT -> !first.mic().id().equals(second.mic().id()) && first.distanceM() == second.distanceM();
            case MID_SIDE, COINCIDENT, NEAR_COINCIDENT, SPACED -> first.distanceM() == second.distanceM();
            case NEAR_AND_FAR -> second.distanceM() >= FAR_OVER_NEAR * first.distanceM();
            default -> true;
        };
    }

    /** A stereo pair as a whole faces the source; its own angles are the technique's. */
    private static boolean straight(Placed placed) {
        return placed.aimDegrees() == placed.position().aimDegrees().low();
    }

    private Paired paired(PairRecipe recipe, Technique technique, Placed first, Placed second) {
        int firstPlace = recipe.first().micTypes().indexOf(first.mic().id());
        int secondPlace = recipe.second().micTypes().indexOf(second.mic().id());
        boolean known = !recipe.seldom() && firstPlace >= 0 && secondPlace >= 0 && !Placements.habitsOfItsOwn(scene);
        double knownShare = known ? Math.max(LEAST_SHARE, 1 - SHARE_PER_PLACE * (firstPlace + secondPlace)) : 0;
        boolean alike = !rack.everything() && technique.stereo() && first.mic().id().equals(second.mic().id()) && rack.both(first.mic(), second.mic());
        boolean opposite = first.position().opposite() != second.position().opposite();
        return new Paired(first, second, technique, known, knownShare, scene.question().techniques().contains(technique.id()), recipe.why(), technique.invertSecond() || opposite,
                alike, alike && rack.matched(first.mic().id()),
                together(scene, technique, first, second, recordingAngle(technique, first)));
    }

    /** What the same pair does with its placements predicted anew. */
    static Paired again(Scene scene, Paired old, Placed first, Placed second) {
        return new Paired(first, second, old.technique(), old.known(), old.knownShare(), old.asked(), old.why(), old.secondInverted(), old.unitsKnown(), old.matchedPair(),
                together(scene, old.technique(), first, second, old.together().recordingAngleDegrees()));
    }

    private static Together together(Scene scene, Technique technique, Placed first, Placed second, Double recordingAngleDegrees) {
        double apartM = apart(technique, first, second);
        double levelDb = levelDifference(first, second);
        double rippleDb = Math.abs(levelDb) < 0.1 ? DEEPEST_RIPPLE_DB : Math.min(DEEPEST_RIPPLE_DB, Delay.rippleDb(Math.abs(levelDb)));
        double nearM = Math.min(first.distanceM(), second.distanceM());
        double farM = Math.max(first.distanceM(), second.distanceM());
        return new Together(
                Delay.timeMs(apartM),
                apartM < ONE_PLANE_M ? null : Delay.nullHz(apartM, 1),
                levelDb,
                rippleDb,
                contrast(scene, first.predicted().colourDb(), second.predicted().colourDb()),
                farM / nearM,
                recordingAngleDegrees,
                first.sourceAngleDegrees(),
                technique.spacingM() == null ? 0 : technique.spacingM());
    }

    /** By how much the two paths from the sound to the capsules differ. A stereo pair faces the middle of the source, so not at all. */
    private static double apart(Technique technique, Placed first, Placed second) {
        return switch (technique.arrangement()) {
            case SAME_SPOT, COINCIDENT, NEAR_COINCIDENT, SPACED, MID_SIDE -> 0;
            default -> Math.abs(path(first) - path(second));
        };
    }

    private static double path(Placed placed) {
        return wired(placed) ? 0 : placed.distanceM() + (placed.position().pathM() == null ? 0 : placed.position().pathM());
    }

    /** A wire has no sound pressure: its level is whatever the fader makes it, so the two are taken as equal. */
    private static double levelDifference(Placed first, Placed second) {
        return wired(first) || wired(second) ? 0 : first.predicted().typicalDbSpl() - second.predicted().typicalDbSpl();
    }

    private static boolean wired(Placed placed) {
        return placed.predicted().typicalDbSpl() == null;
    }

    private static double contrast(Scene scene, OctaveCurve first, OctaveCurve second) {
        OctaveCurve difference = first.minus(second);
        return difference.plus(-difference.weightedMean(scene.weights())).weightedRms(scene.weights());
    }

    private Double recordingAngle(Technique technique, Placed first) {
        if (!technique.stereo()) {
            return null;
        }
        double coefficient = coefficient(first);
        double included = technique.includedDegrees() == null ? 0 : technique.includedDegrees();
        double spacingM = technique.spacingM() == null ? 0 : technique.spacingM();
        OptionalDouble degrees;
        if (technique.arrangement() == Arrangement.MID_SIDE) {
            StereoPair.VirtualPair pair = StereoPair.fromMidSide(coefficient, SIDE_OVER_MID);
            degrees = recordingDegrees(pair.coefficient(), 0, pair.includedDegrees());
        } else if (included == 0 && spacingM == 0) {
            return null;
        } else {
            degrees = recordingDegrees(coefficient, spacingM, included);
        }
        return degrees.isPresent() ? degrees.getAsDouble() : null;
    }

    private OptionalDouble recordingDegrees(double coefficient, double spacingM, double includedDegrees) {
        return recordingDegrees.computeIfAbsent(new Angled(coefficient, spacingM, includedDegrees), angled ->
                StereoPair.recordingDegrees(StereoPair.Model.FULL_AT_15_DB, coefficient, spacingM, includedDegrees));
    }

    /** What a recording angle depends on; many pairs share it, and it is found by search. */
    private record Angled(double coefficient, double spacingM, double includedDegrees) {
    }

    private static double coefficient(Placed placed) {
        for (PatternData pattern : placed.mic().patterns()) {
            if (pattern.pattern() == placed.pattern() && pattern.coefficient() != null) {
                return pattern.coefficient().at(Band.HZ_1000);
            }
        }
        return 0.25;
    }
}
