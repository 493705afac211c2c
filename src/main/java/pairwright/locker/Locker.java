package pairwright.locker;

import java.nio.file.Path;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Instant;
import java.time.YearMonth;
import java.time.ZoneId;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Supplier;
import pairwright.model.Catalogue;
import pairwright.model.Fault;
import pairwright.model.Stock;

/** The locker. Safe to share between threads, and between programs where it lies on a server. */
public final class Locker implements AutoCloseable {
    private static final int LONGEST_KEY = 200;

    private final Database database;
    private final Supplier<Catalogue> catalogue;
    private final Clock clock;
    private final Tokens tokens;
    private final Documents documents;
    private final Marks marks;
    private final Exercises exercises;
    /** The units as they were last read; used as long as the database says that they are the same. */
    private volatile Shelf shelf;

    private Locker(Database database, Supplier<Catalogue> catalogue, Clock clock) {
        this.database = database;
        this.catalogue = catalogue;
        this.clock = clock;
        this.tokens = new Tokens(database, clock);
        this.documents = new Documents(database);
        this.marks = new Marks(database);
        this.exercises = new Exercises(database);
    }

    /**
     * Opens a locker and brings its tables up to date.
     *
     * @param place where it is kept; made if it is a file and not there
     * @param catalogue asked for the mic types known at the moment
     * @param clock what time it is
     * @throws LockerFault.Unreachable where it cannot be opened, was written by a newer program, or is a file of something else, which stays as it is
     */
    public static Locker open(Place place, Supplier<Catalogue> catalogue, Clock clock) {
        if (place.file() != null) {
            LockerFile.refuseForeign(place.file());
        }
        Database database = Database.open(place);
        try {
            Migrations.run(database, clock);
            return new Locker(database, catalogue, clock);
        } catch (RuntimeException fault) {
            database.close();
            throw fault;
        }
    }

    /**
     * Does something in one transaction, once. Sent again with the same key it is not done again, and what was said then is said again.
     *
     * @param act who, and by what it is known again
     * @param work what is done, and what is to be said of it
     */
    public Outcome change(Act act, Function<Changes, String> work) {
        if (act.key() != null && (act.key().isBlank() || act.key().length() > LONGEST_KEY)) {
            throw new LockerFault.Unusable(List.of(new Fault("/key", "the key has " + act.key().length() + " characters. Give 1 to " + LONGEST_KEY)));
        }
        return database.write(sql -> {
            String before = act.key() == null ? null : History.said(sql, act);
            if (before != null) {
                return new Outcome(before, true);
            }
            Instant now = clock.instant();
            Transaction transaction = new Transaction(sql, shelf(sql), catalogue.get().mics(), now, clock.getZone(), act.who());
            String says;
            try {
                String said = work.apply(transaction);
                says = said == null ? "" : said;
            } catch (Transaction.Failed failed) {
                transaction.settle();
                throw failed;
            }
            transaction.settle();
            if (act.key() != null) {
                History.remember(sql, act, says, now);
            }
            if (transaction.changed()) {
                sql.run("UPDATE state SET revision = revision + 1, units_revision = units_revision + ?", transaction.unitsChanged() ? 1 : 0);
            }
            return new Outcome(says, false);
        });
    }

    /** The same locker as it is used at another time, for a demo that has a past; it is closed with this one. */
    Locker at(Clock other) {
        return new Locker(database, catalogue, other);
    }

    /** Every unit, in the order of their labels as people count (2 before 10). */
    public List<Unit> units() {
        return database.read(this::shelf).units();
    }

    /** A unit by its id. */
    public Optional<Unit> unit(String id) {
        return Optional.ofNullable(database.read(this::shelf).byId().get(id));
    }

    /** Of every unit that is one of a matched pair, the other, by id; a mate that is named and not there is none. */
    public Map<String, String> mates() {
        return database.read(this::shelf).mates();
    }

    /** Units whose tag, serial, label or id is what was typed or scanned, whatever the case; none, one, or more where labels are alike. */
    public List<Unit> scanned(String text) {
        return database.read(this::shelf).scanned(text);
    }

    /**
     * Sees that a mic type that is looked for is one: of a name mistyped nothing is free either, but nobody has it.
     *
     * @param micType of the catalogue, or of a unit whose type was taken out of that; null for any
     * @throws LockerFault.Unusable where there is none, with the nearest
     */
    public void checkType(String micType) {
        if (micType == null || units().stream().anyMatch(unit -> micType.equals(unit.micType()))) {
            return;
        }
        Set<String> types = catalogue.get().mics().keySet();
        if (!types.contains(micType)) {
            throw new LockerFault.Unusable(List.of(new Fault("/micType", UnitChecks.noSuchType(micType, types))));
        }
    }

    /** How every unit stands for a time, in the order of {@link #units()}. */
    public List<Standing> standing(Span span) {
        return standing(span, Set.of());
    }

    /**
     * The same as if some bookings were not there, such as those of whoever asks. When a unit that others have is free again counts them all the same.
     *
     * @param but ids of the bookings
     */
    public List<Standing> standing(Span span, Set<String> but) {
        return database.read(sql -> Availability.standing(sql, shelf(sql), span, nowS(), but));
    }

