package pairwright.advice;

import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import pairwright.model.Answer;
import pairwright.model.Stock;

/** Who has a unit, in words. */
public final class OutWords {
    private static final DateTimeFormatter MOMENT = DateTimeFormatter.ofPattern("EEE d MMM yyyy, HH:mm", Locale.ENGLISH);

    private OutWords() {
    }

    /** Of one that cannot be had, as a sentence. */
    public static String says(Answer.Taken out) {
        String what = switch (out.why()) {
            case "loan" -> "is on loan" + part(" to ", out.by()) + part(" for ", out.forWhat());
            case "repair" -> "is booked for repair" + part(", ", out.forWhat()) + part(", with ", out.by());
            case "in-repair" -> "is in repair";
            case "lost" -> "is lost";
            case "overdue" -> "should be back by now" + part(": it was for ", out.forWhat()) + part(", with ", out.by());
            default -> "is out" + part(" for ", out.forWhat()) + part(" with ", out.by());
        };
        return out.label() + " " + what + (out.freeFrom() == null ? "" : ", free again " + MOMENT.format(out.freeFrom())) + ".";
    }

    private static String part(String before, String text) {
        return text == null || text.isBlank() ? "" : before + text;
    }

    /** Of all of a type: the first that comes back, and how many more there are. */
    static String says(List<Stock.Held> units) {
        int more = units.size() - 1;
        return says(taken(units.get(0))) + (more == 0 ? "" : more == 1 ? " So is another." : " So are " + more + " others.");
    }

    static Answer.Taken taken(Stock.Held unit) {
        return new Answer.Taken(unit.id(), unit.label(), unit.out().why(), unit.out().forWhat(), unit.out().by(), unit.out().freeFrom());
    }
}
