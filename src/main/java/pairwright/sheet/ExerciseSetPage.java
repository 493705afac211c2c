package pairwright.sheet;

import java.time.Instant;
import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import pairwright.lab.BenchMark;
import pairwright.lab.Handing;
import pairwright.lab.Item;
import pairwright.lab.OutOfDate;
import pairwright.locker.Act;
import pairwright.locker.ExerciseSet;
import pairwright.locker.LockerFault;
import pairwright.model.Fault;
import pairwright.model.Naming;
import pairwright.sheet.ReadingParts.Fact;
import pairwright.sheet.ReadingParts.Link;
import pairwright.sheet.UnitWritePages.Done;

/** The exercises of one class: its benches, its sheets, and for an instructor what came in and when the keys open. */
public final class ExerciseSetPage {
    private static final String ANSWERS = "answers";
    private static final String OPENS_AT = "opensAt";

    private ExerciseSetPage() {
    }

    /**
     * What the page shows.
     *
     * @param aim of the kind, and what it does not teach
     * @param sheets what can be printed
     * @param teaches whether to show what is for an instructor
     * @param opens the form that opens the keys; null for whoever may not
     * @param answers likewise, the form that brings in the answers of all benches at once
     * @param remove likewise
     */
    public record Content(List<Fact> facts, String aim, String notTaught, List<Bench> benches, List<Link> sheets, boolean teaches, SendForm opens, SendForm answers, SendForm remove, String zone) {
    }

    /**
     * A bench.
     *
     * @param kit what it works with, unit by unit where those are booked
     * @param handedIn when, and by whom; empty for nothing, and for readers
     * @param mark empty before
     */
    public record Bench(Link sheet, List<String> kit, String handedIn, String mark) {
    }

    /** The page. */
    public static Page of(AtLab lab, ExerciseSet set) {
        String done = lab.at().visit().first("done");
        return page(lab, set, 200, opens(lab, set), answers(lab, set), "entered".equals(done) ? "The answers are handed in." : "made".equals(done) ? "They are made." : "opens".equals(done) ? "The keys are " + lab.keys(set) + "." : "");
    }

    private static SendForm opens(AtLab lab, ExerciseSet set) {
        FormField field = FormField.moment(OPENS_AT, "The keys open").hint("Left empty, the keys are for instructors only.")
                .value(set.opensAt() == null ? "" : lab.at().moments().field(set.opensAt()));
        return SendForm.to(lab.at().visit(), AtLab.path(set, "opens"), "opens", List.of(field)).hiding(UnitWritePages.VERSION, Long.toString(set.version()));
    }

    private static SendForm answers(AtLab lab, ExerciseSet set) {
        return SendForm.to(lab.at().visit(), AtLab.path(set, "answers"), "answer-table", List.of(FormField.lines(ANSWERS, "The answers").needed()
                .hint(columns(lab, set))));
    }

    /** What a table of answers holds, with a line as it may be: the first option, or a number, so that it tells nothing. */
    private static String columns(AtLab lab, ExerciseSet set) {
        int bench = set.benches().get(0).number();
        return "As CSV with the columns bench, item and answer, named in its first line: bench,item,answer. Then a line for each question of a bench" + example(lab, set, bench)
                + ". Several options of one question stand in one cell, blanks between.";
    }

    private static String example(AtLab lab, ExerciseSet set, int bench) {
        if (!lab.teaches()) {
            return "";
        }
        try {
            List<Item> items = lab.desk().handout(set, bench).items();
            return ", such as " + bench + "," + items.get(0).id() + "," + answer(items.get(0)) + ". The items of bench " + bench + " are " + String.join(", ", items.stream().map(Item::id).toList());
        } catch (OutOfDate gone) {
            // the page has to come all the same: they can be removed there
            return "";
        }
    }

    private static String answer(Item item) {
        if (item instanceof Item.Amount) {
            return "12.5";
        }
        return item instanceof Item.OneOf one ? one.options().get(0).id() : item instanceof Item.SomeOf some ? some.options().get(0).id()
                : item instanceof Item.InOrder order ? String.join(" ", order.options().stream().map(Item.Opt::id).toList()) : "0.5 1.2 90";
    }

    /** Hands in what a table says of the benches; all of it or nothing. */
    public static Done entered(AtLab lab, ExerciseSet set, Sent sent, Act act) {
        SendForm form = answers(lab, set).typed(sent).underAnotherKey();
        String table = sent.lines(ANSWERS);
        if (table.isBlank()) {
            return new Done(null, page(lab, set, 400, opens(lab, set), form.wrong(List.of(new Fault("/" + ANSWERS, "There are no answers yet. Paste a table whose first line is bench,item,answer"))), ""));
        }
        try {
            List<Handing> handings = lab.desk().handings(set, lab.desk().answers(set, table), lab.at().role());
            lab.at().locker().change(act, changes -> {
                handings.forEach(handing -> lab.desk().handIn(changes, handing));
                return set.id();
            });
            return new Done(AtLab.path(set, "") + "?done=entered", null);
        } catch (LockerFault.Unusable wrong) {
            return new Done(null, page(lab, set, 400, opens(lab, set), form.wrong(wrong.faults().stream().map(fault -> new Fault("/" + ANSWERS, fault.says())).toList()), ""));
        } catch (LockerFault.KeyUsedOtherwise again) {
            return new Done(null, page(lab, set, 409, opens(lab, set), form.wrong(again.getMessage()), ""));
        }
    }

