package pairwright.sheet;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import pairwright.catalogue.Shown;
import pairwright.locker.Booking;
import pairwright.locker.BookingKind;
import pairwright.locker.Unit;
import pairwright.model.Fault;
import pairwright.sheet.ReadingParts.Link;

/** The page with the form of a booking: of a new one, or of one that is altered. */
public final class BookingForm {
    private static final String FORM = "booking";
    private static final Pattern INSTANT = Pattern.compile("\\d{4}-\\d{2}-\\d{2}T\\d{2}:\\d{2}(:\\d{2})?(\\.\\d+)?Z");

    private final AtLocker at;
    private final BookingTyped typed;
    private final Booking altered;
    private final BookingTimes times;

    /**
     * What it shows.
     *
     * @param notes what to know of the time
     * @param zone whose time it is
     * @param stays units that are in the booking whatever is chosen
     * @param look where the form asks what is free
     */
    public record Content(SendForm form, List<String> notes, String zone, List<Stay> stays, BookingUnits.Offer offer, BookingWays ways, String look, String button, Link back) {
    }

    /**
     * A unit that is in the booking whatever is chosen.
     *
     * @param id of the unit
     */
    public record Stay(String id, String label, String says) {
    }

    /** @param altered the booking that is altered; null for a new one */
    BookingForm(AtLocker at, BookingTyped typed, Booking altered) {
        this.at = at;
        this.typed = altered == null ? typed : typed.keeping(kept(altered).map(Booking.Line::unit).toList());
        this.altered = altered;
        this.times = BookingTimes.read(at, typed.from(), typed.until(), altered == null ? null : altered.span());
    }

    /** What has left its place for the booking, or the locker for good. */
    private Stream<Booking.Line> kept(Booking booking) {
        return booking.lines().stream().filter(line -> line.takenAt() != null || at.locker().unit(line.unit()).isEmpty());
    }

    BookingTyped typed() {
        return typed;
    }

    BookingTimes times() {
        return times;
    }

    /** What cannot be read of what was typed. */
    List<Fault> faults() {
        List<Fault> faults = new ArrayList<>(times.faults());
        if (typed.kind() != null && Stream.of(BookingKind.values()).noneMatch(kind -> kind.id().equals(typed.kind()))) {
            faults.add(new Fault("/kind", "\u201c" + Shown.of(typed.kind()) + "\u201d is no kind of booking. Choose one that is offered"));
        }
        return faults;
    }

    /** That an alteration leaves no unit: the locker would take it to leave them as they were. */
    List<Fault> noUnit() {
        return altered != null && typed.units().isEmpty() ? List.of(new Fault("/units", "No unit is chosen")) : List.of();
    }

    /** What is wrong with an address, where nothing is to be booked yet. */
    List<Fault> askedFaults() {
        List<Fault> faults = new ArrayList<>(faults());
        faults.addAll(times.turned(at.moments()));
        typed.units().stream().filter(id -> at.locker().unit(id).isEmpty() && (altered == null || !altered.units().contains(id)))
                .forEach(id -> faults.add(new Fault("/units", "There is no unit \u201c" + Shown.of(id) + "\u201d in the locker. Choose another")));
        return faults;
    }

    /** Under a key of its own. */
    SendForm form() {
        List<FormField> fields = List.of(
                FormField.moment("from", "From").needed().value(typed.from()),
                FormField.moment("until", "Until").needed().value(typed.until()),
                FormField.choice("kind", "Kind", LockerChoices.bookingKinds()).value(Objects.requireNonNullElse(typed.kind(), BookingKind.SESSION.id()))
                        .hint("For a repair, units that are in repair are offered as well."),
                FormField.line("for", "For what").value(typed.forWhat()).hint("The session, the class, who borrows it, or the workshop."),
                FormField.line("by", "By whom").value(typed.by()).hint("Who answers for it, so that others know whom to ask. Left empty: the name of your token, or \u201cthis machine\u201d."),
                FormField.line("note", "Note").value(typed.note()),
                FormField.line(BookingTyped.UNIT, "Units"));
        SendForm form = SendForm.to(at.visit(), address(), FORM, fields);
        form = altered == null ? form : form.hiding(UnitWritePages.VERSION, Long.toString(altered.version()));
        return at.visit().reader().imperial() ? form.hiding("units", "imperial") : form;
    }

    String address() {
        return altered == null ? "/locker/bookings/new" : "/locker/bookings/" + altered.id() + "/alter";
    }

    /** Faults as the locker says them: at the fields of this form, and moments as this reader writes them. */
    List<Fault> told(List<Fault> faults) {
        return faults.stream().map(fault -> fault.at().equals("/units") && typed.units().isEmpty()
                ? new Fault("/" + BookingTyped.UNIT, "No unit is chosen. Tick at least one")
                : new Fault(fault.at().replaceFirst("^/units(?=/|$)", "/" + BookingTyped.UNIT), shown(fault.says()))).toList();
    }

    private String shown(String says) {
        Matcher instants = INSTANT.matcher(says);
        return at.moments().within(instants.replaceAll(found -> Matcher.quoteReplacement(at.moments().moment(Instant.parse(found.group())))));
    }

    /**
     * The page.
     *
     * @param form with all that is wrong
     */
    Page page(int status, SendForm form) {
        return page(status, form, null);
    }

    /** The same for what was refused as somebody has it; the ways around it say more than the refusal, where there are any. */
    Page page(int status, SendForm asked, String refused) {
        BookingUnits units = new BookingUnits(at, typed, times.span(), altered);
        BookingWays ways = times.span() == null ? BookingWays.NONE : BookingWays.of(at, typed, times.span(), units, altered);
        SendForm form = refused == null ? asked : asked.wrong(ways.any() ? "Not all of it is free then. Below stands who has it, and what can be had instead" : at.moments().within(refused));
        FormField filter = FormField.grouped(BookingTyped.MIC_TYPE, "Show only", units.filters()).value(typed.micType());
        List<FormField> fields = new ArrayList<>(form.fields());
        fields.add(filter);
        Content content = new Content(new SendForm(form.id(), form.action(), form.key(), form.hidden(), fields, form.faults()), times.notes(), at.moments().zone(), stays(),
                units.offer(), ways, address(), altered == null ? "Book it" : "Alter it", altered == null ? at.at().link("/locker/bookings", "Back to the bookings")
                        : at.at().link("/locker/bookings/" + altered.id(), "Leave it as it is"));
        List<Link> trail = new ArrayList<>(List.of(at.at().link("/locker/bookings", "Bookings")));
        if (altered != null) {
            trail.add(at.at().link("/locker/bookings/" + altered.id(), "Booking " + altered.id()));
        }
        return at.page(status, "booking-form", at.frame(altered == null ? "Book units" : "Alter booking " + altered.id(), "bookings", trail, "").withoutTimes(), "content", content);
    }

    private List<Stay> stays() {
        return altered == null ? List.of() : kept(altered).map(line -> new Stay(line.unit(), at.locker().unit(line.unit()).map(Unit::label).orElse(line.label()),
                line.isOut() ? "is out with " + line.takenBy() : line.returnedAt() != null ? "came back " + at.moments().moment(line.returnedAt()) : "has left the locker")).toList();
    }
}
