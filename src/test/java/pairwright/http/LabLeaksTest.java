package pairwright.http;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.MethodOrderer;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.TestMethodOrder;
import org.junit.jupiter.api.io.TempDir;
import pairwright.lab.Answer;
import pairwright.lab.DoesNotFit;
import pairwright.lab.Handing;
import pairwright.lab.Key;
import pairwright.lab.KindInfo;
import pairwright.lab.LabDesk;
import pairwright.lab.Wanted;
import pairwright.locker.Act;
import pairwright.locker.DemoLocker;
import pairwright.locker.ExerciseSet;
import pairwright.locker.Place;
import pairwright.locker.Role;

/**
 * Keys stay shut: every address there is, as the server itself lists them, is asked as a reader who knows the ids of all exercises, and nothing that comes back
 * holds a word of a key, a seed, or a mark.
 */
@Tag("slow")
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
@TestMethodOrder(MethodOrderer.OrderAnnotation.class)
class LabLeaksTest {
    private static final Set<String> SHUT_FIELDS = Set.of("seed", "key", "best", "right", "accepted", "why", "rests", "lesson", "mark", "points", "checks", "capped", "drawn",
            "hardnessShare", "spreadShare", "meanShare", "rightShare", "missed");
    /** Shorter texts, such as a number with its unit, stand in many places by chance. */
    private static final int LEAST_LENGTH = 14;
    private static final Pattern TAG_WITH_VALUE = Pattern.compile("<[^>]*\\bvalue=\"([^\"]*)\"[^>]*>");
    private static final Pattern TOLD = Pattern.compile("\\b(checked|selected|data-[a-z-]+=\"[^\"]*\"|class=\"[^\"]*(right|correct|accept|solution|key)[^\"]*\")");

    private LockerServing serving;
    private LabDesk desk;
    private String reader;
    private final List<ExerciseSet> shut = new ArrayList<>();
    private final Set<String> ids = new LinkedHashSet<>(List.of("x", "1", "2"));
    /** By the id of a set, what nobody may read of it. */
    private final Map<String, Set<String>> secrets = new LinkedHashMap<>();
    private final Map<String, Map<String, Set<String>>> accepted = new LinkedHashMap<>();

    @BeforeAll
    void open(@TempDir Path folder) {
        serving = LockerServing.guarded(Place.in(folder));
        reader = "Authorization: Bearer " + serving.reader;
        DemoLocker.fill(serving.locker, Serving.KNOWLEDGE.current().catalogue(), LocalDate.now(), ZoneId.systemDefault());
        serving.post("/api/sessions", serving.get("/api/sessions/example.json", "Authorization: Bearer " + serving.engineer).body(), "Authorization: Bearer " + serving.engineer);
        desk = new LabDesk(serving.locker, Serving.KNOWLEDGE::current);
        ids.add(serving.locker.units().get(0).id());
        StringBuilder known = new StringBuilder();
        asked(List.of()).forEach(reply -> known.append(reply.reply().body()).append('\n'));
        String before = plain(known.toString());
        for (KindInfo kind : desk.kinds()) {
            makes(kind);
        }
        assertTrue(shut.stream().map(ExerciseSet::kind).distinct().count() >= 3, "too few kinds to look at: " + shut);
        shut.forEach(set -> learn(set, before));
    }

    @AfterAll
    void close() {
        serving.close();
    }

    /** One set whose keys never open and one whose keys open tomorrow, each at the first level that can be made; a bench of each is handed in by either. */
    private void makes(KindInfo kind) {
        Instant tomorrow = Instant.now().plus(Duration.ofDays(1));
        Instant from = Instant.now().plus(Duration.ofDays(40));
        for (Instant opensAt : new Instant[] {null, tomorrow}) {
            for (int level = 1; level <= KindInfo.LEVELS; level++) {
                try {
                    Instant begins = from.plus(Duration.ofDays(shut.size()));
                    shut.add(desk.make(new Wanted(kind.id(), "owl-in-the-rafters-" + kind.id() + (opensAt == null ? "-never" : "-tomorrow"), level, 2, begins, begins.plusSeconds(3600), opensAt), "Ida"));
                    break;
                } catch (DoesNotFit other) {
                    // then an easier or harder one
                }
            }
        }
    }

