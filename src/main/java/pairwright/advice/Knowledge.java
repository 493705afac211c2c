package pairwright.advice;

import pairwright.model.Catalogue;
import pairwright.rules.RuleBase;
import pairwright.search.SentenceReader;

/**
 * What is known at one moment: three things that belong together and are swapped together.
 *
 * @param catalogue entries
 * @param reader of sentences, made from that catalogue
 * @param rules the rule base
 */
public record Knowledge(Catalogue catalogue, SentenceReader reader, RuleBase rules) {
}
