package pairwright.session.allocation;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.Set;
import pairwright.locker.PhantomSwitch;

/** Every combination of choices, and for each every way to plug it: only for very small problems. */
final class Exhaustive {
    private final Problem problem;
    private OptionalLong best = OptionalLong.empty();

    private Exhaustive(Problem problem) {
        this.problem = problem;
    }

    /** What the best plan is worth; empty where there is none. */
    static OptionalLong optimum(Problem problem) {
        Exhaustive search = new Exhaustive(problem);
        search.choose(new ArrayList<>());
        return search.best;
    }

    private void choose(List<Integer> chosen) {
        int seat = chosen.size();
        if (seat == problem.seats().size()) {
            long worth = worth(chosen);
            if ((best.isEmpty() || worth > best.getAsLong()) && isPossible(chosen)) {
                best = OptionalLong.of(worth);
            }
            return;
        }
        for (int choice = 0; choice < problem.seats().get(seat).choices().size(); choice++) {
            Choice.Use use = problem.seats().get(seat).choices().get(choice).use();
            if (use == Choice.Use.FULL || use == Choice.Use.OUT && !problem.seats().get(seat).must()) {
                chosen.add(choice);
                choose(chosen);
                chosen.remove(seat);
            }
        }
    }

    private long worth(List<Integer> chosen) {
        long worth = 0;
        for (int seat = 0; seat < chosen.size(); seat++) {
            worth += problem.seats().get(seat).choices().get(chosen.get(seat)).centipoints();
        }
        for (Kept kept : problem.kept()) {
            worth += chosen.get(kept.seat()) == kept.choice() ? kept.centipoints() : 0;
        }
        for (PairTerm pair : problem.pairs()) {
            for (PairTerm.Together both : pair.together()) {
                worth += chosen.get(pair.first()) == both.first() && chosen.get(pair.second()) == both.second() ? both.centipoints() : 0;
            }
        }
        return worth;
    }

    private boolean isPossible(List<Integer> chosen) {
        Map<String, Integer> left = new HashMap<>();
        problem.caps().forEach(cap -> left.put(cap.name(), cap.there()));
        List<Feed> feeds = new ArrayList<>();
        List<Set<String>> pools = new ArrayList<>();
        for (int seat = 0; seat < chosen.size(); seat++) {
            Choice choice = problem.seats().get(seat).choices().get(chosen.get(seat));
            choice.takes().forEach((cap, count) -> left.merge(cap, -count, Integer::sum));
            feeds.addAll(choice.feeds());
            pools.addAll(choice.anyOf());
        }
        if (left.values().stream().anyMatch(count -> count < 0) || !canPool(pools, 0, left)) {
            return false;
        }
        for (int switches = 0; switches < 1 << problem.banks().size(); switches++) {
            if (canPlug(feeds, 0, new HashSet<>(), new long[problem.banks().size()], switches)) {
                return true;
            }
        }
        return false;
    }

    private static boolean canPool(List<Set<String>> pools, int next, Map<String, Integer> left) {
        if (next == pools.size()) {
            return true;
        }
        for (String cap : pools.get(next)) {
            if (left.get(cap) > 0) {
                left.merge(cap, -1, Integer::sum);
                boolean can = canPool(pools, next + 1, left);
                left.merge(cap, 1, Integer::sum);
                if (can) {
                    return true;
                }
            }
        }
        return false;
    }

    private boolean canPlug(List<Feed> feeds, int next, Set<Channel> used, long[] drawnTenthMa, int switches) {
        if (next == feeds.size()) {
            return true;
        }
        Feed feed = feeds.get(next);
        for (int bank = 0; bank < problem.banks().size(); bank++) {
            Set<String> tried = new HashSet<>(); // one free channel of a group is as good as another
            for (int index = 0; index < problem.banks().get(bank).channels().size(); index++) {
                Channel channel = new Channel(bank, index);
                if (!used.contains(channel) && tried.add(problem.banks().get(bank).channels().get(index)) && suits(feed, channel, drawnTenthMa[bank], switches)) {
                    used.add(channel);
                    drawnTenthMa[bank] += feed.drawTenthMa();
                    boolean can = canPlug(feeds, next + 1, used, drawnTenthMa, switches);
                    drawnTenthMa[bank] -= feed.drawTenthMa();
                    used.remove(channel);
                    if (can) {
                        return true;
                    }
                }
            }
        }
        return false;
    }

    private boolean suits(Feed feed, Channel channel, long drawnTenthMa, int switches) {
        Bank bank = problem.banks().get(channel.bank());
        boolean live = (switches >> channel.bank() & 1) == 1;
        boolean power = bank.phantom() == PhantomSwitch.CHANNEL || feed.phantom() == PhantomNeed.ANY
                || bank.phantom() == PhantomSwitch.NONE && feed.phantom() == PhantomNeed.FORBIDDEN
                || bank.phantom() == PhantomSwitch.BANK && live == (feed.phantom() == PhantomNeed.NEEDED);
        return power && feed.groups().contains(bank.channels().get(channel.channel()))
                && (bank.channelTenthMa() == null || feed.drawTenthMa() <= bank.channelTenthMa())
                && (bank.supplyTenthMa() == null || drawnTenthMa + feed.drawTenthMa() <= bank.supplyTenthMa());
    }
}