    private void learn(ExerciseSet set, String before) {
        ids.add(set.id());
        if (set.booking() != null) {
            ids.add(set.booking());
        }
        Set<String> words = new TreeSet<>(Set.of(set.seed()));
        Map<String, Set<String>> right = new TreeMap<>();
        String handed = plain(serving.get("/api/lab/exercises/" + set.id(), reader).body());
        assertTrue(handed.contains("\"handout\""), handed);
        desk.key(set, Role.INSTRUCTOR).forEach(key -> {
            for (Key.Entry entry : key.key().items()) {
                Stream.concat(Stream.of(entry.right()), entry.why().stream()).forEach(words::add);
                right.computeIfAbsent(entry.item(), item -> new TreeSet<>()).addAll(entry.accepted().isEmpty() ? key.key().best().all(entry.item()) : entry.accepted());
            }
            words.addAll(key.key().lesson());
            for (Answer answer : List.of(key.key().best(), Answer.NOTHING)) {
                Handing handing = desk.handing(set, key.bench(), answer, key.bench() == 1 ? Role.READER : Role.INSTRUCTOR);
                serving.locker.change(Act.by(key.bench() == 1 ? "Finch" : "Ida"), changes -> Integer.toString(desk.handIn(changes, handing).number()));
                desk.handing(set, key.bench(), answer, Role.INSTRUCTOR).mark().checks().forEach(check -> words.add(check.says()));
            }
        });
        set.benches().forEach(bench -> Stream.of(bench.drawn().split("\n")).filter(line -> line.contains("\t")).forEach(words::add));
        // where it stands may be given, and only where it looks be asked
        right.values().forEach(values -> values.removeIf(value -> value.matches("[-\\d.]{4,}") && handed.contains(value)));
        Set<String> secret = words.stream().filter(word -> word.length() >= LEAST_LENGTH).map(LabLeaksTest::plain)
                .filter(word -> !handed.contains(word) && !before.contains(word)).collect(Collectors.toCollection(LinkedHashSet::new));
        assertTrue(secret.contains(set.seed()) && secret.size() >= 5, "what is there to be looked for in " + set.kind() + "? " + secret);
        secrets.put(set.id(), secret);
        accepted.put(set.id(), right);
    }

    /** What was sent, and what came back. */
    private record Asked(String address, String target, Reply reply) {
    }

    /** Every address, with every id that is known in its place; what changes something is sent too. */
    private List<Asked> asked(List<String> bodies) {
        List<Asked> all = new ArrayList<>();
        for (String address : serving.addresses()) {
            String method = address.substring(0, address.indexOf(' '));
            String path = address.substring(address.indexOf(' ') + 1);
            Set<String> targets = new LinkedHashSet<>();
            for (String id : path.contains("{") || path.contains("<") ? ids : Set.of("")) {
                targets.add(path.replaceFirst("\\{[^}]*}|<[^>]*>", id).replaceAll("\\{[^}]*}|<[^>]*>", "1"));
            }
            for (String target : targets) {
                if (method.equals("GET")) {
                    all.add(new Asked(address, target, serving.get(target, reader)));
                    if (path.contains("lab")) {
                        all.add(new Asked(address, target, serving.get(target + "?seed=1&key=1&role=instructor&part=key", reader)));
                    }
                } else if (!method.equals("HEAD")) {
                    for (String body : bodies) {
                        all.add(new Asked(address, target, serving.send(method, target, body, reader)));
                    }
                }
            }
        }
        return all;
    }

    /** Where a reader comes upon what is shut, as address, id of the set, and what it was. */
    private Set<String> leaks(List<Asked> all) {
        Set<String> leaks = new TreeSet<>();
        for (Asked one : all) {
            String text = plain(one.reply().headers() + "\n" + one.reply().body());
            secrets.forEach((set, words) -> words.stream().filter(text::contains).forEach(word -> leaks.add(one.address() + ": " + word)));
            if (one.target().contains("lab/exercises") && one.reply().mediaType().endsWith("json")) {
                Set<String> fields = new TreeSet<>();
                fields(one.reply().json(), fields);
                fields.retainAll(SHUT_FIELDS);
                fields.forEach(field -> leaks.add(one.address() + ": field " + field));
            }
            accepted.forEach((set, right) -> {
                if (one.target().contains(set)) {
                    marked(one.reply().body(), right).forEach(value -> leaks.add(one.address() + ": marked " + value));
                }
            });
        }
        return leaks;
    }

    private static void fields(JsonNode node, Set<String> names) {
        node.properties().forEach(field -> {
            names.add(field.getKey());
            fields(field.getValue(), names);
        });
        if (node.isArray()) {
            node.forEach(one -> fields(one, names));
        }
    }

    /** Options that are right and stand in a page with something that sets them apart. */
    private static Set<String> marked(String page, Map<String, Set<String>> right) {
        Set<String> found = new TreeSet<>();
        for (Matcher tag = TAG_WITH_VALUE.matcher(page); tag.find();) {
            if (right.values().stream().anyMatch(values -> values.contains(tag.group(1))) && TOLD.matcher(tag.group()).find()) {
                found.add(tag.group());
            }
        }
        return found;
    }

    /** As it was before it was written as JSON, as a page or into a calendar, whose lines are folded. */
    private static String plain(String text) {
        return text.replace("\r\n ", "").replace("\\n", "\n").replace("\\t", "\t").replace("\\\"", "\"").replace("\\,", ",").replace("\\;", ";").replace("&#34;", "\"").replace("&quot;", "\"")
                .replace("&#39;", "'").replace("&lt;", "<").replace("&gt;", ">").replace("&amp;", "&").replace("\\", "");
    }

