package pairwright.locker;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import pairwright.model.Fault;
import pairwright.model.MicType;
import pairwright.model.Nearest;

/** Whether what is said of a unit can be: every fault at once. */
final class UnitChecks {
    private static final int WORDS = 80;
    private static final int PLACE = 120;
    private static final int NOTE = 500;
    private static final int MOST_POINTS = 2000;

    private final List<Fault> faults = new ArrayList<>();
    private final Map<String, MicType> types;

    UnitChecks(Map<String, MicType> types) {
        this.types = types;
    }

    List<Fault> faults() {
        return faults;
    }

    void fault(String at, String says) {
        faults.add(new Fault(at, says));
    }

    /**
     * The unit that is meant, its id and label as they were said; to be used only where no fault was found.
     *
     * @param before the unit as it is; null for a new one
     */
    Unit read(UnitDraft draft, Unit before) {
        String micType = draft.micType() == null || draft.micType().isBlank() ? null : draft.micType().strip();
        UnitKind kind = draft.kind() != null ? draft.kind() : micType != null ? UnitKind.MIC : null;
        if (kind == null) {
            fault("/kind", "it is not said what the unit is. Name its mic type, or say that it is a channel, pad, booster or stand");
        }
        micType(kind, micType, before);
        String id = Said.id(draft.id(), "/id", faults);
        String mate = Said.id(draft.pairMate(), "/pairMate", faults);
        if (mate != null && mate.equals(before == null ? id : before.id())) {
            fault("/pairMate", "a unit cannot be matched with itself. Name the other one");
        }
        String label = Said.line(draft.label(), WORDS, "/label", faults);
        String serial = Said.line(draft.serial(), WORDS, "/serial", faults);
        String tag = Said.line(draft.tag(), WORDS, "/tag", faults);
        String note = Said.lines(draft.note(), NOTE, "/note", faults);
        String storedAt = Said.line(draft.storedAt(), PLACE, "/storedAt", faults);
        Condition condition = draft.condition() == null ? Condition.GOOD : draft.condition();
        if (condition == Condition.LIMITED && note == null) {
            fault("/note", "a limited unit needs a note. Say what it can no longer do");
        }
        belongs("/channel", draft.channel(), kind, UnitKind.CHANNEL);
        belongs("/stand", draft.stand(), kind, UnitKind.STAND);
        belongs("/pad", draft.pad(), kind, UnitKind.PAD);
        belongs("/booster", draft.booster(), kind, UnitKind.BOOSTER);
        ChannelData channel = kind != UnitKind.CHANNEL ? null : channel(draft.channel() == null ? new ChannelData(null, null, null, null, null, null, null) : draft.channel());
        StandData stand = kind != UnitKind.STAND ? null : stand(draft.stand() == null ? new StandData(null, null, null, null, null) : draft.stand());
        if (kind == UnitKind.PAD) {
            needed("/pad/lossDb", "what it takes away", draft.pad() == null ? null : draft.pad().lossDb(), 1, 80, "dB");
        }
        if (kind == UnitKind.BOOSTER) {
            needed("/booster/gainDb", "what it adds", draft.booster() == null ? null : draft.booster().gainDb(), 1, 60, "dB");
            range("/booster/phantomMa", draft.booster() == null ? null : draft.booster().phantomMa(), 0, 30, "mA");
        }
        response(kind, draft.response());
        return new Unit(id == null ? "" : id, kind, micType, label == null ? "" : label, serial, tag, mate, condition, note, storedAt, channel, stand,
                draft.pad(), draft.booster(), draft.response(), before == null ? 1 : before.version() + 1);
    }

    private void micType(UnitKind kind, String micType, Unit before) {
        if (kind == UnitKind.MIC && micType == null) {
            fault("/micType", "a microphone needs its mic type. Name one of the catalogue");
        } else if (kind != UnitKind.MIC && kind != null && micType != null) {
            fault("/micType", "a " + kind.id() + " has no mic type. Take it out, or make it a mic");
        } else if (micType != null && !types.containsKey(micType) && !(before != null && micType.equals(before.micType()))) {
            fault("/micType", noSuchType(micType, types.keySet()));
        }
    }

    static String noSuchType(String micType, Set<String> types) {
        return "there is no mic type " + Said.quoted(micType) + ". " + Nearest.to(micType, types).map(near -> "Did you mean " + near + "?").orElse("Use one of the catalogue");
    }

