package pairwright.search;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;

/** What is counted or measured in a sentence: numbers, and what they count. */
final class Amounts {

    /** A number and what it counts, as one phrase. */
    record Amount(String id, double value, int first, int end) {
    }

    private final Lexicon lexicon;
    private final List<Amount> all;

    Amounts(Lexicon lexicon, Sentence sentence) {
        this.lexicon = lexicon;
        all = found(sentence);
    }

    private boolean sets(Tag quantity, String what) {
        return lexicon.quantity(quantity.id()).sets().equals(what);
    }

    private List<Amount> found(Sentence sentence) {
        var found = new ArrayList<Amount>();
        var numbers = new TreeMap<Integer, Amount>();
        for (int at = 0; at < sentence.tokens().size(); at++) {
            var token = sentence.tokens().get(at);
            if (token.isFigure()) {
                numbers.put(at, new Amount("", Double.parseDouble(token.spelling().replace(',', '.')), at, at + 1));
            }
        }
        sentence.tags(Kind.NUMBER).forEach(tag -> numbers.put(tag.first(),
                new Amount("", Double.parseDouble(tag.id()), tag.first(), tag.end())));
        for (var number : numbers.values()) {
            sentence.tags(Kind.QUANTITY)
                    .filter(tag -> tag.first() >= number.end() && tag.first() <= number.end() + 1
                            && sentence.isSmall(number.end(), tag.first()) && !sentence.isBroken(number.first(), tag.first()))
                    .filter(tag -> !sets(tag, "distanceM") || !sentence.isSmall(tag.first(), tag.end()) || isUnit(sentence, number, tag))
                    .findFirst()
                    .ifPresent(tag -> found.add(new Amount(tag.id(),
                            number.value() * lexicon.quantity(tag.id()).factor(), number.first(), tag.end())));
        }
        return List.copyOf(found);
    }

    /** A small word such as "in" is a unit only right behind figures, and where nothing follows that it could belong to. */
    private static boolean isUnit(Sentence sentence, Amount number, Tag tag) {
        int next = tag.end();
        return tag.first() == number.end() && sentence.tokens().get(number.first()).isFigure()
                && (next == sentence.tokens().size() || sentence.tokens().get(next).opens()
                        || sentence.tags(Kind.BEFORE_NEIGHBOUR).anyMatch(beside -> beside.first() == next));
    }

    List<Amount> all() {
        return all;
    }

    /** @param sets mics, preampGainDb or distanceM */
    List<Amount> that(String sets) {
        return all.stream().filter(amount -> lexicon.quantity(amount.id()).sets().equals(sets)).toList();
    }
}
