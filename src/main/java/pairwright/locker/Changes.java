package pairwright.locker;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import pairwright.model.Stock;

/** What can be done within one transaction. Every method may throw a {@link LockerFault}, and then nothing of the transaction happened. */
public interface Changes {
    /** A new unit. */
    Unit add(UnitDraft draft);

    /**
     * Says of a unit what the draft says, and nothing else: what the draft leaves out is taken away, but for the label. Whoever wants to change one
     * thing alters its {@link Unit#draft()}.
     *
     * @param version it must have; null for whatever it has
     */
    Unit alter(String id, UnitDraft draft, Long version);

    /** Takes a unit out of the locker for good; refused while it is booked from now on or somebody has it. Its past bookings keep its label. */
    void remove(String id, Long version);

    /** Books all units or none. */
    Booking book(BookingDraft draft);

    /**
     * Books it anew in one step; units that are out stay. What the draft leaves out (null, or no units) stays as it was; an empty text takes away.
     *
     * @param version it must have; null for whatever it has
     */
    Booking alter(String id, BookingDraft draft, Long version);

    /** Gives the units back that nobody took; refused while one of them is out. */
    void cancel(String id, Long version);

    /**
     * A unit leaves its place, by whatever is typed or scanned: tag, serial, label or id. It belongs to the booking that has it now, or to the next one if
     * it is free until then; else it is booked as a loan until the given moment.
     *
     * @param by who takes it; null for who booked it
     * @param until needed where no booking has it; null otherwise
     */
    Booking takeOut(String scanned, String by, Instant until);

    /** A unit is back in its place; what is left of its booking is free again. */
    Booking bringBack(String scanned);

    /** Every unit as it is within this transaction, in the order of their labels. */
    List<Unit> units();

    /** A unit as it is within this transaction. */
    Unit unit(String id);

    /** A booking as it is within this transaction. */
    Booking booking(String id);

    /**
     * Writes a document: a new one, or in place of what is there. Nothing changes where it says the same already.
     *
     * @param version it must have, 0 for none there yet; null for whatever it has
     */
    Document put(DocumentDraft draft, Long version);

    /** Takes a document away, with all that belongs to it and, of a session, its marks. Its booking stays. */
    void removeDocument(String id, Long version);

    /** A document as it is within this transaction. */
    Document document(String id);

    /** The same where there may be none. */
    Optional<Document> documentIfThere(String id);

    /** The version of a session's marks as a whole within this transaction; 0 where there never was one. */
    long marksVersion(String session);

    /**
     * Books for a session, all units or none, in place of what was booked for it before: there is no moment in which it has nothing. The session minds its
     * booking.
     *
     * @param id of its line-up
     */
    Booking bookFor(String id, BookingDraft draft);

    /** Notes what became of one microphone of a session, in place of what was noted of it before; says all of its marks. */
    List<Mark> mark(String session, MarkDraft mark);

    /**
     * Notes what became of the microphones of a session: these marks, and no others that were there.
     *
     * @param version of its marks as a whole, 0 for none yet; null for whatever they have
     */
    List<Mark> marks(String session, List<MarkDraft> marks, Long version);

    /** What a question may use for a time, as {@link Locker#stock}, within this transaction; null while the locker holds no microphone. */
    Stock stock(Span span);

    /**
     * Keeps new exercises, and books their kit in one go.
     *
     * @param kit null for nothing to book
     */
    ExerciseSet makeExercises(ExerciseSetDraft draft, BookingDraft kit);

    /**
     * Says from when on everybody may see the keys.
     *
     * @param opensAt null for never
     * @param version they must have; null for whatever they have
     */
    ExerciseSet openKeys(String id, Instant opensAt, Long version);

    /** Takes exercises away with all that was handed in. Their booking stays. */
    void removeExercises(String id, Long version);

    /** Exercises as they are within this transaction. */
    ExerciseSet exercises(String id);

    /**
     * Keeps what a bench handed in, beside what it handed in before.
     *
     * @param points what it earns; null where it is not to be marked yet, and so is {@code ofPoints}
     * @param late whether everybody could see the key by now
     */
    HandedIn handIn(String exercises, int bench, String answer, Double points, Double ofPoints, boolean late);
}
