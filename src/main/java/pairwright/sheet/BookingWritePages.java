package pairwright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import pairwright.locker.Act;
import pairwright.locker.Booking;
import pairwright.locker.LockerFault;
import pairwright.locker.Outcome;
import pairwright.model.Fault;
import pairwright.sheet.ReadingParts.Link;

/** Booking units, altering a booking, cancelling one. */
public final class BookingWritePages {
    private static final int OK = 200;
    private static final int UNUSABLE = 400;
    private static final int TAKEN = 409;
    private static final int CHANGED = 412;
    private static final int USED_OTHERWISE = 422;
    private static final String SENT_BEFORE = "This form was sent before with something else in it, and that was done. Press the button again if this is to be done as well";

    private BookingWritePages() {
    }

    /** A form for a new booking, filled with what the address says, and what is free then. */
    public static Page book(AtLocker at) {
        return asked(new BookingForm(at, BookingTyped.asked(at), null));
    }

    private static Page asked(BookingForm shown) {
        List<Fault> faults = shown.askedFaults();
        return shown.page(faults.isEmpty() ? OK : UNUSABLE, shown.form().wrong(shown.told(faults)));
    }

    /** Books what a form says. */
    public static UnitWritePages.Done booked(AtLocker at, Sent sent, Act act) {
        BookingForm shown = new BookingForm(at, BookingTyped.of(sent), null);
        return tried(shown, sent, () -> at.locker().change(act, changes -> changes.book(shown.typed().draft(shown.times())).id()), "booked");
    }

    /** A booking in the form, to be altered, or what the address says of it; null for no such booking. */
    public static Page alter(AtLocker at, String id) {
        Booking booking = at.locker().booking(id).orElse(null);
        if (booking == null) {
            return null;
        }
        boolean typed = at.visit().query().containsKey("from");
        BookingForm shown = new BookingForm(at, typed ? BookingTyped.asked(at) : BookingTyped.of(at, booking), booking);
        String version = at.visit().first(UnitWritePages.VERSION);
        if (typed && version != null && !version.equals(Long.toString(booking.version()))) {
            return changed(at, shown, booking);
        }
        return asked(shown);
    }

    /** Alters a booking as a form says; null for no such booking. */
    public static UnitWritePages.Done altered(AtLocker at, String id, Sent sent, Act act) {
        Booking booking = at.locker().booking(id).orElse(null);
        if (booking == null) {
            return null;
        }
        BookingForm shown = new BookingForm(at, BookingTyped.of(sent), booking);
        Long version = version(sent);
        try {
            return tried(shown, sent, () -> at.locker().change(act, changes -> changes.alter(id, shown.typed().draft(shown.times()), version).id()), "altered");
        } catch (LockerFault.Changed changed) {
            Booking now = at.locker().booking(id).orElse(null);
            return now == null ? null : new UnitWritePages.Done(null, changed(at, new BookingForm(at, BookingTyped.of(sent), now), now));
        } catch (LockerFault.NotThere cancelled) {
            return null;
        }
    }

    /** What was typed, beside what somebody made of the booking meanwhile. */
    private static Page changed(AtLocker at, BookingForm shown, Booking now) {
        List<String> differs = BookingWords.differences(at, now, shown.typed());
        return shown.page(CHANGED, shown.form().wrong("Somebody altered this booking since you opened the page, or a unit went out or came back, and nothing "
                + "of yours was saved. Pressing the button again puts yours in place of theirs" + (differs.isEmpty() ? ". By now both say the same" : ": " + String.join("; ", differs))));
    }

    private static Long version(Sent sent) {
        String text = sent.first(UnitWritePages.VERSION);
        return text == null || !text.matches("\\d{1,18}") ? null : Long.valueOf(text);
    }

    /** Asks before a booking is cancelled; null for no such booking. */
    public static Page cancel(AtLocker at, String id) {
        Booking booking = at.locker().booking(id).orElse(null);
        return booking == null ? null : cancelling(at, OK, cancelForm(at, booking), booking);
    }

    private static SendForm cancelForm(AtLocker at, Booking booking) {
        return SendForm.to(at.visit(), "/locker/bookings/" + booking.id() + "/cancel", "cancel", List.of()).hiding(UnitWritePages.VERSION, Long.toString(booking.version()));
    }

    private static Page cancelling(AtLocker at, int status, SendForm form, Booking booking) {
        Link back = at.at().link("/locker/bookings/" + booking.id(), "Keep it");
        List<Link> trail = List.of(at.at().link("/locker/bookings", "Bookings"), at.at().link("/locker/bookings/" + booking.id(), "Booking " + booking.id()));
        return at.page(status, "unit-form", at.frame("Cancel booking " + booking.id() + "?", "bookings", trail, ""), "content", new UnitWritePages.Content(
                BookingWords.whole(at, booking) + " The units nobody took are free again; the history stays.", List.of(), form, List.of(), "Cancel it", back));
    }

    /** Cancels a booking; null for no such booking. */
    public static UnitWritePages.Done cancelled(AtLocker at, String id, Sent sent, Act act) {
        try {
            // first of all, as one that is sent again finds no booking any more
            at.locker().change(act, changes -> {
                changes.cancel(id, version(sent));
                return id;
            });
            // what was taken and came back stays written down
            return new UnitWritePages.Done(at.locker().booking(id).isPresent() ? "/locker/bookings/" + id + "?done=given-back" : "/locker/bookings?done=cancelled", null);
        } catch (LockerFault.Changed changed) {
            return refused(at, CHANGED, id, "Somebody altered this booking since you opened the page. Above it stands as it is now; press again if it is to be cancelled");
        } catch (LockerFault.Unusable | LockerFault.Taken | LockerFault.KeyUsedOtherwise refused) {
            return refused(at, TAKEN, id, refused.getMessage());
        } catch (LockerFault.NotThere gone) {
            return null;
        }
    }

    private static UnitWritePages.Done refused(AtLocker at, int status, String id, String says) {
        return at.locker().booking(id).map(booking -> new UnitWritePages.Done(null, cancelling(at, status, cancelForm(at, booking).wrong(says), booking))).orElse(null);
    }

    private interface Work {
        Outcome outcome();
    }

    /** Does it and leads to the booking, or shows the form again with all that is wrong. */
    private static UnitWritePages.Done tried(BookingForm shown, Sent sent, Work work, String done) {
        SendForm form = keyed(shown.form(), sent);
        List<Fault> faults = new ArrayList<>(shown.faults());
        faults.addAll(shown.noUnit());
        if (faults.isEmpty()) {
            try {
                return new UnitWritePages.Done("/locker/bookings/" + work.outcome().text() + "?done=" + done, null);
            } catch (LockerFault.Unusable wrong) {
                faults.addAll(wrong.faults());
            } catch (LockerFault.Taken taken) {
                return new UnitWritePages.Done(null, shown.page(TAKEN, form, taken.getMessage()));
            } catch (LockerFault.KeyUsedOtherwise other) {
                return new UnitWritePages.Done(null, shown.page(USED_OTHERWISE, form.underAnotherKey().wrong(SENT_BEFORE)));
            }
        }
        return new UnitWritePages.Done(null, shown.page(UNUSABLE, form.wrong(shown.told(faults))));
    }

    /** Under the key it came with: what was not done may be sent again under it. */
    private static SendForm keyed(SendForm form, Sent sent) {
        return new SendForm(form.id(), form.action(), Objects.requireNonNullElse(sent.first(SendForm.KEY), form.key()), form.hidden(), form.fields(), form.faults());
    }
}
