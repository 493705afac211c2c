package pairwright.session.allocation;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import pairwright.locker.PhantomSwitch;

/** Gives each feed its real channel, from how many of each kind go where. */
final class Patch {
    private record Waiting(int seat, int entry) {
    }

    private final Problem problem;
    private final List<Choice> choices;
    private final Settled settled;
    private final Before before;
    /** Of each class the members in the order in which they are filled; the first of those with one switch are live. */
    private final List<List<Integer>> members = new ArrayList<>();
    private final Set<Integer> live = new HashSet<>();
    private final Set<Channel> used = new HashSet<>();
    private final Channel[][] at;

    Patch(Problem problem, List<Choice> choices, Settled settled, Before before) {
        this.problem = problem;
        this.choices = choices;
        this.settled = settled;
        this.before = before;
        for (int index = 0; index < settled.live().size(); index++) {
            List<Integer> of = new ArrayList<>(settled.banks().all().get(index).members());
            of.sort(Comparator.comparing(bank -> !before.isLive(problem.banks().get(bank).name())));
            members.add(of);
            live.addAll(of.subList(0, settled.live().get(index)));
        }
        at = choices.stream().map(choice -> new Channel[choice.feeds().size()]).toArray(Channel[][]::new);
        fill();
        new Tidying(problem, choices, before, live, at).tidy();
    }

    /** For each seat the channel of each feed. */
    List<List<Channel>> channels() {
        return Arrays.stream(at).map(List::of).toList();
    }

    /** Those with one switch on which a feed needs phantom power. */
    Set<Integer> liveBanks() {
        Set<Integer> needed = new TreeSet<>();
        for (int seat = 0; seat < at.length; seat++) {
            for (int entry = 0; entry < at[seat].length; entry++) {
                if (choices.get(seat).feeds().get(entry).phantom() == PhantomNeed.NEEDED && live.contains(at[seat][entry].bank())) {
                    needed.add(at[seat][entry].bank());
                }
            }
        }
        return needed;
    }

    private void fill() {
        Map<FeedKind, List<Waiting>> waiting = waiting();
        for (PhantomNeed first : PhantomNeed.values()) { // what minds nothing comes last and takes what is left
            for (Settled.Feeds feeds : settled.feeds()) {
                if (feeds.kind().phantom() == first) {
                    List<Waiting> queue = waiting.get(feeds.kind());
                    for (int count = 0; count < feeds.count(); count++) {
                        Waiting next = queue.remove(0);
                        at[next.seat()][next.entry()] = free(feeds);
                    }
                }
            }
        }
    }

    private Map<FeedKind, List<Waiting>> waiting() {
        Map<FeedKind, List<Waiting>> waiting = new LinkedHashMap<>();
        for (int seat = 0; seat < choices.size(); seat++) {
            List<Feed> feeds = choices.get(seat).feeds();
            for (int entry = 0; entry < feeds.size(); entry++) {
                waiting.computeIfAbsent(FeedKind.of(feeds.get(entry), settled.banks()), any -> new ArrayList<>()).add(new Waiting(seat, entry));
            }
        }
        return waiting;
    }

    private Channel free(Settled.Feeds feeds) {
        for (int bank : members.get(feeds.bankClass())) {
            boolean suits = problem.banks().get(bank).phantom() != PhantomSwitch.BANK || feeds.kind().phantom() == PhantomNeed.ANY
                    || live.contains(bank) == (feeds.kind().phantom() == PhantomNeed.NEEDED);
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
