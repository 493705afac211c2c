package pairwright.locker;

import java.security.SecureRandom;
import java.sql.SQLException;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import pairwright.model.Fault;

/** Exercises written and handed in within a transaction. */
final class ExerciseWork {
    /** Whoever hands in more often at one bench does not mean it. */
    private static final int MOST_OF_A_BENCH = 200;

    private final Sql sql;
    private final BookingWork bookings;
    private final Instant now;
    private final ZoneId zone;
    private final String who;
    private boolean changed;

    ExerciseWork(Sql sql, BookingWork bookings, Instant now, ZoneId zone, String who) {
        this.sql = sql;
        this.bookings = bookings;
        this.now = Instant.ofEpochSecond(now.getEpochSecond());
        this.zone = zone;
        this.who = who;
    }

    boolean changed() {
        return changed;
    }

    ExerciseSet present(String id) throws SQLException {
        return ExerciseRows.of(sql, id).orElseThrow(() -> new LockerFault.NotThere("There are no exercises " + Said.quoted(String.valueOf(id))
                + ". Look at the list of exercises"));
    }

    /** A new set, and the booking of its kit in one go where it has one. */
    ExerciseSet make(ExerciseSetDraft draft, BookingDraft kit) throws SQLException {
        String booking = kit == null ? null : bookings.book(kit).id();
        ExerciseSet set = new ExerciseSet(Secret.id(new SecureRandom()), draft.kind(), draft.level(), Sql.kept(draft.seed()), draft.purpose(), whole(draft.from()),
                whole(draft.until()), whole(draft.opensAt()), booking, draft.benches(), 1, now, who);
        ExerciseRows.insert(sql, set);
        // the seed is in no sentence: whoever may read the history could make the keys of it
        done("made", set, "Made exercises for " + count(set.benches().size(), "bench", "benches") + ": " + set.kind() + ", level " + set.level()
                + (booking == null ? "" : ", with booking " + booking) + ".");
        return present(set.id());
    }

    /** From when on everybody may see the keys. */
    ExerciseSet opens(String id, Instant opensAt, Long version) throws SQLException {
        ExerciseSet before = present(id, version);
        Instant moment = whole(opensAt);
        if (java.util.Objects.equals(before.opensAt(), moment)) {
            return before;
        }
        ExerciseRows.opens(sql, id, moment);
        done("altered", before, moment == null ? "The keys of " + id + " stay shut." : "The keys of " + id + " are open from " + Said.time(moment, zone) + " on.");
        return present(id);
    }

    Void remove(String id, Long version) throws SQLException {
        ExerciseSet set = present(id, version);
        ExerciseRows.delete(sql, id);
        done("removed", set, "Removed exercises " + id + " with all that was handed in"
                + (set.booking() == null ? "" : "; their booking " + set.booking() + " stays unless it is cancelled") + ".");
        return null;
    }

    /**
     * Keeps what was handed in. The history does not tell of it, as of no tick of a list: it would bury what was done, and each says by itself who and when.
     *
     * @param points null for not marked yet
     */
    HandedIn handIn(String id, int bench, String answer, Double points, Double ofPoints, boolean late) throws SQLException {
        ExerciseSet set = present(id);
        if (set.benches().stream().noneMatch(one -> one.number() == bench)) {
            throw new LockerFault.Unusable(List.of(new Fault("/bench", "there is no bench " + bench + ". Give one from 1 to " + set.benches().size())));
        }
        int before = ExerciseRows.handedIn(sql, id, bench);
        if (before >= MOST_OF_A_BENCH) {
            throw new LockerFault.Unusable(List.of(new Fault("/bench", "bench " + bench + " handed in " + before + " times already. Ask whoever teaches")));
        }
        HandedIn one = new HandedIn(id, bench, before + 1, Sql.kept(answer), points, ofPoints, late, now, who);
        ExerciseRows.insert(sql, one);
        changed = true;
        return one;
    }

    private ExerciseSet present(String id, Long version) throws SQLException {
        ExerciseSet set = present(id);
        if (version != null && version != set.version()) {
            throw new LockerFault.Changed("The exercises " + id + " were altered meanwhile. Look at them again, then alter them", set.version());
        }
        return set;
    }

    private void done(String what, ExerciseSet set, String says) throws SQLException {
        changed = true;
        History.add(sql, now, who, what, Exercises.about(set.id()), List.of(), says);
    }

    private static String count(int number, String one, String more) {
        return number + " " + (number == 1 ? one : more);
    }

    private static Instant whole(Instant moment) {
        return moment == null ? null : Instant.ofEpochSecond(moment.getEpochSecond());
    }
}
