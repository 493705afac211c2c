package pairwright.advice;

import static com.fasterxml.jackson.databind.DeserializationFeature.ACCEPT_SINGLE_VALUE_AS_ARRAY;

import com.fasterxml.jackson.annotation.JsonCreator;
import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.MapperFeature;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import pairwright.model.Answer;
import pairwright.model.Caution;
import pairwright.model.Neighbour;
import pairwright.model.Option;
import pairwright.model.Placement;
import pairwright.model.Question;
import pairwright.model.Severity;

/**
 * A sentence somebody might type, and what an engineer would accept as an answer to it.
 *
 * @param source the source that has to be understood, or any of several where the sentence leaves it open
 * @param neighbour any of these has to be understood as playing too
 * @param acceptable an option will do when each of its microphones is one of these
 * @param techniques an option will do when it is one of these, whatever its microphones
 * @param wrong what no option may hold, unless a caution says what the entry names
 * @param cautions what has to be said
 */
record Sentence(String words, List<String> source, String way, String room, String character, String circumstance,
        List<String> neighbour, Boolean phantom, Integer mics, List<Mic> acceptable, List<String> techniques, List<Mic> wrong,
        List<Said> cautions) {
    private static final ObjectMapper YAML = YAMLMapper.builder()
            .enable(ACCEPT_SINGLE_VALUE_AS_ARRAY).enable(MapperFeature.ACCEPT_CASE_INSENSITIVE_ENUMS).build();

    Sentence {
        techniques = techniques == null ? List.of() : List.copyOf(techniques);
        wrong = wrong == null ? List.of() : List.copyOf(wrong);
        cautions = cautions == null ? List.of() : List.copyOf(cautions);
    }

    static List<Sentence> in(String file) {
        try (InputStream in = Sentence.class.getResourceAsStream("/questions/" + file + ".yaml")) {
            return YAML.readValue(in, new TypeReference<List<Sentence>>() {
            });
        } catch (IOException e) {
            throw new UncheckedIOException(file, e);
        }
    }

    /** What was read other than meant. */
    List<String> misread(Answer answer) {
        Question meant = answer.question().meant();
        List<String> faults = new ArrayList<>();
        if (!source.contains(meant.source())) {
            faults.add("source " + meant.source());
        }
        if (way != null && !meant.ways().contains(way)) {
            faults.add("way " + meant.ways() + " without " + way);
        }
        if (room != null && !room.equals(meant.room())) {
            faults.add("room " + meant.room() + " instead of " + room);
        }
        if (character != null && !meant.character().contains(character)) {
            faults.add("character " + meant.character() + " without " + character);
        }
        if (circumstance != null && !meant.circumstances().contains(circumstance)) {
            faults.add("circumstances " + meant.circumstances() + " without " + circumstance);
        }
        if (neighbour != null && meant.neighbours().stream().map(Neighbour::source).noneMatch(neighbour::contains)) {
            faults.add("neighbours " + meant.neighbours().stream().map(Neighbour::source).toList() + ", none of " + neighbour);
        }
        if (phantom != null && !phantom.equals(meant.limits().phantom())) {
            faults.add("phantom " + meant.limits().phantom());
        }
        if (mics != null && !mics.equals(meant.limits().mics())) {
            faults.add("microphones " + meant.limits().mics() + " instead of " + mics);
        }
        return faults;
    }

    boolean accepts(Option option) {
        return techniques.contains(option.technique())
                || option.mics().stream().allMatch(mic -> acceptable.stream().anyMatch(alternative -> alternative.is(mic)));
    }

    /** The microphones of an answer nobody should have offered, at least not without saying what can happen. */
    List<String> wrongIn(Answer answer) {
        return answer.options().stream().flatMap(option -> option.mics().stream()
                .filter(mic -> wrong.stream().anyMatch(entry -> entry.is(mic) && !entry.isExcusedBy(option)))
                .map(mic -> option.rank() + ": " + told(mic))).toList();
    }

    List<String> unsaidIn(Answer answer) {
        return cautions.stream().filter(caution -> !caution.isSaidIn(answer)).map(Said::says).toList();
    }

    static String told(Option option) {
        return option.technique() + " " + option.mics().stream().map(Sentence::told).toList();
    }

    private static String told(Placement mic) {
        return mic.micType() + " " + mic.pattern().id() + " " + mic.position() + " " + mic.distanceM() + " m";
    }

    /**
     * A microphone type or family, where need be in one pattern, at places of one kind, nearer or farther than a distance.
     *
     * @param unless for a wrong one: the caution that excuses it
     */
    record Mic(String mic, String pattern, String position, Double withinM, Double beyondM, String unless) {
        @JsonCreator
        static Mic of(String mic) {
            return new Mic(mic, null, null, null, null, null);
        }

        @JsonCreator
        Mic {
        }

        boolean is(Placement placed) {
            return (mic.equals(placed.micType()) || mic.equals(placed.family().id()))
                    && (pattern == null || pattern.equals(placed.pattern().id()))
                    && (position == null || says(position, placed.position() + " " + placed.positionName()))
                    && (withinM == null || placed.distanceM() < withinM)
                    && (beyondM == null || placed.distanceM() > beyondM);
        }

        boolean isExcusedBy(Option option) {
            return unless != null && option.cautions().stream().map(Caution::says).anyMatch(said -> Sentence.says(unless, said));
        }
    }

    /**
     * What a caution has to say, in every option that holds one of the microphones {@code of}, or in every option.
     *
     * @param inAny one option that says it is enough
     * @param severity the least it has to be
     */
    record Said(String says, Severity severity, List<String> of, boolean inAny) {
        /** Never where there is no option: who is not answered is not warned. */
        boolean isSaidIn(Answer answer) {
            if (answer.options().isEmpty()) {
                return false;
            }
            List<Option> concerned = answer.options().stream().filter(option -> of == null || option.mics().stream()
                    .anyMatch(mic -> of.contains(mic.micType()) || of.contains(mic.family().id()))).toList();
            return inAny ? concerned.stream().anyMatch(this::isSaidIn) : concerned.stream().allMatch(this::isSaidIn);
        }

        private boolean isSaidIn(Option option) {
            return option.cautions().stream().anyMatch(caution -> Sentence.says(says, caution.says())
                    && (severity == null || caution.severity().compareTo(severity) >= 0));
        }
    }

    private static boolean says(String regex, String text) {
        return Pattern.compile(regex, Pattern.CASE_INSENSITIVE).matcher(text).find();
    }
}
