package pairwright.lab;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.IntFunction;
import pairwright.locker.AnswerTable;
import pairwright.locker.ExerciseSet;
import pairwright.locker.LockerFault;
import pairwright.locker.TableFault;
import pairwright.model.Fault;

/** The answers of a whole class, read from a table. */
final class AnswerSheet {
    private static final int BENCH_DIGITS = 4;

    private final ExerciseSet set;
    private final IntFunction<Handout> handouts;
    private final Map<Integer, Answer> answers = new TreeMap<>();
    private final List<TableFault> faults = new ArrayList<>();
    private final Set<String> seen = new HashSet<>();

    private AnswerSheet(ExerciseSet set, IntFunction<Handout> handouts) {
        this.set = set;
        this.handouts = handouts;
    }

    /**
     * By bench, what it answers.
     *
     * @param handouts what a bench was asked
     * @throws LockerFault.Unusable with every fault and its line
     */
    static Map<Integer, Answer> read(String csv, ExerciseSet set, IntFunction<Handout> handouts) {
        AnswerTable table = AnswerTable.read(csv);
        AnswerSheet sheet = new AnswerSheet(set, handouts);
        sheet.faults.addAll(table.faults());
        table.rows().forEach(sheet::take);
        if (sheet.faults.isEmpty() && sheet.answers.isEmpty()) {
            sheet.faults.add(new TableFault(1, null, "", "there is a first line and no answer. Give a row for each item of a bench, such as 1,mic,long-ribbon"));
        }
        if (!sheet.faults.isEmpty()) {
            throw new LockerFault.Unusable(sheet.faults.stream().sorted(Comparator.comparingInt(TableFault::line)).map(fault ->
                    new Fault("/" + fault.line() + (fault.column() == null ? "" : "/" + fault.column()), fault.sentence())).toList());
        }
        return sheet.answers;
    }

    private void take(AnswerTable.Row row) {
        Integer bench = row.bench().matches("\\d{1," + BENCH_DIGITS + "}") ? Integer.valueOf(row.bench()) : null;
        if (bench == null || set.benches().stream().noneMatch(one -> one.number() == bench)) {
            fault(row, "bench", row.bench(), row.bench().isEmpty() ? "it is not said which bench. Give 1 to " + set.benches().size()
                    : "there is no such bench. Give 1 to " + set.benches().size());
            return;
        }
        AnswerCheck check = new AnswerCheck(handouts.apply(bench));
        if (row.item().isEmpty()) {
            fault(row, "item", "", "it is not said which item. Give one that stands on the handout");
            return;
        }
        if (!seen.add(bench + " " + row.item())) {
            fault(row, "item", row.item(), "is there twice for bench " + bench + ". Keep one of the two");
            return;
        }
        List<String> values = check.values(row.item(), row.answer());
        List<Fault> wrong = check.faults(Answer.NOTHING.with(row.item(), values));
        wrong.forEach(one -> fault(row, check.knows(row.item()) ? "answer" : "item", "", one.says()));
        if (check.knows(row.item())) {
            answers.merge(bench, Answer.NOTHING.with(row.item(), values), (before, more) -> before.with(row.item(), values));
        }
    }

    private void fault(AnswerTable.Row row, String column, String value, String says) {
        faults.add(new TableFault(row.line(), column, pairwright.catalogue.Shown.of(value), says));
    }
}
