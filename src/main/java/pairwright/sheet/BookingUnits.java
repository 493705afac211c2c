package pairwright.sheet;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.IntStream;
import pairwright.locker.Booking;
import pairwright.locker.BookingKind;
import pairwright.locker.Condition;
import pairwright.locker.Out;
import pairwright.locker.Span;
import pairwright.locker.Standing;
import pairwright.locker.Unit;
import pairwright.locker.UnitKind;
import pairwright.model.MicType;
import pairwright.sheet.ReadingParts.Link;

/** The units of the locker as they can be chosen for a time: what is free, and what is not and why. */
public final class BookingUnits {
    private static final int MOST_FREE = 300;
    private static final int MOST_TAKEN = 100;

    private final AtLocker at;
    private final BookingTyped typed;
    private final Span span;
    private final Booking altered;
    private final UnitStates states;
    private final List<Unit> units;
    private final Map<String, String> mates;
    private final Set<String> own = new LinkedHashSet<>();
    private final Set<String> free = new HashSet<>();

    /**
     * A unit that can be ticked.
     *
     * @param id of the unit
     * @param says what to know before it is chosen; empty for nothing
     */
    public record Tick(String id, String label, boolean ticked, String says) {
    }

    /** Units that are chosen one by one; two are a matched pair. */
    public record Row(List<Tick> ticks) {
    }

    /** Units of one type or kind. */
    public record Group(String name, String count, List<Row> rows) {
    }

    /**
     * A unit that is not free.
     *
     * @param booking that has it; null for none
     * @param again prefilled with the first time it is free for as long; null where none is known
     */
    public record Taken(Link unit, String word, String says, Link booking, Link again) {
    }

    /**
     * All of it.
     *
     * @param chosen ticked, and not free for that time
     * @param more how many free units are not shown
     * @param moreTaken how many others
     */
    public record Offer(List<Tick> chosen, List<Group> groups, int more, List<Taken> taken, int moreTaken) {
    }

    /**
     * @param span null where no time is known; then only what is chosen is shown
     * @param altered the booking that is altered, whose units are free for it; null for a new one
     */
    BookingUnits(AtLocker at, BookingTyped typed, Span span, Booking altered) {
        this.at = at;
        this.typed = typed;
        this.span = span;
        this.altered = altered;
        this.states = span == null ? null : UnitStates.during(at, span);
        // a unit that was added this very moment has no standing yet
        this.units = at.locker().units().stream().filter(unit -> span == null || states.standing(unit) != null).toList();
        this.mates = at.locker().mates();
        if (altered != null) {
            altered.lines().stream().filter(line -> line.takenAt() == null).map(Booking.Line::unit).forEach(own::add);
        }
        if (span != null) {
            units.stream().filter(this::isFree).map(Unit::id).forEach(free::add);
        }
    }

    private boolean isFree(Unit unit) {
        Standing standing = states.standing(unit);
        if (gone(unit.id())) {
            return false; // it is in the booking whatever is chosen
        }
        if (own.contains(unit.id())) {
            return other(unit, standing) == null;
        }
        boolean usable = unit.condition().usable() || typed.bookingKind() == BookingKind.REPAIR && unit.condition() == Condition.IN_REPAIR;
        return usable && standing.booking() == null && !standing.overdue();
    }

    /** Whether it left its place for the booking that is altered, and so stays in it. */
    private boolean gone(String id) {
        return altered != null && altered.lines().stream().anyMatch(line -> line.unit().equals(id) && line.takenAt() != null);
    }

    /** What takes a unit for some of the time, but for the booking that is altered; null for nothing. */
    private Booking other(Unit unit, Standing standing) {
        if (standing.booking() == null || !own.contains(unit.id()) || !standing.booking().id().equals(altered.id())) {
            return standing.booking();
        }
        return at.locker().bookings(span, unit.id()).stream().filter(one -> !one.id().equals(altered.id())
                && one.lines().stream().anyMatch(line -> line.unit().equals(unit.id()) && line.span().touches(span))).findFirst().orElse(null);
    }

    /** What takes a unit for some of the time; null for nothing. */
    Booking taker(Unit unit) {
        return states == null ? null : other(unit, states.standing(unit));
    }

    /** Who has a unit that should be back; null for nobody. */
    Out late(Unit unit) {
        return states == null ? null : states.late(unit);
    }

    /** Units that are chosen and not free. */
    List<Unit> clashing() {
        return span == null ? List.of() : units.stream().filter(unit -> typed.units().contains(unit.id()) && !free.contains(unit.id()) && !gone(unit.id())).toList();
    }

    /** Units that may stand in for one: of its type or kind, free, and not chosen yet. */
    List<Unit> like(Unit unit) {
        return units.stream().filter(one -> free.contains(one.id()) && !typed.units().contains(one.id()) && group(one).equals(group(unit)))
                .sorted(Comparator.comparing(Unit::condition)).toList();
    }

