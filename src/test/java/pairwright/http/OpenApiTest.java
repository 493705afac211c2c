package pairwright.http;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.annotation.JsonProperty;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pairwright.acoustics.OctaveCurve;
import pairwright.lab.Summary;
import pairwright.listen.BleedHeard;
import pairwright.listen.Measured;
import pairwright.listen.PairHeard;
import pairwright.listen.TakesCompared;
import pairwright.listen.Traits;
import pairwright.locker.BookingDraft;
import pairwright.locker.Place;
import pairwright.locker.Unit;
import pairwright.locker.UnitDraft;
import pairwright.model.Answer;
import pairwright.model.Character;
import pairwright.model.Complaint;
import pairwright.model.Coverage;
import pairwright.model.Limits;
import pairwright.model.MicType;
import pairwright.model.Moves;
import pairwright.model.MovesRequest;
import pairwright.model.Neighbour;
import pairwright.model.Request;
import pairwright.model.Room;
import pairwright.model.Setup;
import pairwright.model.Source;
import pairwright.model.Technique;
import pairwright.model.WhyNot;
import pairwright.model.WhyNotRequest;
import pairwright.model.Word;
import pairwright.numbers.Worked;
import pairwright.rules.RuleInfo;

/** The description of the interface against the program's own records and routes. */
class OpenApiTest {
    private static final OpenApi OPEN_API = Serving.OPEN_API;
    private static final JsonNode SCHEMAS = OPEN_API.tree().path("components").path("schemas");

    /** Lists that only a locker adds. */
    private static final Set<String> WITH_A_LOCKER = Set.of("Placement.units", "Answer.out", "Problem.clashes", "Problem.shortOf", "Problem.waysOut", "Problem.fits");

    /** Of a server that has all there may be; pages are for people, and not described. */
    @Test
    void everyAddressForProgramsIsDescribedAndNothingElse(@TempDir Path folder) {
        Set<String> there;
        try (LockerServing serving = LockerServing.open(Place.in(folder))) {
            there = serving.addressesForPrograms();
        }
        Set<String> heads = new TreeSet<>();
        there.stream().filter(address -> address.startsWith("HEAD ")).forEach(address -> heads.add("GET" + address.substring(4)));
        there.removeIf(address -> address.startsWith("HEAD "));
        Set<String> described = new TreeSet<>();
        OPEN_API.tree().path("paths").properties().forEach(path -> path.getValue().properties()
                .forEach(operation -> described.add(operation.getKey().toUpperCase(Locale.ROOT) + " " + path.getKey())));
        assertTrue(there.contains("PATCH /api/locker/bookings/{id}"), there.toString());
        assertEquals(Set.of(), without(there, described), "not described in openapi.yaml");
        assertEquals(Set.of(), without(described, there), "described in openapi.yaml, and not there");
        there.removeIf(address -> !address.startsWith("GET "));
        assertEquals(there, heads, "what is read with GET can be asked for with HEAD");
    }

    private static Set<String> without(Set<String> these, Set<String> those) {
        Set<String> left = new TreeSet<>(these);
        left.removeAll(those);
        return left;
    }

    @Test
    void answersAreDescribedFieldByFieldAsTheRecordsTheyAreMadeOf() {
        List<String> wrong = new ArrayList<>();
        for (Class<?> record : List.of(Answer.class, Source.class, MicType.class, Character.class, Room.class, Technique.class, Complaint.class, RuleInfo.class, WhyNot.class, Moves.class,
                Routes.Lines.class, Routes.Found.class, Routes.Suggestions.class, Routes.RuleLines.class, Routes.Health.class, NumbersRoutes.Calculations.class, Worked.class, Problem.class,
                Unit.class, LockerView.Units.class, LockerView.Free.class, LockerView.Bookings.class, LockerView.Booked.class, LockerView.OutNow.class, LockerView.History.class,
                LockerView.MonthOfUse.class, LockerView.Table.class, Coverage.Served.class, Coverage.Help.class)) {
            compare(record, record.getSimpleName(), SCHEMAS.path(record.getSimpleName()), true, new TreeSet<>(), wrong);
        }
        assertEquals(List.of(), wrong);
    }

