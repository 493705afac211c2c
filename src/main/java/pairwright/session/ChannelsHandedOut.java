package pairwright.session;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import pairwright.advice.OfferedMic;
import pairwright.session.allocation.Channel;
import pairwright.session.allocation.Choice;
import pairwright.session.allocation.Feed;
import pairwright.session.allocation.PhantomNeed;
import pairwright.session.allocation.Solution;

/**
 * Which of the channels that do for it a microphone gets. What needs phantom power stays where the search put it, so that no supply is asked for more; all others trade places and take what is
 * empty, the passive ribbons first: where there cannot be phantom power, then with the best load, then with enough gain left, then with the least noise, then not in a bank with one switch.
 * Of ways that are as good the one that moves fewest is taken. It is the best of all ways (an assignment of least cost), and no point of the plan changes by it.
 * Where some of it stands, what is plugged stays; what comes new to a seat rather takes the channel that its player had, since that leaves the lead where it is.
 */
final class ChannelsHandedOut {
    /** Costs of so many feeds add up without one level reaching into the next. */
    private static final int MOST_FEEDS = 64;

    /** @param rather of channels that are as good: where it is, or where the seat was plugged before */
    private record Slot(int seat, int feed, OfferedMic mic, Feed of, Channel rather) {
    }

    private final ChannelPool pool;
    private final ChannelRank rank;
    private final Solution solution;
    private final List<Slot> slots = new ArrayList<>();
    private final List<Channel> channels = new ArrayList<>();

    private ChannelsHandedOut(ChannelPool pool, Solution solution) {
        this.pool = pool;
        this.rank = new ChannelRank(pool, solution.liveBanks());
        this.solution = solution;
    }

    /**
     * For each seat the channel of each feed.
     *
     * @param before for each seat the channels on which its feeds were plugged before; none where it was not
     */
    static List<List<Channel>> of(ChannelPool pool, List<SeatChoices.Way> ways, Solution solution, List<List<Channel>> before) {
        return new ChannelsHandedOut(pool, solution).handedOut(ways, before);
    }

    private List<List<Channel>> handedOut(List<SeatChoices.Way> ways, List<List<Channel>> before) {
        List<List<Channel>> all = new ArrayList<>();
        List<Channel> kept = new ArrayList<>();
        for (int seat = 0; seat < ways.size(); seat++) {
            all.add(new ArrayList<>(solution.channels().get(seat)));
            Choice choice = ways.get(seat).choice();
            List<OfferedMic> mics = mics(ways.get(seat));
            for (int feed = 0; feed < choice.feeds().size(); feed++) {
                Channel on = all.get(seat).get(feed);
                Channel was = feed < before.get(seat).size() ? before.get(seat).get(feed) : null;
                if (choice.feeds().get(feed).phantom() == PhantomNeed.NEEDED || on.equals(was)) {
                    kept.add(on);
                } else {
                    slots.add(new Slot(seat, feed, mics.get(feed), choice.feeds().get(feed), was == null ? on : was));
                }
            }
        }
        if (slots.isEmpty() || slots.size() > MOST_FEEDS) {
            return all;
        }
        for (int bank = 0; bank < pool.banks().size(); bank++) {
            for (int channel = 0; channel < pool.banks().get(bank).channels().size(); channel++) {
                if (!kept.contains(new Channel(bank, channel))) {
                    channels.add(new Channel(bank, channel));
                }
            }
        }
        int[] at = assigned();
        for (int i = 0; i < at.length; i++) {
            all.get(slots.get(i).seat()).set(slots.get(i).feed(), channels.get(at[i]));
        }
        return all;
    }

    /** The microphone of each feed. */
    static List<OfferedMic> mics(SeatChoices.Way way) {
        List<OfferedMic> mics = new ArrayList<>();
        for (int mic = 0; mic < way.courses().size(); mic++) {
            for (int feed = 0; feed < way.courses().get(mic).feeds().size(); feed++) {
                mics.add(way.offer().mics().get(mic));
            }
        }
        return mics;
    }

    private long cost(Slot slot, Channel to) {
        long of = rank.of(slot.mic(), slot.of(), to);
        return of == ChannelRank.FORBIDDEN ? of : of << 7 | (to.equals(slot.rather()) ? 0 : 1);
    }

    /** For each feed its channel, at the least cost in all: shortest augmenting paths, one feed after the other. */
    private int[] assigned() {
        int rows = slots.size();
        int columns = channels.size();
        long[] rowPrice = new long[rows + 1];
        long[] columnPrice = new long[columns + 1];
        int[] rowAt = new int[columns + 1];
        for (int row = 1; row <= rows; row++) {
            int[] from = new int[columns + 1];
            long[] least = new long[columns + 1];
            Arrays.fill(least, Long.MAX_VALUE);
            boolean[] reached = new boolean[columns + 1];
            int column = 0;
            rowAt[0] = row;
            while (rowAt[column] != 0) {
                reached[column] = true;
                int of = rowAt[column];
                int next = 0;
                long shortest = Long.MAX_VALUE;
                for (int to = 1; to <= columns; to++) {
                    if (!reached[to]) {
                        long cost = cost(slots.get(of - 1), channels.get(to - 1)) - rowPrice[of] - columnPrice[to];
                        if (cost < least[to]) {
                            least[to] = cost;
                            from[to] = column;
                        }
                        if (least[to] < shortest) {
                            shortest = least[to];
                            next = to;
                        }
                    }
                }
                for (int to = 0; to <= columns; to++) {
                    if (reached[to]) {
                        rowPrice[rowAt[to]] += shortest;
                        columnPrice[to] -= shortest;
                    } else if (least[to] != Long.MAX_VALUE) {
                        least[to] -= shortest;
                    }
                }
                column = next;
            }
            while (column != 0) {
                rowAt[column] = rowAt[from[column]];
                column = from[column];
            }
        }
        int[] at = new int[rows];
        for (int column = 1; column <= columns; column++) {
            if (rowAt[column] != 0) {
                at[rowAt[column] - 1] = column - 1;
            }
        }
        return at;
    }
}
