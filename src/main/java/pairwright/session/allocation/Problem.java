package pairwright.session.allocation;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * What is to be allotted. Every seat gets exactly one choice; no more is taken of a cap than there is; every feed has a channel of its own, of a group that can serve it; a feed that
 * needs phantom power is on a channel that has it and within what the supply gives, and one that must not see it is never on a live channel, nor in a bank that is live as a whole.
 *
 * @param seats who gets something
 * @param caps what there is a limited number of; choices take of these only
 * @param banks the channels
 * @param pairs what two seats are worth together
 * @param kept what it is worth to leave things as they are; empty for a plan from nothing
 * @param channelPrices for each group of channels of which more are to be had as a way out, what one more costs, 1 or more; it has a switch and a supply of its own
 */
public record Problem(List<Seat> seats, List<Cap> caps, List<Bank> banks, List<PairTerm> pairs, List<Kept> kept, Map<String, Integer> channelPrices) {
    /** @throws IllegalArgumentException where two seats, caps or banks share a name, or something is named that is not there */
    public Problem {
        seats = List.copyOf(seats);
        caps = List.copyOf(caps);
        banks = List.copyOf(banks);
        pairs = List.copyOf(pairs);
        kept = List.copyOf(kept);
        channelPrices = Map.copyOf(channelPrices);
        different("seats", seats.stream().map(Seat::id));
        Set<String> known = different("caps", caps.stream().map(Cap::name));
        different("banks", banks.stream().map(Bank::name));
        for (Seat seat : seats) {
            for (Choice choice : seat.choices()) {
                if (!known.containsAll(choice.takes().keySet()) || !choice.anyOf().stream().allMatch(known::containsAll)) {
                    Set<String> named = new TreeSet<>(choice.takes().keySet());
                    choice.anyOf().forEach(named::addAll);
                    named.removeAll(known);
                    throw new IllegalArgumentException("Choice " + choice.id() + " of seat " + seat.id() + " takes of " + named + ", which is not among the caps");
                }
            }
        }
        for (PairTerm pair : pairs) {
            for (PairTerm.Together together : pair.together()) {
                there(seats, pair.first(), together.first());
                there(seats, pair.second(), together.second());
            }
        }
        for (Kept one : kept) {
            there(seats, one.seat(), one.choice());
        }
    }

    /** A problem from nothing: no pairs, nothing set up, no channel to be borrowed. */
    public Problem(List<Seat> seats, List<Cap> caps, List<Bank> banks) {
        this(seats, caps, banks, List.of(), List.of(), Map.of());
    }

    /** The same with something set up. */
    public Problem keeping(List<Kept> setUp) {
        return new Problem(seats, caps, banks, pairs, setUp, channelPrices);
    }

    /** The same where no two seats are worth anything together: it has the same plans, and to find one, or that there is none, takes far less. */
    public Problem apart() {
        return new Problem(seats, caps, banks, List.of(), kept, channelPrices);
    }

    /** What choices are worth, one for each seat, with pairs and with what is kept, hundredths of a point. */
    long worthCentipoints(List<Integer> choices) {
        long worth = kept.stream().filter(one -> choices.get(one.seat()) == one.choice()).mapToLong(Kept::centipoints).sum();
        for (int seat = 0; seat < choices.size(); seat++) {
            worth += seats.get(seat).choices().get(choices.get(seat)).centipoints();
        }
        for (PairTerm pair : pairs) {
            worth += pair.together().stream().filter(one -> choices.get(pair.first()) == one.first() && choices.get(pair.second()) == one.second())
                    .mapToLong(PairTerm.Together::centipoints).sum();
        }
        return worth;
    }

    private static Set<String> different(String what, Stream<String> names) {
        Set<String> seen = new HashSet<>();
        names.filter(name -> !seen.add(name)).findFirst().ifPresent(name -> {
            throw new IllegalArgumentException("Two " + what + " are called " + name);
        });
        return seen;
    }

    private static void there(List<Seat> seats, int seat, int choice) {
        if (seat < 0 || seat >= seats.size() || choice < 0 || choice >= seats.get(seat).choices().size()) {
            throw new IllegalArgumentException("There is no choice " + choice + " of a seat " + seat);
        }
    }
}
