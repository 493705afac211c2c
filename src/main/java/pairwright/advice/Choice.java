package pairwright.advice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;

/** Picks options that differ in idea, best first. */
final class Choice {
    private Choice() {
    }

    /**
     * The best candidate, then the best with an idea of its own: a pair brings a technique that was not shown, a single a type of a family
     * that was not shown alone. One of several options is a single microphone, if any single fits, for whoever has one stand and one hand.
     * Where ideas run out, the best whose first type is another; after that fewer than wanted, rather than variants of one set-up.
     *
     * @param all best first
     * @param wanted how many at the most
     */
    static List<Candidate> of(List<Candidate> all, int wanted) {
        // what scores below nothing is shown only where nothing scores better
        List<Candidate> worthShowing = all.stream().filter(candidate -> candidate.centipoints() > 0).toList();
        List<Candidate> ranked = worthShowing.isEmpty() ? all : worthShowing;
        List<Candidate> chosen = new ArrayList<>();
        fill(ranked, wanted, chosen, candidate -> chosen.stream().noneMatch(other -> other.idea().equals(candidate.idea())));
        if (wanted > 1 && chosen.stream().noneMatch(Candidate::isSingle)) {
            ranked.stream().filter(Candidate::isSingle).findFirst().ifPresent(single -> {
                if (chosen.size() == wanted) {
                    chosen.remove(wanted - 1);
                }
                chosen.add(single);
            });
        }
        // too few ideas: the best with another main type, rather than nothing to choose from
        fill(ranked, wanted, chosen, candidate -> chosen.stream().noneMatch(other -> other.mainType().equals(candidate.mainType())));
        chosen.sort(Comparator.comparingInt(ranked::indexOf));
        return chosen;
    }

    private static void fill(List<Candidate> ranked, int wanted, List<Candidate> chosen, Predicate<Candidate> allowed) {
        for (Candidate candidate : ranked) {
            if (chosen.size() >= wanted) {
                return;
            }
            if (allowed.test(candidate) && !chosen.contains(candidate)
                    && chosen.stream().noneMatch(other -> sameMicsSamePlaces(other, candidate))) {
                chosen.add(candidate);
            }
        }
    }

    /** Two techniques with the same microphones in the same places are one set-up with two names. */
    private static boolean sameMicsSamePlaces(Candidate one, Candidate other) {
        return one.isSingle() == other.isSingle() && one.first().place().equals(other.first().place())
                && (one.isSingle() || one.second().place().equals(other.second().place()))
                && (one.isSingle() || one.pair().technique().stereo() == other.pair().technique().stereo());
    }
}
