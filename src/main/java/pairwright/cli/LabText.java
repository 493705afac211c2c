package pairwright.cli;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import pairwright.lab.BenchKey;
import pairwright.lab.Handout;
import pairwright.lab.Item;
import pairwright.lab.Key;
import pairwright.lab.Mark;
import pairwright.lab.Shown;
import pairwright.lab.Summary;
import pairwright.locker.ExerciseSet;

/** Exercises, their keys and marks as a terminal shows them. */
final class LabText {
    private static final List<String> OCTAVES = List.of("63", "125", "250", "500", "1k", "2k", "4k", "8k", "16k");

    private LabText() {
    }

    static void say(PrintWriter out, String indent, String words) {
        AnswerText.wrapped(indent, indent + "  ", words, AnswerText.WIDTH).forEach(out::println);
    }

    /** How far the benches of a set are from being equally hard. */
    static String spread(ExerciseSet set) {
        double hardest = set.benches().stream().mapToDouble(ExerciseSet.Bench::hardnessShare).max().orElse(0);
        double easiest = set.benches().stream().mapToDouble(ExerciseSet.Bench::hardnessShare).min().orElse(0);
        return "The hardest bench is " + percent(hardest - easiest) + " of the mark harder than the easiest, by what guesses and the usual answer lose there.";
    }

    static void handout(PrintWriter out, ExerciseSet.Bench bench, Handout handout) {
        out.println("Bench " + bench.number() + ": " + AnswerText.harmless(handout.title()));
        handout.cautions().forEach(caution -> say(out, "", "! " + caution));
        handout.situation().forEach(sentence -> say(out, "", sentence));
        if (!bench.kit().isEmpty()) {
            say(out, "", "On the bench: " + bench.kit().stream().map(kit -> kit.label() == null ? kit.micType() : kit.label() + " (" + kit.micType() + ")").collect(Collectors.joining(", ")));
        }
        handout.shown().forEach(shown -> shown(out, shown));
        handout.items().forEach(item -> item(out, item));
        out.println();
    }

    private static void shown(PrintWriter out, Shown shown) {
        out.println();
        say(out, "", shown.caption());
        if (shown instanceof Shown.Table table) {
            out.print(Columns.of(table.columns(), table.rows()));
        } else if (shown instanceof Shown.Curves curves) {
            List<String> columns = new ArrayList<>(List.of("dB at Hz"));
            columns.addAll(OCTAVES);
            out.print(Columns.of(columns, curves.curves().stream().map(curve -> {
                List<String> row = new ArrayList<>(List.of(curve.name()));
                IntStream.range(0, OCTAVES.size()).forEach(band -> row.add(number(curve.db().at(band))));
                return row;
            }).toList()));
        } else if (shown instanceof Shown.AtSource at) {
            at.option().mics().forEach(mic -> say(out, "  ", mic.name() + " (" + mic.pattern().id() + "): " + mic.positionName() + ", " + number(mic.distanceM() * 100) + " cm, turned "
                    + number(mic.aimDegrees()) + " degrees"));
        } else if (shown instanceof Shown.FromAbove from) {
            out.print(Columns.of(List.of("seat", "source", "x, m", "y, m", "faces, degrees"), from.lineUp().seats().stream()
                    .map(seat -> List.of(seat.id(), seat.source(), number(seat.xM()), number(seat.yM()), number(seat.facingDegrees()))).toList()));
        }
    }

    private static void item(PrintWriter out, Item item) {
        out.println();
        say(out, "", item.id() + ": " + item.asks());
        options(item).forEach(option -> say(out, "  ", option.id() + ") " + option.says()));
        if (item instanceof Item.InOrder) {
            say(out, "  ", "Answer with all of them in their order.");
        } else if (item instanceof Item.Amount amount && !amount.unit().equals("1")) {
            say(out, "  ", "In " + amount.unit() + ".");
        } else if (item instanceof Item.Spot spot) {
            say(out, "  ", "Answer with x from " + number(spot.leftM()) + " to " + number(spot.rightM()) + " m, y from " + number(spot.lowM()) + " to " + number(spot.highM())
                    + " m, and where it aims in degrees.");
        }
    }

    private static List<Item.Opt> options(Item item) {
        return item instanceof Item.OneOf one ? one.options() : item instanceof Item.SomeOf some ? some.options() : item instanceof Item.InOrder order ? order.options() : List.of();
    }

    static void key(PrintWriter out, BenchKey key, Handout handout) {
        out.println("Bench " + key.bench() + ": " + AnswerText.harmless(handout.title()));
        for (Key.Entry entry : key.key().items()) {
            say(out, "", entry.item() + ": " + String.join(" ", key.key().best().all(entry.item())) + " - " + entry.right());
            if (entry.accepted().size() > 1) {
                say(out, "  ", "As good: " + String.join(", ", entry.accepted()));
            }
            entry.why().forEach(why -> say(out, "  ", why));
            if (!entry.rests().isEmpty()) {
                say(out, "  ", "[" + String.join(", ", entry.rests()) + "]");
            }
        }
        key.key().lesson().forEach(sentence -> say(out, "", sentence));
        out.println();
    }

    /** @param mark null for nothing handed in */
    static void mark(PrintWriter out, int bench, Mark mark, boolean checks) {
        if (mark == null) {
            out.println("Bench " + bench + ": nothing handed in");
            return;
        }
        out.println("Bench " + bench + ": " + number(mark.mark()) + " of " + number(mark.of()) + " (" + percent(mark.share()) + ")");
        if (mark.capped() != null) {
            say(out, "  ", "Held down by a danger that was missed: " + mark.capped());
        }
        if (checks) {
            mark.checks().forEach(check -> say(out, "  ", number(check.points()) + " of " + number(check.of()) + " " + check.name() + ": " + check.says()));
        }
    }

    static void summary(PrintWriter out, Summary summary) {
        out.println(summary.handedIn() + " of " + summary.benches() + " benches handed in" + (summary.meanShare() == null ? "." : "; their mean is " + percent(summary.meanShare()) + "."));
        if (!summary.missed().isEmpty()) {
            out.println();
            out.print(Columns.of(List.of("missed", "benches", "points lost"), summary.missed().stream()
                    .map(one -> List.of(one.name() + (one.rule() == null ? "" : " [" + one.rule() + "]"), one.losing() + " of " + one.benches(), percent(one.lostShare()))).toList()));
        }
        for (Summary.ItemCount item : summary.items()) {
            out.println();
            say(out, "", item.item() + ": " + percent(item.rightShare()) + " right, " + item.answered() + " of " + item.asked() + " answered; discrimination (point-biserial, n = "
                    + item.discriminationOf() + ") " + (item.discriminationRatio() == null ? "cannot be told" : String.format(Locale.ROOT, "%.2f", item.discriminationRatio())));
            item.options().forEach(option -> say(out, "  ", percent(option.chosenShare()) + " of " + option.offered() + " chose: " + option.says() + (option.rule() == null ? "" : " [" + option.rule() + "]")
                    + (option.right() == 0 ? "" : option.right() == option.offered() ? " (right)" : " (right for " + option.right() + ")")));
        }
    }

    private static String percent(double share) {
        return String.format(Locale.ROOT, "%.0f %%", 100 * share);
    }

    private static String number(double value) {
        return java.math.BigDecimal.valueOf(value).setScale(2, java.math.RoundingMode.HALF_EVEN).stripTrailingZeros().toPlainString();
    }
}
