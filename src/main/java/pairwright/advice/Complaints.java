package pairwright.advice;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import pairwright.model.Nearest;
import pairwright.catalogue.Shown;
import pairwright.model.Catalogue;
import pairwright.model.Complaint;
import pairwright.model.Fault;

/** Which complaint a word means. */
final class Complaints {
    /** Words this short are taken as they are: another letter makes another word of them. */
    private static final int SHORT = 4;
    private static final int MEDIUM = 7;

    private Complaints() {
    }

    /** The complaint; null with a fault where none is meant. */
    static Complaint of(String heard, Catalogue catalogue, List<Fault> faults) {
        String all = String.join(", ", catalogue.complaints().keySet());
        if (heard == null || heard.isBlank()) {
            faults.add(new Fault("/heard", "heard is " + (heard == null ? "missing" : "empty") + ". Give one of " + all));
            return null;
        }
        Map<String, String> known = new TreeMap<>();
        catalogue.complaints().values().forEach(complaint -> complaint.words().forEach(word -> known.put(plain(word), complaint.id())));
        catalogue.complaints().values().forEach(complaint -> known.put(plain(complaint.name()), complaint.id()));
        catalogue.complaints().keySet().forEach(id -> known.put(plain(id), id));
        String written = plain(heard);
        String id = known.get(written);
        if (id == null) {
            String within = " " + written + " ";
            id = known.keySet().stream().filter(word -> within.contains(" " + word + " "))
                    .max(Comparator.comparingInt(String::length)).map(known::get).orElse(null);
        }
        if (id == null && written.length() > SHORT) {
            id = Nearest.within(written, known.keySet(), written.length() <= MEDIUM ? 1 : 2).map(known::get).orElse(null);
        }
        if (id == null) {
            faults.add(new Fault("/heard", "nothing is known of \"" + Shown.of(heard) + "\". Say one of " + all));
        }
        return id == null ? null : catalogue.complaints().get(id);
    }

    private static String plain(String word) {
        return word.toLowerCase(Locale.ROOT).replace('-', ' ').replaceAll("[^\\p{L}\\p{N}' ]+", " ").replaceAll(" +", " ").strip();
    }
}
