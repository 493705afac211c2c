package pairwright.http;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pairwright.lab.Answer;
import pairwright.lab.BenchKey;
import pairwright.lab.Handout;
import pairwright.lab.Item;
import pairwright.lab.LabDesk;
import pairwright.locker.Act;
import pairwright.locker.DemoLocker;
import pairwright.locker.ExerciseSet;
import pairwright.locker.ExerciseSetDraft;
import pairwright.locker.Role;

/** The exercises of a class as pages: made, handed out, handed in, given back, and shut to whoever may not see a key yet. */
class LabClassPagesTest {
    private static final String TEACHER = "Ada";
    private static final String ENGINEER = "Ben";
    private static final String STUDENT = "Cleo";
    private static final String NEW = "/lab/exercises/new";

    @TempDir
    Path folder;
    private LockerSite site;
    private LabDesk desk;

    @BeforeEach
    void open() {
        site = new LockerSite(folder, Map.of(TEACHER, Role.INSTRUCTOR, ENGINEER, Role.ENGINEER, STUDENT, Role.READER));
        DemoLocker.fill(site.locker, Serving.KNOWLEDGE.current().catalogue(), LocalDate.now(), ZoneId.systemDefault());
        desk = new LabDesk(site.locker, Serving.KNOWLEDGE::current);
    }

    @AfterEach
    void close() {
        site.close();
    }

    private LockerSite.Got make(String... more) {
        Map<String, String> fields = new LinkedHashMap<>(Map.of("key", "k" + System.nanoTime(), "kind", "reckon", "level", "1", "benches", "3", "seed", "the tall barn"));
        for (int i = 0; i < more.length; i += 2) {
            fields.put(more[i], more[i + 1]);
        }
        return site.post(NEW, fields, TEACHER);
    }

    /** Where the set is that was made. */
    private String made(String... more) {
        LockerSite.Got got = make(more);
        assertEquals(303, got.status(), got.text());
        return got.location().replaceFirst("\\?.*", "");
    }

    private ExerciseSet set(String address) {
        return desk.set(address.substring(address.lastIndexOf('/') + 1));
    }

    private LockerSite.Got sound(String address, String who) {
        LockerSite.Got got = site.get(address, who);
        assertEquals(200, got.status(), address + " " + got.text());
        assertEquals(List.of(), got.page().faults(), address);
        return got;
    }

    private static Map<String, String> fields(List<Item> items, Answer answer) {
        Map<String, String> fields = new HashMap<>(Map.of("key", "k" + System.nanoTime()));
        items.forEach(item -> fields.put("a." + item.id(), String.join("", answer.all(item.id()))));
        return fields;
    }

    private void handIn(String address, int bench, Answer answer, String who) {
        LockerSite.Got got = site.post(address + "/bench/" + bench, fields(desk.handout(set(address), bench).items(), answer), who);
        assertEquals(303, got.status(), got.text());
        assertTrue(got.location().endsWith("/bench/" + bench + "?done=handed-in"), got.location());
    }

    private Answer best(String address, int bench) {
        return desk.key(set(address), Role.INSTRUCTOR).get(bench - 1).key().best();
    }

    @Test
    void aLessonIsMadeHandedOutHandedInAndGivenBack() {
        String address = made();
        assertTrue(sound(address + "?done=made", TEACHER).text().contains("Work it out, level 1"));
        assertEquals(List.of("Bench 1", "Bench 2", "Bench 3"), sound(address, TEACHER).page().page().select("tbody th").eachText());
        assertTrue(sound("/lab/exercises", TEACHER).text().contains("Work it out, level 1"));
        handIn(address, 1, best(address, 1), STUDENT);
        handIn(address, 2, Answer.NOTHING.with(desk.handout(set(address), 2).items().get(0).id(), "3"), TEACHER);
        Element marks = sound(address + "/marks", TEACHER).page().page();
        assertTrue(marks.text().contains("2 of 3 benches handed in"), marks.text());
        assertEquals(List.of("100 %", "not yet"), List.of(marks.select("td[data-label=Share]").get(0).text(), marks.select("td[data-label=Handed in]").get(2).text()));
        assertFalse(marks.select(".lab-missed tbody tr").isEmpty());
        assertTrue(marks.selectFirst(".lab-missed svg desc").text().contains("%"), marks.select(".lab-missed svg").outerHtml());
        Element back = sound(address + "/feedback", TEACHER).page().page();
        assertEquals(3, back.select(".leaf").size());
        assertEquals(2, back.select(".leaf .checks").size());
        assertTrue(back.select(".leaf").get(2).text().contains("Nothing was handed in"));
        assertEquals("nothing", back.select(".leaf").get(1).select(".given dd").get(1).text());
        Element keys = sound(address + "/keys", TEACHER).page().page();
        assertEquals(3, keys.select(".leaf").size());
        assertEquals(9, keys.select(".lab-key .right").size());
    }

