package pairwright.session;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import pairwright.acoustics.StandStability;
import pairwright.model.Mount;

/** The stands there are, in classes of equal ones, and what each class can hold. What is not known of a stand is taken as enough. */
final class Stands {
    /** A boom arm without what it carries. */
    private static final double BOOM_KG = 0.5;
    /** A bar that holds two microphones on one stand. */
    static final double BAR_KG = 0.4;
    /** As much as is ever told: a load that lies within the feet tips nothing, and infinity is no number to write down. */
    private static final double MOST_RATIO = 100;

    private final List<Class> classes;
    /** No higher than this a microphone may hang on a low stand. */
    private final double lowM;

    /**
     * Stands that are alike.
     *
     * @param index from 0
     * @param like what each is like
     * @param stands the stands, in the order they are handed out
     */
    record Class(int index, Gear.Stand like, List<Gear.Stand> stands) {
    }

    /**
     * What is to be held.
     *
     * @param mount how
     * @param heightM above the floor; null where it does not matter
     * @param loadKg of the microphones and what holds them together
     */
    record Need(Mount mount, Double heightM, double loadKg) {
    }

    /**
     * @param stands null where they are not counted
     * @param lowM no higher than this a microphone may hang on a low stand
     */
    Stands(List<Gear.Stand> stands, double lowM) {
        this.lowM = lowM;
        Map<Gear.Stand, List<Gear.Stand>> alike = new LinkedHashMap<>();
        if (stands != null) {
            stands.forEach(stand -> alike.computeIfAbsent(new Gear.Stand(null, null, stand.kind(), stand.massKg(), stand.reachM(), stand.footRadiusM(),
                    stand.legs(), stand.heightM()), any -> new ArrayList<>()).add(stand));
        }
        List<Class> found = new ArrayList<>();
        alike.forEach((like, of) -> found.add(new Class(found.size(), like, List.copyOf(of))));
        this.classes = stands == null ? null : List.copyOf(found);
    }

    boolean counted() {
        return classes != null;
    }

    List<Class> classes() {
        return counted() ? classes : List.of();
    }

    /** The classes that hold it safely. */
    List<Class> holding(Need need) {
        return classes().stream().filter(one -> holds(one.like(), need)).toList();
    }

    private boolean holds(Gear.Stand stand, Need need) {
        if (need.heightM() != null && (stand.heightM() != null && need.heightM() > stand.heightM() || stand.kind() == StandKind.SHORT && need.heightM() > lowM)) {
            return false;
        }
        double reachM = need.mount().boomReachM();
        boolean kind = switch (need.mount()) {
            case OVERHEAD -> stand.kind() == StandKind.OVERHEAD;
            case BOOM -> stand.kind() == StandKind.OVERHEAD || stand.kind() == StandKind.BOOM || stand.kind() == StandKind.SHORT && (stand.reachM() == null || stand.reachM() >= reachM);
            default -> true;
        };
        Double ratio = ratio(stand, need);
        return kind && (reachM == 0 || stand.reachM() == null || stand.reachM() >= reachM) && (ratio == null || ratio >= StandStability.SAFE_RATIO);
    }

    /** Resisting over overturning moment of a stand with its arm over a leg, as it is to be set up, {@value #MOST_RATIO} at the most; null where it is not known or nothing leans. */
    static Double ratio(Gear.Stand stand, Need need) {
        double reachM = need.mount().boomReachM();
        return reachM == 0 || stand.massKg() == null || stand.footRadiusM() == null || stand.legs() == null ? null
                : Math.min(MOST_RATIO, StandStability.ratio(new StandStability.Stand(stand.massKg(), stand.footRadiusM(), stand.legs()), StandStability.Boom.OVER_LEG,
                        new StandStability.Load(need.loadKg(), reachM), new StandStability.Load(BOOM_KG, reachM / 2)));
    }

    /** What kind of stand it takes at least. */
    StandKind kind(Need need) {
        return switch (need.mount()) {
            case OVERHEAD -> StandKind.OVERHEAD;
            case BOOM -> StandKind.BOOM;
            default -> need.heightM() != null && need.heightM() <= lowM ? StandKind.SHORT : StandKind.STRAIGHT;
        };
    }
}
