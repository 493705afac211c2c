package pairwright.session;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import pairwright.locker.BoosterData;
import pairwright.locker.ChannelData;
import pairwright.locker.Locker;
import pairwright.locker.LockerFault;
import pairwright.locker.PhantomSwitch;
import pairwright.locker.Span;
import pairwright.locker.StandData;
import pairwright.locker.Standing;
import pairwright.locker.Unit;
import pairwright.locker.UnitKind;
import pairwright.model.Stock;

/**
 * What a locker has for a session. Of what the locker holds none of a kind, such as stands, that kind is not counted; where it holds some and all are
 * taken, there are none.
 */
public final class GearOf {
    /** A stand that goes no higher stays low: in front of an amplifier, at a kick drum. */
    static final double SHORT_M = 1.0;
    /** From here on a boom reaches over the heads of who sits and plays, with a hand of air. */
    static final double OVERHEAD_M = 2.2;
    /** A boom as long as that reaches the middle of a kit from beside it. */
    static final double OVERHEAD_REACH_M = 1.2;
    /** Lighter ones tip with a boom that high and that long; what a stand really bears is computed for each line. */
    static final double OVERHEAD_KG = 7;

    private GearOf() {
    }

    /**
     * What can be had for all of a time.
     *
     * @param own ids of bookings of the session itself, which do not stand in its way
     * @throws LockerFault.Unreachable where the locker does not answer
     */
    public static Gear free(Locker locker, Span span, Set<String> own) {
        Stock stock = locker.stock(span, own);
        if (stock != null && !stock.reachable()) {
            throw new LockerFault.Unreachable("The locker does not answer just now. Try again in a moment");
        }
        return of(stock, locker.standing(span, own), Standing::free);
    }

    /**
     * All that is in order, whoever has booked it.
     *
     * @throws LockerFault.Unreachable where the locker does not answer
     */
    public static Gear owned(Locker locker, Span span) {
        Stock stock = locker.stock(span);
        if (stock != null && !stock.reachable()) {
            throw new LockerFault.Unreachable("The locker does not answer just now. Try again in a moment");
        }
        List<Standing> standing = locker.standing(span);
        Set<String> usable = Set.copyOf(standing.stream().filter(one -> one.unit().condition().usable()).map(one -> one.unit().id()).toList());
        Stock inOrder = stock == null ? null : new Stock(true, stock.units().stream().map(held -> usable.contains(held.id()) ? had(held) : held).toList());
        return of(inOrder, standing, one -> one.unit().condition().usable());
    }

    private static Stock.Held had(Stock.Held held) {
        return new Stock.Held(held.id(), held.micType(), held.label(), held.tag(), held.storedAt(), held.note(), held.pairMate(), held.ownResponseDb(), null);
    }

    private static Gear of(Stock stock, List<Standing> standing, Function<Standing, Boolean> had) {
        return new Gear(stock,
                all(standing, had, UnitKind.CHANNEL, GearOf::channel),
                all(standing, had, UnitKind.STAND, GearOf::stand),
                all(standing, had, UnitKind.BOOSTER, GearOf::booster),
                all(standing, had, UnitKind.PAD, unit -> new Gear.LinePad(unit.id(), unit.label(), unit.pad().lossDb(), unit.pad().passesPhantom())));
    }

    /** Good before limited, then by label; null where the locker holds none of the kind. */
    private static <T> List<T> all(List<Standing> standing, Function<Standing, Boolean> had, UnitKind kind, Function<Unit, T> made) {
        List<Standing> held = standing.stream().filter(one -> one.unit().kind() == kind).toList();
        if (held.isEmpty()) {
            return null;
        }
        List<Standing> sorted = new ArrayList<>(held.stream().filter(had::apply).toList());
        sorted.sort(Comparator.comparingInt(one -> one.unit().condition().ordinal())); // by label already, which this keeps
        return sorted.stream().map(one -> made.apply(one.unit())).toList();
    }

    /** A channel of which nobody said what its switch reaches is taken as one that has no phantom power, so that nothing waits for what is not there; a ribbon goes there last, and whoever plugs it is told to look. */
    private static Gear.Channel channel(Unit unit) {
        ChannelData data = unit.channel();
        boolean noted = data != null && data.phantom() != null;
        PhantomSwitch phantom = noted ? data.phantom() : PhantomSwitch.NONE;
        return data == null ? new Gear.Channel(unit.id(), unit.label(), null, phantom, null, null, null, null, null, false)
                : new Gear.Channel(unit.id(), unit.label(), data.bank(), phantom, data.leastGainDb(), data.mostGainDb(), data.inputOhm(), data.noiseDbu(), data.phantomMa(), noted);
    }

    private static Gear.Stand stand(Unit unit) {
        StandData data = unit.stand() == null ? new StandData(null, null, null, null, null) : unit.stand();
        return new Gear.Stand(unit.id(), unit.label(), kind(data), data.massKg(), data.reachM(), data.footRadiusM(), data.legs(), data.heightM());
    }

    /**
     * What a stand is good for, by its measures: short up to {@value #SHORT_M} m high; straight with no boom, or one nobody measured; overhead where it
     * is known to be {@value #OVERHEAD_M} m high and {@value #OVERHEAD_KG} kg heavy with a boom of {@value #OVERHEAD_REACH_M} m; else a boom.
     */
    public static StandKind kind(StandData data) {
        if (data.heightM() != null && data.heightM() <= SHORT_M) {
            return StandKind.SHORT;
        }
        if (data.reachM() == null || data.reachM() <= 0) {
            return StandKind.STRAIGHT;
        }
        boolean overhead = data.heightM() != null && data.heightM() >= OVERHEAD_M && data.massKg() != null && data.massKg() >= OVERHEAD_KG
                && data.reachM() >= OVERHEAD_REACH_M;
        return overhead ? StandKind.OVERHEAD : StandKind.BOOM;
    }

    /** A booster of which nobody said so may pass phantom power on, which is the harmful case for a ribbon. */
    private static Gear.Booster booster(Unit unit) {
        BoosterData data = unit.booster();
        return new Gear.Booster(unit.id(), unit.label(), data.gainDb(), data.phantomMa() == null ? 0 : data.phantomMa(), !Boolean.FALSE.equals(data.passesPhantom()));
    }
}
