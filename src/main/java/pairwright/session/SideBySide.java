package pairwright.session;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import pairwright.advice.OfferedMic;
import pairwright.locker.PhantomSwitch;
import pairwright.session.allocation.Bank;
import pairwright.session.allocation.Channel;
import pairwright.session.allocation.Feed;
import pairwright.session.allocation.PhantomNeed;

/**
 * Brings the lines of a section, and those of one seat, side by side in the order of the channels, by moving one line at a time to another channel, where two lines trade places if need be.
 * Nobody gets a channel that suits less, nothing comes onto a live bank that needs no power, no supply is asked for more than it has, and no point of the plan changes. It ends where no such
 * move brings more lines together, which need not be the most that can be.
 */
final class SideBySide {
    /** Who stands between is worse than who stands in another order, and that than a channel further down. */
    private static final long BETWEEN = 1_000_000;
    private static final long TURNED = 1_000;

    private final ChannelPool pool;
    private final Set<Integer> liveBanks;
    private final ChannelRank rank;
    private final List<Wired> wired = new ArrayList<>();
    /** Lines that belong together, by their index. */
    private final List<List<Integer>> groups = new ArrayList<>();
    private final List<Channel> at = new ArrayList<>();
    private final Map<Channel, Integer> there = new HashMap<>();
    private final Map<Channel, Integer> order = new LinkedHashMap<>();
    private final long[] drawnTenthMa;

    /** A line as it was plugged at first. */
    private record Wired(int seat, OfferedMic mic, Feed feed, Channel first) {
    }

    private SideBySide(ChannelPool pool, Set<Integer> liveBanks, List<SeatChoices.Way> ways, List<List<Channel>> channels) {
        this.pool = pool;
        this.liveBanks = liveBanks;
        this.rank = new ChannelRank(pool, liveBanks);
        this.drawnTenthMa = new long[pool.banks().size()];
        for (int bank = 0; bank < pool.banks().size(); bank++) {
            for (int channel = 0; channel < pool.banks().get(bank).channels().size(); channel++) {
                order.put(new Channel(bank, channel), order.size());
            }
        }
        for (int seat = 0; seat < ways.size(); seat++) {
            List<OfferedMic> mics = ChannelsHandedOut.mics(ways.get(seat));
            for (int feed = 0; feed < channels.get(seat).size(); feed++) {
                Channel on = channels.get(seat).get(feed);
                Feed of = ways.get(seat).choice().feeds().get(feed);
                there.put(on, wired.size());
                at.add(on);
                wired.add(new Wired(seat, mics.get(feed), of, on));
                drawnTenthMa[on.bank()] += of.drawTenthMa();
            }
        }
    }

    /**
     * For each seat the channel of each of its lines.
     *
     * @param sections groups of seats, by their index
     */
    static List<List<Channel>> of(ChannelPool pool, Set<Integer> liveBanks, List<SeatChoices.Way> ways, List<List<Channel>> channels, List<Set<Integer>> sections) {
        SideBySide lines = new SideBySide(pool, liveBanks, ways, channels);
        for (int seat = 0; seat < ways.size(); seat++) {
            lines.group(Set.of(seat));
        }
        sections.forEach(lines::group);
        while (lines.better()) {
            // one move after the other
        }
        return lines.channels(channels);
    }

    private void group(Set<Integer> seats) {
        List<Integer> lines = new ArrayList<>();
        for (int line = 0; line < wired.size(); line++) {
            if (seats.contains(wired.get(line).seat())) {
                lines.add(line);
            }
        }
        if (lines.size() > 1) {
            groups.add(lines);
        }
    }

    private List<List<Channel>> channels(List<List<Channel>> like) {
        List<List<Channel>> all = new ArrayList<>();
        int line = 0;
        for (List<Channel> seat : like) {
            all.add(List.copyOf(at.subList(line, line + seat.size())));
            line += seat.size();
        }
        return all;
    }

    /** The move that brings most together, if there is one. */
    private boolean better() {
        long least = cost();
        int best = -1;
        Channel bestTo = null;
        for (List<Integer> group : groups) {
            if (apart(group) == 0) {
                continue;
            }
            for (int line : group) {
                Channel from = at.get(line);
                for (Channel to : order.keySet()) {
                    if (move(line, to)) {
                        long cost = cost();
                        if (cost < least || cost == least && best >= 0 && order.get(to) < order.get(bestTo)) {
                            least = cost;
                            best = line;
                            bestTo = to;
                        }
                        move(line, from, to);
                    }
                }
            }
        }
        if (best >= 0) {
            move(best, at.get(best), bestTo);
        }
        return best >= 0;
    }

    /** Moves a line, and the one that is there to where it was, unless one of them must not. */
    private boolean move(int line, Channel to) {
        Channel from = at.get(line);
        Integer other = there.get(to);
        if (to.equals(from) || !may(line, to) || other != null && !may(other, from)) {
            return false;
        }
        move(line, from, to);
        if (supplied(from.bank()) && supplied(to.bank())) {
            return true;
        }
        move(line, to, from);
        return false;
    }

    private void move(int line, Channel one, Channel two) {
        Channel from = at.get(line);
        Channel to = from.equals(one) ? two : one;
        Integer other = there.get(to);
        put(line, to);
        if (other == null) {
            there.remove(from);
        } else {
            put(other, from);
        }
    }

    private void put(int line, Channel to) {
        drawnTenthMa[at.get(line).bank()] -= wired.get(line).feed().drawTenthMa();
        drawnTenthMa[to.bank()] += wired.get(line).feed().drawTenthMa();
        at.set(line, to);
        there.put(to, line);
    }

    private boolean supplied(int index) {
        Bank bank = pool.banks().get(index);
        return bank.supplyTenthMa() == null || drawnTenthMa[index] <= bank.supplyTenthMa();
    }

    private boolean may(int line, Channel to) {
        Wired one = wired.get(line);
        Bank bank = pool.banks().get(to.bank());
        Bank first = pool.banks().get(one.first().bank());
        boolean live = liveBanks.contains(to.bank());
        if (one.feed().phantom() == PhantomNeed.NEEDED) {
            // who holds a bank live stays in it
            boolean power = bank.phantom() == PhantomSwitch.CHANNEL || bank.phantom() == PhantomSwitch.BANK && live;
            return power && (first.phantom() != PhantomSwitch.BANK || first == bank) && one.feed().groups().contains(pool.groupAt(to))
                    && (bank.channelTenthMa() == null || one.feed().drawTenthMa() <= bank.channelTenthMa());
        }
        return rank.of(one.mic(), one.feed(), to) <= rank.of(one.mic(), one.feed(), one.first()) && (!live || liveBanks.contains(one.first().bank()));
    }

    private long cost() {
        long cost = 0;
        for (List<Integer> group : groups) {
            cost += apart(group);
        }
        for (Channel on : at) {
            cost += order.get(on);
        }
        return cost;
    }

    /** How many lines of others are between those of a group, and how many of its own stand in another order. */
    private long apart(List<Integer> group) {
        int first = Integer.MAX_VALUE;
        int last = 0;
        long turned = 0;
        int before = -1;
        for (int line : group) {
            int place = order.get(at.get(line));
            first = Math.min(first, place);
            last = Math.max(last, place);
            turned += place < before ? 1 : 0;
            before = place;
        }
        long between = -group.size();
        for (Channel on : at) {
            int place = order.get(on);
            between += place >= first && place <= last ? 1 : 0;
        }
        return between * BETWEEN + turned * TURNED;
    }
}
