package pairwright.lab;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.IntConsumer;
import java.util.stream.Stream;
import pairwright.rules.RuleInfo;

/** Which rules and calculations the exercises rest on, and which none has touched yet: counted, by drawing some of each kind at each level. */
public final class Coverage {
    /** So many rows lead nowhere before a level is given up. */
    private static final int ROWS_EACH = 40;

    private final int each;
    private final int drawn;
    private final List<Row> rows;

    private Coverage(int each, int drawn, List<Row> rows) {
        this.each = each;
        this.drawn = drawn;
        this.rows = List.copyOf(rows);
    }

    /**
     * A rule or a calculation.
     *
     * @param id its own
     * @param name its title or name
     * @param rule null for a calculation
     * @param levels by kind of exercise the levels at which one rested on it; only kinds that did
     */
    public record Row(String id, String name, RuleInfo rule, Map<String, List<Integer>> levels) {
        public boolean touched() {
            return !levels.isEmpty();
        }

        public boolean touched(String kind, int level) {
            return levels.getOrDefault(kind, List.of()).contains(level);
        }
    }

    /**
     * Counts. An exercise takes some 10 to 30 ms, so all kinds at all levels take several seconds with ten of each: not for whoever waits for a page, see {@link CoverageDesk}.
     *
     * @param each how many of a kind at a level
     */
    public static Coverage of(Lab lab, Kinds kinds, int each) {
        return of(lab, kinds, each, kind -> { });
    }

    /** @param begun told of each kind as it is begun, from 0 */
    static Coverage of(Lab lab, Kinds kinds, int each, IntConsumer begun) {
        Map<String, Map<String, TreeSet<Integer>>> touched = new TreeMap<>();
        int drawn = 0;
        for (Kind kind : kinds.all()) {
            begun.accept(kinds.all().indexOf(kind));
            for (int level = 1; level <= KindInfo.LEVELS; level++) {
                int of = 0;
                for (int row = 0; of < each && row < each * ROWS_EACH; row++) {
                    Optional<Case> one = kind.draw(Draw.named("coverage/" + kind.info().id() + "/" + level + "/" + row), level, lab);
                    if (one.isPresent()) {
                        of++;
                        for (String id : kind.of(one.get(), level, lab).restsOn()) {
                            touched.computeIfAbsent(id, any -> new LinkedHashMap<>()).computeIfAbsent(kind.info().id(), any -> new TreeSet<>()).add(level);
                        }
                    }
                }
                drawn += of;
            }
        }
        List<Row> rows = new ArrayList<>();
        Stream.concat(lab.rules().rules().stream().filter(rule -> rule.teachable() || touched.containsKey(rule.id())).map(rule -> new Row(rule.id(), rule.title(), rule, levels(touched, rule.id()))),
                lab.numbers().all().stream().map(info -> new Row(info.id(), info.name(), null, levels(touched, info.id())))).forEach(rows::add);
        return new Coverage(each, drawn, rows);
    }

    private static Map<String, List<Integer>> levels(Map<String, Map<String, TreeSet<Integer>>> touched, String id) {
        Map<String, List<Integer>> levels = new LinkedHashMap<>();
        touched.getOrDefault(id, Map.of()).forEach((kind, at) -> levels.put(kind, List.copyOf(at)));
        return Collections.unmodifiableMap(levels);
    }

    /** How many of each kind were drawn at each level, where that many were to be had. */
    public int each() {
        return each;
    }

    /** How many in all. */
    public int drawn() {
        return drawn;
    }

    /** Every teachable rule and every other that was touched, by id; then every calculation. */
    public List<Row> rows() {
        return rows;
    }

    public Optional<Row> row(String id) {
        return rows.stream().filter(row -> row.id().equals(id)).findFirst();
    }

    /** Teachable rules and calculations that none of those drawn rested on. */
    public List<Row> untouched() {
        return rows.stream().filter(row -> !row.touched() && (row.rule() == null || row.rule().teachable())).toList();
    }
}
