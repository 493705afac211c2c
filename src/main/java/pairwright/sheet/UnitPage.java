package pairwright.sheet;

import java.time.DateTimeException;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import pairwright.acoustics.MeasuredResponse;
import pairwright.acoustics.OctaveCurve;
import pairwright.catalogue.Shown;
import pairwright.drawing.Look;
import pairwright.drawing.OctaveDrawing;
import pairwright.locker.Act;
import pairwright.locker.Booking;
import pairwright.locker.LockerFault;
import pairwright.locker.ResponsePoint;
import pairwright.locker.Span;
import pairwright.locker.Unit;
import pairwright.model.Fault;
import pairwright.model.MicType;
import pairwright.sheet.ReadingParts.Curve;
import pairwright.sheet.ReadingParts.Fact;
import pairwright.sheet.ReadingParts.Link;
import pairwright.sheet.ReadingParts.Plot;

/** Everything that is known of one unit, and the forms by which it goes out and comes back. */
public final class UnitPage {
    private static final Duration AHEAD = Duration.ofDays(400);
    private static final Duration BACK = Duration.ofDays(100);
    private static final int MOST_EVENTS = 20;
    private static final int MOST_PAST = 20;
    private static final String DO = "do";
    private static final String OUT = "out";
    private static final String IN = "in";
    private static final Map<String, String> DONE = Map.of("added", "The unit is in the locker.", "altered", "The unit was altered.", OUT, "It is out.", IN, "It is back.");

    private UnitPage() {
    }

    /** One booking of the unit. */
    public record Use(Link when, String kind, String forWhat, String by, String went) {
    }

    /**
     * What it shows.
     *
     * @param id of the unit
     * @param handling cautions of its type, which come first
     * @param word how it stands now
     * @param state the rest of that sentence
     * @param type of a microphone the catalogue knows; else null
     * @param mate of a matched pair; null for none
     * @param response its own beside that of its type; null where none was measured
     * @param takeOut null where it is out or nobody may
     * @param bringBack null where it is not out or nobody may
     * @param writes what can be done with it, empty for a reader
     */
    public record Content(String id, List<String> handling, String word, String state, Link type, Link mate, List<Fact> facts, Plot response, List<Use> coming, List<Use> past,
            List<HistoryPage.Line> history, Link allHistory, SendForm takeOut, SendForm bringBack, List<Link> writes) {
    }

    /** The page; null for no such unit. */
    public static Page of(AtLocker at, String id) {
        Unit unit = at.locker().unit(id).orElse(null);
        return unit == null ? null : page(at, 200, unit, outForm(at, unit), inForm(at, unit));
    }

    private static SendForm outForm(AtLocker at, Unit unit) {
        return SendForm.to(at.visit(), address(unit), OUT, List.of(FormField.line("by", "Who takes it").within(OUT).hint("Left empty: who booked it, or you."),
                FormField.moment("until", "Back by").within(OUT).hint("Needed only where nobody booked it: then it is a loan."))).hiding(DO, OUT);
    }

    private static SendForm inForm(AtLocker at, Unit unit) {
        return SendForm.to(at.visit(), address(unit), IN, List.of()).hiding(DO, IN);
    }

    private static String address(Unit unit) {
        return "/locker/units/" + unit.id();
    }

    /** Takes it out or brings it back; null for no such unit. */
    public static UnitWritePages.Done moved(AtLocker at, String id, Sent sent, Act act) {
        Unit unit = at.locker().unit(id).orElse(null);
        if (unit == null) {
            return null;
        }
        boolean goesOut = !IN.equals(sent.first(DO));
        SendForm form = goesOut ? outForm(at, unit).typed(sent) : inForm(at, unit).typed(sent);
        int status;
        try {
            Instant until = goesOut ? until(at, sent) : null;
            at.locker().change(act, changes -> goesOut ? changes.takeOut(id, sent.first("by"), until).id() : changes.bringBack(id).id());
            return new UnitWritePages.Done(address(unit) + "?done=" + (goesOut ? OUT : IN), null);
        } catch (DateTimeException noTime) {
            form = form.wrong(List.of(new Fault("/until", "\u201c" + Shown.of(sent.first("until")) + "\u201d is no time. Write one like "
                    + at.moments().field(at.now()).replace('T', ' '))));
            status = 400;
        } catch (LockerFault.Unusable wrong) {
            form = form.wrong(wrong.faults());
            status = 400;
        } catch (LockerFault.KeyUsedOtherwise other) {
            form = form.underAnotherKey().wrong("This form was sent before with something else in it, and that was done. Look how the unit stands, then press again");
            status = 422;
        } catch (LockerFault.Taken | LockerFault.NotThere refused) {
            form = form.wrong(refused.getMessage());
            status = 409;
        }
        return new UnitWritePages.Done(null, page(at, status, unit, goesOut ? form : outForm(at, unit), goesOut ? inForm(at, unit) : form));
    }

