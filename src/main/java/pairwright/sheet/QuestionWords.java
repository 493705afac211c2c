package pairwright.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import pairwright.drawing.Reader;
import pairwright.model.Catalogue;
import pairwright.model.Limits;
import pairwright.model.MicFamily;
import pairwright.model.Naming;
import pairwright.model.Neighbour;
import pairwright.model.Question;
import pairwright.model.Vocabulary;

/** A question in one line: "Tenor saxophone, dark, small untreated room, no phantom power". */
final class QuestionWords {
    private QuestionWords() {
    }

    /** The line; empty where no source is known. */
    static String of(Catalogue catalogue, Question meant, Reader reader) {
        if (meant.source() == null) {
            return "";
        }
        Vocabulary vocabulary = catalogue.words();
        List<String> parts = new ArrayList<>();
        meant.ways().forEach(way -> parts.add(PartsOf.wayName(vocabulary, way)));
        vocabulary.dynamics().stream().filter(one -> meant.dynamics().contains(one.id())).forEach(one -> parts.add(one.name()));
        meant.character().forEach(id -> parts.add(catalogue.characters().get(id).name()));
        if (meant.room() != null) {
            parts.add(catalogue.rooms().get(meant.room()).name());
        }
        meant.neighbours().forEach(neighbour -> parts.add(beside(catalogue, neighbour, reader)));
        vocabulary.circumstances().stream().filter(one -> meant.circumstances().contains(one.id())).forEach(one -> parts.add(one.name()));
        limits(catalogue, meant.limits(), reader, parts);
        if (!meant.wishes().isEmpty()) {
            parts.add(families(catalogue, meant.wishes()) + " welcome");
        }
        meant.techniques().forEach(id -> parts.add(catalogue.techniques().get(id).name()));
        String first = catalogue.sources().get(meant.source()).name();
        return parts.isEmpty() ? first : first + ", " + parts.stream().map(Naming::small).collect(Collectors.joining(", "));
    }

    private static String beside(Catalogue catalogue, Neighbour neighbour, Reader reader) {
        return "beside the " + Naming.small(catalogue.sources().get(neighbour.source()).name()) + " (" + reader.distance(neighbour.distanceM()) + ", "
                + reader.number(neighbour.angleDegrees(), 0) + " degrees)";
    }

    static void limits(Catalogue catalogue, Limits limits, Reader reader, List<String> parts) {
        if (limits.mics() != null) {
            parts.add(limits.mics() == 1 ? "one channel" : limits.mics() + " channels");
        }
        if (Boolean.FALSE.equals(limits.phantom())) {
            parts.add("no phantom power");
        }
        if (limits.preampGainDb() != null) {
            parts.add(reader.number(limits.preampGainDb(), 1) + " dB of gain");
        }
        if (limits.preampNoiseDbu() != null) {
            parts.add("input noise " + reader.number(limits.preampNoiseDbu(), 1) + " dBu");
        }
        if (!limits.onlyFamilies().isEmpty()) {
            parts.add("only " + families(catalogue, limits.onlyFamilies()));
        }
        if (!limits.withoutFamilies().isEmpty()) {
            parts.add("no " + families(catalogue, limits.withoutFamilies()));
        }
        if (!limits.onlyMicTypes().isEmpty()) {
            parts.add("only " + types(catalogue, limits.onlyMicTypes()));
        }
        if (!limits.withoutMicTypes().isEmpty()) {
            parts.add("not " + types(catalogue, limits.withoutMicTypes()));
        }
    }

    private static String families(Catalogue catalogue, List<MicFamily> families) {
        List<String> names = new ArrayList<>();
        Set<MicFamily> left = new LinkedHashSet<>(families);
        // "no condensers" is six families, and said in the word that means all of them
        catalogue.words().families().stream().sorted(Comparator.comparingInt((Vocabulary.FamilyWords words) -> words.families().size()).reversed())
                .filter(words -> words.families().size() > 1 && left.containsAll(words.families())).forEach(words -> {
                    if (left.removeAll(words.families())) {
                        names.add(words.name());
                    }
                });
        left.forEach(family -> names.add(Choices.family(catalogue, family)));
        return names.stream().map(Naming::small).collect(Collectors.joining(" or "));
    }

    private static String types(Catalogue catalogue, List<String> ids) {
        return ids.stream().map(id -> Naming.small(catalogue.mics().get(id).name())).collect(Collectors.joining(" or "));
    }
}
