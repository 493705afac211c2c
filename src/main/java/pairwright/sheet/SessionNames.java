package pairwright.sheet;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Names of the fields of a line-up's form: those of a seat begin with {@code seat.3.}, of a gobo with {@code gobo.0.}, of a contrast with {@code contrast.0.}. */
final class SessionNames {
    static final String SEAT = "seat";
    static final String GOBO = "gobo";
    static final String CONTRAST = "contrast";
    static final String PATCH_X = "patchXM";
    static final String PATCH_Y = "patchYM";
    /** What is not kept yet has an id that begins so. */
    static final String NEW = "new-";
    private static final int MOST_ROWS = 200;
    private static final int LONGEST_ID = 40;

    private SessionNames() {
    }

    static String of(String kind, int row, String field) {
        return kind + "." + row + "." + field;
    }

    /** The rows of a kind that were sent, in their order. */
    static List<Integer> rows(Sent sent, String kind) {
        Pattern name = Pattern.compile(kind + "\\.(\\d{1,3})\\..+");
        Set<Integer> rows = new TreeSet<>();
        for (String one : sent.values().keySet()) {
            Matcher matcher = name.matcher(one);
            if (matcher.matches() && rows.size() < MOST_ROWS) {
                rows.add(Integer.valueOf(matcher.group(1)));
            }
        }
        return new ArrayList<>(rows);
    }

    /** An id made of a name that is in no use yet. */
    static String id(String name, String otherwise, Set<String> taken) {
        String kebab = Normalizer.normalize(name == null ? "" : name, Normalizer.Form.NFD).replaceAll("\\p{M}", "").toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-")
                .replaceAll("^-+", "");
        kebab = kebab.substring(0, Math.min(LONGEST_ID, kebab.length())).replaceAll("-+$", "");
        String base = kebab.isEmpty() || kebab.startsWith(NEW) ? otherwise : kebab;
        String id = base;
        for (int number = 2; !taken.add(id); number++) {
            id = base + "-" + number;
        }
        return id;
    }
}
