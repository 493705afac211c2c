package pairwright.locker;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** Exercises and what was handed in, as rows. */
final class ExerciseRows {
    private static final String SETS = "SELECT id, kind, level, seed, purpose, from_ts, until_ts, opens_ts, booking_id, version, at_ts, who FROM exercise_set ";

    private ExerciseRows() {
    }

    private record Drawn(int bench, String text, double hardnessShare) {
    }

    private record Held(int bench, ExerciseSet.Kit kit) {
    }

    static List<ExerciseSet> all(Sql sql, int most) throws SQLException {
        return with(sql, sql.all(SETS + "ORDER BY at_ts DESC, id LIMIT ?", ExerciseRows::set, Math.max(0, most)));
    }

    static Optional<ExerciseSet> of(Sql sql, String id) throws SQLException {
        return with(sql, sql.all(SETS + "WHERE id = ?", ExerciseRows::set, id)).stream().findFirst();
    }

    private static List<ExerciseSet> with(Sql sql, List<ExerciseSet> bare) throws SQLException {
        List<ExerciseSet> sets = new ArrayList<>();
        for (ExerciseSet set : bare) {
            Map<Integer, List<Held>> kit = sql.all("SELECT bench, mic_type, unit_id, unit_label FROM exercise_kit WHERE set_id = ? ORDER BY bench, place",
                    row -> new Held(row.getInt("bench"), new ExerciseSet.Kit(row.getString("mic_type"), row.getString("unit_id"), row.getString("unit_label"))), set.id())
                    .stream().collect(Collectors.groupingBy(Held::bench));
            List<Drawn> drawn = sql.all("SELECT bench, drawn, hardness FROM exercise WHERE set_id = ? ORDER BY bench",
                    row -> new Drawn(row.getInt("bench"), row.getString("drawn"), row.getDouble("hardness")), set.id());
            sets.add(benches(set, drawn.stream().map(one -> new ExerciseSet.Bench(one.bench(), one.text(), one.hardnessShare(),
                    kit.getOrDefault(one.bench(), List.of()).stream().map(Held::kit).toList())).toList()));
        }
        return sets;
    }

    private static ExerciseSet benches(ExerciseSet set, List<ExerciseSet.Bench> benches) {
        return new ExerciseSet(set.id(), set.kind(), set.level(), set.seed(), set.purpose(), set.from(), set.until(), set.opensAt(), set.booking(), benches,
                set.version(), set.at(), set.by());
    }

    static void insert(Sql sql, ExerciseSet set) throws SQLException {
        sql.run("INSERT INTO exercise_set (id, kind, level, seed, purpose, from_ts, until_ts, opens_ts, booking_id, version, at_ts, who)"
                + " VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)", set.id(), set.kind(), set.level(), set.seed(), set.purpose(), seconds(set.from()), seconds(set.until()),
                seconds(set.opensAt()), set.booking() == null ? null : Long.valueOf(set.booking()), set.version(), seconds(set.at()), set.by());
        List<Object[]> drawn = new ArrayList<>();
        List<Object[]> kit = new ArrayList<>();
        for (ExerciseSet.Bench bench : set.benches()) {
            drawn.add(new Object[] {set.id(), bench.number(), bench.drawn(), bench.hardnessShare()});
            for (int place = 0; place < bench.kit().size(); place++) {
                ExerciseSet.Kit one = bench.kit().get(place);
                kit.add(new Object[] {set.id(), bench.number(), place, one.micType(), one.unit(), one.label()});
            }
        }
        sql.runAll("INSERT INTO exercise (set_id, bench, drawn, hardness) VALUES (?, ?, ?, ?)", drawn);
        sql.runAll("INSERT INTO exercise_kit (set_id, bench, place, mic_type, unit_id, unit_label) VALUES (?, ?, ?, ?, ?, ?)", kit);
    }

    static void opens(Sql sql, String id, Instant opensAt) throws SQLException {
        sql.run("UPDATE exercise_set SET opens_ts = ?, version = version + 1 WHERE id = ?", seconds(opensAt), id);
    }

    /** With all that belongs to it. */
    static void delete(Sql sql, String id) throws SQLException {
        for (String table : List.of("exercise_answer", "exercise_kit", "exercise")) {
            sql.run("DELETE FROM " + table + " WHERE set_id = ?", id);
        }
        sql.run("DELETE FROM exercise_set WHERE id = ?", id);
    }

    static List<HandedIn> handedIn(Sql sql, String set) throws SQLException {
        return sql.all("SELECT set_id, bench, number, answer, points, of_points, late, at_ts, who FROM exercise_answer WHERE set_id = ? ORDER BY bench, number",
                row -> new HandedIn(row.getString("set_id"), row.getInt("bench"), row.getInt("number"), row.getString("answer"), Sql.numberOrNull(row, "points"),
                        Sql.numberOrNull(row, "of_points"), row.getLong("late") == 1, moment(row, "at_ts"), row.getString("who")), set);
    }

    static int handedIn(Sql sql, String set, int bench) throws SQLException {
        return (int) sql.number("SELECT COUNT(*) FROM exercise_answer WHERE set_id = ? AND bench = ?", set, bench);
    }

    static void insert(Sql sql, HandedIn one) throws SQLException {
        sql.run("INSERT INTO exercise_answer (set_id, bench, number, answer, points, of_points, late, at_ts, who) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?)", one.set(),
                one.bench(), one.number(), one.answer(), one.points(), one.ofPoints(), one.late() ? 1L : 0L, seconds(one.at()), one.by());
    }

    private static ExerciseSet set(ResultSet row) throws SQLException {
        Long booking = Sql.wholeOrNull(row, "booking_id");
        return new ExerciseSet(row.getString("id"), row.getString("kind"), row.getInt("level"), row.getString("seed"), row.getString("purpose"), moment(row, "from_ts"),
                moment(row, "until_ts"), moment(row, "opens_ts"), booking == null ? null : booking.toString(), List.of(), row.getLong("version"), moment(row, "at_ts"),
                row.getString("who"));
    }

    private static Long seconds(Instant moment) {
        return moment == null ? null : moment.getEpochSecond();
    }

    private static Instant moment(ResultSet row, String column) throws SQLException {
        Long seconds = Sql.wholeOrNull(row, column);
        return seconds == null ? null : Instant.ofEpochSecond(seconds);
    }
}
