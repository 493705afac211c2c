package pairwright.session.allocation;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import pairwright.locker.PhantomSwitch;

/**
 * Moves feeds to other channels, one at a time or two that trade places, as long as that leaves more of them where they are plugged already, or the feeds of a seat in fewer banks. It ends
 * where no such move is left, which need not be the tidiest there is. Then what is not plugged already goes, in the order of the seats, to the first channels of its bank that are free.
 */
final class Tidying {
    private static final int REPLUGGED = 1_000_000;
    private static final int APART = 1;

    private final Problem problem;
    private final List<Choice> choices;
    private final Before before;
    private final Set<Integer> live;
    private final Channel[][] at;
    private final Map<Channel, int[]> feedAt = new HashMap<>();
    private final long[] drawnTenthMa;

    Tidying(Problem problem, List<Choice> choices, Before before, Set<Integer> live, Channel[][] at) {
        this.problem = problem;
        this.choices = choices;
        this.before = before;
        this.live = live;
        this.at = at;
        drawnTenthMa = new long[problem.banks().size()];
        forEachFeed((seat, entry) -> {
            feedAt.put(at[seat][entry], new int[] {seat, entry});
            drawnTenthMa[at[seat][entry].bank()] += feed(seat, entry).drawTenthMa();
        });
    }

    void tidy() {
        boolean moved = true;
        while (moved) {
            moved = false;
            for (int seat = 0; seat < at.length; seat++) {
                for (int entry = 0; entry < at[seat].length; entry++) {
                    moved |= movedToBetter(seat, entry);
                }
            }
        }
        order();
    }

    private void order() {
        Set<Channel> taken = new HashSet<>();
        forEachFeed((seat, entry) -> {
            if (stays(seat, entry)) {
                taken.add(at[seat][entry]);
            }
        });
        forEachFeed((seat, entry) -> {
            if (!stays(seat, entry)) {
                List<String> groups = problem.banks().get(at[seat][entry].bank()).channels();
                int index = 0;
                while (!groups.get(index).equals(groups.get(at[seat][entry].channel())) || !taken.add(new Channel(at[seat][entry].bank(), index))) {
                    index++; // there are as many as are used, so one is found
                }
                at[seat][entry] = new Channel(at[seat][entry].bank(), index);
            }
        });
    }

    private interface ForFeed {
        void take(int seat, int entry);
    }

    private void forEachFeed(ForFeed each) {
        for (int seat = 0; seat < at.length; seat++) {
            for (int entry = 0; entry < at[seat].length; entry++) {
                each.take(seat, entry);
            }
        }
    }

    private boolean movedToBetter(int seat, int entry) {
        for (int bank = 0; bank < problem.banks().size(); bank++) {
            for (int index = 0; index < problem.banks().get(bank).channels().size(); index++) {
                Channel to = new Channel(bank, index);
                int[] there = feedAt.get(to);
                if (!to.equals(at[seat][entry]) && (there == null || there[0] != seat) && isBetter(seat, entry, to, there)) {
                    return true;
                }
            }
        }
        return false;
    }

    /** Moves a feed, and the one that is there to where this was; takes it back unless that is allowed and costs less. */
    private boolean isBetter(int seat, int entry, Channel to, int[] there) {
        Channel from = at[seat][entry];
        if (!suits(feed(seat, entry), to) || there != null && !suits(feed(there[0], there[1]), from)) {
            return false;
        }
        long costs = cost(seat) + (there == null ? 0 : cost(there[0]));
        place(seat, entry, to, there, from);
        if (fits(from.bank()) && fits(to.bank()) && cost(seat) + (there == null ? 0 : cost(there[0])) < costs) {
            return true;
        }
        place(seat, entry, from, there, to);
        return false;
    }

    private void place(int seat, int entry, Channel to, int[] other, Channel otherTo) {
        put(seat, entry, otherTo, to);
        feedAt.remove(otherTo);
        if (other != null) {
            put(other[0], other[1], to, otherTo);
            feedAt.put(otherTo, other);
        }
        feedAt.put(to, new int[] {seat, entry});
    }

    private void put(int seat, int entry, Channel from, Channel to) {
        drawnTenthMa[from.bank()] -= feed(seat, entry).drawTenthMa();
        drawnTenthMa[to.bank()] += feed(seat, entry).drawTenthMa();
        at[seat][entry] = to;
    }

    private boolean suits(Feed feed, Channel channel) {
        Bank bank = problem.banks().get(channel.bank());
        boolean power = switch (bank.phantom()) {
            case NONE -> feed.phantom() != PhantomNeed.NEEDED;
            case CHANNEL -> true;
            case BANK -> feed.phantom() == PhantomNeed.ANY || live.contains(channel.bank()) == (feed.phantom() == PhantomNeed.NEEDED);
        };
        return power && feed.groups().contains(bank.channels().get(channel.channel())) && (bank.channelTenthMa() == null || feed.drawTenthMa() <= bank.channelTenthMa());
    }

    private boolean fits(int index) {
        Bank bank = problem.banks().get(index);
        return bank.phantom() == PhantomSwitch.NONE || bank.supplyTenthMa() == null || drawnTenthMa[index] <= bank.supplyTenthMa();
    }

    private Feed feed(int seat, int entry) {
        return choices.get(seat).feeds().get(entry);
    }

    private boolean stays(int seat, int entry) {
        Channel channel = at[seat][entry];
        return before.isAt(problem.seats().get(seat).id(), entry, problem.banks().get(channel.bank()).name(), channel.channel());
    }

    /** What is untidy about a seat. */
    private long cost(int seat) {
        long cost = 0;
        for (int entry = 0; entry < at[seat].length; entry++) {
            cost += stays(seat, entry) ? 0 : REPLUGGED;
            cost += entry > 0 && at[seat][entry].bank() != at[seat][entry - 1].bank() ? APART : 0;
        }
        return cost;
    }
}
