package pairwright.session;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pairwright.model.Mount;
import pairwright.model.Signal;
import pairwright.model.Source;
import pairwright.session.allocation.Allocator;

/** The way out where line boxes are short and a channel has an instrument input: an instrument goes into it by its own lead, and the others are planned without the two. */
final class InstrumentInputs {
    /** Less shorts a pickup; the rules of loading rule a box out there as well. */
    private static final double LEAST_LOAD_RATIO = 1;
    /** Dearer than to borrow a box, cheaper than to go without somebody. */
    private static final double PRICE_POINTS = 3;

    private InstrumentInputs() {
    }

    /** Whether a seat is heard by its lead alone. */
    static boolean byLead(AtSeat at) {
        return at.source().positions().stream().allMatch(position -> position.mount() == Mount.LEAD);
    }

    /** One for each seat that could, where everybody else is served then. */
    static List<Planned.WayOut> waysOut(LineUp lineUp, Layout layout, Allocator allocator) {
        List<Planned.WayOut> ways = new ArrayList<>();
        SeatNames names = SeatNames.of(lineUp);
        for (AtSeat at : layout.seats()) {
            Optional<Gear.Channel> input = byLead(at) ? layout.resources().channels().first(channel -> takes(channel, at.source())) : Optional.empty();
            input.flatMap(channel -> others(lineUp, layout, at, channel, allocator).map(score -> new Planned.WayOut("input", "Put " + names.of(at.seat().id())
                    + " straight into the instrument input of " + channel.label() + ", without a line box; the score is that of all the others.", PRICE_POINTS, score))).ifPresent(ways::add);
        }
        return ways;
    }

    /** What the plan of all others is worth, without that channel; none where they have no plan. */
    private static Optional<Double> others(LineUp lineUp, Layout layout, AtSeat out, Gear.Channel channel, Allocator allocator) {
        return layout.seats().size() == 1 ? Optional.of(0.0) : BestPlan.of(layout.without(lineUp, out, channel), allocator).map(plan -> plan.solution().centipoints() / 100.0);
    }

    /** Line level is too strong for an instrument input as a rule. */
    private static boolean takes(Gear.Channel channel, Source source) {
        return source.lead() != null && source.signal() != Signal.LINE && ChannelPool.instrument(channel)
                && channel.inputOhm() >= LEAST_LOAD_RATIO * source.lead().sourceOhm();
    }
}
