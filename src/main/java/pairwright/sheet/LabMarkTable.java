package pairwright.sheet;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import pairwright.lab.BenchMark;
import pairwright.lab.Check;

/** What a class earned as a CSV file: a row for each bench, and a column for each thing that was looked at. */
public final class LabMarkTable {
    private static final List<String> COLUMNS = List.of("bench", "mark", "of", "percent", "late", "at", "by", "capped");

    private LabMarkTable() {
    }

    /** Marks as CSV (RFC 4180); moments in UTC. A bench that handed in nothing has nothing but its number. */
    public static String of(List<BenchMark> marks) {
        Set<String> checks = new LinkedHashSet<>();
        marks.stream().filter(bench -> bench.mark() != null).flatMap(bench -> bench.mark().checks().stream()).map(Check::name).forEach(checks::add);
        List<String> columns = new ArrayList<>(COLUMNS);
        checks.forEach(check -> columns.add(Csv.text(check)));
        return Csv.of(columns, marks.stream().map(bench -> row(bench, checks)).toList());
    }

    private static List<String> row(BenchMark bench, Set<String> checks) {
        List<Object> cells = new ArrayList<>();
        cells.add(bench.bench());
        if (bench.mark() != null) {
            cells.addAll(java.util.Arrays.asList(bench.mark().mark(), bench.mark().of(), 100 * bench.mark().share(), bench.handedIn().late() ? "yes" : "no",
                    bench.handedIn().at(), bench.handedIn().by(), bench.mark().capped()));
        }
        while (cells.size() < COLUMNS.size()) {
            cells.add(null);
        }
        for (String check : checks) {
            // the same may be looked at more than once, as when there are two to be found
            List<Check> looked = bench.mark() == null ? List.of() : bench.mark().checks().stream().filter(one -> one.name().equals(check)).toList();
            cells.add(looked.isEmpty() ? null : looked.stream().mapToDouble(Check::points).sum());
        }
        return cells.stream().map(Csv::text).toList();
    }
}