    Offer offer() {
        List<Tick> chosen = units.stream().filter(unit -> typed.units().contains(unit.id()) && !free.contains(unit.id()) && !gone(unit.id()))
                .map(unit -> new Tick(unit.id(), unit.label(), true, span == null ? "" : said(unit))).toList();
        if (span == null) {
            return new Offer(chosen, List.of(), 0, List.of(), 0);
        }
        Map<String, List<Unit>> all = new LinkedHashMap<>();
        units.stream().sorted(Comparator.comparing(Unit::kind).thenComparing(this::group)).filter(unit -> !gone(unit.id()))
                .forEach(unit -> all.computeIfAbsent(group(unit), any -> new ArrayList<>()).add(unit));
        List<Group> groups = new ArrayList<>();
        int shown = 0;
        int more = 0;
        for (Map.Entry<String, List<Unit>> one : all.entrySet()) {
            List<Unit> can = one.getValue().stream().filter(unit -> free.contains(unit.id()) && (wanted(unit) || typed.units().contains(unit.id()))).toList();
            int room = Math.max(0, MOST_FREE - shown);
            List<Unit> fit = IntStream.range(0, can.size()).filter(place -> place < room || typed.units().contains(can.get(place).id()))
                    .mapToObj(can::get).toList();
            shown += fit.size();
            more += can.size() - fit.size();
            if (!fit.isEmpty()) {
                long count = one.getValue().stream().filter(unit -> free.contains(unit.id())).count();
                groups.add(new Group(one.getKey(), count + " of " + one.getValue().size() + " free", rows(fit)));
            }
        }
        List<Unit> out = units.stream().filter(unit -> !free.contains(unit.id()) && !gone(unit.id()) && wanted(unit) && !typed.units().contains(unit.id())).toList();
        return new Offer(chosen, groups, more, out.stream().limit(MOST_TAKEN).map(this::taken).toList(), Math.max(0, out.size() - MOST_TAKEN));
    }

    private boolean wanted(Unit unit) {
        return typed.micType() == null || typed.micType().equals(unit.micType()) || typed.micType().equals(unit.kind().id());
    }

    /** Each beside its mate, where both are there. */
    private List<Row> rows(List<Unit> some) {
        List<Row> rows = new ArrayList<>();
        Set<String> done = new HashSet<>();
        for (Unit unit : some) {
            if (done.add(unit.id())) {
                List<Tick> ticks = new ArrayList<>(List.of(tick(unit)));
                some.stream().filter(one -> one.id().equals(mates.get(unit.id())) && done.add(one.id())).forEach(mate -> ticks.add(tick(mate)));
                rows.add(new Row(ticks));
            }
        }
        return rows;
    }

    private Tick tick(Unit unit) {
        List<String> says = new ArrayList<>();
        if (unit.condition() != Condition.GOOD) {
            says.add(LockerChoices.named(unit.condition()) + (unit.note() == null ? "" : ": " + unit.note()));
        }
        String mate = mates.get(unit.id());
        if (mate != null && !free.contains(mate) && !gone(mate)) {
            at.locker().unit(mate).ifPresent(one -> says.add("Matched with " + one.label() + ", which is not free"));
        }
        return new Tick(unit.id(), unit.label(), typed.units().contains(unit.id()), String.join(". ", says));
    }

    private String said(Unit unit) {
        if (own.contains(unit.id())) {
            return "booked for " + UnitStates.what(taker(unit));
        }
        UnitStates.State state = states.of(unit);
        return (state.word() + " " + state.says()).strip();
    }

    private Taken taken(Unit unit) {
        Standing standing = states.standing(unit);
        UnitStates.State state = states.of(unit);
        Booking booking = taker(unit);
        Link again = standing.freeFrom() == null || own.contains(unit.id()) ? null
                : at.at().link(typed.during(at, new Span(standing.freeFrom(), standing.freeFrom().plus(Duration.between(span.from(), span.until()))))
                        .address(address(), version()), at.moments().moment(standing.freeFrom()));
        return new Taken(UnitsPage.link(at, unit.id(), unit.label()), state.word(), state.word().equals("overdue") ? state.says() : booking == null || !unit.condition().usable() ? "" : "for " + UnitStates.what(booking),
                booking == null ? null : at.at().link("/locker/bookings/" + booking.id(), "booking " + booking.id()), again);
    }

    /** Where the form is. */
    String address() {
        return altered == null ? "/locker/bookings/new" : "/locker/bookings/" + altered.id() + "/alter";
    }

    String version() {
        return altered == null ? null : Long.toString(altered.version());
    }

    private String group(Unit unit) {
        if (unit.kind() != UnitKind.MIC) {
            return LockerChoices.several(unit.kind());
        }
        MicType type = at.known().catalogue().mics().get(unit.micType());
        return type == null ? unit.micType() : type.name();
    }

    /** By what can be chosen what is shown: the types and kinds the locker has. */
    List<Choice.Group> filters() {
        Map<String, Choice> types = new TreeMap<>();
        Map<String, Choice> kinds = new LinkedHashMap<>();
        units.stream().sorted(Comparator.comparing(Unit::kind)).forEach(unit -> {
            if (unit.kind() == UnitKind.MIC) {
                types.putIfAbsent(group(unit), new Choice(unit.micType(), group(unit), false));
            } else {
                kinds.putIfAbsent(group(unit), new Choice(unit.kind().id(), group(unit), false));
            }
        });
        List<Choice.Group> all = new ArrayList<>(List.of(new Choice.Group("", List.of(new Choice("", "Everything", false)))));
        if (!types.isEmpty()) {
            all.add(new Choice.Group("Microphones and line boxes", List.copyOf(types.values())));
        }
        if (!kinds.isEmpty()) {
            all.add(new Choice.Group("Boxes and stands", List.copyOf(kinds.values())));
        }
        return all;
    }
}
