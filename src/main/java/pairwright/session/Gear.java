package pairwright.session;

import java.util.List;
import pairwright.locker.PhantomSwitch;
import pairwright.model.Stock;

/**
 * What there is to plan with, for the time of a session. What is null is not counted: as much as is wanted.
 *
 * @param stock microphones and line boxes, and which of them are out; null for any type of the catalogue
 * @param channels of preamplifiers; null for any number, each with its own switch for phantom power
 * @param stands null for any number
 * @param boosters inline boosters; null for none
 * @param pads for a line; null for none
 */
public record Gear(Stock stock, List<Channel> channels, List<Stand> stands, List<Booster> boosters, List<LinePad> pads) {
    /** Nothing counted. */
    public static final Gear ANYTHING = new Gear(null, null, null, null, null);

    public Gear {
        channels = channels == null ? null : List.copyOf(channels);
        stands = stands == null ? null : List.copyOf(stands);
        boosters = boosters == null ? List.of() : List.copyOf(boosters);
        pads = pads == null ? List.of() : List.copyOf(pads);
    }

    /** The same without what is lost, channels aside. */
    public Gear without(Lost lost) {
        Stock left = stock == null ? null : new Stock(stock.reachable(), stock.units().stream().filter(unit -> !lost.units().contains(unit.id())).toList());
        return new Gear(left, channels,
                stands == null ? null : stands.stream().filter(stand -> !lost.units().contains(stand.id())).toList(),
                boosters.stream().filter(booster -> !lost.units().contains(booster.id())).toList(),
                pads.stream().filter(pad -> !lost.units().contains(pad.id())).toList());
    }

    /**
     * One channel of a preamplifier.
     *
     * @param id of the unit
     * @param label what is written on it
     * @param bank with which it shares a supply, and a switch where that reaches the bank; null for one that stands alone
     * @param phantom what its switch for phantom power reaches
     * @param leastGainDb null for unknown, taken as usual
     * @param mostGainDb null for unknown, taken as enough
     * @param inputOhm null for unknown
     * @param noiseDbu equivalent input noise; null for unknown
     * @param supplyMa phantom current, for the channel or the bank as the switch reaches; null for enough
     * @param noted whether somebody said what its switch reaches; where nobody did, it may have phantom power all the same
     */
    public record Channel(String id, String label, String bank, PhantomSwitch phantom, Double leastGainDb, Double mostGainDb, Double inputOhm, Double noiseDbu, Double supplyMa, boolean noted) {
        /** One of which it is known what its switch reaches. */
        public Channel(String id, String label, String bank, PhantomSwitch phantom, Double leastGainDb, Double mostGainDb, Double inputOhm, Double noiseDbu, Double supplyMa) {
            this(id, label, bank, phantom, leastGainDb, mostGainDb, inputOhm, noiseDbu, supplyMa, true);
        }
    }

    /**
     * One stand.
     *
     * @param id of the unit
     * @param label what is written on it
     * @param kind what it is good for
     * @param massKg null for unknown
     * @param reachM of its boom; null for unknown, 0 for none
     * @param footRadiusM null for unknown
     * @param legs 3 to 12, 0 for a round base; null for unknown
     * @param heightM the most it is good for; null for unknown
     */
    public record Stand(String id, String label, StandKind kind, Double massKg, Double reachM, Double footRadiusM, Integer legs, Double heightM) {
    }

    /** An inline booster: {@code gainDb} that it adds, {@code phantomMa} that it draws, and whether phantom power goes on through it. */
    public record Booster(String id, String label, double gainDb, double phantomMa, boolean passesPhantom) {
    }

    /**
     * A pad for a line.
     *
     * @param id of the unit
     * @param label what is written on it
     * @param lossDb what it takes away
     * @param passesPhantom whether phantom power goes on through it; null for unknown, and then it is not put before what needs that
     */
    public record LinePad(String id, String label, double lossDb, Boolean passesPhantom) {
        boolean passes() {
            return Boolean.TRUE.equals(passesPhantom);
        }
    }
}