    @Test
    void plansAreDescribedFieldByFieldAsTheRecordsTheyAreMadeOf() {
        List<String> wrong = new ArrayList<>();
        compare(SessionView.Plans.class, "SessionPlans", SCHEMAS.path("SessionPlans"), true, new TreeSet<>(), wrong);
        compare(SessionView.Changed.class, "SessionChanged", SCHEMAS.path("SessionChanged"), true, new TreeSet<>(), wrong);
        assertEquals(List.of(), wrong);
    }

    @Test
    void exercisesAreDescribedFieldByFieldAsTheRecordsTheyAreMadeOf() {
        List<String> wrong = new ArrayList<>();
        for (Class<?> record : List.of(LabView.ExerciseLines.class, LabView.ExercisesMade.class, LabView.ExerciseKeys.class, LabView.AnswerMarked.class, LabView.AnswerReceived.class,
                LabView.ExerciseMarks.class, LabView.PracticeTried.class, LabView.PracticeMarked.class, LabMarkRoutes.AnswersMarked.class, LabPracticeRoutes.ExerciseKinds.class, Summary.class)) {
            compare(record, record.getSimpleName(), SCHEMAS.path(record.getSimpleName()), true, new TreeSet<>(), wrong);
        }
        assertEquals(List.of(), wrong);
    }

    @Test
    void whatWasHeardIsDescribedFieldByFieldAsTheRecordsItIsMadeOf() {
        List<String> wrong = new ArrayList<>();
        for (Class<?> record : List.of(Measured.class, Traits.class, PairHeard.class, TakesCompared.class, BleedHeard.class)) {
            compare(record, record.getSimpleName(), SCHEMAS.path(record.getSimpleName()), true, new TreeSet<>(), wrong);
        }
        assertEquals(List.of(), wrong);
    }

    @Test
    void lineUpsAreDescribedFieldByFieldAsTheyAreWritten() {
        List<String> wrong = new ArrayList<>();
        for (long seed = 0; seed < 200; seed++) {
            JsonNode lineUp = SessionJson.of(new LineUps(seed, Serving.KNOWLEDGE.current().catalogue()).next());
            wrong.addAll(OPEN_API.faultsAs("SessionRequest", lineUp));
        }
        assertEquals(List.of(), wrong);
    }

    @Test
    void questionsAreDescribedFieldByFieldAsTheyAreRead() {
        assertEquals(names(Request.class), fields(SCHEMAS.path("Request")));
        assertEquals(names(Limits.class), fields(SCHEMAS.path("AskLimits")));
        assertEquals(names(Neighbour.class), fields(SCHEMAS.path("AskNeighbour")));
        assertEquals(names(WhyNotRequest.class), fields(SCHEMAS.path("WhyNotRequest")));
        assertEquals(names(MovesRequest.class), fields(SCHEMAS.path("MovesRequest")));
        assertEquals(names(Setup.class), fields(SCHEMAS.path("Setup")));
        assertEquals(names(Setup.Put.class), fields(SCHEMAS.path("Put")));
    }

    @Test
    void whatIsWrittenToTheLockerIsDescribedFieldByFieldAsItIsRead() {
        assertEquals(names(UnitDraft.class), fields(SCHEMAS.path("UnitDraft")));
        assertEquals(names(Unit.class), fields(SCHEMAS.path("UnitPatch")));
        Set<String> booking = names(BookingDraft.class);
        assertTrue(booking.remove("forWhat") && booking.add("for"));
        assertEquals(booking, fields(SCHEMAS.path("BookingDraft")));
        assertEquals(names(LockerView.Booked.class), fields(SCHEMAS.path("BookingPatch")));
    }

