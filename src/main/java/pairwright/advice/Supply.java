package pairwright.advice;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import pairwright.model.Answer;
import pairwright.model.Catalogue;
import pairwright.model.FromLocker;
import pairwright.model.Given;
import pairwright.model.MicType;
import pairwright.model.Question;
import pairwright.model.Stock;

/** What a question may use: everything, or the units of a locker. */
final class Supply {
    /** No locker. */
    static final Supply EVERYTHING = new Supply(null, null, null, null, null);
    private static final String LOST = "lost";
    /** So many units of a type are predicted by their own response; the rest as their type. More would cost time and change little. */
    static final int MEASURED_OF_A_TYPE = 6;

    private final FromLocker use;
    private final OffsetDateTime from;
    private final OffsetDateTime until;
    private final Stock stock;
    private final Catalogue catalogue;
    /** What each type is predicted as: as its type, and as each unit with a response of its own. */
    private final Map<String, List<MicType>> kinds = new HashMap<>();
    private final Map<MicType, Stock.Held> measured = new IdentityHashMap<>();
    private final Rack atHand;
    private final Rack owned;

    private Supply(FromLocker use, OffsetDateTime from, OffsetDateTime until, Stock stock, Catalogue catalogue) {
        this.use = use;
        this.from = from;
        this.until = until;
        this.stock = stock;
        this.catalogue = catalogue;
        if (!limits()) {
            this.owned = Rack.EVERYTHING;
            this.atHand = Rack.EVERYTHING;
            return;
        }
        List<Stock.Held> held = stock.units().stream().filter(unit -> catalogue.mics().containsKey(unit.micType()) && !isLost(unit))
                .sorted(Comparator.<Stock.Held, Boolean>comparing(unit -> !unit.free()).thenComparing(Supply::freeFrom)).toList();
        held.forEach(unit -> kinds.computeIfAbsent(unit.micType(), id -> new ArrayList<>(List.of(catalogue.mics().get(id)))));
        // by id and not by who is free, so that what is predicted does not depend on what is booked
        held.stream().filter(unit -> unit.ownResponseDb() != null).sorted(Comparator.comparing(Stock.Held::id)).forEach(unit -> {
            List<MicType> of = kinds.get(unit.micType());
            if (of.size() <= MEASURED_OF_A_TYPE) {
                MicType type = of.get(0);
                MicType own = type.unit(unit.ownResponseDb(), type.sensitivityMvPerPa(), type.selfNoiseDba(), type.maxDbSpl());
                of.add(own);
                measured.put(own, unit);
            }
        });
        this.owned = new Rack(held, measured);
        this.atHand = use == FromLocker.FREE ? new Rack(held.stream().filter(Stock.Held::free).toList(), measured) : owned;
    }

    static boolean isLost(Stock.Held unit) {
        return !unit.free() && LOST.equals(unit.out().why());
    }

    private static OffsetDateTime freeFrom(Stock.Held unit) {
        return unit.free() || unit.out().freeFrom() == null ? OffsetDateTime.MAX : unit.out().freeFrom();
    }

    /** What a question may use, as things are at this moment. */
    static Supply of(AtHand atHand, Question question, Catalogue catalogue) {
        return of(atHand, question, catalogue, question.locker() == null ? FromLocker.FREE : question.locker());
    }

    /** The same, used in a way the question need not say. */
    static Supply of(AtHand atHand, Question question, Catalogue catalogue, FromLocker use) {
        if (use == FromLocker.ANY) {
            return EVERYTHING;
        }
        Stock stock = atHand.at(question.from(), question.until());
        return stock == null || stock.reachable() && stock.units().isEmpty() ? EVERYTHING
                : new Supply(use, question.from(), question.until(), stock, catalogue);
    }

    /** Every unit of a stock that is not lost, out or not; everything for null. */
    static Supply whole(Stock stock, Catalogue catalogue) {
        return stock == null ? EVERYTHING : new Supply(FromLocker.OWNED, null, null, stock, catalogue);
    }

    /** The same locker, used in another way. */
    Supply as(FromLocker other) {
        return other == FromLocker.ANY || stock == null ? EVERYTHING : new Supply(other, from, until, stock, catalogue);
    }

