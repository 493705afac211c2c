package pairwright.locker;

import java.util.List;
import java.util.Optional;

/** Exercises of the lab and what was handed in, to be read. They are written within a transaction, as {@link Changes}. Safe to share between threads. */
public final class Exercises {
    private final Database database;

    Exercises(Database database) {
        this.database = database;
    }

    /**
     * Sets with their benches, the newest first.
     *
     * @param most how many
     */
    public List<ExerciseSet> all(int most) {
        return database.read(sql -> ExerciseRows.all(sql, most));
    }

    /** How many sets there are. */
    public long count() {
        return database.read(sql -> sql.number("SELECT COUNT(*) FROM exercise_set"));
    }

    /** One by its id. */
    public Optional<ExerciseSet> of(String id) {
        return database.read(sql -> ExerciseRows.of(sql, id));
    }

    /** All that was handed in for a set, bench by bench, in the order it came. */
    public List<HandedIn> handedIn(String set) {
        return database.read(sql -> ExerciseRows.handedIn(sql, set));
    }

    /** By what the history knows a set: a blank keeps it apart from any unit or booking. */
    public static String about(String set) {
        return "lab " + set;
    }
}
