package pairwright.advice;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import pairwright.acoustics.OctaveCurve;
import pairwright.model.MicType;
import pairwright.model.Stock;
import pairwright.model.Stock.Held;

/** Lockers for tests. */
final class Stocks {
    static final OffsetDateTime MONDAY = OffsetDateTime.parse("2027-03-01T14:00:00+01:00");
    static final Stock.Out OUT = new Stock.Out("session", "the barn trio", "Ada", MONDAY);

    private Stocks() {
    }

    static Held unit(String id, String micType) {
        return new Held(id, micType, id, null, null, null, null, null, null);
    }

    static Held out(Held unit) {
        return out(unit, OUT);
    }

    static Held out(Held unit, Stock.Out out) {
        return new Held(unit.id(), unit.micType(), unit.label(), unit.tag(), unit.storedAt(), unit.note(), unit.pairMate(), unit.ownResponseDb(), out);
    }

    static Held noted(Held unit, String storedAt, String note) {
        return new Held(unit.id(), unit.micType(), unit.label(), unit.tag(), storedAt, note, unit.pairMate(), unit.ownResponseDb(), unit.out());
    }

    static Held measured(Held unit, OctaveCurve ownResponseDb) {
        return new Held(unit.id(), unit.micType(), unit.label(), unit.tag(), unit.storedAt(), unit.note(), unit.pairMate(), ownResponseDb, unit.out());
    }

    static Held mated(Held unit, String mate) {
        return new Held(unit.id(), unit.micType(), unit.label(), unit.tag(), unit.storedAt(), unit.note(), mate, unit.ownResponseDb(), unit.out());
    }

    static AtHand of(Held... units) {
        return of(List.of(units));
    }

    static AtHand of(List<Held> units) {
        return (from, until) -> new Stock(true, units);
    }

    /** Two units of every type, matched or not. */
    static AtHand twoOfEach(boolean matched) {
        List<Held> units = new ArrayList<>();
        for (MicType mic : Asking.KNOWLEDGE.current().catalogue().mics().values()) {
            String one = mic.id() + "-1";
            String other = mic.id() + "-2";
            units.add(matched ? mated(unit(one, mic.id()), other) : unit(one, mic.id()));
            units.add(matched ? mated(unit(other, mic.id()), one) : unit(other, mic.id()));
        }
        return of(units);
    }

    static Advisor advisor(AtHand atHand) {
        return new Advisor(Asking.KNOWLEDGE::current, atHand);
    }
}
