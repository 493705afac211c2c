package pairwright.sheet;

import java.time.DateTimeException;
import java.time.Instant;
import java.util.List;
import java.util.Objects;
import java.util.UUID;
import java.util.stream.Stream;
import pairwright.catalogue.Shown;
import pairwright.locker.Act;
import pairwright.locker.Booking;
import pairwright.locker.Changes;
import pairwright.locker.Condition;
import pairwright.locker.LockerFault;
import pairwright.locker.Out;
import pairwright.locker.Unit;
import pairwright.model.Fault;
import pairwright.sheet.DeskPage.Press;
import pairwright.sheet.DeskPage.Told;
import pairwright.sheet.ReadingParts.Link;

/** One unit taken out or brought back at the desk, or why it was not. */
final class DeskWork {
    private static final String DO = "do";
    private static final String TAKE_FOR = "take-for";
    private static final String LOAN = "loan";
    private static final int UNUSABLE = 400;
    private static final int TAKEN = 409;
    private static final int USED_OTHERWISE = 422;
    private static final String SENT_BEFORE = "This form was sent before with something else in it, and that was done. Look at what is out, then press again if this is to be done as well.";

    private final AtLocker at;
    private final Sent sent;
    private final Act act;
    private final boolean out;
    private DeskForm form;

    DeskWork(AtLocker at, Sent sent, Act act) {
        this.at = at;
        this.sent = sent;
        this.act = act;
        form = DeskForm.of(sent);
        out = sent.first(DO) == null ? form.out() : DeskForm.OUT.equals(sent.first(DO));
        if (sent.first(TAKE_FOR) != null) {
            form = form.forBooking(sent.first(TAKE_FOR));
        }
    }

    /** Undoes what was begun: the booking it would be taken for is that of another, which is asked about first. */
    private static final class OfAnother extends RuntimeException {
        private static final long serialVersionUID = 1;
        private final transient Booking booking;

        OfAnother(Booking booking) {
            super("booking " + booking.id(), null, false, false);
            this.booking = booking;
        }
    }

    UnitWritePages.Done done() {
        String chosen = sent.first(DeskPage.UNIT);
        String text = chosen != null ? chosen : form.scanned();
        if (text.isEmpty()) {
            return told(UNUSABLE, new Told("Nothing was scanned or typed. Scan a tag, or type what is written on the unit.", List.of(), List.of()));
        }
        List<Unit> found = chosen == null ? at.locker().scanned(text) : at.locker().unit(chosen).map(List::of).orElse(List.of());
        if (found.isEmpty()) {
            return told(UNUSABLE, new Told("No unit has the tag, serial, label or id \u201c" + Shown.of(text) + "\u201d. Scan it again, or type what is written on it.", List.of(),
                    List.of(at.at().link("/locker?words=" + Visit.escaped(Shown.of(text)), "Look for it among the units"))));
        }
        if (found.size() > 1) {
            return told(UNUSABLE, new Told(found.size() + " units go by \u201c" + Shown.of(text) + "\u201d. Which one is it?",
                    found.stream().map(unit -> new Press(DeskPage.UNIT, unit.id(), among(unit))).toList(), List.of()));
        }
        Unit unit = found.get(0);
        if (chosen != null) {
            form = form.scanned(scan(unit));
        }
        try {
            return out ? goesOut(unit) : comesBack(unit);
        } catch (LockerFault.KeyUsedOtherwise other) {
            return again(USED_OTHERWISE, UUID.randomUUID().toString(), new Told(SENT_BEFORE, List.of(), List.of()), null);
        } catch (LockerFault.NotThere gone) {
            return told(TAKEN, new Told(at.moments().within(SendForm.sentence(gone.getMessage())), List.of(), List.of()));
        }
    }

    /** By what a unit is found alone: nothing comes before a tag. */
    private static String scan(Unit unit) {
        return unit.tag() != null ? unit.tag() : unit.id();
    }

    /** What tells it from others of its label. */
    private static String among(Unit unit) {
        return unit.label() + Stream.of(unit.tag() == null ? null : "tag " + unit.tag(), unit.serial() == null ? null : "serial " + unit.serial(), unit.storedAt(),
                unit.tag() == null && unit.serial() == null ? "id " + unit.id() : null).filter(Objects::nonNull).map(what -> ", " + what).reduce("", String::concat);
    }

    private UnitWritePages.Done comesBack(Unit unit) {
        try {
            return led(at.locker().change(act, changes -> moved(changes.bringBack(scan(unit)), unit)).text());
        } catch (LockerFault.NotThere notOut) {
            return notOut(unit);
        }
    }

    private UnitWritePages.Done notOut(Unit unit) {
        return told(TAKEN, new Told(unit.label() + " is not out, so it cannot come back. See that the right unit was scanned.",
                List.of(new Press(DO, DeskForm.OUT, "Take " + unit.label() + " out")), List.of(UnitsPage.link(at, unit.id(), "What is known of " + unit.label()))));
    }

    private UnitWritePages.Done goesOut(Unit unit) {
        try {
            return sent.first(LOAN) != null ? lent(unit) : led(at.locker().change(act, changes -> takenOut(changes, unit, null)).text());
        } catch (OfAnother other) {
            return ofAnother(unit, other.booking);
        } catch (LockerFault.Unusable unusable) {
            if (unusable.faults().stream().anyMatch(fault -> fault.at().equals("/until"))) {
                return lent(unit);
            }
            return unusable(unusable);
        } catch (LockerFault.Taken taken) {
            return taken(unit, taken);
        }
    }

