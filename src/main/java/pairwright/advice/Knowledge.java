package pairwright.advice;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import pairwright.catalogue.Shown;
import pairwright.model.Catalogue;
import pairwright.model.Nearest;
import pairwright.model.Reading;
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
    private static final int LOOKED_AT = 12;

    Knowledge(Catalogue catalogue, SentenceReader reader, RuleBase rules) {
        this(catalogue, reader, new Suggester(catalogue, reader), rules);
    }

    /** The same, judged by other rules. */
    Knowledge with(RuleBase others) {
        return new Knowledge(catalogue, reader, suggester, others);
    }

    /**
     * Of some ids the one that is nearly written so; where there is none, those whose entries come nearest to a text, nearest first. None where none
     * comes near.
     *
     * @param most so many at most
     */
    public List<String> nearest(String text, Collection<String> ids, int most) {
        Optional<String> written = Nearest.to(text, ids);
        return written.isPresent() ? List.of(written.get()) : reader.nearest(Shown.of(text).replace('-', ' '), LOOKED_AT).stream().map(Reading::id).filter(ids::contains).distinct().limit(most).toList();
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
