package pairwright.http;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.URLEncoder;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import pairwright.lab.Answer;
import pairwright.lab.Course;
import pairwright.lab.Exercise;
import pairwright.lab.Item;
import pairwright.lab.Key;
import pairwright.lab.Kind;
import pairwright.lab.KindInfo;
import pairwright.lab.Kinds;
import pairwright.lab.Lab;
import pairwright.lab.Variants;

/** What anybody can practise, as pages from the real server. */
class LabPagesTest {
    private static final Site SITE = new Site(Serving.port());
    private static final Lab LAB = new Lab(Serving.KNOWLEDGE.current(), null);
    private static final String SEED = "11";
    private static final String MARK = "mark=yes";

    static Stream<Arguments> kindsAndLevels() {
        return new Kinds().all().stream().flatMap(kind -> IntStream.rangeClosed(1, KindInfo.LEVELS).mapToObj(level -> Arguments.of(kind, level)));
    }

    private static String address(Kind kind, int level) {
        return "/lab/practice/" + kind.info().id() + "/" + level + "/" + SEED;
    }

    private static Exercise exercise(Kind kind, int level) {
        return new Variants(kind, Variants.Purpose.PRACTICE, SEED, level, LAB).some(1).get(0).exercise();
    }

    /** What a browser sends for an answer, without script. */
    private static String sent(List<Item> items, Answer answer) {
        List<String> pairs = new ArrayList<>();
        for (Item item : items) {
            List<String> given = answer.all(item.id());
            String field = "a." + item.id();
            if (item instanceof Item.InOrder) {
                IntStream.range(0, given.size()).forEach(i -> pairs.add(field + "." + given.get(i) + "=" + (i + 1)));
            } else if (item instanceof Item.Spot) {
                IntStream.range(0, given.size()).forEach(i -> pairs.add(field + List.of(".x", ".y", ".aim").get(i) + "=" + given.get(i)));
            } else {
                given.forEach(value -> pairs.add(field + "=" + URLEncoder.encode(value, StandardCharsets.UTF_8)));
            }
        }
        return pairs.stream().map(pair -> pair + "&").collect(Collectors.joining()) + MARK;
    }

    @Test
    void theLabSaysOfEveryKindWhatItIsForAndWhatNotAndHowLongItTakes() {
        Document page = SITE.page("/lab");
        assertEquals(List.of(), page.faults());
        for (Kind kind : new Kinds().all()) {
            Element card = page.page().selectFirst("section[aria-labelledby=kind-" + kind.info().id() + "]");
            assertTrue(card.text().contains(kind.info().name()) && card.text().contains(kind.info().aim()) && card.text().contains(kind.info().notTaught()), card.text());
            assertEquals(kind.info().minutes().stream().map(String::valueOf).toList(), card.select("td.number").eachText());
            assertEquals(kind.info().levels(), card.select("td a").eachText());
        }
        assertEquals("page", page.page().selectFirst("nav a[href=/lab]").attr("aria-current"));
    }

    @Test
    void aLevelLeadsToSomeExerciseOfIt() {
        HttpResponse<String> led = SITE.get("/lab/practice/reckon/2?units=imperial");
        assertEquals(302, led.statusCode());
        String to = led.headers().firstValue("Location").orElseThrow().replaceFirst("^https?://[^/]*", "");
        assertTrue(to.matches("/lab/practice/reckon/2/\\d{1,6}\\?units=imperial"), to);
        assertEquals(200, SITE.get(to).statusCode());
        assertTrue(SITE.page(to).page().text().contains("Exercises are in metres"), to);
    }

    @ParameterizedTest
    @MethodSource("kindsAndLevels")
    void anExerciseAsksEverythingAndTellsNothingOfItsKey(Kind kind, int level) {
        Exercise exercise = exercise(kind, level);
        Document page = SITE.page(address(kind, level));
        assertEquals(List.of(), page.faults());
        String text = page.page().select("main").text();
        exercise.handout().situation().forEach(says -> assertTrue(text.contains(says.replaceAll("\\s+", " ").strip()), says + " in " + text));
        assertEquals(exercise.handout().items().stream().map(Item::asks).toList(), page.page().select("fieldset.lab-asked legend").eachText().stream().map(says -> says.replaceFirst("^\\d+\\. ", "")).toList());
        assertEquals(exercise.handout().shown().size(), page.page().select(".shown").size());
        assertTrue(page.page().select(".marked, .lab-key, .right, [checked]").isEmpty(), text);
        for (Key.Entry entry : exercise.key().items()) {
            entry.why().forEach(why -> assertFalse(text.contains(why), why));
        }
    }

    @ParameterizedTest
    @MethodSource("kindsAndLevels")
    void whatTheKeySaysEarnsEverythingByTheFormAndEveryCheckHasItsReason(Kind kind, int level) {
        Exercise exercise = exercise(kind, level);
        String address = address(kind, level) + "?" + sent(exercise.handout().items(), exercise.key().best());
        HttpResponse<String> got = SITE.get(address);
        Document page = SITE.page(address);
        assertEquals(200, got.statusCode(), page.page().select("main").text());
        assertEquals(List.of(), page.faults());
        assertTrue(page.page().selectFirst("#marked").text().endsWith(", 100 %."), page.page().selectFirst("#marked").text());
        assertEquals(exercise.mark(exercise.key().best()).checks().size(), page.page().select(".checks tbody tr").size());
        page.page().select(".checks td[data-label=Why]").forEach(why -> assertFalse(why.text().isBlank(), page.page().select(".checks").text()));
        assertEquals(exercise.handout().items().size(), page.page().select(".lab-key > div").size());
        page.page().select(".marked a[href]").eachAttr("href").stream().filter(href -> !href.startsWith("/lab/")).distinct().forEach(href -> assertEquals(200, SITE.get(href).statusCode(), href));
    }

