package pairwright.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.BiPredicate;
import java.util.stream.Collectors;
import pairwright.acoustics.BoundaryPlate;
import pairwright.acoustics.FirstOrder;
import pairwright.acoustics.StandStability;
import pairwright.model.Arrangement;
import pairwright.model.Danger;
import pairwright.model.DangerKind;
import pairwright.model.Habit;
import pairwright.model.HabitRank;
import pairwright.model.Limits;
import pairwright.model.MicFamily;
import pairwright.model.MicType;
import pairwright.model.Mount;
import pairwright.model.Pattern;
import pairwright.model.PatternData;
import pairwright.model.Position;
import pairwright.model.Question;
import pairwright.model.Range;
import pairwright.model.Signal;
import pairwright.rules.Placed;

/** Lists every placement that is possible at a source: type, pattern, position, two or three distances, aims worth trying. */
final class Placements {
    /** A range wider than this is tried in its middle as well as at its ends. */
    private static final double WIDE_RANGE = 2.5;
    /** A range narrower than this is tried in its middle only. */
    private static final double NARROW_RANGE = 1.3;
    /** How far a microphone may be turned to put a null on a neighbour where the position does not say more. */
    static final double MOST_TURN_DEGREES = 30;
    private static final double SMALLEST_TURN_DEGREES = 8;
    private static final double TOO_BRIGHT_DB = 0.5;
    /** How far the sideways half of a mid-side pair is turned; no position turns a microphone as far. */
    static final double SIDE_DEGREES = 90;
    static final double NO_BOOM = 100;
    /** An ordinary light stand with its boom out; what a stand on hand weighs is for a plan to say. */
    private static final StandStability.Stand LIGHT_STAND = new StandStability.Stand(2.5, 0.35, 3);
    private static final double BOOM_KG = 0.5;
    /** Side of the plate a boundary microphone brings along when it does not lie on a floor or lid. */
    private static final double LOOSE_PLATE_M = 0.5;
    static final double NEVER_MIND = 1000;
    static final double NOWHERE_NEAR_DEGREES = 180;

    private final Scene scene;
    private final Predictor predictor;
    private final List<Habit> habits;
    /** Where a recipe puts the sideways half of a mid-side pair. */
    private final Set<String> sidePositions;
    private final BiPredicate<MicType, Position> worth;
    private final List<Placed> placed = new ArrayList<>(1024);

    Placements(Scene scene) {
        this(scene, (any, where) -> true);
    }

    private Placements(Scene scene, BiPredicate<MicType, Position> worth) {
        this.scene = scene;
        this.worth = worth;
        this.predictor = new Predictor(scene);
        this.habits = habits(scene);
        this.sidePositions = scene.setting().channels() < 2 || scene.setting().monoWanted() ? Set.of()
                : scene.setting().source().pairs().stream()
                        .filter(pair -> scene.catalogue().techniques().get(pair.technique()).arrangement() == Arrangement.MID_SIDE)
                        .map(pair -> pair.second().position()).collect(Collectors.toSet());
    }

    /** Whether it is the sideways half of a mid-side pair: it faces across, and its null faces the source. */
    static boolean isSide(Placed placed) {
        return placed.aimDegrees() == SIDE_DEGREES;
    }

    /** Whether it can be the only microphone of an option. */
    static boolean standsAlone(Placed placed) {
        return !isSide(placed) && !placed.position().notAlone();
    }

    /** The habits that hold as the source is played: those of the way it is played, where it has any, come in place of the general choices. */
    static List<Habit> habits(Scene scene) {
        List<String> ways = scene.question().ways();
        boolean special = habitsOfItsOwn(scene);
        return scene.setting().source().habits().stream().filter(habit -> habit.onlyWays().isEmpty()
                ? !special || habit.rank() == HabitRank.AVOID
                : habit.onlyWays().stream().anyMatch(ways::contains)).toList();
    }

    /** All of them, within the limits of the question and of what there is, in a stable order; their index is their place in the list. */
    static List<Placed> of(Scene scene) {
        return of(scene, (mic, position) -> true);
    }

    /** Those of them that are worth it, in the same order. */
    static List<Placed> of(Scene scene, BiPredicate<MicType, Position> worth) {
        Placements placements = new Placements(scene, worth);
        for (MicType mic : scene.catalogue().mics().values()) {
            if (mic.captures() && within(scene.question().limits(), mic) && mic.channels() <= scene.setting().channels()) {
                scene.supply().kinds(mic).forEach(placements::list);
            }
        }
        return placements.placed;
    }

