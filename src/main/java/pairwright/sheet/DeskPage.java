package pairwright.sheet;

import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.UUID;
import java.util.stream.Stream;
import pairwright.locker.Act;
import pairwright.locker.Booking;
import pairwright.locker.Out;
import pairwright.locker.Span;
import pairwright.locker.Unit;
import pairwright.sheet.ReadingParts.Link;

/**
 * The desk where units go out and come back. What is scanned is done at once, and the page is ready for the next; who takes units and which way they go
 * stays in its address.
 */
public final class DeskPage {
    /** Where it is. */
    public static final String ADDRESS = "/locker/desk";
    static final String DID = "did";
    static final String UNIT = "unit";
    static final String BOOKING = "booking";
    private static final int MOST_ROWS = 200;
    private static final Duration AROUND = Duration.ofDays(2);

    private DeskPage() {
    }

    /** A unit somebody has; with a key of its own, by which it is brought back once. */
    public record Row(String id, Link unit, String by, String forWhat, String due, boolean overdue, String key) {
    }

    /** A button that answers what the page asks. */
    public record Press(String name, String value, String label) {
    }

    /** What is wrong and what to do: buttons that do it, and where else to look; no link may be null. */
    public record Told(String says, List<Press> presses, List<Link> links) {
        public Told {
            presses = List.copyOf(presses);
            links = List.copyOf(links);
        }
    }

    /**
     * What was just done.
     *
     * @param says in a sentence
     * @param rest how the rest of the booking stands; empty for nothing to say
     * @param title of what must be known of the unit
     * @param handling what must be known of it; empty where it came back
     * @param wrong leads to where a fault of it is written down; null where it went out
     */
    public record Did(String says, String rest, String title, List<String> handling, Link wrong) {
    }

    /**
     * What it shows.
     *
     * @param mayWrite whether there is a form at all
     * @param asReader why there is none; empty where there is one
     * @param out whether units go out; else they come back
     * @param ways going out, then coming back
     * @param action where the form is sent
     * @param key of the form
     * @param scanned what stands in its field
     * @param kept sent along and not seen
     * @param allKept the same for a form that has none of its fields
     * @param by who takes units
     * @param until used where no booking has a unit
     * @param asking leads to where it is asked about again whose units these are; null where it is asked
     * @param askingSays whose units go out to anybody
     * @param told what is wrong; null for nothing
     * @param did what was done; null for nothing
     * @param overdue how many are
     * @param rows who has what, longest overdue first
     * @param more how many are out beside those
     * @param today what was done today
     */
    public record Content(boolean mayWrite, String asReader, boolean out, List<Link> ways, String action, String key, String scanned, List<Param> kept, List<Param> allKept, FormField by, FormField until,
            Link asking, String askingSays, Told told, Did did, long overdue, List<Row> rows, int more, List<HistoryPage.Line> today) {
        /** What the field for a scan is told by. */
        public String describedBy() {
            return told != null ? "told" : did == null ? "scan-hint" : did.handling().isEmpty() ? "just-done" : "just-done handling";
        }
    }

    /** As the address says. */
    public static Page of(AtLocker at) {
        return page(at, 200, DeskForm.of(at), UUID.randomUUID().toString(), null, null, did(at));
    }

    /** Does what was sent, once, and leads back here; or shows the page again with what is wrong. */
    public static UnitWritePages.Done sent(AtLocker at, Sent sent, Act act) {
        return new DeskWork(at, sent, act).done();
    }

    /** What was done, as the address tells it: by unit and booking, so that it says what holds by now and no address can make it say anything else. */
    private static Did did(AtLocker at) {
        String how = at.visit().first(DID);
        String id = at.visit().first(UNIT);
        String number = at.visit().first(BOOKING);
        Booking booking = how == null || id == null || number == null ? null : at.locker().booking(number).orElse(null);
        boolean out = DeskForm.OUT.equals(how);
        DeskWords words = new DeskWords(at);
        String says = booking == null ? "" : words.done(out, booking, id);
        if (says.isEmpty()) {
            return null;
        }
        Unit unit = at.locker().unit(id).orElse(null);
        boolean isOut = DeskWords.line(booking, id).isOut();
        return new Did(says, DeskWords.rest(out, booking), unit == null ? "" : "Handle " + unit.label() + " so",
                unit == null || !isOut ? List.of() : words.handling(unit),
                unit == null || out ? null : at.at().link("/locker/units/" + id + "/alter", "Something is wrong with " + unit.label()));
    }

    static Page page(AtLocker at, int status, DeskForm form, String key, Told told, String untilFault, Did did) {
        DeskWords words = new DeskWords(at);
        List<Out> out = at.locker().out();
        Booking asked = form.booking().isEmpty() ? null : at.locker().booking(form.booking()).orElse(null);
        DeskForm known = asked == null ? form.forBooking("") : form;
        FormField by = FormField.line(DeskForm.BY, "Who takes it").hint("Left empty: who booked it, or you.").value(known.by()).offering(at.mayWrite() ? names(at) : List.of());
        FormField until = FormField.moment(DeskForm.UNTIL, "Back by, where no booking has it").value(known.until());
        Content content = new Content(at.mayWrite(), at.asReader("engineers take units out and bring them back"), known.out(), List.of(at.at().link(known.going(true).address(), "Going out"),
                at.at().link(known.going(false).address(), "Coming back")), at.visit().to(ADDRESS), key, known.scanned(),
                known.out() ? known.kept().stream().filter(param -> !List.of(DeskForm.BY, DeskForm.UNTIL).contains(param.name())).toList() : known.kept(), known.kept(),
                by, untilFault == null ? until : until.wrong(untilFault), asked == null ? null : at.at().link(known.forBooking("").address(), "Ask again"),
                asked == null ? "" : "Units booked for " + UnitStates.what(asked) + " go out to anybody.", told, did,
                out.stream().filter(Out::overdue).count(), out.stream().limit(MOST_ROWS).map(words::row).toList(), Math.max(0, out.size() - MOST_ROWS), words.today());
        return at.page(status, "desk", at.frame("Desk", "desk", List.of(), did == null ? "" : did.says()), "desk", content);
    }

    /** Who books and takes units these days. */
    private static List<Choice> names(AtLocker at) {
        return at.locker().bookings(new Span(at.now().minus(AROUND), at.now().plus(AROUND)), null).stream()
                .flatMap(booking -> Stream.concat(Stream.of(booking.by()), booking.lines().stream().map(Booking.Line::takenBy))).filter(Objects::nonNull)
                .distinct().sorted((one, other) -> one.toLowerCase(Locale.ROOT).compareTo(other.toLowerCase(Locale.ROOT))).limit(50)
                .map(name -> new Choice(name, name, false)).toList();
    }
}
