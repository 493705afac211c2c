package pairwright.advice;

import java.util.function.Function;
import java.util.function.Supplier;
import pairwright.model.Catalogue;
import pairwright.rules.HouseRuleStopped;
import pairwright.rules.RuleBase;
import pairwright.search.SentenceReader;
import pairwright.search.Suggester;

/**
 * What is known at one moment: what belongs together and is swapped together.
 *
 * @param catalogue entries
 * @param reader of sentences, made from that catalogue
 * @param suggester of what a sentence may go on with, made from the same on first use
 * @param rules the rule base
 */
public record Knowledge(Catalogue catalogue, SentenceReader reader, Suggester suggester, RuleBase rules) {
    Knowledge(Catalogue catalogue, SentenceReader reader, RuleBase rules) {
        this(catalogue, reader, new Suggester(catalogue, reader), rules);
    }

    /** The same, judged by other rules. */
    Knowledge with(RuleBase others) {
        return new Knowledge(catalogue, reader, suggester, others);
    }

    /**
     * Answers from what is known now. Where a house rule fails half way, what was found so far is dropped and the question answered anew
     * by what is known then, which is the same without that rule: an answer never mixes two sets of rules, and says by its version which it was.
     *
     * @param known asked once, and again after a house rule failed
     * @param answer uses what it is given throughout
     * @throws HouseRuleStopped where the rule that failed is still among those given
     */
    public static <T> T answered(Supplier<Knowledge> known, Function<Knowledge, T> answer) {
        Knowledge now = known.get();
        while (true) {
            try {
                return answer.apply(now);
            } catch (HouseRuleStopped stopped) {
                Knowledge next = known.get();
                if (next.rules() == now.rules()) {
                    throw stopped;
                }
                now = next;
            }
        }
    }
}