    /** All of one type, whatever the limits of the question say, in a stable order. */
    static List<Placed> of(Scene scene, MicType mic) {
        Placements placements = new Placements(scene);
        if (mic.captures()) {
            placements.list(mic);
        }
        return placements.placed;
    }

    /** Nothing yet; what is {@link #set} is numbered in that order. */
    static Placements none(Scene scene) {
        return new Placements(scene);
    }

    /** One placement at any distance and aim, on the grid or off it. Whether the type fits there is for the caller to know. */
    Placed set(MicType mic, PatternData pattern, Position position, double distanceM, double aimDegrees) {
        return place(mic, pattern, position, distanceM, aimDegrees, habits.stream().filter(habit -> habit.micType().equals(mic.id())).toList());
    }

    /** The aims that are tried for a pattern at a position: straight, as far as the place allows, and as far as keeps the neighbours lowest. */
    List<Double> aimsDegrees(Position position, PatternData pattern, double distanceM) {
        List<Double> aims = new ArrayList<>(List.of(position.aimDegrees().low()));
        Double dull = turnFromTop(position, pattern, distanceM);
        if (dull != null) {
            aims.add(dull);
        }
        Double away = turnAway(position, pattern, distanceM);
        if (away != null && Math.abs(away - position.aimDegrees().low()) >= 1) {
            aims.add(away);
        }
        return aims;
    }

    /** Whether the families and types a question names leave this type in. Phantom and channels are judged elsewhere. */
    static boolean within(Limits limits, MicType mic) {
        return (limits.onlyFamilies().isEmpty() || limits.onlyFamilies().contains(mic.family()))
                && !limits.withoutFamilies().contains(mic.family())
                && (limits.onlyMicTypes().isEmpty() || limits.onlyMicTypes().contains(mic.id()))
                && !limits.withoutMicTypes().contains(mic.id());
    }

    /** Whether a type can be set up at a position at all: a lead takes a box, a contact a pickup, a clip a clip-on. */
    static boolean fits(MicType mic, Position position) {
        boolean named = position.onlyFamilies().contains(mic.family());
        return switch (mic.family()) {
            case PICKUP, LINE -> named;
            case BOUNDARY -> named || position.onlyFamilies().isEmpty()
                    && (position.mount() == Mount.FLOOR || position.mount() == Mount.INSIDE);
            default -> position.mount() != Mount.LEAD && position.mount() != Mount.CONTACT
                    && (named || position.onlyFamilies().isEmpty());
        };
    }

    private void list(MicType mic) {
        List<Habit> habits = this.habits.stream().filter(habit -> habit.micType().equals(mic.id())).toList();
        for (Position position : scene.setting().source().positions()) {
            if (!fits(mic, position) || !sensible(position) || !worth.test(mic, position)) {
                continue;
            }
            for (PatternData pattern : mic.patterns()) {
                list(mic, position, pattern, habits);
                if (pattern.pattern() == Pattern.FIGURE_8 && sidePositions.contains(position.id())) {
                    for (double distanceM : distances(position)) {
                        place(mic, pattern, position, distanceM, SIDE_DEGREES, habits);
                    }
                }
            }
        }
    }

    /** Whether the way it is played has habits of its own, so that general choices and pairs are not what the trade does. */
    static boolean habitsOfItsOwn(Scene scene) {
        return scene.setting().source().habits().stream()
                .anyMatch(habit -> habit.onlyWays().stream().anyMatch(scene.question().ways()::contains));
    }

    private boolean sensible(Position position) {
        return sensible(scene, position);
    }

    /** Whether the place makes sense as the source is played. */
    static boolean sensible(Scene scene, Position position) {
        return sensible(scene.question(), position);
    }

    static boolean sensible(Question question, Position position) {
        return position.onlyWays().isEmpty() || position.onlyWays().stream().anyMatch(question.ways()::contains);
    }

    static double[] distances(Position position) {
        Range range = position.distanceM();
        double ratio = range.high() / range.low();
        if (position.mount() == Mount.LEAD || position.mount() == Mount.CONTACT || ratio < NARROW_RANGE) {
            return new double[] {range.typical()};
        }
        return ratio < WIDE_RANGE
                ? new double[] {range.low(), range.high()}
                : new double[] {range.low(), range.typical(), range.high()};
    }

