package pairwright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import pairwright.catalogue.Shown;
import pairwright.locker.BoosterData;
import pairwright.locker.ChannelData;
import pairwright.locker.Condition;
import pairwright.locker.PadData;
import pairwright.locker.PhantomSwitch;
import pairwright.locker.ResponsePoint;
import pairwright.locker.StandData;
import pairwright.locker.UnitDraft;
import pairwright.locker.UnitKind;
import pairwright.model.Fault;
import pairwright.model.Word;

/** The form of a unit: a unit as fields, and what was typed into them as a draft. */
final class UnitForm {
    private static final String NO_NUMBER = " is no number. Give one such as ";

    private final AtLocker at;
    private final UnitKind kind;
    private final Mates mates;
    private final List<Fault> faults = new ArrayList<>();

    UnitForm(AtLocker at, UnitKind kind) {
        this.at = at;
        this.kind = kind;
        mates = new Mates(at.locker());
    }

    /** What could not be read of what was last typed. */
    List<Fault> faults() {
        return List.copyOf(faults);
    }

    /** The fields, filled with what is said of a unit. */
    List<FormField> fields(UnitDraft unit) {
        List<FormField> all = new ArrayList<>();
        if (kind == UnitKind.MIC) {
            all.add(FormField.grouped("micType", "Mic type", LockerChoices.types(at.known().catalogue())).needed().value(unit.micType()));
        }
        all.add(FormField.line("label", "Label").value(unit.label()).hint(kind == UnitKind.MIC ? "What is written on it. Left empty, it is made from its type and a number."
                : "What is written on it. Left empty, it is made from what it is and a number."));
        all.add(FormField.line("tag", "Tag").value(unit.tag()).hint("What a scanner reads. No two units share one."));
        all.add(FormField.line("serial", "Serial number").value(unit.serial()));
        all.add(FormField.line("storedAt", "Lies at").value(unit.storedAt()).hint("Where it is when nobody has it."));
        all.add(FormField.choice("condition", "Condition", LockerChoices.conditions()).value(Objects.requireNonNullElse(unit.condition(), Condition.GOOD).id()));
        all.add(FormField.lines("note", "Note").value(unit.note()).hint("What to know of it, in as many lines as it takes; needed where its use is limited."));
        switch (kind) {
            case MIC -> mic(all, unit);
            case CHANNEL -> channel(all, unit.channel() == null ? new ChannelData(null, null, null, null, null, null, null) : unit.channel());
            case STAND -> stand(all, unit.stand() == null ? new StandData(null, null, null, null, null) : unit.stand());
            case PAD -> {
                all.add(number("pad.lossDb", "Takes away, dB", unit.pad() == null ? null : unit.pad().lossDb()).needed());
                all.add(passes("pad.passesPhantom", unit.pad() == null ? null : unit.pad().passesPhantom()));
            }
            case BOOSTER -> booster(all, unit.booster() == null ? new BoosterData(null, null, null) : unit.booster());
        }
        return all;
    }

    private void mic(List<FormField> all, UnitDraft unit) {
        all.add(FormField.line("pairMate", "Matched with").value(mates.shown(unit.pairMate())).offering(mates.offers(unit))
                .hint("The other unit of a matched pair, by label, tag or id. One that is not there yet goes by the id it will have."));
        StringBuilder points = new StringBuilder();
        unit.response().forEach(point -> points.append(at.measures().number(point.frequencyHz(), 3)).append(' ')
                .append(at.visit().reader().number(point.levelDb(), 3)).append('\n'));
        all.add(FormField.lines("response", "Its own response").value(points.toString())
                .hint("Where this very unit was measured: a line for each point, with its frequency in Hz, a blank, and its level in dB. Frequencies rise."));
    }

    private void channel(List<FormField> all, ChannelData channel) {
        all.add(FormField.line("channel.bank", "Bank").value(channel.bank()).hint("The box or group of channels that share a supply."));
        all.add(number("channel.leastGainDb", "Least gain, dB", channel.leastGainDb()));
        all.add(number("channel.mostGainDb", "Most gain, dB", channel.mostGainDb()));
        all.add(number("channel.inputOhm", "Input impedance, ohm", channel.inputOhm()));
        all.add(number("channel.noiseDbu", "Input noise, dBu", channel.noiseDbu()).hint("Equivalent input noise, unweighted, from 150 ohm."));
        all.add(FormField.choice("channel.phantom", "Phantom power is switched", LockerChoices.phantom())
                .value(channel.phantom() == null ? "" : channel.phantom().id()));
        all.add(number("channel.phantomMa", "Phantom current, mA", channel.phantomMa()).hint("What the supply gives, for the channel or for the bank as the switch reaches."));
    }

    private void stand(List<FormField> all, StandData stand) {
        all.add(number("stand.massKg", "Mass, kg", stand.massKg()).hint("Without what it carries."));
        all.add(number("stand.reachM", "Reach of its boom, m", stand.reachM()).hint("From the column; 0 for a straight stand."));
        all.add(number("stand.footRadiusM", "Column to foot, m", stand.footRadiusM()).hint("Or to the edge of a round base."));
        all.add(number("stand.legs", "Legs", stand.legs() == null ? null : stand.legs().doubleValue()).hint("3 to 12; 0 for a round base."));
        all.add(number("stand.heightM", "Greatest height, m", stand.heightM()));
    }

