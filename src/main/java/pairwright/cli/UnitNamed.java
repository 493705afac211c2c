package pairwright.cli;

import java.util.List;
import java.util.stream.Collectors;
import pairwright.catalogue.Shown;
import pairwright.locker.Locker;
import pairwright.locker.LockerFault;
import pairwright.locker.Unit;

/** A unit by whatever is written on it. */
final class UnitNamed {
    private UnitNamed() {
    }

    /** The one that is called so; a fault where there is none, or more than one. */
    static Unit of(Locker locker, String typed) {
        List<Unit> found = locker.scanned(typed);
        if (found.size() == 1) {
            return found.get(0);
        }
        throw new LockerFault.NotThere(found.isEmpty() ? "There is no unit \"" + Shown.of(typed) + "\". All of them: pairwright locker list"
                : "\"" + Shown.of(typed) + "\" may be " + found.stream().map(unit -> unit.id() + " (" + unit.label() + ")").collect(Collectors.joining(" or ")) + ". Say its id");
    }
}
