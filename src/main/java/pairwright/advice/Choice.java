package pairwright.advice;

import java.util.ArrayList;
import java.util.List;

/** Picks options that differ in idea, best first. */
final class Choice {
    private static final int MOST_WITH_ONE_TYPE = 2;

    private Choice() {
    }

    /**
     * The best candidate, then the best whose idea (technique and families) is new and whose main type has not been shown twice; where too
     * few are left, a new main type will do. Fewer than wanted rather than variants of one idea.
     *
     * @param ranked best first
     * @param wanted how many at the most
     */
    static List<Candidate> of(List<Candidate> ranked, int wanted) {
        List<Candidate> chosen = new ArrayList<>();
        for (Candidate candidate : ranked) {
            if (chosen.size() == wanted) {
                return chosen;
            }
            if (chosen.stream().noneMatch(other -> other.idea().equals(candidate.idea()))
                    && chosen.stream().filter(other -> mainType(other).equals(mainType(candidate))).count() < MOST_WITH_ONE_TYPE
                    && chosen.stream().noneMatch(other -> sameMicsSamePlaces(other, candidate))) {
                chosen.add(candidate);
            }
        }
        for (Candidate candidate : ranked) {
            if (chosen.size() >= wanted) {
                break;
            }
            if (!chosen.contains(candidate) && chosen.stream().noneMatch(other -> mainType(other).equals(mainType(candidate)))) {
                chosen.add(candidate);
            }
        }
        chosen.sort((one, other) -> Integer.compare(ranked.indexOf(one), ranked.indexOf(other)));
        return chosen;
    }

    private static String mainType(Candidate candidate) {
        return candidate.first().placed().mic().id();
    }

    /** Two techniques with the same microphones in the same places are one set-up with two names. */
    private static boolean sameMicsSamePlaces(Candidate one, Candidate other) {
        return one.second() != null && other.second() != null
                && place(one.first()).equals(place(other.first())) && place(one.second()).equals(place(other.second()))
                && one.pair().technique().stereo() == other.pair().technique().stereo();
    }

    private static String place(Judged judged) {
        return judged.placed().mic().id() + "@" + judged.placed().position().id();
    }
}
