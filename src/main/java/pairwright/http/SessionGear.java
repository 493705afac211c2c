package pairwright.http;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import pairwright.catalogue.Shown;
import pairwright.locker.Locker;
import pairwright.locker.LockerFault;
import pairwright.locker.Span;
import pairwright.model.Fault;
import pairwright.model.FromLocker;
import pairwright.model.Nearest;
import pairwright.session.Gear;
import pairwright.session.GearOf;
import pairwright.session.LineUp;

/** What there is to plan a request with: what it names itself, or what the stored locker has for its time. */
public final class SessionGear {
    private SessionGear() {
    }

    /**
     * The gear of a request.
     *
     * @param locker null for none; then everything is at hand that the request does not count
     * @throws LockerFault.Unusable where the request names a booking, or something lost, that there is not
     * @throws LockerFault.Unreachable where the stored locker is needed and does not answer
     */
    public static Gear of(SessionRequest request, Locker locker) {
        List<Fault> faults = new ArrayList<>();
        boolean stored = request.gear() == null && request.use() != FromLocker.ANY && locker != null;
        if (locker == null && request.gear() == null && request.use() != null && request.use() != FromLocker.ANY) {
            faults.add(new Fault("/locker", "there is no locker here of which something could be " + request.use().id() + ". Name what there is, or leave locker out"));
        }
        bookings(request, locker, stored, faults);
        if (!faults.isEmpty()) {
            throw new LockerFault.Unusable(faults);
        }
        Gear gear = stored ? stored(request, locker) : request.gear() == null ? Gear.ANYTHING : request.gear();
        lost(request, gear, faults);
        if (!faults.isEmpty()) {
            throw new LockerFault.Unusable(faults);
        }
        return gear;
    }

    private static Gear stored(SessionRequest request, Locker locker) {
        LineUp lineUp = request.lineUp();
        Span span = LockerAtHand.span(lineUp.from(), lineUp.until(), locker.now());
        return request.use() == FromLocker.OWNED ? GearOf.owned(locker, span) : GearOf.free(locker, span, Set.copyOf(request.bookings()));
    }

    private static void bookings(SessionRequest request, Locker locker, boolean stored, List<Fault> faults) {
        for (int i = 0; i < request.bookings().size(); i++) {
            String id = request.bookings().get(i);
            if (!stored || !id.matches("[0-9]{1,18}") || locker.booking(id).isEmpty()) {
                faults.add(new Fault("/bookings/" + i, stored ? "there is no booking \"" + Shown.of(id) + "\". Name those of this session, or leave it out"
                        : "bookings are of the stored locker, which is not used here. Leave them out"));
            }
        }
    }

    /** A name mistyped would be something that is not lost, and nobody would be told. */
    private static void lost(SessionRequest request, Gear gear, List<Fault> faults) {
        if (request.before() == null) {
            return;
        }
        Set<String> units = new TreeSet<>();
        Set<String> channels = new TreeSet<>();
        Set<String> seats = new TreeSet<>(request.lineUp().seats().stream().map(seat -> seat.id()).toList());
        if (gear.stock() != null) {
            gear.stock().units().forEach(unit -> units.add(unit.id()));
        }
        (gear.stands() == null ? List.<Gear.Stand>of() : gear.stands()).forEach(stand -> units.add(stand.id()));
        gear.boosters().forEach(booster -> units.add(booster.id()));
        gear.pads().forEach(pad -> units.add(pad.id()));
        (gear.channels() == null ? List.<Gear.Channel>of() : gear.channels()).forEach(channel -> channels.add(channel.id()));
        request.before().seats().forEach(at -> {
            seats.add(at.seat());
            at.mics().forEach(mic -> {
                Stream.of(mic.unit(), mic.stand(), mic.booster(), mic.box(), mic.pad()).filter(id -> id != null).forEach(units::add);
                if (mic.channel() != null) {
                    channels.add(mic.channel());
                }
            });
        });
        known("/lost/units", "unit", request.lost().units(), units, faults);
        known("/lost/channels", "channel", request.lost().channels(), channels, faults);
        known("/lost/seats", "seat", request.lost().seats(), seats, faults);
    }

    private static void known(String at, String kind, List<String> lost, Set<String> known, List<Fault> faults) {
        for (int i = 0; i < lost.size(); i++) {
            if (!known.contains(lost.get(i))) {
                faults.add(new Fault(at + "/" + i, "there is no " + kind + " \"" + Shown.of(lost.get(i)) + "\" in the plan and among what there is. "
                        + Nearest.to(Shown.of(lost.get(i)), known).map(near -> "Did you mean " + near + "?").orElse("Leave it out")));
            }
        }
    }
}