    @Test
    void whatIsRestedOnIsLedTo() {
        Exercise exercise = exercise(new Kinds().kind("reckon").orElseThrow(), 1);
        Document page = SITE.page("/lab/practice/reckon/1/" + SEED + "?" + sent(exercise.handout().items(), exercise.usual()));
        exercise.restsOn().forEach(id -> assertFalse(page.page().select(".checks a[href=/numbers/" + id + "]").isEmpty(), id));
    }

    @Test
    void nothingFilledInIsSaidAndNothingMarked() {
        HttpResponse<String> got = SITE.get("/lab/practice/mend/1/" + SEED + "?" + MARK);
        assertEquals(400, got.statusCode());
        Document page = new Document(got.body());
        assertEquals(List.of(), page.faults());
        assertTrue(page.page().select("#answer-faults").text().contains("Nothing is filled in yet"), page.page().text());
        assertTrue(page.page().select(".marked").isEmpty());
    }

    @Test
    void everyFaultIsToldAtOnceAndWhatWasTypedStays() {
        Exercise exercise = exercise(new Kinds().kind("reckon").orElseThrow(), 1);
        List<String> ids = exercise.handout().items().stream().map(Item::id).toList();
        String address = "/lab/practice/reckon/1/" + SEED + "?a." + ids.get(0) + "=far&a." + ids.get(1) + "=" + URLEncoder.encode("<b>\"9", StandardCharsets.UTF_8) + "&a." + ids.get(2) + "=7&" + MARK;
        HttpResponse<String> got = SITE.get(address);
        Document page = new Document(got.body());
        assertEquals(400, got.statusCode());
        assertEquals(List.of(), page.faults());
        assertEquals(2, page.page().select("#answer-faults li").size(), page.page().select("#answer-faults").text());
        assertEquals(2, page.page().select("fieldset.lab-asked > .fault").size());
        assertTrue(page.page().select("#answer-faults").text().contains("\"far\" is no number"), page.page().select("#answer-faults").text());
        assertEquals(List.of("far", "<b>\"9", "7"), page.page().select("fieldset input[type=text]").eachAttr("value"));
    }

    @Test
    void moreThanIsAskedForIsSaidAndSoIsWhatIsNotThere() {
        Document mend = new Document(SITE.get("/lab/practice/mend/1/" + SEED + "?a.helps=a&a.helps=b&a.helps=c&a.first=z&" + MARK).body());
        String text = mend.page().select("#answer-faults").text();
        assertTrue(text.contains("3 are chosen, and 2 are asked for. Take out 1") && text.contains("\"z\" is none of what can be chosen"), text);
        assertEquals(List.of("a", "b", "c"), mend.page().select("input[type=checkbox][checked]").eachAttr("value"));
    }

    @Test
    void addressesOfNoExerciseSayWhatThereIs() {
        for (Map.Entry<String, String> one : Map.of("/lab/practice/juggle/1/1", "reckon", "/lab/practice/mend/6/1", "1 to 5", "/lab/practice/mend/1/" + "9".repeat(40), "20 letters",
                "/lab/practice/juggle/1", "reckon", "/lab/practice/mend/0", "1 to 5", "/lab/practice/mend/1/%3Cb%3E", "20 letters").entrySet()) {
            HttpResponse<String> got = SITE.get(one.getKey());
            assertEquals(404, got.statusCode(), one.getKey());
            assertTrue(new Document(got.body()).page().select("main").text().contains(one.getValue()), got.body());
        }
    }

    @Test
    void theCourseLeadsToItsRulesAndExercisesAndTellsWhatNoneOfThemTouches() throws InterruptedException {
        Document first = new Document(Serving.get("/lab/course").body());
        assertEquals(List.of(), first.faults());
        Course course = Course.of(Serving.KNOWLEDGE.current().catalogue(), Serving.KNOWLEDGE.current().rules());
        assertEquals(course.parts().stream().map(part -> part.lesson().number() + ". " + part.lesson().name()).toList(), first.page().select(".lesson > h2").eachText());
        for (Course.Part part : course.parts()) {
            Element lesson = first.page().selectFirst("section[aria-labelledby=lesson-" + part.lesson().id() + "]");
            assertEquals(part.rules().stream().map(rule -> "/rules/" + rule.id()).toList(), lesson.select("details a").eachAttr("href"));
            lesson.select(".drills a").eachAttr("href").forEach(href -> assertEquals(302, SITE.get(href).statusCode(), href));
        }
        Document counted = first;
        for (int tries = 0; counted.page().text().contains("This is being counted") && tries < 240; tries++) {
            Thread.sleep(500);
            counted = new Document(Serving.get("/lab/course").body());
        }
        assertEquals(List.of(), counted.faults());
        assertTrue(counted.page().select("table tbody tr").size() > 30, counted.page().text());
        counted.page().select("section[aria-labelledby=coverage] a").eachAttr("href").forEach(href -> assertEquals(200, SITE.get(href).statusCode(), href));
    }
}
