package pairwright.advice;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import pairwright.model.MicFamily;
import pairwright.model.MicType;
import pairwright.model.PairRecipe;
import pairwright.model.Position;
import pairwright.rules.RuleBase;

/**
 * Proves for most changes of a question, from few placements, that they do not bring what is wanted among the first.
 *
 * <p>All candidates that can have it are judged, and with them a few that did well before. Where three of these, single and of three families,
 * have more points, {@link Choice} has its three ideas before it comes to what is wanted. No proof says nothing: then everything is judged.
 */
final class WhyNotShortCut {
    /** One family more than are shown: a change may take one of them away. */
    private static final int FAMILIES = 4;

    private final Wanted wanted;
    private final List<Judged> rivals;

    private WhyNotShortCut(Wanted wanted, List<Judged> rivals) {
        this.wanted = wanted;
        this.rivals = rivals;
    }

    /** The best of each of the first families in the verdict before the change are the rivals. */
    static WhyNotShortCut of(Wanted wanted, Advisor.Verdict before) {
        List<Judged> rivals = new ArrayList<>();
        Set<MicFamily> families = new HashSet<>();
        for (Candidate one : before.candidates()) {
            if (families.size() < FAMILIES && one.isSingle() && !wanted.isIn(one) && families.add(one.first().placed().mic().family())) {
                rivals.add(one.first());
            }
        }
        return new WhyNotShortCut(wanted, List.copyOf(rivals));
    }

    /**
     * Whether a changed question certainly does what is wanted no good.
     *
     * @param stood whether it may be used already, so that it has to be among the first to be better off
     * @param shown among so many
     */
    boolean cannotHelp(Scene changed, RuleBase rules, boolean stood, int shown) {
        Advisor.Verdict verdict = Advisor.judge(changed, rules, Placements.of(changed, (mic, position) -> worth(changed, mic, position)));
        Candidate mine = verdict.candidates().stream().filter(wanted::isIn).findFirst().orElse(null);
        if (mine == null) {
            return true;
        }
        return stood && verdict.candidates().stream()
                .filter(one -> one.isSingle() && one.centipoints() > mine.centipoints() && one.centipoints() > 0)
                .map(one -> one.first().placed().mic().family()).distinct().count() >= shown;
    }

    /** What is wanted, what can make a pair with it, and the rivals. */
    private boolean worth(Scene changed, MicType mic, Position position) {
        return mic.id().equals(wanted.mic().id()) || isRival(mic, position) || isPartner(changed, mic, position);
    }

    private boolean isRival(MicType mic, Position position) {
        return rivals.stream().anyMatch(one -> one.placed().mic().id().equals(mic.id()) && one.placed().position().id().equals(position.id()));
    }

    private boolean isPartner(Scene changed, MicType mic, Position position) {
        if (changed.setting().channels() < 2 || wanted.mic().channels() > 1 || mic.channels() > 1) {
            return false;
        }
        for (PairRecipe recipe : changed.setting().source().pairs()) {
            boolean sameType = changed.catalogue().techniques().get(recipe.technique()).sameType();
            if (!sameType && (takes(recipe.first(), wanted.mic(), wanted.position()) && takes(recipe.second(), mic, position.id())
                    || takes(recipe.second(), wanted.mic(), wanted.position()) && takes(recipe.first(), mic, position.id()))) {
                return true;
            }
        }
        return false;
    }

    /** Whether a part of a pair can be of this type there; anywhere for null. */
    private static boolean takes(PairRecipe.Part part, MicType mic, String position) {
        return (position == null || part.position().equals(position)) && (part.micTypes().isEmpty() || part.micTypes().contains(mic.id()));
    }
}
