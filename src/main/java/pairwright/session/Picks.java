package pairwright.session;

import java.util.Comparator;
import java.util.List;
import pairwright.model.Pattern;

/**
 * A plan as it is set up, without anything that can be computed: what stands at each seat, on which unit, channel and stand. What is kept of a
 * plan, and what a change starts from.
 *
 * @param seats those that are served
 */
public record Picks(List<AtSeat> seats) {
    public Picks {
        seats = List.copyOf(seats);
    }

    /**
     * What stands at one seat.
     *
     * @param seat id
     * @param technique single, or the id of a technique; null for not known
     * @param mics in the order of the option
     */
    public record AtSeat(String seat, String technique, List<Mic> mics) {
        public AtSeat {
            mics = List.copyOf(mics);
        }
    }

    /**
     * One microphone as it stands. Null for what is not known or not counted.
     *
     * @param micType id
     * @param pattern that is set
     * @param position id at the source
     * @param distanceM from the sounding surface
     * @param aimDegrees turned off the line to the source
     * @param unit id
     * @param channel id
     * @param stand id
     * @param booster id
     * @param box id of a line box behind it
     * @param pad id of a pad in the line
     */
    public record Mic(String micType, Pattern pattern, String position, Double distanceM, Double aimDegrees, String unit, String channel, String stand,
            String booster, String box, String pad) {
    }

    /** What a plan says. */
    public static Picks of(Plan plan) {
        return new Picks(plan.served().stream().map(served -> new AtSeat(served.seat(), served.option().technique(),
                plan.linesOf(served.seat()).stream().sorted(Comparator.comparingInt(Line::mic)).map(line -> new Mic(
                        line.placement().micType(), line.placement().pattern(), line.placement().position(), line.placement().distanceM(),
                        line.placement().aimDegrees(), line.unit() == null ? null : line.unit().id(), line.channel(), line.stand(), line.booster(),
                        line.between().boxed() ? line.between().box().unit() : null, line.between().pad()))
                        .toList())).toList());
    }
}
