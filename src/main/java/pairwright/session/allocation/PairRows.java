package pairwright.session.allocation;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * What two seats are worth together. Choices of a seat that are worth the same with every choice of the other are taken together first; then each pair of such classes that is
 * worth something is a yes or no of its own. Rows and columns of them sum to whether the class was chosen, which bounds tightly.
 */
final class PairRows {
    private final CpModel model;
    private final BoolVar[][] chosen;

    /** @param chosen by seat and choice; null where it cannot be */
    PairRows(CpModel model, BoolVar[][] chosen) {
        this.model = model;
        this.chosen = chosen;
    }

    /** Adds to a sum what a pair is worth. */
    void add(PairTerm pair, LinearExprBuilder sum, long scale) {
        Map<Integer, Map<Integer, Long>> rows = new TreeMap<>();
        for (PairTerm.Together one : pair.together()) {
            if (chosen[pair.first()][one.first()] != null && chosen[pair.second()][one.second()] != null) {
                rows.computeIfAbsent(one.first(), any -> new TreeMap<>()).merge(one.second(), one.centipoints(), Long::sum);
            }
        }
        rows.values().forEach(row -> row.values().removeIf(worth -> worth == 0));
        List<List<Integer>> firsts = alike(rows, chosen[pair.first()]);
        List<List<Integer>> seconds = alike(turned(rows), chosen[pair.second()]);
        LinearExprBuilder[] columns = new LinearExprBuilder[seconds.size()];
        for (int column = 0; column < columns.length; column++) {
            columns[column] = LinearExpr.newBuilder();
        }
        for (List<Integer> first : firsts) {
            LinearExprBuilder row = LinearExpr.newBuilder();
            for (int column = 0; column < columns.length; column++) {
                long worth = rows.getOrDefault(first.get(0), Map.of()).getOrDefault(seconds.get(column).get(0), 0L);
                BoolVar both = model.newBoolVar("both");
                row.add(both);
                columns[column].add(both);
                if (worth != 0) {
                    sum.addTerm(both, worth * scale);
                }
            }
            model.addEquality(row, any(chosen[pair.first()], first));
        }
        for (int column = 0; column < columns.length; column++) {
            model.addEquality(columns[column], any(chosen[pair.second()], seconds.get(column)));
        }
    }

    private static LinearExpr any(BoolVar[] of, List<Integer> choices) {
        return LinearExpr.sum(choices.stream().map(choice -> of[choice]).toArray(BoolVar[]::new));
    }

    /** Choices that can be, gathered by what they are worth with each of the others. */
    private static List<List<Integer>> alike(Map<Integer, Map<Integer, Long>> rows, BoolVar[] can) {
        Map<Map<Integer, Long>, List<Integer>> gathered = new LinkedHashMap<>();
        for (int choice = 0; choice < can.length; choice++) {
            if (can[choice] != null) {
                gathered.computeIfAbsent(rows.getOrDefault(choice, Map.of()), any -> new ArrayList<>()).add(choice);
            }
        }
        return gathered.values().stream().sorted(Comparator.comparing(list -> list.get(0))).toList();
    }

    private static Map<Integer, Map<Integer, Long>> turned(Map<Integer, Map<Integer, Long>> rows) {
        Map<Integer, Map<Integer, Long>> turned = new TreeMap<>();
        rows.forEach((first, row) -> row.forEach((second, worth) -> turned.computeIfAbsent(second, any -> new TreeMap<>()).put(first, worth)));
        return turned;
    }
}