    @Test
    void aHandoutHasEverythingThatIsAskedAndNothingThatIsRight() {
        for (String kind : desk.kinds().stream().map(info -> info.id()).toList()) {
            String address = made("kind", kind, "benches", "2", "seed", "");
            Element page = sound(address + "/handouts", STUDENT).page().page();
            String text = page.selectFirst("main").text();
            for (int bench = 1; bench <= 2; bench++) {
                Handout handout = desk.handout(set(address), bench);
                Element leaf = page.select(".leaf").get(bench - 1);
                assertEquals(handout.items().stream().map(Item::asks).toList(), leaf.select(".paper-asks").eachText());
                handout.cautions().forEach(caution -> assertTrue(leaf.text().contains(caution.strip()), caution));
            }
            nothingOfTheKey(address, page.outerHtml(), text);
            assertTrue(page.select(".leaf input, .leaf select, .leaf button").isEmpty());
        }
    }

    /** No seed, no draw, no reason of a key, and no place where an option is marked as right. */
    private void nothingOfTheKey(String address, String html, String text) {
        ExerciseSet set = set(address);
        assertFalse(html.contains(set.seed()), "the seed");
        set.benches().forEach(bench -> assertFalse(html.contains(bench.drawn()), "what was drawn"));
        for (BenchKey one : desk.key(set, Role.INSTRUCTOR)) {
            one.key().items().forEach(entry -> entry.why().forEach(why -> assertFalse(text.contains(why), why)));
        }
        assertFalse(html.contains("class=\"lab-key\"") || html.contains("class=\"right\""), "a key");
    }

    @Test
    void aReaderWhoFollowsEveryLinkOfAClassFindsNoKeyAndNoSeedUntilTheKeysOpen() {
        String address = made("kind", "mend", "seed", "willow and heron", "benches", "2");
        handIn(address, 1, Answer.NOTHING.with("first", "a"), STUDENT);
        for (String who : List.of(STUDENT, ENGINEER)) {
            List<String> seen = new ArrayList<>(List.of("/lab/exercises", "/lab"));
            for (int i = 0; i < seen.size(); i++) {
                LockerSite.Got got = site.get(seen.get(i), who);
                nothingOfTheKey(address, got.page().page().outerHtml(), got.page().page().text());
                got.page().links().stream().map(link -> link.replaceFirst("#.*", "")).filter(link -> link.startsWith("/lab/exercises") && !seen.contains(link)).forEach(seen::add);
            }
            assertTrue(seen.contains(address + "/bench/2") && seen.contains(address + "/handouts"), seen.toString());
            assertFalse(seen.contains(address + "/keys") || seen.contains(address + "/marks") || seen.contains(NEW), seen.toString());
            for (String shut : List.of("/keys", "/marks", "/feedback")) {
                LockerSite.Got got = site.get(address + shut, who);
                assertEquals(403, got.status(), shut);
                nothingOfTheKey(address, got.page().page().outerHtml(), got.page().page().text());
            }
            assertEquals(403, site.get(NEW, who).status());
            assertEquals(403, site.post(address + "/opens", Map.of("opensAt", "2020-01-01T10:00"), who).status());
            assertEquals(403, site.post(address + "/remove", Map.of(), who).status());
        }
        assertEquals(303, site.post(address + "/opens", Map.of("opensAt", "2020-01-01T10:00", "key", "o1"), TEACHER).status());
        assertTrue(sound(address + "/keys", STUDENT).page().page().select(".lab-key").size() == 2);
        Element bench = sound(address + "/bench/1", STUDENT).page().page();
        assertEquals(1, bench.select(".marked .checks").size(), "what was handed in is marked by now");
        assertEquals(1, bench.select(".lab-key").size());
        assertFalse(bench.outerHtml().contains("willow and heron"));
        assertEquals(403, site.get(address + "/marks", STUDENT).status(), "the marks of others stay shut");
    }

