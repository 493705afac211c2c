package pairwright.locker;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.regex.Pattern;
import pairwright.model.Nearest;
import pairwright.model.Word;

/** Reads a cell as what its column holds, and says what is wrong with it. */
final class CellReader {
    private static final Pattern NUMBER = Pattern.compile("[-+]?(\\d+(\\.\\d*)?|\\.\\d+)([eE][-+]?\\d{1,3})?");
    private static final Pattern COMMA_NUMBER = Pattern.compile("[-+]?\\d+,\\d+");
    /** With a decimal comma, a point before three digits may part the thousands. */
    private static final Pattern EITHER_WAY = Pattern.compile("[-+]?\\d{1,3}\\.\\d{3}");
    private static final int LONGEST_NUMBER = 400;
    private static final int MOST_POINTS = 10_000;

    private final boolean decimalComma;
    private final Consumer<String> faults;

    /** @param faults told what is wrong with a cell, and what to do */
    CellReader(boolean decimalComma, Consumer<String> faults) {
        this.decimalComma = decimalComma;
        this.faults = faults;
    }

    /** The value of a cell; null for an empty one, and for one that cannot be read. */
    Object read(UnitColumn.Form form, String cell) {
        String bare = cell.strip();
        if (bare.isEmpty()) {
            return null;
        }
        return switch (form) {
            case TEXT -> CellText.unguarded(cell);
            case KIND -> word(bare, UnitKind.values());
            case CONDITION -> word(bare, Condition.values());
            case PHANTOM -> word(bare, PhantomSwitch.values());
            case NUMBER -> number(bare);
            case WHOLE -> whole(bare);
            case YES_NO -> truth(bare);
            case RESPONSE -> response(bare);
        };
    }

    private <W extends Word> W word(String cell, W[] known) {
        Optional<W> found = Arrays.stream(known).filter(word -> word.id().equals(cell.toLowerCase(Locale.ROOT))).findFirst();
        if (found.isEmpty()) {
            faults.accept("is none of the words for it. " + Nearest.remedy(cell, Arrays.stream(known).map(Word::id).toList()));
        }
        return found.orElse(null);
    }

    private Double number(String cell) {
        String plain = cell.replace('\u2212', '-');
        if (decimalComma && EITHER_WAY.matcher(plain).matches()) {
            faults.accept("may be meant either way. Write decimals with a comma and thousands without a point, such as "
                    + plain.replace('.', ',') + " or " + plain.replace(".", ""));
            return null;
        }
        if (decimalComma && COMMA_NUMBER.matcher(plain).matches()) {
            plain = plain.replace(',', '.');
        }
        if (plain.length() > LONGEST_NUMBER || !NUMBER.matcher(plain).matches() || Double.valueOf(plain).isInfinite()) {
            faults.accept("is not a number. Write only the number, without its unit, decimals with a "
                    + (decimalComma ? "comma, such as 1,5" : "point, such as 1.5"));
            return null;
        }
        // adding nothing makes a negative zero an ordinary one
        return Double.parseDouble(plain) + 0.0;
    }

    private Integer whole(String cell) {
        if (!cell.matches("\\d{1,9}")) {
            faults.accept("is not a whole number. Write one such as 3");
            return null;
        }
        return Integer.valueOf(cell);
    }

    private Boolean truth(String cell) {
        switch (cell.toLowerCase(Locale.ROOT)) {
            case "yes", "true":
                return true;
            case "no", "false":
                return false;
            default:
                faults.accept("is neither yes nor no. Write one of them");
                return null;
        }
    }

    /** Points as {@code 63:-1.2 125:0}. */
    private List<ResponsePoint> response(String cell) {
        List<ResponsePoint> points = new ArrayList<>();
        for (String written : cell.split("\\s+")) {
            String[] two = written.split(":", -1);
            if (two.length != 2) {
                faults.accept("has \"" + CellText.shown(written) + "\" in it, which is no point. Write each point as frequency in Hz, a colon and level in dB, "
                        + "with a blank between points, such as 63:-1" + (decimalComma ? "," : ".") + "2 125:0");
                return null;
            }
            Double frequencyHz = number(two[0]);
            Double levelDb = frequencyHz == null ? null : number(two[1]);
            if (levelDb == null) {
                return null;
            }
            points.add(new ResponsePoint(frequencyHz, levelDb));
            if (points.size() > MOST_POINTS) {
                faults.accept("has more than " + MOST_POINTS + " points. A few an octave are enough");
                return null;
            }
        }
        return points;
    }
}
