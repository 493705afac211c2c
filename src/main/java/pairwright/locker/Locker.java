package pairwright.locker;

import java.nio.file.Path;
import java.time.Clock;
import java.time.YearMonth;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import pairwright.model.Catalogue;
import pairwright.model.Stock;

/** The locker. Safe to share between threads, and between programs where it lies on a server. */
public final class Locker implements AutoCloseable {
    private Locker() {
    }

    /**
     * Opens a locker and brings its tables up to date.
     *
     * @param place where it is kept; made if it is a file and not there
     * @param catalogue asked for the mic types known at the moment
     * @param clock what time it is
     * @throws LockerFault.Unreachable where it cannot be opened, or was written by a newer program
     */
    public static Locker open(Place place, Supplier<Catalogue> catalogue, Clock clock) {
        throw new UnsupportedOperationException();
    }

    /**
     * Does something in one transaction, once. Sent again with the same key it is not done again, and what was said then is said again.
     *
     * @param act who, and by what it is known again
     * @param work what is done, and what is to be said of it
     */
    public Outcome change(Act act, Function<Changes, String> work) {
        throw new UnsupportedOperationException();
    }

    /** Every unit, in the order of their labels as people count (2 before 10). */
    public List<Unit> units() {
        throw new UnsupportedOperationException();
    }

    /** A unit by its id. */
    public Optional<Unit> unit(String id) {
        throw new UnsupportedOperationException();
    }

    /** Units whose tag, serial, label or id is what was typed or scanned, whatever the case; none, one, or more where labels are alike. */
    public List<Unit> scanned(String text) {
        throw new UnsupportedOperationException();
    }

    /** How every unit stands for a time, in the order of {@link #units()}. */
    public List<Standing> standing(Span span) {
        throw new UnsupportedOperationException();
    }

    /**
     * The units that can be had for all of a time, in the order of {@link #units()}.
     *
     * @param micType only of this type; null for any kind of unit
     */
    public List<Unit> free(Span span, String micType) {
        throw new UnsupportedOperationException();
    }

    /** What a question may use for a time; null while the locker holds no microphone. */
    public Stock stock(Span span) {
        throw new UnsupportedOperationException();
    }

    /**
     * Bookings that touch a time, earliest first.
     *
     * @param unit only of this unit; null for all
     */
    public List<Booking> bookings(Span span, String unit) {
        throw new UnsupportedOperationException();
    }

    /** A booking by its id. */
    public Optional<Booking> booking(String id) {
        throw new UnsupportedOperationException();
    }

    /** What somebody has at this moment, longest overdue first. */
    public List<Out> out() {
        throw new UnsupportedOperationException();
    }

    /** How much of each type is taken on each day of a month. */
    public Use use(YearMonth month, ZoneId zone) {
        throw new UnsupportedOperationException();
    }

    /**
     * What was done, newest first.
     *
     * @param about id of a unit or booking; null for everything
     * @param before only events with a lower number; null for the newest
     * @param most how many
     */
    public List<Event> history(String about, Long before, int most) {
        throw new UnsupportedOperationException();
    }

    /** A number that differs after every change, whoever made it. */
    public long revision() {
        throw new UnsupportedOperationException();
    }

    /** Who may come in. */
    public Tokens tokens() {
        throw new UnsupportedOperationException();
    }

    /** Writes all of it as it is at one moment into a new file, while it serves. */
    public void backUp(Path file) {
        throw new UnsupportedOperationException();
    }

    /**
     * Replaces all of it by what a backup holds, in one step, while it serves.
     *
     * @throws LockerFault.Unusable where the file is no backup
     */
    public void restore(Path file) {
        throw new UnsupportedOperationException();
    }

    @Override
    public void close() {
        throw new UnsupportedOperationException();
    }
}
