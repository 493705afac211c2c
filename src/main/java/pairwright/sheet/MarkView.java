package pairwright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import pairwright.lab.Check;
import pairwright.lab.Handout;
import pairwright.lab.Item;
import pairwright.lab.Key;
import pairwright.lab.Mark;
import pairwright.sheet.ReadingParts.Link;

/**
 * What an answer earned, and what is right.
 *
 * @param mark its points
 * @param of so many
 * @param share of the points, in percent
 * @param capped which missed danger holds it down; null for none
 * @param checks what was looked at
 * @param right what is right, question by question
 * @param lesson what to say when the sheets come back, in sentences
 */
public record MarkView(String mark, String of, String share, String capped, List<Line> checks, List<Right> right, List<String> lesson) {
    /**
     * One thing looked at.
     *
     * @param earned all, some or none, to be told by a word as well
     * @param says why
     * @param rests where that can be read; null for nowhere
     */
    public record Line(String name, String points, String of, Earned earned, String says, Link rests) {
    }

    /** How much of the points there were. */
    public enum Earned {
        ALL("all"), SOME("in part"), NONE("none");

        private final String says;

        Earned(String says) {
            this.says = says;
        }

        public String says() {
            return says;
        }
    }

    /**
     * What is right of a question.
     *
     * @param asks the question
     * @param right in words
     * @param also what earns as much, in words; empty for nothing
     * @param why the reasons, or the way there
     * @param rests where those can be read
     * @param picture with what is right drawn into it, and what was answered; null for none
     */
    public record Right(int number, String asks, String right, List<String> also, List<String> why, List<Link> rests, ExerciseView.Picture picture) {
    }

    static MarkView of(Handout handout, Key key, Mark mark, KeyPictures pictures, LabLinks links) {
        Measures measures = links.desk().measures();
        return new MarkView(measures.number(mark.mark(), 1), measures.number(mark.of(), 1), measures.number(100 * mark.share(), 0), mark.capped(),
                checks(mark, links), right(handout, key, pictures, links), key.lesson());
    }

    static List<Line> checks(Mark mark, LabLinks links) {
        Measures measures = links.desk().measures();
        return mark.checks().stream().map(check -> new Line(Choices.capital(named(check, links)), measures.number(check.points(), 1), measures.number(check.of(), 1),
                check.points() >= check.of() ? Earned.ALL : check.points() > 0 ? Earned.SOME : Earned.NONE, check.says(), links.rests(check.rests()))).toList();
    }

    /** A check that is named by an id is called by what that is. */
    private static String named(Check check, LabLinks links) {
        Link link = check.name().equals(check.rests()) ? links.rests(check.name()) : null;
        return link != null ? link.text() : check.name().matches("[a-z][a-z-]*") ? check.name().replace('-', ' ') : check.name();
    }

    /** The key, question by question. */
    static List<Right> right(Handout handout, Key key, KeyPictures pictures, LabLinks links) {
        List<Item> items = handout.items();
        List<Key.Entry> entries = key.items();
        return IntStream.range(0, entries.size()).mapToObj(i -> {
            Key.Entry entry = entries.get(i);
            Item item = items.get(i);
            return new Right(i + 1, item.asks(), entry.right(), also(item, entry, key), entry.why(), links.rests(entry.rests()), pictures.of(handout, key, item));
        }).toList();
    }

    private static List<String> also(Item item, Key.Entry entry, Key key) {
        List<String> also = new ArrayList<>();
        if (item instanceof Item.OneOf one) {
            one.options().stream().filter(option -> entry.accepted().contains(option.id()) && !option.id().equals(key.best().one(item.id())))
                    .forEach(option -> also.add(option.says()));
        }
        return also;
    }
}
