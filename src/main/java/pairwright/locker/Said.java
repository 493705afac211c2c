package pairwright.locker;

import java.text.Normalizer;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import pairwright.model.Fault;

/** Words that people type, and words for people. */
final class Said {
    static final int LONGEST_ID = 60;
    private static final int SHOWN = 40;
    private static final Pattern KEBAB = Pattern.compile("[a-z0-9]+(-[a-z0-9]+)*");
    private static final DateTimeFormatter MINUTE = DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm", Locale.ROOT);
    private static final DateTimeFormatter SECOND = DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm:ss", Locale.ROOT);

    private Said() {
    }

    /** Trimmed; null for nothing. Adds a fault where it is too long or holds what cannot be printed on one line. */
    static String line(String text, int longest, String at, List<Fault> faults) {
        if (text == null || text.isBlank()) {
            return null;
        }
        String trimmed = text.strip();
        if (trimmed.length() > longest) {
            faults.add(new Fault(at, "has " + trimmed.length() + " characters, but may have " + longest + ". Shorten it"));
        } else if (trimmed.codePoints().anyMatch(Said::unprintable)) {
            faults.add(new Fault(at, "holds a character that cannot be printed on one line. Take it out"));
        }
        return trimmed;
    }

    /** The same of several lines: ends of lines of whatever kind become one kind, and nothing else that cannot be printed may be in it. */
    static String lines(String text, int longest, String at, List<Fault> faults) {
        if (text == null || text.isBlank()) {
            return null;
        }
        String trimmed = text.replace("\r\n", "\n").replace('\r', '\n').strip();
        if (trimmed.length() > longest) {
            faults.add(new Fault(at, "has " + trimmed.length() + " characters, but may have " + longest + ". Shorten it"));
        } else if (trimmed.codePoints().anyMatch(code -> code != '\n' && unprintable(code))) {
            faults.add(new Fault(at, "holds a character that cannot be printed, such as a tab. Take it out"));
        }
        return trimmed;
    }

    private static boolean unprintable(int code) {
        int type = Character.getType(code);
        return type == Character.CONTROL || type == Character.SURROGATE || type == Character.LINE_SEPARATOR || type == Character.PARAGRAPH_SEPARATOR
                || type == Character.UNASSIGNED || code >= 0x202a && code <= 0x202e || code >= 0x2066 && code <= 0x2069;
    }

    /** An id such as barn-snare-2, with a letter so that it is never taken for the number of a booking; null for nothing. */
    static String id(String text, String at, List<Fault> faults) {
        String id = text == null ? "" : text.strip();
        if (id.isEmpty()) {
            return null;
        }
        if (id.length() > LONGEST_ID || !KEBAB.matcher(id).matches() || id.chars().noneMatch(Character::isLetter)) {
            faults.add(new Fault(at, quoted(id) + " is no id. Use small letters, digits and single hyphens between them, at least one letter, at most "
                    + LONGEST_ID + " characters, such as " + kebab(id)));
        }
        return id;
    }

    /** The nearest there is to an id. */
    static String kebab(String label) {
        String plain = Normalizer.normalize(label, Normalizer.Form.NFD).replaceAll("\\p{M}+", "").toLowerCase(Locale.ROOT)
                .replaceAll("[^a-z0-9]+", "-").replaceAll("^-|-$", "");
        String lettered = plain.chars().anyMatch(Character::isLetter) ? plain : plain.isEmpty() ? "unit" : "unit-" + plain;
        return lettered.length() <= LONGEST_ID - 5 ? lettered : lettered.substring(0, LONGEST_ID - 5).replaceAll("-$", "");
    }

    /** What somebody typed, cut short. */
    static String quoted(String text) {
        String shown = text.length() <= SHOWN ? text : text.substring(0, SHOWN) + "\u2026";
        return "\u201c" + shown.replaceAll("\\p{C}", "\ufffd") + "\u201d";
    }

    /** A moment, to the second only where that is not the full minute. */
    static String time(Instant moment, ZoneId zone) {
        boolean utc = zone.normalized().equals(ZoneOffset.UTC);
        return (moment.getEpochSecond() % 60 == 0 ? MINUTE : SECOND).format(moment.atZone(zone)) + (utc ? " UTC" : "");
    }

    static String time(Span span, ZoneId zone) {
        return time(span.from(), zone) + " to " + time(span.until(), zone);
    }

    /** A, B and C; or the first few and how many more. */
    static String list(Collection<String> words, int most) {
        List<String> all = List.copyOf(words);
        if (all.size() > most) {
            return String.join(", ", all.subList(0, most)) + " and " + (all.size() - most) + " more";
        }
        return all.size() < 2 ? String.join("", all) : String.join(", ", all.subList(0, all.size() - 1)) + " and " + all.get(all.size() - 1);
    }

    /** As people count: 2 before 10, capitals like small letters. */
    static final Comparator<String> AS_PEOPLE_COUNT = Said::compare;

    private static int compare(String one, String other) {
        int i = 0;
        int j = 0;
        while (i < one.length() && j < other.length()) {
            int endI = digits(one, i);
            int endJ = digits(other, j);
            int order;
            if (endI > i && endJ > j) {
                String first = bare(one, i, endI);
                String second = bare(other, j, endJ);
                order = first.length() != second.length() ? first.length() - second.length() : first.compareTo(second);
                i = endI;
                j = endJ;
            } else {
                order = Character.compare(Character.toLowerCase(one.charAt(i++)), Character.toLowerCase(other.charAt(j++)));
            }
            if (order != 0) {
                return order;
            }
        }
        int rest = (one.length() - i) - (other.length() - j);
        return rest != 0 ? rest : one.compareTo(other);
    }

    /** A number without the zeros in front. */
    private static String bare(String text, int from, int end) {
        int start = from;
        while (start < end - 1 && text.charAt(start) == '0') {
            start++;
        }
        return text.substring(start, end);
    }

    private static int digits(String text, int from) {
        int end = from;
        while (end < text.length() && text.charAt(end) >= '0' && text.charAt(end) <= '9') {
            end++;
        }
        return end;
    }
}
