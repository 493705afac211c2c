package pairwright.catalogue;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import pairwright.model.Catalogue;
import pairwright.model.Nearest;

/** What the checks of entries share: all that is known, where a fault goes, and questions every one of them asks. */
final class Around {
    private final Catalogue under;
    private final List<Entry<?>> entries;
    private final Map<String, CatalogueReader.WordFile<?>> words;
    private final List<FileFault> faults;

    Around(Catalogue under, List<Entry<?>> entries, Map<String, CatalogueReader.WordFile<?>> words, List<FileFault> faults) {
        this.under = under;
        this.entries = entries;
        this.words = words;
        this.faults = faults;
    }

    Catalogue under() {
        return under;
    }

    List<Entry<?>> entries() {
        return entries;
    }

    Collection<CatalogueReader.WordFile<?>> wordFiles() {
        return words.values();
    }

    /** The file of some words; null where the folder has none. */
    CatalogueReader.WordFile<?> file(Kind.Words<?> kind) {
        return words.get(kind.name());
    }

    void fault(FileFault fault) {
        faults.add(fault);
    }

    /** Ids of a kind, those of files with faults too, so that one fault does not drag others behind it. */
    Set<String> ids(Kind.Entries<?> kind) {
        Set<String> ids = new TreeSet<>(kind.in().apply(under).keySet());
        entries.stream().filter(entry -> entry.is(kind)).forEach(entry -> ids.add(entry.id()));
        return ids;
    }

    /** The entry in force; null if its file has faults. */
    <T> T effective(Kind.Entries<T> kind, String id) {
        for (Entry<?> entry : entries) {
            if (entry.is(kind) && entry.id().equals(id)) {
                return kind.record().cast(entry.value());
            }
        }
        return kind.in().apply(under).get(id);
    }

    <T> List<T> items(Kind.Words<T> kind) {
        CatalogueReader.WordFile<?> file = words.get(kind.name());
        return file == null || file.items() == null ? List.of() : file.items().stream().map(kind.record()::cast).toList();
    }

    boolean broken(Kind.Words<?> kind) {
        return words.containsKey(kind.name()) && words.get(kind.name()).items() == null;
    }

    /** Schemas leave ranges open; what is computed from these must not meet a zero or less. */
    void aboveZero(YamlFile yaml, String at) {
        JsonNode range = yaml.root().at(at);
        if (range.isObject() && !(range.path("low").doubleValue() > 0)) {
            fault(yaml.fault(at, at.substring(at.lastIndexOf('/') + 1) + " starts at " + EntrySchema.shown(range.path("low"))
                    + ". Give figures above 0"));
        }
    }

    void angles(YamlFile yaml, String at) {
        JsonNode range = yaml.root().at(at);
        if (range.path("low").doubleValue() < 0 || range.path("high").doubleValue() > 180) {
            fault(yaml.fault(at, at.substring(at.lastIndexOf('/') + 1) + " runs from " + EntrySchema.shown(range.path("low"))
                    + " to " + EntrySchema.shown(range.path("high")) + ". Give angles from 0 to 180 degrees"));
        }
    }

    void unique(YamlFile yaml, String at, String what, List<String> ids) {
        for (int i = 0; i < ids.size(); i++) {
            if (ids.indexOf(ids.get(i)) < i) {
                fault(yaml.fault(at + "/" + i + "/id", "the " + what + " " + ids.get(i)
                        + " stands here twice. Give one another id"));
            }
        }
    }

    void known(YamlFile yaml, String at, String id, Collection<String> known, String what, String where) {
        if (!known.contains(id)) {
            String remedy = Nearest.to(id, known).map(near -> "Did you mean " + near + "?").orElseGet(() ->
                    known.size() > 12 ? "Use a known id or add the entry" : Nearest.remedy(id, known));
            fault(yaml.fault(at, "there is no " + what + " \"" + id + "\"" + where + ". " + remedy));
        }
    }

    /** A word as it is compared: without capitals and outer blanks. */
    static String plain(String word) {
        return word.strip().toLowerCase(Locale.ROOT);
    }
}
