package pairwright.locker;

import static pairwright.locker.LockerCase.hour;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/** One of a sequence of acts. Hours are from now; which booking is counted among those there are. */
sealed interface Step {
    record Book(List<String> units, int in, int hours, BookingKind kind) implements Step {
    }

    /** No units for those it has. */
    record Alter(int which, List<String> units, int in, int hours) implements Step {
    }

    record Cancel(int which) implements Step {
    }

    /** No hours for not said. */
    record TakeOut(String unit, int hours) implements Step {
    }

    record BringBack(String unit) implements Step {
    }

    record Find(String unit, Condition condition) implements Step {
    }

    record Pass(int hours) implements Step {
    }

    /** Does it to both; whether each did it. */
    default List<Boolean> on(NaiveLocker naive, Locker locker, TurnedClock clock) {
        int now = naive.now;
        if (this instanceof Book book) {
            return List.of(naive.book(book.units, now + book.in, now + book.in + book.hours, book.kind), done(locker, changes ->
                    changes.book(new BookingDraft(book.units, hour(now + book.in), hour(now + book.in + book.hours), book.kind, "x", "Wren", null))));
        }
        if (this instanceof TakeOut take) {
            Integer until = take.hours == 0 ? null : now + take.hours;
            return List.of(naive.takeOut(take.unit, until), done(locker, changes -> changes.takeOut(take.unit, "Wren", until == null ? null : hour(until))));
        }
        if (this instanceof BringBack back) {
            return List.of(naive.bringBack(back.unit), done(locker, changes -> changes.bringBack(back.unit)));
        }
        if (this instanceof Find find) {
            naive.units.put(find.unit, find.condition);
            return List.of(true, done(locker, changes -> changes.alter(find.unit, changes.unit(find.unit).draft().in(find.condition, "x"), null)));
        }
        if (this instanceof Pass pass) {
            naive.now += pass.hours;
            clock.turn(hour(naive.now));
            return List.of();
        }
        List<Integer> there = new ArrayList<>(naive.bookings.keySet());
        if (there.isEmpty()) {
            return List.of();
        }
        if (this instanceof Alter alter) {
            int id = there.get(alter.which % there.size());
            return List.of(naive.alter(id, alter.units, now + alter.in, now + alter.in + alter.hours), done(locker, changes -> changes.alter(Integer.toString(id),
                    new BookingDraft(alter.units, hour(now + alter.in), hour(now + alter.in + alter.hours), null, null, null, null), null)));
        }
        int id = there.get(((Cancel) this).which % there.size());
        return List.of(naive.cancel(id), done(locker, changes -> {
            changes.cancel(Integer.toString(id), null);
            return "";
        }));
    }

    /** Refused with a reason is the only way not to be done. */
    private static boolean done(Locker locker, Function<Changes, Object> work) {
        try {
            locker.change(Act.by("Wren"), changes -> work.apply(changes).toString());
            return true;
        } catch (LockerFault.Taken | LockerFault.Unusable | LockerFault.NotThere refused) {
            return false;
        }
    }
}