    private static Instant until(AtLocker at, Sent sent) {
        return sent.first("until") == null ? null : at.moments().read(sent.first("until"));
    }

    private static Page page(AtLocker at, int status, Unit unit, SendForm out, SendForm in) {
        MicType type = unit.micType() == null ? null : at.known().catalogue().mics().get(unit.micType());
        UnitStates.State state = UnitStates.now(at, unit.id()).of(unit);
        boolean isOut = at.locker().out().stream().anyMatch(one -> one.unit().id().equals(unit.id()));
        String mate = at.locker().mates().get(unit.id());
        List<Booking> bookings = at.locker().bookings(new Span(at.now().minus(BACK), at.now().plus(AHEAD)), unit.id());
        List<Booking> past = new ArrayList<>(bookings.stream().filter(one -> !UnitStates.ahead(at, unit, one)).toList());
        Collections.reverse(past);
        Content content = new Content(unit.id(), type == null ? List.of() : at.measures().sentences(type.handling()), state.word(), state.says(),
                type == null ? null : at.at().mic(type), mate == null ? null : at.locker().unit(mate).map(one -> UnitsPage.link(at, mate, one.label())).orElse(null),
                new UnitFacts(at).of(unit), response(at, unit, type),
                UnitStates.uses(at, unit, bookings.stream().filter(one -> UnitStates.ahead(at, unit, one)).toList()),
                UnitStates.uses(at, unit, past.stream().limit(MOST_PAST).toList()),
                HistoryPage.lines(at, at.locker().history(unit.id(), null, MOST_EVENTS)), at.at().link("/locker/history?about=" + unit.id(), "All of its history"),
                at.mayWrite() && (!isOut || out.faulty()) ? out : null, at.mayWrite() && (isOut || in.faulty()) ? in : null, writes(at, unit));
        String done = Objects.requireNonNullElse(at.visit().first("done"), "");
        return at.page(status, "unit", at.frame(unit.label(), "units", List.of(at.at().link("/locker", "Units")), status == 200 ? DONE.getOrDefault(done, "") : ""),
                "unit", content);
    }

    private static List<Link> writes(AtLocker at, Unit unit) {
        Link calendar = new Link("/api/locker/units/" + unit.id() + "/calendar.ics", "Its calendar feed");
        return !at.mayWrite() ? List.of(calendar) : List.of(at.at().link("/locker/bookings/new?unit=" + unit.id(), "Book it"),
                at.at().link(address(unit) + "/alter", "Alter it"),
                at.at().link(address(unit) + "/remove", "Remove it"), calendar);
    }

    /** What was measured of this unit beside what holds for its type; null for nothing measured. */
    private static Plot response(AtLocker at, Unit unit, MicType type) {
        if (unit.response().size() < 2) {
            return null;
        }
        OctaveCurve ownDb = MeasuredResponse.octavesDb(unit.response().stream().mapToDouble(ResponsePoint::frequencyHz).toArray(),
                unit.response().stream().mapToDouble(ResponsePoint::levelDb).toArray());
        List<OctaveDrawing.Series> series = new ArrayList<>(List.of(new OctaveDrawing.Series("this unit", ownDb, Look.ONE)));
        List<Curve> curves = new ArrayList<>(List.of(new Curve("This unit, dB", at.measures().nine(ownDb))));
        if (type != null) {
            series.add(new OctaveDrawing.Series("its type", type.responseDb(), Look.TWO));
            curves.add(new Curve("Its type, dB", at.measures().nine(type.responseDb())));
        }
        String caption = type == null ? "Measured of this unit, re 1 kHz" : "Measured of this unit, beside its type, re 1 kHz";
        return new Plot("response", caption, OctaveDrawing.of(caption, "dB", series, null, "response-drawing", at.visit().reader()), curves);
    }
}
