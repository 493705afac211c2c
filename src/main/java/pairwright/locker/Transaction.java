package pairwright.locker;

import java.sql.SQLException;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import pairwright.model.MicType;
import pairwright.model.Stock;

/** The changes of one transaction. What failed stays failed: a caller that goes on regardless does not get it written. */
final class Transaction implements Changes {
    private final UnitWork unitWork;
    private final BookingWork bookingWork;
    private final DocumentWork documentWork;
    private final MarkWork markWork;
    private final ExerciseWork exerciseWork;
    private final Sql sql;
    private final Instant now;
    private final ZoneId zone;
    private Exception failed;

    Transaction(Sql sql, Shelf shelf, Map<String, MicType> types, Instant now, ZoneId zone, String who) {
        unitWork = new UnitWork(sql, shelf, types, now, zone, who);
        bookingWork = new BookingWork(sql, unitWork, now, zone, who);
        documentWork = new DocumentWork(sql, now, who);
        markWork = new MarkWork(sql, documentWork, now, who);
        exerciseWork = new ExerciseWork(sql, bookingWork, now, zone, who);
        this.sql = sql;
        this.now = now;
        this.zone = zone;
    }

    /** Carries what the database said through work that cannot throw it. */
    static final class Failed extends RuntimeException {
        private static final long serialVersionUID = 1;

        Failed(SQLException cause) {
            super(cause);
        }
    }

    /** Throws again what failed before. */
    void settle() throws SQLException {
        if (failed instanceof SQLException fault) {
            throw fault;
        }
        if (failed instanceof RuntimeException fault) {
            throw fault;
        }
    }

    boolean unitsChanged() {
        return unitWork.changed();
    }

    boolean changed() {
        return unitWork.changed() || bookingWork.changed() || documentWork.changed() || markWork.changed() || exerciseWork.changed();
    }

    @Override
    public Unit add(UnitDraft draft) {
        return doing(() -> unitWork.add(draft));
    }

    @Override
    public Unit alter(String id, UnitDraft draft, Long version) {
        return doing(() -> unitWork.alter(id, draft, version));
    }

    @Override
    public void remove(String id, Long version) {
        doing(() -> unitWork.remove(id, version));
    }

    @Override
    public Booking book(BookingDraft draft) {
        return doing(() -> bookingWork.book(draft));
    }

    @Override
    public Booking alter(String id, BookingDraft draft, Long version) {
        return doing(() -> bookingWork.alter(id, draft, version));
    }

    @Override
    public void cancel(String id, Long version) {
        doing(() -> bookingWork.cancel(id, version));
    }

    @Override
    public Booking takeOut(String scanned, String by, Instant until) {
        return doing(() -> bookingWork.takeOut(scanned, by, until));
    }

    @Override
    public Booking bringBack(String scanned) {
        return doing(() -> bookingWork.bringBack(scanned));
    }

    @Override
    public List<Unit> units() {
        return doing(() -> unitWork.shelf().units());
    }

    @Override
    public Unit unit(String id) {
        return doing(() -> unitWork.present(id, null));
    }

    @Override
    public Booking booking(String id) {
        return doing(() -> bookingWork.present(id));
    }

    @Override
    public Document put(DocumentDraft draft, Long version) {
        return doing(() -> documentWork.put(draft, version));
    }

    @Override
    public void removeDocument(String id, Long version) {
        doing(() -> documentWork.remove(id, version));
    }

    @Override
    public Document document(String id) {
        return doing(() -> documentWork.present(id));
    }

    @Override
    public Optional<Document> documentIfThere(String id) {
        return doing(() -> documentWork.of(id));
    }

    @Override
    public long marksVersion(String session) {
        return doing(() -> markWork.version(session));
    }

    @Override
    public Booking bookFor(String id, BookingDraft draft) {
        return doing(() -> {
            String before = documentWork.session(id).booking();
            boolean booked = before != null && bookingWork.isThere(before);
            Booking booking = booked ? bookingWork.alter(before, draft, null) : bookingWork.book(draft);
            documentWork.booked(id, booking.id());
            return booking;
        });
    }

    @Override
    public List<Mark> mark(String session, MarkDraft mark) {
        return doing(() -> markWork.put(session, mark));
    }

    @Override
    public List<Mark> marks(String session, List<MarkDraft> marks, Long version) {
        return doing(() -> markWork.replace(session, marks, version));
    }

    @Override
    public Stock stock(Span span) {
        return doing(() -> Availability.stock(sql, unitWork.shelf(), span, now.getEpochSecond(), Set.of(), zone));
    }

    @Override
    public ExerciseSet makeExercises(ExerciseSetDraft draft, BookingDraft kit) {
        return doing(() -> exerciseWork.make(draft, kit));
    }

    @Override
    public ExerciseSet openKeys(String id, Instant opensAt, Long version) {
        return doing(() -> exerciseWork.opens(id, opensAt, version));
    }

    @Override
    public void removeExercises(String id, Long version) {
        doing(() -> exerciseWork.remove(id, version));
    }

    @Override
    public ExerciseSet exercises(String id) {
        return doing(() -> exerciseWork.present(id));
    }

    @Override
    public HandedIn handIn(String exercises, int bench, String answer, Double points, Double ofPoints, boolean late) {
        return doing(() -> exerciseWork.handIn(exercises, bench, answer, points, ofPoints, late));
    }

    @FunctionalInterface
    private interface Step<T> {
        T take() throws SQLException;
    }

    private <T> T doing(Step<T> step) {
        try {
            return step.take();
        } catch (SQLException fault) {
            failed = failed == null ? fault : failed;
            throw new Failed(fault);
        } catch (LockerFault fault) {
            failed = failed == null ? fault : failed;
            throw fault;
        }
    }
}
