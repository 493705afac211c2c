package pairwright.session;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;
import pairwright.locker.BookingDraft;
import pairwright.locker.BookingKind;
import pairwright.locker.LockerFault;
import pairwright.model.Fault;

/** What is to be booked for a session: all that its plan takes of the locker. */
public final class Booked {
    private Booked() {
    }

    /**
     * The booking of a session.
     *
     * @param lineUp says for when
     * @param picks microphones, channels, stands and what is in a line, those that are named
     * @param name what it is for
     * @param by who books
     * @throws LockerFault.Unusable where the session has no time, or no unit is named
     */
    public static BookingDraft draft(LineUp lineUp, Picks picks, String name, String by) {
        List<Fault> faults = new ArrayList<>();
        if (lineUp.from() == null) {
            faults.add(new Fault("/from", "the session does not say from when. Give its line-up a from, then book"));
        }
        if (lineUp.until() == null) {
            faults.add(new Fault("/until", "the session does not say until when. Give its line-up an until, then book"));
        }
        List<String> units = units(picks);
        if (units.isEmpty()) {
            faults.add(new Fault("/picks", "no unit of the locker is picked. Plan with what the locker holds, and keep that plan"));
        }
        if (!faults.isEmpty()) {
            throw new LockerFault.Unusable(faults);
        }
        return new BookingDraft(units, lineUp.from().toInstant(), lineUp.until().toInstant(), BookingKind.SESSION, name, by, null);
    }

    /** Ids of all units that picks name, each once: what two microphones share is taken once. */
    public static List<String> units(Picks picks) {
        Set<String> units = new LinkedHashSet<>();
        picks.seats().forEach(seat -> seat.mics().forEach(mic ->
                Stream.of(mic.unit(), mic.channel(), mic.stand(), mic.booster(), mic.box(), mic.pad()).filter(Objects::nonNull).forEach(units::add)));
        return List.copyOf(units);
    }
}
