package pairwright.http;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.List;
import pairwright.locker.Booking;
import pairwright.locker.BookingKind;
import pairwright.locker.Event;
import pairwright.locker.ListMark;
import pairwright.locker.Out;
import pairwright.locker.Span;
import pairwright.locker.Standing;
import pairwright.locker.TableFault;
import pairwright.locker.TablePreview;
import pairwright.locker.Unit;
import pairwright.locker.Use;

/** What programs are told of the locker. Moments are written in the zone of the server; a unit is told as it is. */
public final class LockerView {
    private LockerView() {
    }

    /** Units, and how each stands for a time where one was named. */
    public record Units(OffsetDateTime from, OffsetDateTime until, List<Unit> units, List<Stands> standing) {
    }

    /** How a unit stands for that time. */
    public record Stands(String unit, boolean free, boolean overdue, String booking, OffsetDateTime freeFrom) {
        public static Stands of(Standing standing) {
            return new Stands(standing.unit().id(), standing.free(), standing.overdue(),
                    standing.booking() == null ? null : standing.booking().id(), shown(standing.freeFrom()));
        }
    }

    /** A booking. */
    public record Booked(String id, List<String> units, OffsetDateTime from, OffsetDateTime until, BookingKind kind, @JsonProperty("for") String forWhat, String by,
            String note, List<Line> lines, long version) {
        public static Booked of(Booking booking) {
            return new Booked(booking.id(), booking.units(), shown(booking.span().from()), shown(booking.span().until()), booking.kind(), booking.forWhat(),
                    booking.by(), booking.note(), booking.lines().stream().map(Line::of).toList(), booking.version());
        }
    }

    /** One unit of a booking. */
    public record Line(String unit, OffsetDateTime from, OffsetDateTime until, OffsetDateTime takenAt, String takenBy, OffsetDateTime returnedAt) {
        public static Line of(Booking.Line line) {
            return new Line(line.unit(), shown(line.span().from()), shown(line.span().until()), shown(line.takenAt()), line.takenBy(), shown(line.returnedAt()));
        }
    }

    /** The bookings that touch a time; {@code after} asks for those that follow. */
    public record Bookings(OffsetDateTime from, OffsetDateTime until, List<Booked> bookings, String after) {
        public static Bookings of(Span span, List<Booking> bookings, boolean more) {
            return new Bookings(shown(span.from()), shown(span.until()), bookings.stream().map(Booked::of).toList(),
                    more ? ListMark.after(bookings.get(bookings.size() - 1)).text() : null);
        }
    }

    /** What can be had for all of a time. */
    public record Free(OffsetDateTime from, OffsetDateTime until, List<Unit> units) {
        public static Free of(Span span, List<Unit> units) {
            return new Free(shown(span.from()), shown(span.until()), units);
        }
    }

    /** What somebody has now. */
    public record OutNow(OffsetDateTime now, List<Taken> out) {
        public static OutNow of(Instant now, List<Out> out) {
            return new OutNow(shown(now.truncatedTo(ChronoUnit.SECONDS)), out.stream().map(Taken::of).toList());
        }
    }

    /** A unit somebody has. */
    public record Taken(Unit unit, String booking, @JsonProperty("for") String forWhat, String by, OffsetDateTime takenAt, String takenBy, OffsetDateTime until,
            boolean overdue) {
        public static Taken of(Out out) {
            return new Taken(out.unit(), out.booking().id(), out.booking().forWhat(), out.booking().by(), shown(out.line().takenAt()), out.line().takenBy(),
                    shown(out.line().span().until()), out.overdue());
        }
    }

    /** What was done; {@code before} asks for what was done earlier. */
    public record History(List<Done> events, Long before) {
        public static History of(List<Event> events, boolean more) {
            return new History(events.stream().map(Done::of).toList(), more ? events.get(events.size() - 1).number() : null);
        }
    }

    /** Something that was done. */
    public record Done(long number, OffsetDateTime at, String who, String what, String about, String says) {
        public static Done of(Event event) {
            return new Done(event.number(), shown(event.at()), event.who(), event.what(), event.about(), event.says());
        }
    }

    /** How much of each type is taken on each day of a month. */
    public record MonthOfUse(String month, List<Use.OfType> types) {
        public static MonthOfUse of(Use use) {
            return new MonthOfUse(use.month().toString(), use.types());
        }
    }

    /**
     * What a table of units would do, or did.
     *
     * @param done whether it was done
     * @param added how many units are new
     */
    public record Table(boolean done, long added, long changed, long same, List<Row> rows, List<TableFault> faults, int more) {
        public static Table of(boolean done, TablePreview preview) {
            return new Table(done, preview.count(TablePreview.Effect.NEW), preview.count(TablePreview.Effect.CHANGED), preview.count(TablePreview.Effect.SAME),
                    preview.rows().stream().filter(row -> row.effect() != TablePreview.Effect.SAME).map(Row::of).toList(), preview.faults(), preview.more());
        }
    }

    /** What a row of a table does to its unit. */
    public record Row(int line, TablePreview.Effect effect, String unit, String label, List<TablePreview.Change> changes) {
        public static Row of(TablePreview.Row row) {
            return new Row(row.line(), row.effect(), row.unit().id(), row.unit().label(), row.changes());
        }
    }

    public static OffsetDateTime shown(Instant moment) {
        return moment == null ? null : moment.atZone(ZoneId.systemDefault()).toOffsetDateTime();
    }
}
