package pairwright.http;

import io.javalin.http.Context;
import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import pairwright.catalogue.Shown;
import pairwright.locker.Span;
import pairwright.model.Fault;
import pairwright.model.Word;

/** Reads what stands behind the question mark. A name nobody knows is a fault: a misspelt filter would show more than was asked for. */
final class Query {
    /** A plus sign that was not written as %2B arrives as a blank. */
    private static final Pattern BLANK_FOR_PLUS = Pattern.compile(" (?=\\d\\d:\\d\\d$)");
    private static final int LONGEST = 200;
    /** Further off, a time that is answered could no longer be written as RFC 3339 wants it. */
    private static final int FIRST_YEAR = 1970;
    private static final int LAST_YEAR = 2999;

    private final Map<String, List<String>> values;
    private final List<Fault> faults = new ArrayList<>();

    /**
     * @param known the names there are
     */
    Query(Context context, String... known) {
        values = context.queryParamMap();
        List<String> names = List.of(known);
        values.forEach((name, given) -> {
            if (!names.contains(name)) {
                fault(name, "there is nothing to be asked as \"" + Shown.of(name) + "\" here. Known: "
                        + (names.isEmpty() ? "nothing" : String.join(", ", new TreeSet<>(names))));
            } else if (given.size() > 1) {
                fault(name, name + " is there " + given.size() + " times. Give it once");
            }
        });
    }

    /** A text; null where there is none or it is blank. */
    String text(String name) {
        List<String> given = values.getOrDefault(name, List.of());
        if (given.isEmpty() || given.get(0).isBlank()) {
            return null;
        }
        String text = given.get(0).strip();
        if (text.length() > LONGEST) {
            fault(name, name + " is " + text.length() + " characters. Give at most " + LONGEST);
            return null;
        }
        if (text.codePoints().anyMatch(code -> Character.isISOControl(code) || Character.getType(code) == Character.SURROGATE)) {
            fault(name, name + " holds a character that cannot be printed. Take it out");
            return null;
        }
        return text;
    }

    <W extends Word> W word(String name, W[] words) {
        String text = text(name);
        for (W word : words) {
            if (word.id().equals(text)) {
                return word;
            }
        }
        if (text != null) {
            fault(name, "there is no " + name + " \"" + Shown.of(text) + "\". Use one of " + Stream.of(words).map(Word::id).collect(Collectors.joining(", ")));
        }
        return null;
    }

    /** Yes or no; no where it is not said. */
    boolean yes(String name) {
        String text = text(name);
        if (text != null && !text.equals("true") && !text.equals("false")) {
            fault(name, name + " must be true or false, but was \"" + Shown.of(text) + "\"");
        }
        return "true".equals(text);
    }

    /** A whole number; null where there is none. */
    Long whole(String name, long least, long most) {
        String text = text(name);
        if (text == null) {
            return null;
        }
        if (text.matches("\\d{1,18}") && Long.parseLong(text) >= least && Long.parseLong(text) <= most) {
            return Long.valueOf(text);
        }
        fault(name, name + " must be a whole number from " + least + " to " + most + ", but was \"" + Shown.of(text) + "\"");
        return null;
    }

    /** A moment; null where there is none. */
    Instant moment(String name) {
        String text = text(name);
        if (text == null) {
            return null;
        }
        OffsetDateTime time = JsonReader.time(BLANK_FOR_PLUS.matcher(text).replaceFirst("+"));
        if (time == null) {
            fault(name, JsonReader.noTime(text));
            return null;
        }
        if (time.getYear() < FIRST_YEAR || time.getYear() > LAST_YEAR) {
            fault(name, name + " is in the year " + time.getYear() + ". Give a time from " + FIRST_YEAR + " to " + LAST_YEAR);
            return null;
        }
        return time.toInstant();
    }

    /**
     * The time that {@code from} and {@code until} name.
     *
     * @param from taken where it is not said
     * @param lasting how long it is where its end is not said
     * @return null where something was wrong
     */
    Span span(Instant from, Duration lasting) {
        Instant first = moment("from");
        Instant end = moment("until");
        if (!faults.isEmpty()) {
            return null;
        }
        first = first == null ? from : first;
        end = end == null ? first.plus(lasting) : end;
        if (first.getEpochSecond() >= end.getEpochSecond()) {
            fault("until", "until must be after from, which is " + LockerView.shown(first) + ", but was " + LockerView.shown(end));
            return null;
        }
        return new Span(first, end);
    }

    /** Whether anything is said under a name. */
    boolean has(String name) {
        return values.getOrDefault(name, List.of()).stream().anyMatch(text -> !text.isBlank());
    }

    void fault(String name, String says) {
        faults.add(new Fault("/" + JsonReader.pointer(name), says));
    }

    /**
     * Ends the request if something was wrong.
     *
     * @throws BadRequest with status 400 and every fault
     */
    void check() {
        if (!faults.isEmpty()) {
            throw new BadRequest(Problem.of(400, Problem.listed(faults)));
        }
    }
}