    private List<String> bodies() {
        return List.of("{}", "{\"bench\": 1, \"answer\": {}}", "{\"bench\": 9, \"answer\": {\"nothing\": \"x\"}}", "{\"opensAt\": \"2026-01-01T00:00:00Z\"}");
    }

    @Test
    @Order(1)
    void noAddressTellsAReaderAKeyASeedOrAMark() {
        List<Asked> all = asked(bodies());
        assertTrue(all.stream().anyMatch(one -> one.address().equals("POST /api/lab/exercises/{id}/mark") && one.reply().status() == 202), "nothing was handed in");
        assertTrue(all.size() > 500, all.size() + " asked");
        assertEquals(Set.of(), leaks(all));
    }

    @Test
    @Order(2)
    void aReceiptIsTheSameWhateverWasAnswered() {
        for (ExerciseSet set : shut) {
            Set<String> receipts = new TreeSet<>();
            Set<Integer> lengths = new TreeSet<>();
            desk.key(set, Role.INSTRUCTOR).stream().limit(1).forEach(key -> {
                for (Answer answer : List.of(key.key().best(), Answer.NOTHING)) {
                    String given = answer.given().entrySet().stream().map(item -> "\"" + item.getKey() + "\": [" + item.getValue().stream().map(value -> "\"" + value + "\"")
                            .collect(Collectors.joining(", ")) + "]").collect(Collectors.joining(", "));
                    Reply reply = serving.post("/api/lab/exercises/" + set.id() + "/mark", "{\"bench\": 1, \"answer\": {" + given + "}}", reader);
                    assertEquals(202, reply.status(), reply.body());
                    receipts.add(reply.body().replaceAll("\"at\":\"[^\"]*\"", ""));
                    lengths.add(reply.body().length());
                }
            });
            assertEquals(1, receipts.size(), receipts.toString());
            assertEquals(1, lengths.size());
        }
    }

    @Test
    @Order(3)
    void anInstructorWhoTellsIsFound() {
        ExerciseSet told = shut.stream().filter(set -> set.booking() != null).findFirst().orElseThrow();
        String seed = told.seed();
        String why = secrets.get(told.id()).stream().filter(word -> !word.equals(seed) && !word.contains("\t") && word.length() <= 500).findFirst().orElseThrow();
        assertEquals(Set.of(), leaks(asked(List.of())));
        String teacher = "Authorization: Bearer " + serving.instructor;
        assertEquals(200, serving.send("PATCH", "/api/locker/bookings/" + told.booking(), "{\"note\": \"" + seed + "\"}", teacher).status());
        String unit = serving.locker.units().get(0).id();
        assertEquals(200, serving.send("PATCH", "/api/locker/units/" + unit, OpenApi.JSON.createObjectNode().put("note", why).toString(), teacher).status());
        Set<String> found = leaks(asked(List.of()));
        for (String address : List.of("GET /api/locker/bookings/{id}", "GET /api/locker/units", "GET /api/locker/units/{id}", "GET /api/locker/units.csv", "GET /locker/units/{id}")) {
            assertTrue(found.stream().anyMatch(leak -> leak.startsWith(address + ":")), address + " told, and nobody noticed: " + found);
        }
        serving.send("PATCH", "/api/locker/bookings/" + told.booking(), "{\"note\": null}", teacher);
        serving.send("PATCH", "/api/locker/units/" + unit, "{\"note\": null}", teacher);
    }

    @Test
    @Order(4)
    void aMarkedOptionIsFound() {
        Map<String, Set<String>> right = Map.of("mic", Set.of("long-ribbon"));
        assertFalse(marked("<input type=\"radio\" value=\"long-ribbon\" checked>", right).isEmpty());
        assertFalse(marked("<option data-best=\"1\" value=\"long-ribbon\">", right).isEmpty());
        assertTrue(marked("<input type=\"radio\" value=\"long-ribbon\"><input value=\"shotgun\" checked>", right).isEmpty());
    }

    @Test
    @Order(5)
    void whatIsOpenIsFoundByTheSameEyes() {
        ExerciseSet set = shut.get(0);
        serving.locker.change(Act.by("Ida"), changes -> desk.openKeys(changes, set.id(), Instant.now().minusSeconds(1), null).id());
        Set<String> found = leaks(asked(List.of()));
        assertTrue(found.stream().anyMatch(leak -> leak.startsWith("GET /api/lab/exercises/{id}/key:")), found.toString());
        assertTrue(found.stream().noneMatch(leak -> leak.contains(set.seed())), "the seed is not in the key");
        assertTrue(found.stream().noneMatch(leak -> leak.contains("/marks") || leak.contains("/summary")), "what others earned stays shut: " + found);
    }
}