    @Test
    void ofMoreThanAHundredTheNewestAreListedAndThatOthersAreKeptIsSaid() {
        made("seed", "the first of them");
        ExerciseSet one = site.locker.exercises().all(1).get(0);
        Act act = Act.by(TEACHER);
        site.locker.change(act, changes -> {
            IntStream.range(1, 100).forEach(more -> changes.makeExercises(draft(one), null));
            return "";
        });
        LockerSite.Got hundred = sound("/lab/exercises", TEACHER);
        assertEquals(100, hundred.page().page().select("tbody tr").size());
        assertFalse(hundred.text().contains("The newest"), "all of them are there");
        site.locker.change(act, changes -> {
            IntStream.range(0, 2).forEach(more -> changes.makeExercises(draft(one), null));
            return "";
        });
        LockerSite.Got more = sound("/lab/exercises", TEACHER);
        assertEquals(100, more.page().page().select("tbody tr").size());
        assertTrue(more.text().contains("The newest 100 are shown; 2 that are older are kept"), more.text());
        List<String> listed = more.page().page().select("tbody a").eachAttr("href");
        List<String> others = site.locker.exercises().all(200).stream().map(set -> "/lab/exercises/" + set.id()).filter(address -> !listed.contains(address)).toList();
        assertEquals(2, others.size(), others.toString());
        others.forEach(address -> sound(address, TEACHER));
    }

    private static ExerciseSetDraft draft(ExerciseSet like) {
        return new ExerciseSetDraft(like.kind(), like.level(), like.seed(), "CLASS", null, null, null, like.benches());
    }

    @Test
    void theAnswersOfAllBenchesCanBeBroughtInAsOneTable() {
        String address = made();
        String item = desk.handout(set(address), 1).items().get(0).id();
        String answer = best(address, 1).one(item);
        String hint = sound(address, TEACHER).text();
        assertTrue(hint.contains("bench,item,answer") && hint.contains("such as 1," + item + ","), "it is said what to paste: " + hint);
        LockerSite.Got wrong = site.post(address + "/answers", Map.of("key", "k1", "answers", "bench,item,answer\n9," + item + ",3\n1,nothing,3\n"), TEACHER);
        assertEquals(400, wrong.status());
        assertTrue(wrong.text().contains("there is no such bench. Give 1 to 3") && wrong.text().contains("there is no item"), wrong.text());
        assertTrue(wrong.page().page().select("textarea").text().contains("9," + item), "what was typed stays");
        assertTrue(desk.marks(set(address), Role.INSTRUCTOR).stream().allMatch(mark -> mark.mark() == null));
        LockerSite.Got done = site.post(address + "/answers", Map.of("key", "k2", "answers", "bench,item,answer\n1," + item + "," + answer + "\n"), TEACHER);
        assertEquals(303, done.status(), done.text());
        assertTrue(sound(done.location(), TEACHER).text().contains("The answers are handed in."));
        assertTrue(desk.marks(set(address), Role.INSTRUCTOR).get(0).mark().mark() > 0);
        assertEquals(403, site.post(address + "/answers", Map.of("key", "k3", "answers", "bench,item,answer\n1," + item + ",3\n"), STUDENT).status());
    }

