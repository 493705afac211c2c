package pairwright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import pairwright.locker.BoosterData;
import pairwright.locker.ChannelData;
import pairwright.locker.PhantomSwitch;
import pairwright.locker.StandData;
import pairwright.locker.Unit;
import pairwright.sheet.ReadingParts.Fact;

/** What is known of a unit, as facts to read. What nobody said is left out. */
final class UnitFacts {
    private final AtLocker at;
    private final List<Fact> facts = new ArrayList<>();

    UnitFacts(AtLocker at) {
        this.at = at;
    }

    List<Fact> of(Unit unit) {
        add("Kind", LockerChoices.named(unit.kind()), "");
        add("Condition", LockerChoices.named(unit.condition()), Objects.requireNonNullElse(unit.note(), ""));
        add("Lies at", unit.storedAt(), "");
        add("Tag", unit.tag(), "");
        add("Serial number", unit.serial(), "");
        if (unit.micType() != null && !at.known().catalogue().mics().containsKey(unit.micType())) {
            add("Mic type", unit.micType(), "The catalogue no longer has it, so no answer can use the unit.");
        }
        if (unit.pairMate() != null && !at.locker().mates().containsKey(unit.id())) {
            add("Said to be matched with", unit.pairMate(), "That unit is not there, is of another type, or names another one.");
        }
        if (unit.channel() != null) {
            channel(unit.channel());
        }
        if (unit.stand() != null) {
            stand(unit.stand());
        }
        if (unit.pad() != null && unit.pad().lossDb() != null) {
            add("Takes away", value(unit.pad().lossDb(), "dB"), "");
            add("Phantom power", passes(unit.pad().passesPhantom()), "");
        }
        if (unit.booster() != null) {
            booster(unit.booster());
        }
        return facts;
    }

    private void channel(ChannelData channel) {
        add("Bank", channel.bank(), "");
        if (channel.leastGainDb() != null || channel.mostGainDb() != null) {
            add("Gain", (channel.leastGainDb() == null ? "" : number(channel.leastGainDb()) + " to ") + (channel.mostGainDb() == null ? "?" : number(channel.mostGainDb())) + " dB", "");
        }
        add("Input impedance", value(channel.inputOhm(), "ohm"), "");
        add("Input noise", channel.noiseDbu() == null ? null : number(channel.noiseDbu()) + " dBu", "Unweighted, from 150 ohm.");
        if (channel.phantom() != null) {
            add("Phantom power", switch (channel.phantom()) {
                case CHANNEL -> "Switched for the channel";
                case BANK -> "Switched for the whole bank";
                case NONE -> "None";
            }, channel.phantom() == PhantomSwitch.BANK ? "Whatever hangs on the bank gets it, wanted or not." : "");
        }
        add("Phantom current", channel.phantomMa() == null ? null : number(channel.phantomMa()) + " mA", "");
    }

    private void stand(StandData stand) {
        add("Mass", value(stand.massKg(), "kg"), "Without what it carries.");
        add("Reach of its boom", stand.reachM() != null && stand.reachM() == 0 ? "None: it is straight" : value(stand.reachM(), "m"), "");
        add("Column to foot", value(stand.footRadiusM(), "m"), "");
        add("Legs", stand.legs() == null ? null : stand.legs() == 0 ? "A round base" : stand.legs().toString(), "");
        add("Greatest height", value(stand.heightM(), "m"), "");
    }

    private void booster(BoosterData booster) {
        add("Adds", value(booster.gainDb(), "dB"), "");
        add("Draws", booster.phantomMa() == null ? null : number(booster.phantomMa()) + " mA", "");
        add("Phantom power", passes(booster.passesPhantom()), "");
    }

    private static String passes(Boolean passesPhantom) {
        return passesPhantom == null ? null : passesPhantom ? "Reaches the microphone" : "Stops here";
    }

    private String number(double value) {
        return at.measures().number(value, 1);
    }

    private String value(Double value, String unit) {
        return value == null ? null : at.visit().reader().value(value, unit);
    }

    private void add(String name, String value, String means) {
        if (value != null && !value.isEmpty()) {
            facts.add(new Fact(name, value, means));
        }
    }
}
