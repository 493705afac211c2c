package pairwright.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import pairwright.locker.BookingKind;
import pairwright.locker.Condition;
import pairwright.locker.PhantomSwitch;
import pairwright.locker.UnitKind;
import pairwright.model.Catalogue;
import pairwright.model.MicType;

/** What can be chosen in the forms of the locker, and what its words are called there. */
final class LockerChoices {
    private LockerChoices() {
    }

    /** Every mic type and line box, by family. */
    static List<Choice.Group> types(Catalogue catalogue) {
        Map<String, List<Choice>> groups = new LinkedHashMap<>();
        catalogue.mics().values().stream().sorted(Comparator.comparing(MicType::family).thenComparing(MicType::name))
                .forEach(mic -> groups.computeIfAbsent(Choices.family(catalogue, mic.family()), any -> new ArrayList<>())
                        .add(new Choice(mic.id(), mic.name(), false)));
        return groups.entrySet().stream().map(group -> new Choice.Group(group.getKey(), group.getValue())).toList();
    }

    static List<Choice> conditions() {
        return Stream.of(Condition.values()).map(one -> new Choice(one.id(), named(one), false)).toList();
    }

    static List<Choice> kinds() {
        return Stream.of(UnitKind.values()).map(one -> new Choice(one.id(), named(one), false)).toList();
    }

    static List<Choice> phantom() {
        return List.of(new Choice("", "Not known", false), new Choice(PhantomSwitch.CHANNEL.id(), "for each channel", false),
                new Choice(PhantomSwitch.BANK.id(), "for the whole bank", false), new Choice(PhantomSwitch.NONE.id(), "not at all: there is none", false));
    }

    static String named(Condition condition) {
        return switch (condition) {
            case GOOD -> "Good";
            case LIMITED -> "Limited";
            case IN_REPAIR -> "In repair";
            case LOST -> "Lost";
        };
    }

    static String named(UnitKind kind) {
        return switch (kind) {
            case MIC -> "Microphone or line box";
            case CHANNEL -> "Preamp channel";
            case PAD -> "Pad";
            case BOOSTER -> "Inline booster";
            case STAND -> "Stand";
        };
    }

    static List<Choice> bookingKinds() {
        return Stream.of(BookingKind.values()).map(one -> new Choice(one.id(), ReadingWords.heading(one), false)).toList();
    }

    /** "Preamp channels". */
    static String several(UnitKind kind) {
        return Choices.capital(counted(kind, 2).substring(2));
    }

    /** "1 stand", "12 stands". */
    static String counted(UnitKind kind, long count) {
        String one = switch (kind) {
            case MIC -> "microphone or line box";
            case CHANNEL -> "preamp channel";
            case PAD -> "pad";
            case BOOSTER -> "inline booster";
            case STAND -> "stand";
        };
        return count + " " + (count == 1 ? one : kind == UnitKind.MIC ? "microphones and line boxes" : one + "s");
    }
}
