package pairwright.session.allocation;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import pairwright.locker.PhantomSwitch;

/** Gives each feed its real channel, from how many of each kind go where. */
final class Patch {
    private record Plugged(int seat, int entry) {
    }

    private final Problem problem;
    private final List<Choice> choices;
    private final Settled settled;
    private final Set<Integer> liveBanks = new TreeSet<>();
    private final Set<Channel> used = new HashSet<>();

    Patch(Problem problem, List<Choice> choices, Settled settled) {
        this.problem = problem;
        this.choices = choices;
        this.settled = settled;
        for (int index = 0; index < settled.live().size(); index++) {
            liveBanks.addAll(settled.banks().all().get(index).members().subList(0, settled.live().get(index)));
        }
    }

    Set<Integer> liveBanks() {
        return liveBanks;
    }

    /** For each seat the channel of each feed. */
    List<List<Channel>> channels() {
        Map<FeedKind, List<Plugged>> waiting = waiting();
        Channel[][] at = new Channel[choices.size()][];
        for (int seat = 0; seat < at.length; seat++) {
            at[seat] = new Channel[choices.get(seat).feeds().size()];
        }
        for (PhantomNeed first : PhantomNeed.values()) { // what minds least comes last and takes what is left
            for (Settled.Feeds feeds : settled.feeds()) {
                if (feeds.kind().phantom() == first) {
                    List<Plugged> queue = waiting.get(feeds.kind());
                    for (int count = 0; count < feeds.count(); count++) {
                        Plugged next = queue.remove(0);
                        at[next.seat()][next.entry()] = free(settled.banks().all().get(feeds.bankClass()), feeds);
                    }
                }
            }
        }
        return Arrays.stream(at).map(List::of).toList();
    }

    private Map<FeedKind, List<Plugged>> waiting() {
        Map<FeedKind, List<Plugged>> waiting = new LinkedHashMap<>();
        for (int seat = 0; seat < choices.size(); seat++) {
            List<Feed> feeds = choices.get(seat).feeds();
            for (int entry = 0; entry < feeds.size(); entry++) {
                waiting.computeIfAbsent(FeedKind.of(feeds.get(entry), settled.banks()), any -> new ArrayList<>()).add(new Plugged(seat, entry));
            }
        }
        return waiting;
    }

    private Channel free(BankClasses.BankClass of, Settled.Feeds feeds) {
        for (int bank : of.members()) {
            boolean live = liveBanks.contains(bank);
            boolean suits = of.phantom() != PhantomSwitch.BANK || feeds.kind().phantom() == PhantomNeed.ANY || live == (feeds.kind().phantom() == PhantomNeed.NEEDED);
            List<String> groups = problem.banks().get(bank).channels();
            for (int index = 0; suits && index < groups.size(); index++) {
                Channel channel = new Channel(bank, index);
                if (groups.get(index).equals(feeds.group()) && used.add(channel)) {
                    return channel;
                }
            }
        }
        throw new IllegalStateException("No channel of group " + feeds.group() + " is left for a feed that has one");
    }
}