    /** Whether it keeps an answer to the units of a locker. */
    boolean limits() {
        return stock != null && stock.reachable();
    }

    FromLocker use() {
        return use;
    }

    /** What may be taken. */
    Rack atHand() {
        return atHand;
    }

    /** What there is, whoever has it; nothing that is lost. */
    Rack owned() {
        return owned;
    }

    /** Some of the units of this supply, and no others. */
    Rack rack(List<Stock.Held> units) {
        return new Rack(units, measured);
    }

    /** Whether it is predicted by the response of one unit, not as its type. */
    boolean measured(MicType kind) {
        return measured.containsKey(kind);
    }

    /** Whether something is there that cannot be taken. */
    boolean missesSomething() {
        return atHand != owned;
    }

    /** What a type is predicted as; nothing where there is none of it. */
    List<MicType> kinds(MicType mic) {
        return limits() ? kinds.getOrDefault(mic.id(), List.of()) : List.of(mic);
    }

    /** What an answer says of it; null without a locker. */
    Answer.Stocked stocked() {
        return stock == null ? null : new Answer.Stocked(use, from, until, stock.reachable());
    }

    /** What was not said and is taken as usual, in sentences. */
    List<String> assumed() {
        if (stock == null) {
            return List.of();
        }
        if (!stock.reachable()) {
            return List.of("The locker does not answer just now: the whole catalogue was ranked, as if everything were at hand.");
        }
        String hours = AtHand.USUAL_LENGTH.toHours() + " hours";
        return from == null && until == null ? List.of("No time was named: the locker is taken as it is now and for " + hours + ".")
                : until == null ? List.of("No end was named: the microphones are needed for " + hours + ".")
                : from == null ? List.of("No start was named: the microphones are needed from now on.") : List.of();
    }

    /** How many units of a type are free; null without a locker. */
    Integer free(MicType mic) {
        return limits() ? Integer.valueOf((int) stock.units().stream().filter(unit -> unit.micType().equals(mic.id()) && unit.free()).count()) : null;
    }

    /** The unit for each microphone of a candidate; empty where one is wanting, null without a locker. */
    List<List<Given>> given(Candidate candidate) {
        if (!limits()) {
            return null;
        }
        MicType first = candidate.first().placed().mic();
        if (candidate.isSingle()) {
            return List.of(given(atHand.one(first), null));
        }
        MicType second = candidate.second().placed().mic();
        if (!first.id().equals(second.id())) {
            return List.of(given(atHand.one(first), null), given(atHand.one(second), null));
        }
        List<Stock.Held> two = atHand.two(first.id(), candidate.pair().technique().stereo());
        return two.isEmpty() ? List.of(given(atHand.one(first), null), List.of()) : List.of(given(two.get(0), two.get(1)), given(two.get(1), two.get(0)));
    }

    /**
     * The units of these ids, one for each microphone.
     *
     * @throws IllegalArgumentException for one that is not there
     */
    List<List<Given>> given(List<String> ids) {
        List<Stock.Held> units = ids.stream().map(this::unit).toList();
        return units.size() == 1 ? List.of(given(units.get(0), null))
                : List.of(given(units.get(0), units.get(1)), given(units.get(1), units.get(0)));
    }

    private Stock.Held unit(String id) {
        return stock.units().stream().filter(unit -> unit.id().equals(id)).findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no unit " + id + " in the stock"));
    }

    private static List<Given> given(Stock.Held unit, Stock.Held other) {
        if (unit == null) {
            return List.of();
        }
        String mate = other != null && (other.id().equals(unit.pairMate()) || unit.id().equals(other.pairMate())) ? other.id() : null;
        return List.of(new Given(unit.id(), unit.label(), unit.tag(), unit.storedAt(), unit.note(), mate, unit.free() ? null : unit.out().freeFrom(),
                unit.free() ? null : unit.out().why()));
    }

    /** The units of a type that cannot be had, the first that comes back first. */
    List<Stock.Held> taken(String micType) {
        return stock.units().stream().filter(unit -> unit.micType().equals(micType) && !unit.free())
                .sorted(Comparator.comparing(Supply::isLost).thenComparing(Supply::freeFrom)).toList();
    }
}
