package pairwright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import pairwright.model.Fault;

/**
 * A question that cannot be used as it is: what is wrong, and every field as it was typed.
 *
 * @param path where it is sent again
 * @param faults all of them
 * @param fields in the order of an address
 */
public record FaultView(String path, List<Said> faults, List<Field> fields) {
    /** More than any question needs; what is beyond is not shown again. */
    private static final int MOST_FIELDS = 60;
    private static final Map<String, String> POINTERS = new TreeMap<>(Map.ofEntries(
            Map.entry("words", "words"), Map.entry("source", "source"), Map.entry("ways", "way"), Map.entry("dynamics", "dynamics"),
            Map.entry("room", "room"), Map.entry("character", "character"), Map.entry("mics", "mics"), Map.entry("phantom", "phantom"),
            Map.entry("preampGainDb", "gain"), Map.entry("preampNoiseDbu", "noise"), Map.entry("onlyMicTypes", "onlyType"),
            Map.entry("withoutMicTypes", "withoutType"), Map.entry("circumstances", "circumstance"), Map.entry("techniques", "technique"),
            Map.entry("wishes", "wish"), Map.entry("from", "from"), Map.entry("until", "until"), Map.entry("locker", "locker"), Map.entry("options", "options"), Map.entry("draws", "draws"), Map.entry("distanceM", "nearDistance"),
            Map.entry("angleDegrees", "nearDegrees"), Map.entry("neighbours", "near"), Map.entry("micType", "type"), Map.entry("heard", "heard"),
            Map.entry("pattern", "pattern"), Map.entry("position", "position"), Map.entry("option", "mic"), Map.entry("typicalDbSpl", HeardQuery.LEVEL), Map.entry("peakDbSpl", HeardQuery.PEAK),
            Map.entry("toneDb", HeardQuery.TONE), Map.entry("lowestHz", HeardQuery.LOWEST), Map.entry("highestHz", HeardQuery.HIGHEST), Map.entry("crestDb", HeardQuery.CREST), Map.entry("attack", HeardQuery.ATTACK)));
    private static final Map<String, String> MORE = Map.of("type", "Microphone type", "heard", "What is heard", "pattern", "Pattern", "position", "Place",
            "mic", "Microphone as it stands", "pair", "How the two relate", "option", "Option");

    /**
     * What is wrong.
     *
     * @param label of the field; empty for none
     * @param href the field on the page; null where it is not there
     */
    public record Said(String label, String says, String href) {
    }

    /** A field as it was typed. */
    public record Field(String id, String name, String label, String value, boolean wrong) {
    }

    static FaultView of(Visit visit, List<Fault> faults) {
        Set<String> wrong = faults.stream().map(fault -> name(fault.at())).collect(Collectors.toSet());
        List<Field> fields = new ArrayList<>();
        visit.query().forEach((name, values) -> {
            String label = label(name);
            if (label == null) {
                return;
            }
            for (int i = 0; i < values.size() && fields.size() < MOST_FIELDS; i++) {
                boolean trio = name.startsWith("near");
                if (!values.get(i).isBlank() || trio) {
                    fields.add(new Field("f-" + name + (i == 0 ? "" : "-" + (i + 1)), name, label + (values.size() > 1 ? " " + (i + 1) : ""),
                            values.get(i), wrong.contains(name)));
                }
            }
        });
        if (fields.stream().noneMatch(field -> field.name().equals("words"))) {
            fields.add(0, new Field("f-words", "words", label("words"), "", wrong.contains("words")));
        }
        if (wrong.contains("type") && fields.stream().noneMatch(field -> field.name().equals("type"))) {
            fields.add(new Field("f-type", "type", label("type"), "", true));
        }
        return new FaultView(visit.path(), faults.stream().map(fault -> said(fault, fields)).distinct().toList(), List.copyOf(fields));
    }

    private static Said said(Fault fault, List<Field> fields) {
        String name = name(fault.at());
        String label = label(name);
        return new Said(label == null ? "" : label, fault.says(),
                fields.stream().filter(field -> field.name().equals(name)).findFirst().map(field -> "#" + field.id()).orElse(null));
    }

    private static String label(String name) {
        String label = AskQuery.FIELDS.get(name);
        return label != null ? label : MORE.get(name);
    }

    /** The field a pointer means: the last part of it that is a name. */
    private static String name(String at) {
        if (label(at) != null) {
            return at;
        }
        String[] parts = at.split("/");
        if (at.startsWith("/option/") || at.equals("/option")) {
            return "mic";
        }
        if (at.contains("/neighbours/") && at.endsWith("/source")) {
            return "near";
        }
        for (int i = parts.length - 1; i >= 0; i--) {
            String name = POINTERS.get(parts[i]);
            if (name != null) {
                return name;
            }
        }
        return at;
    }
}