    @Test
    void whatSomebodyHandsInStandsThereForThemAndForNoOtherReader() {
        String address = made("kind", "mend", "benches", "1");
        assertTrue(sound(address + "/bench/1", STUDENT).page().page().select("[checked]").isEmpty());
        handIn(address, 1, Answer.NOTHING.with("first", "b"), STUDENT);
        LockerSite.Got again = sound(address + "/bench/1?done=handed-in", STUDENT);
        assertEquals("b", again.page().page().select("[checked]").attr("value"));
        assertTrue(again.text().contains("It is handed in.") && again.text().contains("Handed in"), again.text());
        assertTrue(again.text().contains("Whoever shares your token sees and replaces it, too."), again.text());
        assertTrue(again.page().page().select(".marked, .lab-key").isEmpty());
        assertTrue(sound(address + "/bench/1", ENGINEER).page().page().select("[checked]").isEmpty());
    }

    @Test
    void everythingWrongWithAFormIsToldAtOnceAndWhatWasTypedStays() {
        LockerSite.Got got = make("kind", "juggle", "level", "9", "benches", "many", "from", "soon", "opensAt", "2020-01-01T10:00");
        assertEquals(400, got.status());
        assertEquals(List.of(), got.page().faults());
        String faults = got.page().page().select("#make-faults").text();
        for (String said : List.of("juggle", "Level must be 1 to 5", "\"many\" is no whole number", "\"soon\" is no time", "The keys would be open at once")) {
            assertTrue(faults.contains(said), said + " in " + faults);
        }
        assertEquals(List.of("many", "soon", "the tall barn"), List.of(got.page().page().select("#benches").attr("value"), got.page().page().select("#from").attr("value"),
                got.page().page().select("#seed").attr("value")));
        String address = made("kind", "mend");
        LockerSite.Got bench = site.post(address + "/bench/1", Map.of("a.helps", "z", "a.first", "y"), STUDENT);
        assertEquals(400, bench.status());
        assertEquals(List.of(), bench.page().faults());
        assertEquals(2, bench.page().page().select("#answer-faults li").size());
        assertTrue(site.post(address + "/bench/1", Map.of(), STUDENT).text().contains("Nothing is filled in yet"));
        LockerSite.Got opens = site.post(address + "/opens", Map.of("opensAt", "soon"), TEACHER);
        assertEquals(400, opens.status());
        assertTrue(opens.text().contains("\"soon\" is no time"), opens.text());
    }

    @Test
    void microphonesAreBookedForTheClassAndWhatDoesNotFitIsSaidWithWhatDoes() {
        String tomorrow = LocalDate.now().plusDays(40).toString();
        String address = made("kind", "choose", "benches", "2", "from", tomorrow + "T10:00", "until", tomorrow + "T12:00");
        assertNotEquals(null, set(address).booking());
        assertEquals(200, site.get("/locker/bookings/" + set(address).booking(), TEACHER).status());
        LockerSite.Got got = make("kind", "choose", "benches", "60", "from", tomorrow + "T10:00", "until", tomorrow + "T12:00");
        assertEquals(409, got.status(), got.text());
        assertEquals(List.of(), got.page().faults());
        assertTrue(got.text().contains("of 60 benches"), got.text());
        List<String> instead = got.page().page().select(".instead a").eachAttr("href");
        assertFalse(instead.isEmpty());
        LockerSite.Got filled = sound(instead.get(0), TEACHER);
        assertEquals(tomorrow + "T10:00", filled.page().page().select("#from").attr("value"));
        assertFalse(filled.page().page().select("#benches").attr("value").isEmpty());
    }

    @Test
    void aFormThatIsSentTwiceIsDoneOnce() {
        String address = made("key", "once");
        assertEquals(address, made("key", "once"));
        assertEquals(422, make("key", "once", "benches", "4").status());
    }

    @Test
    void whatThereIsNotIsSaid() {
        String address = made();
        for (String none : List.of("/lab/exercises/nosuch", address + "/bench/9", address + "/bench/x", "/lab/exercises/nosuch/keys")) {
            assertEquals(404, site.get(none, TEACHER).status(), none);
        }
        assertEquals(303, site.post(address + "/remove", Map.of("key", "r1"), TEACHER).status());
        assertEquals(404, site.get(address, TEACHER).status());
    }
}
