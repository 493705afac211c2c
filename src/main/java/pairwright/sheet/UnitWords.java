package pairwright.sheet;

import java.util.ArrayList;
import java.util.List;
import pairwright.locker.UnitDraft;

/** What is said of units in sentences. */
final class UnitWords {
    private UnitWords() {
    }

    /** Field by field what differs, such as "Label: A 1 now, yours A 2". */
    static List<String> differences(UnitDraft now, UnitDraft wanted, AtLocker at) {
        List<FormField> theirs = new UnitForm(at, now.kind()).fields(now);
        List<FormField> yours = new UnitForm(at, now.kind()).fields(wanted);
        List<String> all = new ArrayList<>();
        for (int field = 0; field < theirs.size(); field++) {
            String before = theirs.get(field).value();
            String after = yours.get(field).value();
            if (!before.equals(after)) {
                all.add(theirs.get(field).label() + ": " + shown(before) + " now, yours " + shown(after));
            }
        }
        return all;
    }

    private static String shown(String value) {
        return value.isEmpty() ? "nothing" : "\u201c" + value.strip().replace('\n', ',') + "\u201d";
    }
}
