package pairwright.session.allocation;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import pairwright.locker.PhantomSwitch;

/**
 * Something of which there could be more than there is.
 *
 * @param name of the cap, the group of channels, or the bank whose supply it is
 */
record Extra(Shortage.Kind kind, String name) implements Comparable<Extra> {
    @Override
    public int compareTo(Extra other) {
        return Comparator.comparing(Extra::kind).thenComparing(Extra::name).compare(this, other);
    }

    /** How much of it there is: a number, or tenths of a milliampere. */
    int there(Problem problem) {
        return switch (kind) {
            case CAP -> problem.caps().stream().filter(cap -> cap.name().equals(name)).findFirst().orElseThrow().there();
            case CHANNELS -> (int) problem.banks().stream().flatMap(bank -> bank.channels().stream()).filter(name::equals).count();
            case CURRENT -> problem.banks().stream().filter(bank -> bank.name().equals(name)).findFirst().orElseThrow().supplyTenthMa();
        };
    }

    /** What one more costs; 0 where none is to be had. */
    int price(Problem problem) {
        return switch (kind) {
            case CAP -> problem.caps().stream().filter(cap -> cap.name().equals(name)).findFirst().orElseThrow().price();
            case CHANNELS -> problem.channelPrices().getOrDefault(name, 0);
            case CURRENT -> 0;
        };
    }

    /** The most of each thing that any plan could take; no entry for what none takes. */
    static Map<Extra, Integer> most(Problem problem) {
        Map<Extra, Integer> most = new TreeMap<>();
        for (Seat seat : problem.seats()) {
            Map<Extra, Integer> ofSeat = new TreeMap<>();
            for (Choice choice : seat.choices()) {
                taken(problem, choice).forEach((extra, count) -> ofSeat.merge(extra, count, Math::max));
            }
            ofSeat.forEach((extra, count) -> most.merge(extra, count, Integer::sum));
        }
        return most;
    }

    private static Map<Extra, Integer> taken(Problem problem, Choice choice) {
        Map<Extra, Integer> taken = new TreeMap<>();
        choice.takes().forEach((cap, count) -> taken.merge(new Extra(Shortage.Kind.CAP, cap), count, Integer::sum));
        choice.anyOf().forEach(anyOf -> anyOf.forEach(cap -> taken.merge(new Extra(Shortage.Kind.CAP, cap), 1, Integer::sum)));
        choice.feeds().forEach(feed -> feed.groups().forEach(group -> taken.merge(new Extra(Shortage.Kind.CHANNELS, group), 1, Integer::sum)));
        int drawnTenthMa = choice.feeds().stream().mapToInt(Feed::drawTenthMa).sum();
        if (drawnTenthMa > 0) {
            problem.banks().stream().filter(bank -> bank.supplyTenthMa() != null && bank.phantom() != PhantomSwitch.NONE)
                    .forEach(bank -> taken.put(new Extra(Shortage.Kind.CURRENT, bank.name()), drawnTenthMa));
        }
        return taken;
    }

    /** The problem with more of some things: more of a cap, and for each channel a bank of its own. */
    static Problem with(Problem problem, Map<Extra, Integer> more) {
        List<Cap> caps = problem.caps().stream()
                .map(cap -> new Cap(cap.name(), cap.there() + more.getOrDefault(new Extra(Shortage.Kind.CAP, cap.name()), 0), cap.price())).toList();
        List<Bank> banks = new ArrayList<>(problem.banks());
        new TreeMap<>(more).forEach((extra, count) -> {
            for (int number = 1; extra.kind() == Shortage.Kind.CHANNELS && number <= count; number++) {
                banks.add(new Bank("borrowed " + extra.name() + " " + number, PhantomSwitch.CHANNEL, List.of(extra.name()), null, null));
            }
        });
        return new Problem(problem.seats(), caps, banks, problem.pairs(), problem.kept(), problem.channelPrices());
    }
}