    private void belongs(String at, Object part, UnitKind kind, UnitKind owner) {
        if (part != null && kind != null && kind != owner) {
            fault(at, "only a " + owner.id() + " has this, and the unit is a " + kind.id() + ". Take it out");
        }
    }

    private ChannelData channel(ChannelData channel) {
        range("/channel/leastGainDb", channel.leastGainDb(), -60, 80, "dB");
        range("/channel/mostGainDb", channel.mostGainDb(), -20, 120, "dB");
        if (channel.leastGainDb() != null && channel.mostGainDb() != null && channel.leastGainDb() > channel.mostGainDb()) {
            fault("/channel/mostGainDb", "the most gain is " + channel.mostGainDb() + " dB, less than the least, " + channel.leastGainDb() + " dB. Trade them");
        }
        range("/channel/inputOhm", channel.inputOhm(), 50, 1e8, "ohm");
        range("/channel/noiseDbu", channel.noiseDbu(), -140, -60, "dBu");
        range("/channel/phantomMa", channel.phantomMa(), 0, 2000, "mA");
        if (channel.phantom() == PhantomSwitch.NONE && channel.phantomMa() != null && channel.phantomMa() > 0) {
            fault("/channel/phantomMa", "the channel has no phantom power, yet gives " + channel.phantomMa() + " mA. Correct one of the two");
        }
        return new ChannelData(Said.line(channel.bank(), WORDS, "/channel/bank", faults), channel.leastGainDb(), channel.mostGainDb(), channel.inputOhm(),
                channel.noiseDbu(), channel.phantom(), channel.phantomMa());
    }

    private StandData stand(StandData stand) {
        range("/stand/massKg", stand.massKg(), 0.05, 200, "kg");
        range("/stand/reachM", stand.reachM(), 0, 6, "m");
        range("/stand/footRadiusM", stand.footRadiusM(), 0.02, 3, "m");
        range("/stand/heightM", stand.heightM(), 0.02, 10, "m");
        if (stand.legs() != null && stand.legs() != 0 && (stand.legs() < 3 || stand.legs() > 12)) {
            fault("/stand/legs", "a stand with " + stand.legs() + " legs does not stand. Give 3 to 12, or 0 for a round base");
        }
        return stand;
    }

    private void needed(String at, String what, Double value, double least, double most, String unit) {
        if (value == null) {
            fault(at, what + " is missing. Give it in " + unit);
        }
        range(at, value, least, most, unit);
    }

    private void range(String at, Double value, double least, double most, String unit) {
        if (value != null && !(value >= least && value <= most)) {
            fault(at, "is " + value + " " + unit + ". Give " + number(least) + " to " + number(most) + " " + unit);
        }
    }

    private static String number(double value) {
        return value == Math.rint(value) ? Long.toString((long) value) : Double.toString(value);
    }

    private void response(UnitKind kind, List<ResponsePoint> points) {
        if (!points.isEmpty() && kind != UnitKind.MIC && kind != null) {
            fault("/response", "only a mic has a response, and the unit is a " + kind.id() + ". Take it out");
        } else if (points.size() == 1 || points.size() > MOST_POINTS) {
            fault("/response", "the response has " + points.size() + " points. Give 2 to " + MOST_POINTS + ", better three an octave");
        } else if (!points.isEmpty() && (points.get(0).frequencyHz() > 126 || points.get(points.size() - 1).frequencyHz() < 8000)) {
            fault("/response", "the response goes from " + points.get(0).frequencyHz() + " to " + points.get(points.size() - 1).frequencyHz()
                    + " Hz. Measure from 126 Hz or lower to 8000 Hz or higher");
        }
        for (int i = 0; i < points.size(); i++) {
            ResponsePoint point = points.get(i);
            range("/response/" + i, point.frequencyHz(), 1, 200_000, "Hz");
            range("/response/" + i, point.levelDb(), -200, 200, "dB");
            if (i > 0 && !(point.frequencyHz() > points.get(i - 1).frequencyHz())) {
                fault("/response/" + i, "the frequency is " + point.frequencyHz() + " Hz, not above the " + points.get(i - 1).frequencyHz()
                        + " Hz before it. Put each frequency once, in rising order");
            }
        }
    }
}
