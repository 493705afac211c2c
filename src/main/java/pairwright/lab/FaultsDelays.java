package pairwright.lab;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import pairwright.model.Naming;
import pairwright.session.Arrival;
import pairwright.session.Line;
import pairwright.session.Said;

/** What comes late in a plan, and what is to be done about it as the rules have it. */
final class FaultsDelays {
    /** As they stand in {@link Arrival.Treat}. */
    private static final List<Item.Opt> OPTIONS = Item.Opt.lettered(List.of("Delay the nearer one until both agree", "Leave it as it is", "Move one of the two, or keep one of them low"));
    private static final double FAR_ENOUGH_RATIO = 3;

    private final Lab lab;
    private final List<FaultsPlan.At> stood;
    private final List<Late> asked;

    /** One arrival with the rule that says how it is treated. */
    private record Late(Arrival arrival, Said said) {
        String name() {
            return arrival.lines().get(0) + " " + arrival.lines().get(1) + " " + arrival.seat();
        }

        String right() {
            return OPTIONS.get(arrival.treat().ordinal()).id();
        }
    }

    /**
     * Those of a case.
     *
     * @param names as they were drawn
     * @throws IllegalArgumentException where no rule speaks of one of them any more
     */
    FaultsDelays(List<FaultsPlan.At> stood, List<String> names, Lab lab) {
        this.lab = lab;
        this.stood = stood;
        List<Late> all = all(stood, lab);
        this.asked = names.stream().map(name -> all.stream().filter(late -> late.name().equals(name)).findFirst()
                .orElseThrow(() -> new IllegalArgumentException("No rule says any more what to do about the delay \"" + name + "\" of the exercise"))).toList();
    }

    /** Names of some, each of another rule, any rule as likely; fewer where fewer rules speak. */
    static List<String> some(Draw draw, int many, List<FaultsPlan.At> stood, Lab lab) {
        Map<String, List<Late>> byRule = new LinkedHashMap<>();
        all(stood, lab).forEach(late -> byRule.computeIfAbsent(late.said().rule(), any -> new ArrayList<>()).add(late));
        return draw.some(many, List.copyOf(byRule.keySet())).stream().map(rule -> draw.one(byRule.get(rule)).name()).toList();
    }

    private static List<Late> all(List<FaultsPlan.At> stood, Lab lab) {
        return stood.stream().flatMap(at -> at.late().stream()).flatMap(arrival -> late(arrival, lab).stream()).toList();
    }

    private static Optional<Late> late(Arrival arrival, Lab lab) {
        return arrival.firstNullHz() == null ? Optional.empty()
                : arrival.cautions().stream().filter(said -> arrival.treat().id().equals(lab.rules().rule(said.rule()).treat())).findFirst().map(said -> new Late(arrival, said));
    }

    private static String item(int which) {
        return "delay-" + (which + 1);
    }

    List<Item> items() {
        return IntStream.range(0, asked.size()).<Item>mapToObj(which -> new Item.OneOf(item(which), asks(asked.get(which).arrival()), OPTIONS)).toList();
    }

    private String asks(Arrival arrival) {
        return String.format(Locale.ROOT, "The sound of %s reaches %s first and %s %.1f ms later, %.1f times as far off. With both up their sum has its first null at %.0f Hz and ripples by %.1f dB. What is to be done about it?",
                Naming.the(lab.source(arrival.source()).name()), called(arrival.lines().get(0)), called(arrival.lines().get(1)), arrival.delayMs(), arrival.distanceRatio(),
                arrival.firstNullHz(), arrival.rippleDb());
    }

    private String called(int number) {
        for (int seat = 0; seat < stood.size(); seat++) {
            for (Line line : stood.get(seat).lines()) {
                if (line.number() == number) {
                    return "set-up " + (seat + 1) + " (" + Naming.type(line.placement().name()) + ", " + line.placement().positionName() + ")";
                }
            }
        }
        throw new IllegalArgumentException("There is no line " + number);
    }

    /** The key with these answers as well. */
    Answer key(Answer others, List<Key.Entry> entries) {
        Answer best = others;
        for (int which = 0; which < asked.size(); which++) {
            Late late = asked.get(which);
            best = best.with(item(which), late.right());
            entries.add(new Key.Entry(item(which), OPTIONS.get(late.arrival().treat().ordinal()).says(), List.of(late.right()), List.of(late.said().says()), List.of(late.said().rule())));
        }
        return best;
    }

    void mark(Answer answer, Mark.Sum sum) {
        for (int which = 0; which < asked.size(); which++) {
            Late late = asked.get(which);
            boolean right = late.right().equals(answer.one(item(which)));
            sum.add(asked.size() == 1 ? "The delay" : "Delay " + (which + 1), right ? 1 : 0, 1, (right ? "Yes: " : "It is this: ") + late.said().says(), late.said().rule());
        }
    }

    /** By the rule of thumb: two of one source are lined up, and three times as far is far enough. */
    Answer usual(Answer others) {
        Answer usual = others;
        for (int which = 0; which < asked.size(); which++) {
            Arrival arrival = asked.get(which).arrival();
            Arrival.Treat treat = arrival.own() ? Arrival.Treat.ALIGN : arrival.distanceRatio() >= FAR_ENOUGH_RATIO ? Arrival.Treat.LEAVE : Arrival.Treat.WATCH;
            usual = usual.with(item(which), OPTIONS.get(treat.ordinal()).id());
        }
        return usual;
    }

    Set<String> rules() {
        Set<String> rules = new LinkedHashSet<>();
        asked.forEach(late -> rules.add(late.said().rule()));
        return rules;
    }
}
