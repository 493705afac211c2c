package pairwright.locker;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/** What is another thing of a unit than it was, for the history. */
final class UnitDifferences {
    /** What a column is called in a sentence; the unit of its figures, or none. */
    private record Words(String name, String unit) {
    }

    private UnitDifferences() {
    }

    /** Such as "label Ribbon 2 instead of Ribbon; least gain 10 dB instead of 8 dB"; empty where nothing differs. */
    static String said(Unit before, Unit after) {
        UnitDraft was = before.draft();
        UnitDraft is = after.draft();
        List<String> all = new ArrayList<>();
        for (UnitColumn column : UnitColumn.values()) {
            if (column != UnitColumn.ID && !Objects.equals(column.of(was), column.of(is))) {
                all.add(said(column, column.of(was), column.of(is)));
            }
        }
        return String.join("; ", all);
    }

    private static String said(UnitColumn column, Object before, Object after) {
        if (column == UnitColumn.RESPONSE) {
            return after == null ? "measured response taken away" : "another measured response";
        }
        Words words = words(column);
        return after == null ? words.name() + " taken away"
                : words.name() + " " + value(after, words) + (before == null ? "" : " instead of " + value(before, words));
    }

    private static String value(Object value, Words words) {
        String text = value instanceof String given ? given.replaceAll("\\s*\n\\s*", " / ") : CellText.of(value, false);
        return words.unit().isEmpty() ? text : text + " " + words.unit();
    }

    private static Words words(UnitColumn column) {
        return switch (column) {
            case MIC_TYPE -> new Words("mic type", "");
            case PAIR_MATE -> new Words("mate", "");
            case STORED_AT -> new Words("place", "");
            case LEAST_GAIN -> new Words("least gain", "dB");
            case MOST_GAIN -> new Words("most gain", "dB");
            case INPUT -> new Words("input impedance", "ohm");
            case NOISE -> new Words("input noise", "dBu");
            case PHANTOM -> new Words("switch of phantom power", "");
            case PHANTOM_CURRENT -> new Words("phantom current", "mA");
            case MASS -> new Words("mass", "kg");
            case REACH -> new Words("reach", "m");
            case FOOT_RADIUS -> new Words("column to foot", "m");
            case HEIGHT -> new Words("greatest height", "m");
            case LOSS -> new Words("loss", "dB");
            case BOOSTER_GAIN -> new Words("gain", "dB");
            case BOOSTER_PHANTOM -> new Words("phantom current drawn", "mA");
            case PASSES_PHANTOM -> new Words("passes phantom power:", "");
            default -> new Words(column.title(), "");
        };
    }
}