    /** Where no booking has it, or it is not for that one: out until the time that was said. */
    private UnitWritePages.Done lent(Unit unit) {
        if (!unit.condition().usable()) {
            return broken(unit);
        }
        if (form.until().isEmpty()) {
            form = form.withUsualEnd(at, null);
            return told(UNUSABLE, new Told("No booking has " + unit.label() + " within a day, so say when it comes back. Press Enter or scan it again to take it until "
                    + at.moments().moment(at.moments().read(form.until())) + ", or write another time below.", List.of(), List.of()));
        }
        Instant until;
        try {
            until = at.moments().read(form.until());
        } catch (DateTimeException noTime) {
            return wrongEnd("\u201c" + Shown.of(form.until()) + "\u201d is no time. Write one like " + at.moments().field(at.now()).replace('T', ' '));
        }
        if (!until.isAfter(at.now())) {
            return wrongEnd("It cannot be back by " + at.moments().moment(until) + ", which has passed. Choose a later time");
        }
        try {
            return led(at.locker().change(act, changes -> takenOut(changes, unit, until)).text());
        } catch (LockerFault.Unusable unusable) {
            return unusable(unusable);
        } catch (LockerFault.Taken taken) {
            return taken(unit, taken);
        }
    }

    private String takenOut(Changes changes, Unit unit, Instant until) {
        Booking booking = changes.takeOut(scan(unit), form.by().isEmpty() ? null : form.by(), until);
        boolean asked = until != null || form.by().isEmpty() || form.by().equalsIgnoreCase(booking.by()) || form.booking().equals(booking.id());
        if (!asked) {
            throw new OfAnother(booking);
        }
        return moved(booking, unit);
    }

    /** What is kept of the act: so much that a repetition leads to the same sentence. */
    private String moved(Booking booking, Unit unit) {
        if (DeskWords.line(booking, unit.id()) == null) {
            throw new LockerFault.NotThere("The tag or label now belongs to another unit. Scan it again");
        }
        return booking.id() + " " + unit.id();
    }

    private UnitWritePages.Done led(String moved) {
        String[] parts = moved.split(" ");
        return new UnitWritePages.Done(form.address(new Param(DeskPage.DID, out ? DeskForm.OUT : DeskForm.BACK), new Param(DeskPage.UNIT, parts[1]),
                new Param(DeskPage.BOOKING, parts[0])), null);
    }

    private UnitWritePages.Done ofAnother(Unit unit, Booking booking) {
        boolean later = booking.span().from().isAfter(at.now());
        form = later ? form.withUsualEnd(at, booking) : form;
        Press yes = new Press(TAKE_FOR, booking.id(), "Yes, take it for that");
        return told(TAKEN, new Told(unit.label() + " is booked for " + new DeskWords(at).booked(booking) + ". Does " + form.by() + " take it for that?" + (later ? "" : " If not, take another unit."),
                later ? List.of(yes, new Press(LOAN, "yes", "No, lend it until the time below")) : List.of(yes), List.of()));
    }

    private UnitWritePages.Done taken(Unit unit, LockerFault.Taken taken) {
        Out who = isOut(unit);
        if (who != null) {
            return told(TAKEN, new Told(SendForm.sentence(unit.label() + " is out already" + (who.overdue() ? " and overdue" : "") + ", with " + who.line().takenBy() + " for "
                    + UnitStates.what(who.booking()) + ", due " + at.moments().moment(who.line().span().until())),
                    List.of(new Press(DO, DeskForm.BACK, "Bring " + unit.label() + " back")), List.of()));
        }
        if (!unit.condition().usable()) {
            return broken(unit);
        }
        return told(TAKEN, new Told(at.moments().within(SendForm.sentence(taken.getMessage())), List.of(), List.of(UnitsPage.link(at, unit.id(), "Bookings of " + unit.label()))));
    }

    private UnitWritePages.Done broken(Unit unit) {
        boolean lost = unit.condition() == Condition.LOST;
        String note = unit.note() == null ? "" : ": " + unit.note();
        return told(TAKEN, new Told(lost ? SendForm.sentence(unit.label() + " is down as lost" + note) + " If it is in your hand, say so in its condition, then scan it again."
                : SendForm.sentence(unit.label() + " is in repair" + note) + " Take another, or correct its condition if it works again.", List.of(),
                List.of(at.at().link("/locker/units/" + unit.id() + "/alter", "Alter its condition"))));
    }

    private Out isOut(Unit unit) {
        return at.locker().out().stream().filter(one -> one.unit().id().equals(unit.id())).findFirst().orElse(null);
    }

    private UnitWritePages.Done unusable(LockerFault.Unusable wrong) {
        Fault fault = wrong.faults().get(0);
        return fault.at().equals("/until") ? wrongEnd("It " + fault.says())
                : told(UNUSABLE, new Told(SendForm.sentence(fault.at().equals("/by") ? "Who takes it " + fault.says() : fault.says()), List.of(), List.of()));
    }

    private UnitWritePages.Done wrongEnd(String says) {
        return again(UNUSABLE, null, new Told(SendForm.sentence(says), List.of(), List.of()), says);
    }

    private UnitWritePages.Done told(int status, Told told) {
        return again(status, null, told, null);
    }

    /** The page again; nothing was done under its key, so it keeps that. */
    private UnitWritePages.Done again(int status, String otherKey, Told told, String untilFault) {
        String key = otherKey != null ? otherKey : Objects.requireNonNullElse(sent.first(SendForm.KEY), UUID.randomUUID().toString());
        return new UnitWritePages.Done(null, DeskPage.page(at, status, form, key, told, untilFault, null));
    }
}