    @Test
    void everyFieldSaysWhatItIs() {
        List<String> silent = new ArrayList<>();
        SCHEMAS.properties().forEach(schema -> {
            if (schema.getValue().path("description").asText().isBlank()) {
                silent.add(schema.getKey());
            }
            schema.getValue().path("properties").properties().stream()
                    .filter(field -> field.getValue().path("description").asText().isBlank())
                    .forEach(field -> silent.add(schema.getKey() + "." + field.getKey()));
        });
        OPEN_API.tree().path("paths").properties().forEach(path -> path.getValue().properties().stream()
                .filter(operation -> operation.getValue().path("summary").asText().isBlank()
                        || operation.getValue().path("description").asText().isBlank())
                .forEach(operation -> silent.add(path.getKey())));
        assertEquals(List.of(), silent);
    }

    @Test
    void everySchemaOfAnObjectIsClosedAndEverySchemaIsUsed() {
        String text = OPEN_API.tree().toString();
        SCHEMAS.properties().forEach(schema -> {
            assertTrue(!schema.getValue().path("type").asText().equals("object") || !schema.getValue().path("additionalProperties").isMissingNode(),
                    schema.getKey() + " takes fields that are not described");
            assertTrue(text.contains("\"#/components/schemas/" + schema.getKey() + "\""), schema.getKey() + " is used nowhere");
        });
    }

    @Test
    void everyExampleIsOne() {
        List<String> wrong = new ArrayList<>();
        int[] seen = {0};
        examples("", OPEN_API.tree(), seen, wrong);
        assertEquals(List.of(), wrong);
        assertTrue(seen[0] >= 15, "only " + seen[0] + " examples were found");
    }

    @Test
    void theServedDescriptionIsThisOne() throws Exception {
        Reply reply = Serving.get("/openapi.yaml");
        assertEquals("application/yaml", reply.mediaType());
        assertEquals(OPEN_API.tree(), new YAMLMapper().readTree(reply.body()));
    }

    private static void examples(String at, JsonNode node, int[] seen, List<String> wrong) {
        boolean media = node.has("schema") && (node.has("example") || node.has("examples"));
        if (media) {
            List<JsonNode> values = new ArrayList<>();
            if (node.has("example")) {
                values.add(node.path("example"));
            }
            node.path("examples").forEach(named -> values.add(named.path("value")));
            values.forEach(value -> wrong.addAll(OPEN_API.faults(at + "/schema", value)));
            seen[0] += values.size();
        } else if (node.path("examples").isArray()) {
            node.path("examples").forEach(value -> wrong.addAll(OPEN_API.faults(at, value)));
            seen[0] += node.path("examples").size();
        }
        if (node.isArray()) {
            for (int i = 0; i < node.size(); i++) {
                examples(at + "/" + i, node.get(i), seen, wrong);
            }
        } else {
            node.properties().stream().filter(field -> !field.getKey().equals("example") && !field.getKey().equals("examples"))
                    .forEach(field -> examples(at + "/" + field.getKey().replace("~", "~0").replace("/", "~1"), field.getValue(), seen, wrong));
        }
    }

