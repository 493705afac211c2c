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
     * @param ranked best first
     * @param wanted how many at the most
     */
    static List<Candidate> of(List<Candidate> ranked, int wanted) {
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
        return one.isSingle() == other.isSingle() && place(one.first()).equals(place(other.first()))
                && (one.isSingle() || place(one.second()).equals(place(other.second())))
                && (one.isSingle() || one.pair().technique().stereo() == other.pair().technique().stereo());
    }

    private static String place(Judged judged) {
        return judged.placed().mic().id() + "@" + judged.placed().position().id();
    }
}