    /**
     * The units that can be had for all of a time, in the order of {@link #units()}.
     *
     * @param micType only of this type; null for any kind of unit
     */
    public List<Unit> free(Span span, String micType) {
        return database.read(sql -> Availability.free(sql, shelf(sql), span, micType, nowS()));
    }

    /** What a question may use for a time; null while the locker holds no microphone, and out of reach while the database is. */
    public Stock stock(Span span) {
        return stock(span, Set.of());
    }

    /** The same as if some bookings were not there, by their ids. */
    public Stock stock(Span span, Set<String> but) {
        try {
            return database.read(sql -> Availability.stock(sql, shelf(sql), span, nowS(), but, clock.getZone()));
        } catch (LockerFault.Unreachable away) {
            return Stock.OUT_OF_REACH;
        }
    }

    /**
     * Bookings that touch a time, earliest first; also those a unit of which is out at that time before they begin.
     *
     * @param unit only of this unit; null for all
     */
    public List<Booking> bookings(Span span, String unit) {
        return unit == null ? database.read(sql -> BookingRows.touching(sql, span.from().getEpochSecond(), span.until().getEpochSecond()))
                : bookings(span, unit, Integer.MAX_VALUE);
    }

    /** Of each of some units, its first booking that touches a time, where there is one. */
    public Map<String, Booking> next(Collection<String> units, Span span) {
        return database.read(sql -> BookingRows.next(sql, units, span.from().getEpochSecond(), span.until().getEpochSecond()));
    }

    /**
     * The first of the bookings that touch a time, earliest first.
     *
     * @param unit only of this unit; null for all
     * @param most how many
     */
    public List<Booking> bookings(Span span, String unit, int most) {
        return bookings(span, unit, ListMark.START, most);
    }

    /**
     * Of the bookings that touch a time, earliest first, those after a mark.
     *
     * @param unit only of this unit; null for all
     * @param most how many
     */
    public List<Booking> bookings(Span span, String unit, ListMark after, int most) {
        return database.read(sql -> BookingRows.first(sql, span, unit, after, most));
    }

    /** How many bookings touch a time. */
    public long count(Span span) {
        return database.read(sql -> BookingRows.count(sql, span.from().getEpochSecond(), span.until().getEpochSecond()));
    }

    /**
     * Times near a wanted one at which all of some units can be had for as long, nearest first: the last before it, the first after it, and the next days at
     * that time of day. None begins before now. Whether the units' condition lets them be used is not asked.
     *
     * @param but id of a booking that does not count, as it is to be altered; null for none
     */
    public List<Span> nearest(List<String> units, Span wanted, String but) {
        return database.read(sql -> NearestTimes.of(sql, units, wanted, but == null ? -1 : Long.parseLong(but), nowS(), clock.getZone()));
    }

    /** A booking by its id. */
    public Optional<Booking> booking(String id) {
        return database.read(sql -> BookingRows.of(sql, id));
    }

    /** What somebody has at this moment, longest overdue first. */
    public List<Out> out() {
        return database.read(sql -> Usage.out(sql, shelf(sql), nowS()));
    }

    /** How much of each type is taken on each day of a month. */
    public Use use(YearMonth month, ZoneId zone) {
        return database.read(sql -> Usage.of(sql, shelf(sql), month, zone));
    }

    /**
     * What was done, newest first.
     *
     * @param about id of a unit or booking; null for everything
     * @param before only events with a lower number; null for the newest
     * @param most how many
     */
    public List<Event> history(String about, Long before, int most) {
        return database.read(sql -> History.of(sql, about, before, most));
    }

    /** What time it is by the clock of the locker. */
    public Instant now() {
        return clock.instant();
    }

    /** A number that differs after every change, whoever made it. */
    public long revision() {
        return database.read(sql -> sql.number("SELECT revision FROM state"));
    }

    /** By what it is told from every other locker; a copy that was restored from a backup is the same locker. */
    public String ownId() {
        return database.read(sql -> sql.first("SELECT own_id FROM state", row -> row.getString(1)).orElseThrow());
    }

    /** Who may come in. */
    public Tokens tokens() {
        return tokens;
    }

    /** What is written down of sessions. */
    public Documents documents() {
        return documents;
    }

    /** What became of the microphones of sessions. */
    public Marks marks() {
        return marks;
    }

    /** Exercises of the lab, and what was handed in. */
    public Exercises exercises() {
        return exercises;
    }

    /** Writes all of it as it is at one moment into a new file, while it serves. */
    public void backUp(Path file) {
        new Backup(database, clock).into(file);
    }

    /**
     * Replaces all of it by what a backup holds, in one step, while it serves. The history says so.
     *
     * @param who does it, for the history
     * @throws LockerFault.Unusable where the file is no backup
     */
    public void restore(Path file, String who) {
        new Backup(database, clock).from(file, who);
        tokens.forget();
    }

    @Override
    public void close() {
        database.close();
    }

    private long nowS() {
        return clock.instant().getEpochSecond();
    }

    private Shelf shelf(Sql sql) throws SQLException {
        long revision = sql.number("SELECT units_revision FROM state");
        Shelf known = shelf;
        if (known == null || known.revision() != revision) {
            known = Shelf.of(revision, UnitRows.all(sql));
            shelf = known;
        }
        return known;
    }
}
