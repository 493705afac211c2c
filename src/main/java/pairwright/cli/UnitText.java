package pairwright.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import pairwright.locker.Standing;
import pairwright.locker.Unit;
import pairwright.locker.UnitKind;

/** A unit in words. */
final class UnitText {
    private static final int NAMES = 14;

    private UnitText() {
    }

    /** Its type, or what it is where it has none. */
    static String what(Unit unit) {
        return unit.kind() == UnitKind.MIC ? unit.micType() : unit.kind().id();
    }

    /** How it stands for a time. */
    static String then(Standing standing) {
        if (standing.free()) {
            return "free";
        }
        String again = standing.freeFrom() == null ? "" : ", free again " + MomentText.shown(standing.freeFrom());
        if (!standing.unit().condition().usable()) {
            return standing.unit().condition().id() + again;
        }
        var booking = standing.booking();
        String taken = booking == null ? "" : booking.kind().id() + (booking.forWhat().isEmpty() ? "" : " " + booking.forWhat()) + " (" + booking.by() + ")";
        return (standing.overdue() ? "overdue: " + taken + due(standing) : taken) + again;
    }

    private static String due(Standing standing) {
        return standing.booking().lines().stream().filter(line -> line.unit().equals(standing.unit().id())).findFirst()
                .map(line -> ", due " + MomentText.shown(line.span().until())).orElse("");
    }

    /** A note of several lines on one; null for none. */
    static String oneLine(String note) {
        return note == null ? null : note.replaceAll("\\s*\n\\s*", " / ");
    }

    /** All that is known of it, and how it stands. */
    static String all(Unit unit, String now) {
        List<String> lines = new ArrayList<>();
        add(lines, "id", unit.id());
        add(lines, "label", unit.label());
        add(lines, unit.kind() == UnitKind.MIC ? "mic type" : "kind", what(unit));
        add(lines, "condition", unit.condition().id());
        add(lines, "note", oneLine(unit.note()));
        add(lines, "now", now);
        add(lines, "stored at", unit.storedAt());
        add(lines, "tag", unit.tag());
        add(lines, "serial", unit.serial());
        add(lines, "matched with", unit.pairMate());
        if (unit.channel() != null) {
            add(lines, "bank", unit.channel().bank());
            add(lines, "gain", range(unit.channel().leastGainDb(), unit.channel().mostGainDb()));
            add(lines, "input", number(unit.channel().inputOhm(), "ohm"));
            add(lines, "noise", number(unit.channel().noiseDbu(), "dBu"));
            add(lines, "phantom", unit.channel().phantom() == null ? null : "per " + unit.channel().phantom().id());
            add(lines, "phantom gives", number(unit.channel().phantomMa(), "mA"));
        }
        if (unit.stand() != null) {
            add(lines, "mass", number(unit.stand().massKg(), "kg"));
            add(lines, "reach", number(unit.stand().reachM(), "m"));
            add(lines, "foot radius", number(unit.stand().footRadiusM(), "m"));
            add(lines, "legs", unit.stand().legs() == null ? null : unit.stand().legs().toString());
            add(lines, "height", number(unit.stand().heightM(), "m"));
        }
        if (unit.pad() != null) {
            add(lines, "takes away", number(unit.pad().lossDb(), "dB"));
            add(lines, "phantom", passes(unit.pad().passesPhantom()));
        }
        if (unit.booster() != null) {
            add(lines, "adds", number(unit.booster().gainDb(), "dB"));
            add(lines, "draws", number(unit.booster().phantomMa(), "mA"));
            add(lines, "phantom", passes(unit.booster().passesPhantom()));
        }
        add(lines, "measured", unit.response().isEmpty() ? null : unit.response().size() + " points of its own response");
        return String.join("\n", lines) + "\n\n";
    }

    private static void add(List<String> lines, String name, String value) {
        if (value != null) {
            lines.addAll(AnswerText.wrapped(String.format(Locale.ROOT, "%-" + NAMES + "s", name), " ".repeat(NAMES), value, AnswerText.WIDTH));
        }
    }

    private static String number(Double value, String unit) {
        return value == null ? null : (value == Math.rint(value) ? Long.toString(value.longValue()) : value.toString()) + " " + unit;
    }

    private static String range(Double least, Double most) {
        return least == null && most == null ? null : (least == null ? "up" : number(least, "dB")) + " to " + (most == null ? "more" : number(most, "dB"));
    }

    private static String passes(Boolean passesPhantom) {
        return passesPhantom == null ? null : passesPhantom ? "goes through" : "ends at it";
    }
}
