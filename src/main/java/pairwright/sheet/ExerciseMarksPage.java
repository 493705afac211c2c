package pairwright.sheet;

import java.util.List;
import java.util.stream.IntStream;
import pairwright.drawing.Drawing;
import pairwright.drawing.SharesDrawing;
import pairwright.lab.BenchMark;
import pairwright.lab.Handout;
import pairwright.lab.Item;
import pairwright.lab.Summary;
import pairwright.locker.ExerciseSet;
import pairwright.sheet.ReadingParts.Link;

/** What a class earned, which rules were missed most, and what its questions told apart. */
public final class ExerciseMarksPage {
    /** More bars than that are no picture any more; the table has all of them. */
    private static final int MOST_BARS = 12;

    private ExerciseMarksPage() {
    }

    /**
     * What the page shows.
     *
     * @param says how many handed in, and what they earned, in a sentence
     * @param missed a picture of it; null where nothing was
     */
    public record Content(String says, List<Row> rows, Drawing missed, List<Missed> all, List<Asked> items, Link csv) {
    }

    /** What a bench earned; empty for one that handed in nothing. Notes say what else is to be known. */
    public record Row(Link bench, String handedIn, String mark, String share, String notes) {
    }

    /** What was missed. */
    public record Missed(String name, Link rests, int benches, int losing, String lost) {
    }

    /** How a question was answered over all benches that had it. */
    public record Asked(int number, String asks, int asked, int answered, String right, String apart, List<Chosen> options) {
    }

    /** How often an option was chosen; the rule that it states is null where it states none. */
    public record Chosen(String says, Link rests, int offered, int chosen, int right) {
    }

    /** The page; it is for whoever teaches. */
    public static Page of(AtLab lab, ExerciseSet set) {
        Measures measures = lab.at().measures();
        Summary summary = lab.desk().summary(set, lab.at().role());
        List<Row> rows = lab.desk().marks(set, lab.at().role()).stream().map(mark -> row(lab, set, mark)).toList();
        String says = summary.handedIn() == 0 ? "Nobody has handed in yet." : summary.handedIn() + " of " + summary.benches() + " benches handed in. On average they earned "
                + measures.number(100 * summary.meanShare(), 0) + " % of the mark.";
        List<Missed> missed = summary.missed().stream().map(one -> new Missed(Choices.capital(one.name()), lab.links().rests(one.rule()), one.benches(), one.losing(),
                measures.number(100 * one.lostShare(), 0) + " %")).toList();
        List<SharesDrawing.Bar> bars = IntStream.range(0, Math.min(MOST_BARS, missed.size()))
                .mapToObj(i -> new SharesDrawing.Bar(missed.get(i).rests() == null ? missed.get(i).name() : missed.get(i).rests().text(), summary.missed().get(i).lostShare())).toList();
        Content content = new Content(says, rows, bars.isEmpty() ? null : SharesDrawing.of("What was lost, as a share of the points there were", bars, "missed", lab.at().visit().reader()),
                missed, items(lab, set, summary), lab.at().at().link("/api/lab/exercises/" + set.id() + "/marks.csv", "Marks as a table"));
        return lab.page(200, "marks", lab.frame(set, "Marks", ""), content);
    }

    private static Row row(AtLab lab, ExerciseSet set, BenchMark mark) {
        Link bench = lab.link(set, "bench/" + mark.bench(), "Bench " + mark.bench());
        if (mark.mark() == null) {
            return new Row(bench, "", "", "", "");
        }
        Measures measures = lab.at().measures();
        String notes = (mark.handedIn().late() ? "After the keys opened. " : "") + (mark.otherPoints() == null ? "" : "Marked first with " + measures.number(mark.otherPoints(), 1)
                + ": the rules changed since. ") + (mark.mark().capped() == null ? "" : "A danger was missed.");
        return new Row(bench, lab.at().moments().moment(mark.handedIn().at()) + ", " + mark.handedIn().by(), measures.number(mark.mark().mark(), 1) + " of " + measures.number(mark.mark().of(), 1),
                measures.number(100 * mark.mark().share(), 0) + " %", notes.strip());
    }

    private static List<Asked> items(AtLab lab, ExerciseSet set, Summary summary) {
        List<Handout> handouts = set.benches().stream().map(bench -> lab.desk().handout(set, bench.number())).toList();
        Measures measures = lab.at().measures();
        return IntStream.range(0, summary.items().size()).mapToObj(i -> {
            Summary.ItemCount count = summary.items().get(i);
            String asks = handouts.stream().flatMap(handout -> handout.items().stream()).filter(item -> item.id().equals(count.item())).map(Item::asks).findFirst().orElse(count.item());
            return new Asked(i + 1, asks, count.asked(), count.answered(), measures.number(100 * count.rightShare(), 0) + " %",
                    count.discriminationRatio() == null ? "\u2013" : measures.signed(count.discriminationRatio(), 2),
                    count.options().stream().map(option -> new Chosen(option.says(), lab.links().rests(option.rule()), option.offered(), option.chosen(), option.right())).toList());
        }).toList();
    }
}
