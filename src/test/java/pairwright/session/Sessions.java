package pairwright.session;

import java.util.List;
import java.util.stream.Stream;
import pairwright.locker.PhantomSwitch;
import pairwright.model.HeardBefore;
import pairwright.model.Limits;
import pairwright.model.Stock;

/** A line-up and what there is for it, put together piece by piece, for tests that plan it. What is not said is not counted. */
record Sessions(LineUp lineUp, Gear gear) {
    static Sessions of(Floor floor, Seat... seats) {
        return new Sessions(new LineUp("Test", floor, List.of(seats), null, null, null, null, null, 1), Gear.ANYTHING);
    }

    /** @param micTypes those it may get; any where none is named */
    static Seat at(String id, String source, double xM, double yM, double facingDegrees, int mics, String... micTypes) {
        return new Seat(id, null, source, xM, yM, facingDegrees, null, null, null, null, new Limits(mics, null, null, null, null, null, List.of(micTypes), null), true,
                null, false);
    }

    static Seat nice(Seat seat) {
        return new Seat(seat.id(), null, seat.source(), seat.xM(), seat.yM(), seat.facingDegrees(), null, null, null, null, seat.limits(), false, null, false);
    }

    static Seat wanting(Seat seat, String character) {
        return new Seat(seat.id(), null, seat.source(), seat.xM(), seat.yM(), seat.facingDegrees(), null, null, List.of(character), null, seat.limits(), true, null, false);
    }

    static Seat heard(Seat seat, double typicalDbSpl, double peakDbSpl) {
        return new Seat(seat.id(), null, seat.source(), seat.xM(), seat.yM(), seat.facingDegrees(), null, null, null, null, seat.limits(), true,
                new HeardBefore(typicalDbSpl, peakDbSpl, null, null, null, null), false);
    }

    static Stock.Held unit(String id, String micType) {
        return own(id, micType, null, null);
    }

    static Stock.Held own(String id, String micType, String note, String pairMate) {
        return new Stock.Held(id, micType, id, null, null, note, pairMate, null, null);
    }

    /** A channel with a switch of its own. */
    static Channel channel(String id) {
        return new Channel(id, null, PhantomSwitch.CHANNEL, null, null, null, null, true);
    }

    /** A channel of which only what is asked for is known. */
    record Channel(String id, String bank, PhantomSwitch phantom, Double leastGainDb, Double mostGainDb, Double inputOhm, Double supplyMa, boolean noted) {
        Channel onBank(String name) {
            return new Channel(id, name, PhantomSwitch.BANK, leastGainDb, mostGainDb, inputOhm, supplyMa, noted);
        }

        /** Without phantom power. */
        Channel dead() {
            return new Channel(id, bank, PhantomSwitch.NONE, leastGainDb, mostGainDb, inputOhm, supplyMa, noted);
        }

        /** Nobody said what its switch reaches. */
        Channel unnoted() {
            return new Channel(id, bank, PhantomSwitch.NONE, leastGainDb, mostGainDb, inputOhm, supplyMa, false);
        }

        Channel gain(double mostDb) {
            return new Channel(id, bank, phantom, leastGainDb, mostDb, inputOhm, supplyMa, noted);
        }

        /** Goes no lower. */
        Channel least(double gainDb) {
            return new Channel(id, bank, phantom, gainDb, mostGainDb, inputOhm, supplyMa, noted);
        }

        Channel input(double ohm) {
            return new Channel(id, bank, phantom, leastGainDb, mostGainDb, ohm, supplyMa, noted);
        }

        Channel supply(double mA) {
            return new Channel(id, bank, phantom, leastGainDb, mostGainDb, inputOhm, mA, noted);
        }
    }

    /** The first two seats shall not sound alike. */
    Sessions apart() {
        return together(List.of(firstTwo()), null);
    }

    /** The first two seats are a section. */
    Sessions section() {
        return together(null, List.of(firstTwo()));
    }

    private List<String> firstTwo() {
        return lineUp.seats().stream().limit(2).map(Seat::id).toList();
    }

    private Sessions together(List<List<String>> contrast, List<List<String>> keep) {
        return new Sessions(new LineUp(lineUp.name(), lineUp.floor(), lineUp.seats(), lineUp.gobos(), contrast, keep, null, null, 1), gear);
    }

    Sessions screen(Gobo gobo) {
        return new Sessions(new LineUp(lineUp.name(), lineUp.floor(), lineUp.seats(), List.of(gobo), null, null, null, null, 1), gear);
    }

    Sessions units(Stock.Held... units) {
        return new Sessions(lineUp, new Gear(new Stock(true, List.of(units)), gear.channels(), gear.stands(), gear.boosters(), gear.pads()));
    }

    Sessions channels(Channel... channels) {
        List<Gear.Channel> all = Stream.of(channels).map(one -> new Gear.Channel(one.id(), one.id(), one.bank(), one.phantom(), one.leastGainDb(), one.mostGainDb(), one.inputOhm(), null,
                one.supplyMa(), one.noted())).toList();
        return new Sessions(lineUp, new Gear(gear.stock(), all, gear.stands(), gear.boosters(), gear.pads()));
    }

    Sessions stands(Gear.Stand... stands) {
        return new Sessions(lineUp, new Gear(gear.stock(), gear.channels(), List.of(stands), gear.boosters(), gear.pads()));
    }

    /** One that lets phantom power through. */
    Sessions pad(double lossDb) {
        return new Sessions(lineUp, new Gear(gear.stock(), gear.channels(), gear.stands(), gear.boosters(), List.of(new Gear.LinePad("pad", "pad", lossDb, true))));
    }

    /** One that keeps phantom power from what is plugged into it. */
    Sessions boosters(double gainDb) {
        return new Sessions(lineUp, new Gear(gear.stock(), gear.channels(), gear.stands(), List.of(new Gear.Booster("booster", "booster", gainDb, 3, false)), gear.pads()));
    }
}