    /** Compares a type with the schema that describes it, and what it holds with what that refers to. */
    private static void compare(Type type, String at, JsonNode described, boolean always, Set<String> done, List<String> wrong) {
        JsonNode schema = OPEN_API.followed(described);
        if (type instanceof ParameterizedType map && map.getRawType() == Map.class) {
            expect("object", schema, at, wrong); // of names nobody can know beforehand
            return;
        }
        if (type instanceof ParameterizedType list) {
            expect("array", schema, at, wrong);
            compare(list.getActualTypeArguments()[0], at + "[]", schema.path("items"), always, done, wrong);
            return;
        }
        Class<?> kind = (Class<?>) type;
        if (kind == JsonNode.class) {
            expect("object", schema, at, wrong); // written by hand, and tried by itself
        } else if (kind.isRecord()) {
            expect("object", schema, at, wrong);
            if (done.add(kind.getName())) {
                fields(kind, at, schema, done, wrong);
            }
        } else if (kind == OctaveCurve.class) {
            expect("array", schema, at, wrong);
            if (schema.path("minItems").asInt() != 9 || schema.path("maxItems").asInt() != 9) {
                wrong.add(at + " is nine octaves");
            }
        } else if (Word.class.isAssignableFrom(kind)) {
            Set<String> words = new TreeSet<>();
            schema.path("enum").forEach(word -> words.add(word.asText()));
            Set<String> known = new TreeSet<>();
            Stream.of(kind.getEnumConstants()).forEach(word -> known.add(((Word) word).id()));
            // a reason is only ever for or against
            if (!(at.endsWith("reasons[].effect") ? known.containsAll(words) && !words.isEmpty() : words.equals(known))) {
                wrong.add(at + " is one of " + known + ", not of " + words);
            }
        } else if (kind.isEnum()) {
            Set<String> written = new TreeSet<>();
            schema.path("enum").forEach(word -> written.add(word.asText()));
            if (!written.equals(Stream.of(kind.getEnumConstants()).map(Object::toString).collect(Collectors.toSet()))) {
                wrong.add(at + " is one of " + List.of(kind.getEnumConstants()) + ", not of " + written);
            }
        } else if (kind == OffsetDateTime.class) {
            if (!schema.path("format").asText().equals("date-time")) {
                wrong.add(at + " is a time");
            }
        } else if (!schema.has("anyOf")) {
            expect(kind == String.class ? "string"
                    : kind == int.class || kind == Integer.class || kind == long.class || kind == Long.class ? "integer"
                    : kind == double.class || kind == Double.class ? "number"
                    : kind == boolean.class || kind == Boolean.class ? "boolean" : "a type nobody thought of: " + kind, schema, at, wrong);
        }
    }

    private static void fields(Class<?> record, String at, JsonNode schema, Set<String> done, List<String> wrong) {
        if (!names(record).equals(fields(schema))) {
            wrong.add(at + " has the fields " + names(record) + ", not " + fields(schema));
            return;
        }
        Set<String> required = new TreeSet<>();
        schema.path("required").forEach(name -> required.add(name.asText()));
        for (RecordComponent field : record.getRecordComponents()) {
            boolean always = field.getType().isPrimitive()
                    || field.getType() == List.class && !WITH_A_LOCKER.contains(record.getSimpleName() + "." + field.getName());
            if (always && !required.contains(written(field))) {
                wrong.add(at + "." + field.getName() + " is always there");
            }
            if (required.contains(written(field)) && Number.class.isAssignableFrom(field.getType())) {
                wrong.add(at + "." + field.getName() + " may be left out");
            }
            compare(field.getGenericType(), at + "." + field.getName(), schema.path("properties").path(written(field)), always, done, wrong);
        }
    }

    private static void expect(String type, JsonNode schema, String at, List<String> wrong) {
        if (!schema.path("type").asText().equals(type)) {
            wrong.add(at + " is " + type + ", not " + schema.path("type"));
        }
    }

    private static Set<String> names(Class<?> record) {
        Set<String> names = new TreeSet<>();
        Stream.of(record.getRecordComponents()).forEach(field -> names.add(written(field)));
        return names;
    }

    /** The name of a field over the line, which may be a word that Java keeps for itself. */
    private static String written(RecordComponent field) {
        JsonProperty name = field.getAccessor().getAnnotation(JsonProperty.class);
        return name == null ? field.getName() : name.value();
    }

    private static Set<String> fields(JsonNode schema) {
        Set<String> names = new TreeSet<>();
        schema.path("properties").fieldNames().forEachRemaining(names::add);
        return names;
    }
}