    private static Page page(AtLab lab, ExerciseSet set, int status, SendForm opens, SendForm answers, String done) {
        boolean teaches = lab.teaches();
        Map<Integer, BenchMark> marks = teaches ? lab.desk().marks(set, lab.at().role()).stream().collect(Collectors.toMap(BenchMark::bench, mark -> mark)) : Map.of();
        List<Bench> benches = set.benches().stream().map(bench -> bench(lab, set, bench, marks.get(bench.number()))).toList();
        var info = lab.kind(set);
        Content content = new Content(facts(lab, set), info == null ? "" : info.aim(), info == null ? "" : info.notTaught(), benches, sheets(lab, set), teaches, teaches ? opens : null, teaches ? answers : null,
                teaches ? SendForm.to(lab.at().visit(), AtLab.path(set, "remove"), "remove", List.of()) : null, lab.at().moments().zone());
        return lab.page(status, "set", lab.frame(set, "", done), content);
    }

    private static Bench bench(AtLab lab, ExerciseSet set, ExerciseSet.Bench bench, BenchMark mark) {
        Measures measures = lab.at().measures();
        List<String> kit = bench.kit().stream().map(one -> one.label() == null ? type(lab, one.micType()) : one.label() + ", " + type(lab, one.micType())).toList();
        boolean in = mark != null && mark.handedIn() != null;
        return new Bench(lab.link(set, "bench/" + bench.number(), "Bench " + bench.number()), kit,
                in ? lab.at().moments().moment(mark.handedIn().at()) + ", " + mark.handedIn().by() + (mark.handedIn().late() ? ", after the keys opened" : "") : "",
                in ? measures.number(mark.mark().mark(), 1) + " of " + measures.number(mark.mark().of(), 1) : "");
    }

    private static String type(AtLab lab, String id) {
        var type = lab.at().known().catalogue().mics().get(id);
        return type == null ? id : Naming.small(type.name());
    }

    private static List<Fact> facts(AtLab lab, ExerciseSet set) {
        List<Fact> facts = new ArrayList<>();
        var info = lab.kind(set);
        if (info != null) {
            facts.add(new Fact("Asks", info.levels().get(set.level() - 1), "About " + info.minutes().get(set.level() - 1) + " minutes."));
        }
        if (!lab.time(set).isEmpty()) {
            facts.add(new Fact("Class", lab.time(set), set.booking() == null ? "Nothing is booked for it." : "Its microphones are booked: booking " + set.booking() + "."));
        }
        facts.add(new Fact("Keys", Choices.capital(lab.keys(set)), ""));
        if (lab.teaches()) {
            DoubleSummaryStatistics hard = set.benches().stream().mapToDouble(ExerciseSet.Bench::hardnessShare).summaryStatistics();
            Measures measures = lab.at().measures();
            facts.add(new Fact("How hard", measures.number(100 * hard.getMin(), 0) + " to " + measures.number(100 * hard.getMax(), 0) + " %",
                    "Of the mark is lost by guessing and by answering as usual, from the easiest bench to the hardest."));
            facts.add(new Fact("Drawn from", set.seed(), "The same words draw the same exercises. Keep them to yourself."));
        }
        return facts;
    }

    private static List<Link> sheets(AtLab lab, ExerciseSet set) {
        List<Link> sheets = new ArrayList<>(List.of(lab.link(set, "handouts", "Handouts, one to each bench")));
        if (lab.sees(set)) {
            sheets.add(lab.link(set, "keys", "Keys"));
        }
        if (lab.teaches()) {
            sheets.add(lab.link(set, "feedback", "What goes back to each bench"));
            sheets.add(lab.link(set, "marks", "Marks and what was missed"));
        }
        return sheets;
    }

    /** Says from when on the keys are open, or that they stay shut. */
    public static Done opened(AtLab lab, ExerciseSet set, Sent sent, Act act) {
        List<Fault> faults = new ArrayList<>();
        Instant opensAt = ExerciseMakePage.moment(lab, sent, OPENS_AT, false, faults);
        String version = sent.first(UnitWritePages.VERSION);
        if (faults.isEmpty()) {
            try {
                lab.at().locker().change(act, changes -> {
                    lab.desk().openKeys(changes, set.id(), opensAt, version == null || !version.matches("\\d{1,18}") ? null : Long.valueOf(version));
                    return set.id();
                });
                return new Done(AtLab.path(set, "") + "?done=opens", null);
            } catch (LockerFault.Changed | LockerFault.KeyUsedOtherwise meanwhile) {
                return new Done(null, page(lab, lab.desk().set(set.id()), 409, opens(lab, lab.desk().set(set.id())).wrong("Somebody altered this meanwhile, so nothing was done. This is how it is now"), answers(lab, set), ""));
            }
        }
        return new Done(null, page(lab, set, 400, opens(lab, set).typed(sent).wrong(faults), answers(lab, set), ""));
    }

    /** Takes them away with all that was handed in. */
    public static Done removed(AtLab lab, ExerciseSet set, Act act) {
        lab.at().locker().change(act, changes -> {
            changes.removeExercises(set.id(), null);
            return set.id();
        });
        return new Done(AtLab.SETS + "?done=removed", null);
    }
}
