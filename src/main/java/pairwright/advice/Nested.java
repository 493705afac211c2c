package pairwright.advice;

import java.util.List;
import java.util.stream.Collectors;
import pairwright.catalogue.Shown;
import pairwright.model.Ask;
import pairwright.model.Fault;
import pairwright.model.Meaning;
import pairwright.model.MicType;
import pairwright.model.Naming;
import pairwright.model.Pattern;
import pairwright.model.PatternData;
import pairwright.model.Position;
import pairwright.model.Request;
import pairwright.model.Source;

/** A question inside another request, and the ids that stand beside it. Faults are collected, so that all are said at once. */
final class Nested {
    static final String AT = "/question";

    private Nested() {
    }

    /** The question as it was understood; null where it has faults or names no source. */
    static Meaning question(Request request, Knowledge now, List<Fault> faults) {
        if (request == null) {
            faults.add(new Fault(AT, "question is missing. Give it as for /api/ask, such as {\"words\": \"brushed snare, small room\"}"));
            return null;
        }
        try {
            Meaning meaning = Questions.of(request, now.catalogue(), now.reader());
            if (meaning.question().source() != null) {
                return meaning;
            }
            faults.add(new Fault(AT + "/words", meaning.ask().isEmpty()
                    ? "no source was understood in \"" + Shown.of(meaning.question().words()) + "\". Name what is recorded, or give a source id"
                    : meaning.ask().stream().map(Ask::says).collect(Collectors.joining(" "))));
        } catch (UnusableQuestion unusable) {
            unusable.faults().forEach(fault -> faults.add(new Fault(AT + fault.at(), fault.says())));
        }
        return null;
    }

    /** A type by its id; null where it is missing or unknown. */
    static MicType mic(String id, String at, Knowledge now, List<Fault> faults) {
        MicType mic = id == null ? null : now.catalogue().mics().get(id);
        if (id == null) {
            faults.add(new Fault(at, "micType is missing. Give the id of a mic type, such as long-ribbon"));
        } else if (mic == null) {
            List<String> near = now.reader().nearest(Shown.of(id).replace('-', ' '), 12).stream().map(reading -> reading.id())
                    .filter(now.catalogue().mics()::containsKey).distinct().limit(3).toList();
            faults.add(new Fault(at, "there is no mic type \"" + Shown.of(id) + "\". "
                    + (near.isEmpty() ? "Known: " + String.join(", ", now.catalogue().mics().keySet()) : "Maybe " + String.join(" or ", near))));
        }
        return mic;
    }

    /** The figures of a pattern; the first of the type where none is named, null where the type has no such. */
    static PatternData pattern(MicType mic, Pattern named, String at, List<Fault> faults) {
        if (named == null) {
            return mic.patterns().get(0);
        }
        for (PatternData data : mic.patterns()) {
            if (data.pattern() == named) {
                return data;
            }
        }
        faults.add(new Fault(at, mic.id() + " has no pattern \"" + named.id() + "\". It has "
                + String.join(", ", mic.patterns().stream().map(data -> data.pattern().id()).toList())));
        return null;
    }

    /** A position by its id; null where it is missing or the source has no such. */
    static Position position(Source source, String id, String at, List<Fault> faults) {
        for (Position position : source.positions()) {
            if (position.id().equals(id)) {
                return position;
            }
        }
        faults.add(new Fault(at, id == null ? "position is missing. Give one of " + positions(source)
                : source.id() + " has no position \"" + Shown.of(id) + "\". It has " + positions(source)));
        return null;
    }

    static String positions(Source source) {
        return String.join(", ", source.positions().stream().map(Position::id).toList());
    }

    /** A type within a sentence: what stands behind a comma goes into brackets. */
    static String named(MicType mic) {
        int comma = mic.name().indexOf(", ");
        return comma < 0 ? Naming.small(mic.name()) : Naming.small(mic.name().substring(0, comma)) + " (" + mic.name().substring(comma + 2) + ")";
    }
}