    /** Straight at the source; turned as far as the place allows, where there is top to lose; and as far as keeps the neighbours lowest. */
    private void list(MicType mic, Position position, PatternData pattern, List<Habit> habits) {
        double straight = position.aimDegrees().low();
        for (double distanceM : distances(position)) {
            Double away = turnAway(position, pattern, distanceM);
            Placed placed = place(mic, pattern, position, distanceM, straight, habits);
            Double dull = tooBright(placed) ? turnFromTop(position, pattern, distanceM) : null;
            if (dull != null) {
                place(mic, pattern, position, distanceM, dull, habits);
            }
            if (away != null && Math.abs(away - straight) >= 1) {
                place(mic, pattern, position, distanceM, away, habits);
            }
        }
    }

    /** Turning takes top away and nothing else is gained by it, so it is tried only where there is more top than wanted. */
    private boolean tooBright(Placed placed) {
        return Band.mean(placed.predicted().colourDb().minus(scene.wantedToneDb()), scene.weights(), Band.HZ_2000, Band.HZ_16000) > TOO_BRIGHT_DB;
    }

    /** As far as the place allows, to the side on which less is heard of the neighbours; null where it does not turn, or they come in on both sides. */
    private Double turnFromTop(Position position, PatternData pattern, double distanceM) {
        double degrees = position.aimDegrees().high();
        if (!turns(pattern) || degrees - position.aimDegrees().low() < SMALLEST_TURN_DEGREES) {
            return null;
        }
        Bleed bleed = predictor.bleed(position, distanceM);
        return bleed == null ? Double.valueOf(degrees) : bleed.quieterSide(pattern, degrees);
    }

    /** The turn that keeps the neighbours lowest; null where there is none, or none worth the wrist. */
    private Double turnAway(Position position, PatternData pattern, double distanceM) {
        Bleed bleed = turns(pattern) ? predictor.bleed(position, distanceM) : null;
        return bleed == null ? null : bleed.bestTurnDegrees(pattern, Math.max(MOST_TURN_DEGREES, position.aimDegrees().high()));
    }

    static boolean turns(PatternData pattern) {
        return switch (pattern.pattern()) {
            case OMNI, HALF_OMNI, HALF_CARDIOID, CONTACT, ELECTRICAL -> false;
            default -> true;
        };
    }

    /** The figures of the pattern that is set. */
    static PatternData pattern(Placed placed) {
        return placed.mic().patterns().stream().filter(data -> data.pattern() == placed.pattern()).findFirst().orElseThrow();
    }

    /** Where the pattern hears least at 1 kHz; null without a null worth aiming. */
    static Double nullDegrees(PatternData pattern) {
        if (pattern.coefficient() == null || !turns(pattern)) {
            return null;
        }
        var degrees = FirstOrder.nullDegrees(pattern.coefficient().at(Band.HZ_1000));
        return degrees.isPresent() ? degrees.getAsDouble() : null;
    }

    private static double nullMiss(PatternData pattern, Bleed bleed, double aimDegrees) {
        Double nullDegrees = nullDegrees(pattern);
        return nullDegrees == null || bleed == null ? NOWHERE_NEAR_DEGREES : Math.abs(bleed.loudest().offAxisDegrees(aimDegrees) - nullDegrees);
    }

    private Placed place(MicType mic, PatternData pattern, Position position, double distanceM, double aimDegrees, List<Habit> habits) {
        List<Danger> reached = position.dangers().isEmpty() ? List.of()
                : position.dangers().stream().filter(danger -> distanceM <= danger.withinM()).toList();
        Predictor.Prediction prediction = predictor.predict(mic, pattern, position, distanceM, aimDegrees);
        Habit habit = habit(habits, position, pattern, distanceM, prediction.padDb());
        Bleed bleed = predictor.bleed(position, distanceM);
        Kept kept = scene.remembered().of(mic, position);
        Placed made = new Placed(
                placed.size(),
                mic,
                pattern.pattern(),
                position,
                distanceM,
                aimDegrees,
                nullDegrees(pattern),
                nullMiss(pattern, bleed, aimDegrees),
                prediction.turnGainDb(),
                bleed == null ? 0 : bleed.loudestDbSpl(),
                bleed == null ? 0 : bleed.loudest().angleDegrees(),
                prediction.padDb(),
                habit == null ? null : habit.rank(),
                habit == null ? "" : habit.why(),
                reaches(reached, DangerKind.AIR_BLAST),
                reaches(reached, DangerKind.STICKS),
                reaches(reached, DangerKind.SPIT),
                reaches(reached, DangerKind.MOVING_PARTS),
                reaches(reached, DangerKind.VIBRATION),
                reached.isEmpty() ? "" : reached.stream().map(Danger::says).collect(Collectors.joining(" ")),
                position.keepClear().isEmpty() ? "" : position.keepClear().get(0).of(),
                position.keepClear().isEmpty() ? 0 : position.keepClear().get(0).distanceM(),
                loadRatio(mic),
                mic.currentMa() == null ? 0 : mic.currentMa().typical(),
                prediction.distanceRatio(),
                prediction.sourceAngleDegrees(),
                standRatio(mic, position),
                mic.family() == MicFamily.BOUNDARY && position.mount() != Mount.FLOOR ? BoundaryPlate.lowerHz(LOOSE_PLATE_M) : 0,
                kept == null ? 0 : kept.kept(),
                kept == null ? 0 : kept.tried(),
                kept == null ? 0 : kept.share(),
                kept == null ? "" : Remembered.where(kept),
                prediction.predicted());
        placed.add(made);
        return made;
    }

