package pairwright.session;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import pairwright.acoustics.Delay;
import pairwright.advice.Reaching;
import pairwright.model.Arrangement;
import pairwright.model.Catalogue;
import pairwright.model.Heard;
import pairwright.model.Position;
import pairwright.model.Together;

/**
 * Sources that two lines hear, one later than the other: the two microphones of a seat, and the nearest microphone of a seat with every
 * microphone of another that hears it so strongly that the sum of both would ripple by a decibel or more. For that both lines are taken to be
 * brought to the same level by their own sources, and only what comes straight counts: what the room adds arrives from everywhere and at every
 * time, and makes no comb. The side of a mid-side pair has its own source in its null, so there is no level it could be brought to; it is there
 * to hear beside, comes as loud as its middle is set, and is left out.
 */
public final class Arrivals {
    /** With less the sum is as good as the louder alone. */
    public static final double LEAST_RIPPLE_DB = 1;
    /** Beside the pairs of the seats no more than so many are told: the strongest. */
    public static final int MOST_BETWEEN_SEATS = 40;

    private static final double ONE_PLANE_M = 0.005;
    private static final double LEAST_DISTANCE_M = 0.05;

    private final Catalogue catalogue;
    private final Hearing hearing;

    private Arrivals(Hearing hearing, Catalogue catalogue) {
        this.hearing = hearing;
        this.catalogue = catalogue;
    }

    /** @param catalogue as it is, nothing of it altered for any seat */
    public static Arrivals of(LineUp lineUp, Catalogue catalogue) {
        return new Arrivals(Hearing.of(lineUp, catalogue), catalogue);
    }

    /**
     * Pairs of the seats first, then what comes from seat to seat; of each the strongest ripple first. What to do is as things usually are; the
     * rules of plans may know better.
     *
     * @param served what each seat gets
     * @param lines of the same plan
     */
    public List<Arrival> of(List<Plan.Served> served, List<Line> lines) {
        Comparator<Arrival> strongest = Comparator.comparingDouble(Arrival::rippleDb).reversed()
                .thenComparing(arrival -> arrival.lines().get(0)).thenComparing(arrival -> arrival.lines().get(1));
        List<Arrival> own = served.stream().map(one -> own(one, lines)).filter(Objects::nonNull).sorted(strongest).toList();
        List<Arrival> between = between(lines).stream().sorted(strongest).limit(MOST_BETWEEN_SEATS).toList();
        return Stream.concat(own.stream(), between.stream()).toList();
    }

    /** The two lines of one seat, by the numbers of its option; null for a single one. */
    private Arrival own(Plan.Served served, List<Line> lines) {
        Together together = served.option().together();
        List<Line> two = lines.stream().filter(line -> line.seat().equals(served.seat())).sorted(Comparator.comparingInt(Line::mic)).toList();
        if (together == null || two.size() != 2) {
            return null;
        }
        Line first = two.get(0);
        Line second = two.get(1);
        boolean inOrder = first.placement().distanceM() <= second.placement().distanceM();
        double pathM = together.delayMs() / 1000 * Delay.SPEED_OF_SOUND_M_PER_S;
        return new Arrival(served.seat(), first.source(), inOrder ? numbers(first, second) : numbers(second, first), true, pathM, together.delayMs(),
                together.firstNullHz(), inOrder ? together.levelDifferenceDb() : -together.levelDifferenceDb(), together.firstNullHz() == null ? 0 : together.rippleDb(), together.distanceRatio(),
                first.placement().invertPolarity() != second.placement().invertPolarity(), treat(served.option().technique(), pathM), List.of());
    }

    /** Two that are to differ in time are left; two that hear one thing from different distances are brought together. */
    private Arrival.Treat treat(String technique, double pathM) {
        Arrangement arrangement = catalogue.techniques().get(technique).arrangement();
        boolean meant = switch (arrangement) {
            case COINCIDENT, NEAR_COINCIDENT, SPACED, MID_SIDE, TWO_ENDS, NULLS_APART -> true;
            case SAME_SPOT, TWO_SIDES, INSIDE_AND_OUTSIDE, NEAR_AND_FAR, TWO_SPOTS, MIC_AND_LINE -> false;
        };
        return meant || pathM < ONE_PLANE_M ? Arrival.Treat.LEAVE : Arrival.Treat.ALIGN;
    }

    private List<Arrival> between(List<Line> lines) {
        List<Arrival> all = new ArrayList<>();
        List<Line> forward = lines.stream().filter(line -> !line.side()).toList();
        for (Listening there : hearing.listening(forward)) {
            for (Reaching other : there.others()) {
                forward.stream().filter(line -> line.seat().equals(other.seat())).min(Comparator.comparingDouble(this::pathM).thenComparing(Line::number))
                        .map(own -> between(own, there, other)).filter(arrival -> arrival.rippleDb() >= LEAST_RIPPLE_DB).ifPresent(all::add);
            }
        }
        return all;
    }

    private Arrival between(Line own, Listening there, Reaching other) {
        Reaching straight = new Reaching(other.seat(), other.source(), other.distanceM(), other.angleDegrees(), other.acrossShare(),
                other.directOctavesDbSpl(), null, other.screenDb());
        Heard heard = there.alone(straight).each(there.aimDegrees()).get(0);
        double nearM = pathM(own);
        double laterM = other.distanceM() - nearM;
        double pathM = Math.abs(laterM);
        double rippleDb = Delay.practicalRippleDb(heard.separationDb());
        double oneM = Math.max(LEAST_DISTANCE_M, nearM);
        return new Arrival(other.seat(), other.source().id(), laterM >= 0 ? numbers(own, there.line()) : numbers(there.line(), own), false, pathM,
                Delay.timeMs(pathM), pathM < ONE_PLANE_M ? null : Delay.nullHz(pathM, 1), laterM >= 0 ? heard.separationDb() : -heard.separationDb(), rippleDb,
                Math.max(oneM, other.distanceM()) / Math.min(oneM, other.distanceM()), inverted(own) != there.line().placement().invertPolarity(),
                Arrival.Treat.LEAVE, List.of());
    }

    /** How far the sound of a seat has come to a line of its own; 0 to a lead or a contact. */
    private double pathM(Line own) {
        Double deeperM = position(own).pathM();
        return Listening.inTheAir(own.placement()) ? own.placement().distanceM() + (deeperM == null ? 0 : deeperM) : 0;
    }

    /** Whether a line has its own source with the polarity of the other side, as the channel is set. */
    private boolean inverted(Line own) {
        return position(own).opposite() != own.placement().invertPolarity();
    }

    private Position position(Line line) {
        return Listening.position(catalogue.sources().get(line.source()), line.placement().position());
    }

    private static List<Integer> numbers(Line first, Line second) {
        return List.of(first.number(), second.number());
    }
}
