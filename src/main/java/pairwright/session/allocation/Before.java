package pairwright.session.allocation;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;

/** What is set up and plugged already, by the names of things, since their places in a new problem may be others. */
final class Before {
    static final Before NOTHING = new Before();

    private record Plugged(String seat, int entry) {
    }

    private record At(String bank, int channel) {
    }

    private final Map<String, String> choiceOf = new HashMap<>();
    private final Map<Plugged, At> channelOf = new HashMap<>();
    private final Set<String> live = new HashSet<>();

    private Before() {
    }

    Before(Problem problem, Solution plan) {
        for (int seat = 0; seat < problem.seats().size(); seat++) {
            String id = problem.seats().get(seat).id();
            String choice = problem.seats().get(seat).choices().get(plan.choices().get(seat)).id();
            choiceOf.put(id, choice);
            for (int entry = 0; entry < plan.channels().get(seat).size(); entry++) {
                Channel channel = plan.channels().get(seat).get(entry);
                channelOf.put(new Plugged(id, entry), new At(problem.banks().get(channel.bank()).name(), channel.channel()));
            }
        }
        plan.liveBanks().forEach(bank -> live.add(problem.banks().get(bank).name()));
    }

    /** Whether a seat has this choice already. */
    boolean has(String seat, String choice) {
        return choice.equals(choiceOf.get(seat));
    }

    /** Whether a seat had this channel already: another microphone on its cable saves a patch. */
    boolean isAt(String seat, int entry, String bank, int channel) {
        return new At(bank, channel).equals(channelOf.get(new Plugged(seat, entry)));
    }

    boolean isLive(String bank) {
        return live.contains(bank);
    }
}