    /** The same placement again in another scene, with another unit of its type and another instrument at its place; only what follows from those is new. */
    Placed again(Placed old, MicType mic, Position position) {
        PatternData pattern = mic.patterns().get(old.mic().patterns().indexOf(pattern(old)));
        Predictor.Prediction prediction = predictor.predict(mic, pattern, position, old.distanceM(), old.aimDegrees());
        Habit habit = habit(habits.stream().filter(one -> one.micType().equals(mic.id())).toList(), position, pattern, old.distanceM(), prediction.padDb());
        Bleed bleed = predictor.bleed(position, old.distanceM());
        return new Placed(
                old.index(), mic, old.pattern(), position, old.distanceM(), old.aimDegrees(), old.nullDegrees(), old.nullMissDegrees(), prediction.turnGainDb(),
                bleed == null ? 0 : bleed.loudestDbSpl(), old.loudestNeighbourDegrees(),
                prediction.padDb(), habit == null ? null : habit.rank(), habit == null ? "" : habit.why(),
                old.inAirBlast(), old.inStickReach(), old.inSpit(), old.nearMovingParts(), old.vibrates(), old.dangerSays(),
                old.keepClear(), old.keepClearM(), old.loadRatio(), old.currentMa(),
                prediction.distanceRatio(), prediction.sourceAngleDegrees(), old.standRatio(), old.lowCornerHz(),
                old.keptTimes(), old.triedTimes(), old.keptShare(), old.keptWhere(), prediction.predicted());
    }

    private static boolean reaches(List<Danger> dangers, DangerKind kind) {
        for (Danger danger : dangers) {
            if (danger.kind() == kind) {
                return true;
            }
        }
        return false;
    }

    /** What the trade thinks of it: a warning counts before praise, first before second. */
    private static Habit habit(List<Habit> habits, Position position, PatternData pattern, double distanceM, double padDb) {
        Habit found = null;
        for (Habit habit : habits) {
            boolean holds = (habit.positions().isEmpty() || habit.positions().contains(position.id()))
                    && (habit.patterns().isEmpty() || habit.patterns().contains(pattern.pattern()))
                    && (habit.withinM() == null || distanceM <= habit.withinM())
                    && (habit.beyondM() == null || distanceM >= habit.beyondM())
                    && !(habit.unlessPadded() && padDb > 0);
            if (holds && (found == null || weight(habit) > weight(found))) {
                found = habit;
            }
        }
        return found;
    }

    private static int weight(Habit habit) {
        return habit.rank() == HabitRank.AVOID ? 3 : habit.rank() == HabitRank.FIRST ? 2 : 1;
    }

    private double loadRatio(MicType mic) {
        if (mic.inputOhm() != null) {
            boolean lead = scene.setting().source().signal() != Signal.ACOUSTIC && scene.setting().source().lead() != null;
            return lead ? mic.inputOhm().typical() / scene.setting().source().lead().sourceOhm() : NEVER_MIND;
        }
        if (mic.impedanceOhm() == null) {
            return NEVER_MIND;
        }
        boolean bareContact = mic.needsLoadOhm() != null && mic.needsLoadOhm() >= MicType.BOX_LOAD_OHM;
        return (bareContact ? Usual.ACTIVE_LINE_BOX_OHM : scene.setting().preampOhm()) / mic.impedanceOhm().typical();
    }

    private static double standRatio(MicType mic, Position position) {
        double reachM = position.mount().boomReachM();
        if (reachM == 0 || mic.massKg() == null) {
            return NO_BOOM;
        }
        return Math.min(NO_BOOM, StandStability.ratio(LIGHT_STAND, StandStability.Boom.BETWEEN_LEGS,
                new StandStability.Load(mic.massKg().typical(), reachM), new StandStability.Load(BOOM_KG, reachM / 2)));
    }
}