    private void booster(List<FormField> all, BoosterData booster) {
        all.add(number("booster.gainDb", "Gain, dB", booster.gainDb()));
        all.add(number("booster.phantomMa", "Draws, mA", booster.phantomMa()).hint("From the phantom power of the channel."));
        all.add(passes("booster.passesPhantom", booster.passesPhantom()));
    }

    private static FormField passes(String name, Boolean passes) {
        return FormField.choice(name, "Phantom power reaches the microphone", List.of(new Choice("", "Not known", false), new Choice("yes", "Yes", false), new Choice("no", "No", false)))
                .value(passes == null ? "" : passes ? "yes" : "no");
    }

    private static Boolean passes(Sent sent, String name) {
        return sent.first(name) == null ? null : sent.first(name).equals("yes");
    }

    private FormField number(String name, String label, Double value) {
        return FormField.line(name, label).value(value == null ? "" : at.visit().reader().number(value, 6));
    }

    /** What was typed, as a draft; what cannot be read is left out of it and among the {@link #faults()}. */
    UnitDraft draft(String id, Sent sent) {
        faults.clear();
        return new UnitDraft(id, kind, kind == UnitKind.MIC ? sent.first("micType") : null, sent.first("label"), sent.first("serial"), sent.first("tag"),
                kind == UnitKind.MIC ? mates.read(sent.first("pairMate"), faults) : null, word(sent, "condition", "Condition", Condition.values()), sent.lines("note").replace('\t', ' '),
                sent.first("storedAt"),
                kind != UnitKind.CHANNEL ? null : new ChannelData(sent.first("channel.bank"), read(sent, "channel.leastGainDb"), read(sent, "channel.mostGainDb"),
                        read(sent, "channel.inputOhm"), read(sent, "channel.noiseDbu"), word(sent, "channel.phantom", "Phantom power", PhantomSwitch.values()),
                        read(sent, "channel.phantomMa")),
                kind != UnitKind.STAND ? null : new StandData(read(sent, "stand.massKg"), read(sent, "stand.reachM"), read(sent, "stand.footRadiusM"), legs(sent),
                        read(sent, "stand.heightM")),
                kind != UnitKind.PAD ? null : new PadData(read(sent, "pad.lossDb"), passes(sent, "pad.passesPhantom")),
                kind != UnitKind.BOOSTER ? null : new BoosterData(read(sent, "booster.gainDb"), read(sent, "booster.phantomMa"),
                        passes(sent, "booster.passesPhantom")),
                kind != UnitKind.MIC ? List.of() : response(sent.lines("response")));
    }

    private <W extends Enum<W> & Word> W word(Sent sent, String name, String label, W[] words) {
        String text = sent.first(name);
        if (text == null) {
            return null;
        }
        return Stream.of(words).filter(word -> word.id().equals(text)).findFirst().orElseGet(() -> {
            faults.add(new Fault(pointer(name), label + " \u201c" + Shown.of(text) + "\u201d is not known. Choose one that is offered"));
            return null;
        });
    }

    private Double read(Sent sent, String name) {
        String text = sent.first(name);
        if (text == null) {
            return null;
        }
        OptionalDouble value = number(text);
        if (value.isEmpty()) {
            faults.add(new Fault(pointer(name), "\u201c" + Shown.of(text) + "\u201d" + NO_NUMBER + at.visit().reader().number(12.5, 1)));
            return null;
        }
        return value.getAsDouble();
    }

    private Integer legs(Sent sent) {
        Double value = read(sent, "stand.legs");
        if (value != null && (value != Math.rint(value) || Math.abs(value) > 1000)) {
            faults.add(new Fault("/stand/legs", "A stand has a whole number of legs, 3 to 12, or 0 for a round base, but this was " + Shown.of(sent.first("stand.legs"))));
            return null;
        }
        return value == null ? null : value.intValue();
    }

    private List<ResponsePoint> response(String text) {
        List<ResponsePoint> points = new ArrayList<>();
        List<String> lines = text.lines().toList();
        for (int line = 0; line < lines.size(); line++) {
            if (lines.get(line).isBlank()) {
                continue;
            }
            String[] parts = lines.get(line).strip().split("[\\s;]+");
            OptionalDouble frequencyHz = number(parts[0]);
            OptionalDouble levelDb = parts.length == 2 ? number(parts[1]) : OptionalDouble.empty();
            if (frequencyHz.isEmpty() || levelDb.isEmpty()) {
                faults.add(new Fault("/response", "Line " + (line + 1) + " is \u201c" + Shown.of(lines.get(line).strip())
                        + "\u201d. Write a frequency in Hz, a blank, and a level in dB, such as 1000 -1"));
                return List.of();
            }
            points.add(new ResponsePoint(frequencyHz.getAsDouble(), levelDb.getAsDouble()));
        }
        return points;
    }

    private static OptionalDouble number(String text) {
        String plain = text.replace('\u2212', '-').replace(',', '.');
        if (!plain.matches("[+-]?(\\d{1,9}(\\.\\d{0,9})?|\\.\\d{1,9})")) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(Double.parseDouble(plain));
    }

    private static String pointer(String name) {
        return "/" + name.replace('.', '/');
    }

    /** A draft in which nothing is said. */
    static UnitDraft empty(UnitKind kind) {
        return new UnitDraft(null, kind, null, null, null, null, null, null, null, null, null, null, null, null, null);
    }

}
