package pairwright.http;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.StreamSupport;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.ShrinkingMode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Asking by address, as a browser without script does. */
class AskPagesTest {
    private static Markup page(String target, int status) {
        Reply reply = Serving.get(target);
        assertEquals(status, reply.status(), target + "\n" + reply.body());
        assertEquals("text/html", reply.mediaType(), target);
        Markup page = Markup.of(reply.body());
        assertEquals(1, page.all("h1").size(), target);
        Set<String> ids = new HashSet<>();
        page.all(one -> one.has("id")).forEach(one -> assertTrue(ids.add(one.at("id")), () -> one.at("id") + " twice"));
        page.all(one -> one.has("style") || one.at("href").startsWith("javascript")).forEach(one -> assertEquals("", one.name()));
        page.all(one -> one.name().matches("input|select") && !one.at("type").equals("hidden")).forEach(control ->
                assertEquals(1, page.all(label -> label.name().equals("label") && label.at("for").equals(control.at("id"))).size(), control.at("id")));
        return page;
    }

    private static Markup page(String target) {
        return page(target, 200);
    }

    private static String asking(String words) {
        return "/?words=" + URLEncoder.encode(words, StandardCharsets.UTF_8);
    }

    private static long centipoints(String text) {
        return Math.round(Double.parseDouble(text.replace('\u2212', '-').replaceAll("[^0-9.+-]", "")) * 100);
    }

    @ParameterizedTest
    @ValueSource(strings = {"/?words=snare&channels=99", "/?words=snare&distance=abc", "/?channels=99", "/?words=snare&part=answer&%3Cscript%3E=1"})
    void aNameThatMeansNothingIsToldWithTheNamesThereAre(String target) {
        Reply reply = Serving.get(target);
        assertEquals(200, reply.status(), reply.body());
        Markup page = Markup.of(reply.body());
        String note = page.all(one -> one.name().equals("p") && one.is("note")).get(0).text();
        assertTrue(note.contains("which means nothing here") && note.contains("nearDistance"), note);
        assertTrue(note.contains("channels=99") || note.contains("distance=abc") || note.contains("<script>=1"), note);
    }

    @ParameterizedTest
    @ValueSource(strings = {"/?words=snare&units=metric", "/?words=snare&units=imperial&mics=2&draws=0", "/"})
    void whereEveryNameMeansSomethingNoneIsTold(String target) {
        assertEquals(List.of(), page(target).all(one -> one.name().equals("p") && one.is("note")));
    }

    @ParameterizedTest
    @ValueSource(strings = {"/?words=snare&units=furlong", "/?units=furlong", "/?words=snare&part=furlong"})
    void aValueThatMeasuresAndPartsCannotHaveIsAFault(String target) {
        String text = page(target, 400).one("main").text();
        assertTrue(text.contains("\"furlong\""), text);
    }

    @Test
    void familiesThatGoByOneNameAreSaidByIt() {
        assertTrue(page(asking("snare no condensers")).one("h1").text().endsWith("no condenser microphones"), page(asking("snare no condensers")).one("h1").text());
        assertTrue(page(asking("snare, no condensers, no ribbons")).one("h1").text().endsWith("no condenser microphones or ribbon microphones"));
        assertTrue(page(asking("snare, only dynamics")).one("h1").text().endsWith("only moving-coil microphones"));
    }

    @Test
    void withoutAQuestionThereIsOneFieldAndExamplesThatAnswer() {
        Markup start = page("/");
        assertEquals(List.of("words"), start.one("main").all("input").stream().map(input -> input.at("name")).toList());
        List<Markup> examples = start.all(one -> one.name().equals("a") && one.at("href").startsWith("/?words="));
        assertTrue(examples.size() >= 3 && examples.size() <= 4);
        examples.forEach(example -> {
            Markup answer = page(example.at("href"));
            assertFalse(answer.all("article").isEmpty(), example.text());
            assertEquals(List.of(), answer.all(one -> one.is("not-understood")), example.text());
        });
    }

    @ParameterizedTest
    @ValueSource(strings = {"Tenor saxophone, dark, next to the drums", "brushed snare next to the double bass, small room", "electric guitar amp, loud, gritty",
            "upright piano in stereo", "grandmother's voice, no phantom, children", "kick drum, one mic"})
    void everyCautionOfTheAnswerIsOnThePageGravestFirstAndNotFoldedAway(String words) {
        JsonNode answer = Serving.ask("{\"words\": \"" + words + "\", \"draws\": 0}").json();
        List<Markup> options = page(asking(words)).all("article");
        assertEquals(answer.path("options").size(), options.size());
        for (int i = 0; i < options.size(); i++) {
            List<Markup> shown = options.get(i).all(one -> one.name().equals("li") && (one.is("danger") || one.is("care") || one.is("note")));
            JsonNode cautions = answer.path("options").get(i).path("cautions");
            int said = 0;
            for (Markup box : shown) {
                said += box.text().contains("mics 1 and 2") ? 2 : 1; // what a rule says of either is said in one box
                assertFalse(box.within("details"));
            }
            assertEquals(cautions.size(), said);
            for (JsonNode caution : cautions) {
                assertEquals(1, shown.stream().filter(box -> box.is(caution.path("severity").asText()) && box.one("a").text().equals(caution.path("rule").asText())
                        && holds(box.text(), caution.path("says").asText()) && (!box.text().contains("mic") || isOf(box, caution))).count(), () -> caution + " in " + options);
            }
            List<Integer> gravity = shown.stream().map(box -> box.is("danger") ? 0 : box.is("care") ? 1 : 2).toList();
            assertEquals(gravity.stream().sorted().toList(), gravity);
        }
    }

    private static boolean isOf(Markup box, JsonNode caution) {
        return box.all(one -> one.is("tag")).stream().allMatch(tag -> tag.text().contains(caution.path("mic").asText()));
    }

    /** Whether every word is there, in order. */
    private static boolean holds(String text, String says) {
        List<String> all = List.of(text.replaceAll("[,.;:)](?= |$)", "").split(" "));
        int at = 0;
        for (String word : says.replaceAll("[,.;:)](?= |$)", "").split(" ")) {
            at = all.subList(at, all.size()).indexOf(word) + at;
            if (at >= all.size() || !all.get(at).equals(word)) {
                return false;
            }
            at++;
        }
        return true;
    }

    @Test
    void whatOneRuleSaysOfBothMicrophonesIsOneBox() {
        Markup option = page(asking("snare")).id("o1");
        List<Markup> loud = option.all(one -> one.name().equals("li") && one.text().contains("SAF-006"));
        assertEquals(1, loud.size());
        assertTrue(loud.get(0).text().contains("mics 1 and 2"), loud.get(0).text());
    }

    @Test
    void aBoxThatRunsOnPhantomOrACellSaysSoWhereverPowerIsSaid() {
        Markup option = page(asking("bass guitar DI")).id("o1");
        assertTrue(option.all(one -> one.is("set-lines")).get(0).text().contains("phantom on, or a fresh cell in it"), option.text());
        Markup sheet = page("/set-up?words=bass+guitar+DI&option=1");
        assertTrue(sheet.all(one -> one.is("check-list")).get(0).text().contains("Phantom power on for the active DI, with the channel down, or a fresh cell in it"));
        assertFalse(sheet.text().contains("phantom off"));
        assertTrue(page(asking("bass guitar DI, no phantom")).id("o1").text().contains("phantom off, a fresh cell in it"));
    }

    @Test
    void aPairThatHearsTheSoundAtOneMomentSaysThatNothingCancels() {
        Markup page = page(asking("tenor sax") + "&technique=contrast-on-one-spot");
        assertTrue(page.text().contains("no first null: both hear the sound at the same moment"), page.text());
        String sheet = page("/set-up?words=floor+tom&mic=handheld-moving-coil,cardioid,over-rim,0.05,0&mic=handheld-moving-coil,cardioid,under-head,0.08,0&pair=top-and-bottom").text();
        assertTrue(sheet.contains("First null of the sum"), sheet);
        assertTrue(sheet.contains("inverted on the channel of mic 2"), sheet);
    }

    @Test
    void whatIsMissingIsAskedForInThePagesOwnWords() {
        String type = page("/why-not?words=snare&mic=foo", 400).id("faults").text();
        assertTrue(type.contains("Microphone type: none is chosen. Choose a microphone type") && !type.contains("micType"), type);
        String mic = page("/moves?words=snare", 400).id("faults").text();
        assertTrue(mic.contains("no microphone stands yet") && !mic.contains("type,pattern"), mic);
    }

    @Test
    void aRibbonOffTheBellIsNotToldToTurnOffIt() {
        String page = page("/moves?words=tenor+sax&mic=long-ribbon,figure-8,bell-to-keys,0.45,0").text();
        assertFalse(page.contains("HND-006"));
        assertFalse(page.contains("aimed at the keys, aimed at it"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"Tenor saxophone, dark, next to the drums", "snare", "concert grand in a concert hall, stereo", "bass guitar by its lead"})
    void thePointsThatAreShownAddUpToTheScoreThatIsShown(String words) {
        JsonNode answer = Serving.ask("{\"words\": \"" + words + "\", \"draws\": 0}").json();
        List<Markup> options = page(asking(words)).all("article");
        assertFalse(options.isEmpty());
        for (int i = 0; i < options.size(); i++) {
            List<Markup> reasons = options.get(i).all(one -> one.name().equals("li") && (one.is("for") || one.is("against")));
            long sum = reasons.stream().mapToLong(reason -> centipoints(reason.all(one -> one.is("points")).get(0).text())).sum();
            assertEquals(sum, centipoints(options.get(i).all(one -> one.is("score-sum")).get(0).text()));
            assertEquals(answer.path("options").get(i).path("score").asDouble() * 100, sum, 1e-6);
            reasons.forEach(reason -> assertEquals(200, Serving.get("/api" + reason.all("a").get(0).at("href")).status()));
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"brushed snare, soft, airy and dark, small room, next to the double bass, no phantom, only ribbons, live", "snare",
            "two mics on a violin three metres from the brass, mid side, 60 dB of gain", "bass", "wibble"})
    void sendingThePartsAsTheyStandAsksTheSameAgainAndTheAddressStaysShort(String words) {
        for (String units : List.of("", "&units=imperial")) {
            String target = asking(words) + units;
            Markup first = page(target);
            Markup form = first.id("parts");
            Markup again = page(form.sent(form.fields()));
            assertEquals(first.id("answer").text(), again.id("answer").text());
            assertEquals(first.one("h1").text(), again.one("h1").text());
            assertEquals(target.replace("%20", "+"), again.id("answer").at("data-address"));
            assertEquals(first.id("answer").text(), page(again.id("answer").at("data-address")).id("answer").text());
        }
    }

    @Test
    void whatTheWordsSayCanBeTakenBackInTheForm() {
        Markup form = page(asking("brushed snare, airy, next to the double bass, no phantom, one channel, only ribbons")).id("parts");
        List<String[]> fields = new ArrayList<>(form.fields());
        Set<String> cleared = Set.of("way", "character", "near", "phantom", "mics", "only");
        fields.removeIf(field -> cleared.contains(field[0]) && !field[1].equals("none"));
        fields.add(new String[] {"phantom", "yes"});
        fields.add(new String[] {"mics", "any"});
        Markup answer = page(form.sent(fields));
        assertEquals("Snare drum", answer.one("h1").text());
        String address = answer.id("answer").at("data-address");
        assertTrue(address.endsWith("&way=none&character=none&near=none&mics=any&phantom=yes&only=none"), address);
        assertEquals("Snare drum", page(address).one("h1").text());
    }

    @Test
    void anExplicitPartWinsOverTheWordsAndOfTwoValuesTheLaterCounts() {
        assertEquals("Violin, church", page(asking("snare in a small room") + "&source=violin&room=barn&room=church").one("h1").text());
        assertEquals("Snare drum, 2.5 dB of gain", page(asking("snare") + "&gain=2,5").one("h1").text());
        assertEquals("Snare drum, beside the drum kit (9 ft, 120 degrees)",
                page(asking("snare") + "&near=drum-kit&nearDistance=9&nearDegrees=120&units=imperial").one("h1").text());
    }

    @Test
    void everythingThatIsWrongIsSaidAtOnceAndEveryFieldIsKeptAsItWasTyped() {
        Markup page = page("/?words=%3Cb%3Esnare&mics=0&gain=abc&near=kit&nearDistance=x&room=barm&phantom=maybe&options=2.5&only=woods", 400);
        String faults = page.id("faults").text();
        for (String part : List.of("mics must be 1 to 32, but was 0", "\"abc\" is no number", "\"x\" is no number", "no source \"kit\". Maybe drum-kit",
                "no room \"barm\". Maybe barn", "\"maybe\" is neither yes nor no", "\"2.5\" is no whole number", "no family \"woods\"")) {
            assertTrue(faults.contains(part), part + " in " + faults);
        }
        assertEquals(List.of("<b>snare", "0", "abc", "kit", "x", "barm", "maybe", "2.5", "woods"),
                page.one("form").all("input").stream().map(input -> input.at("value")).toList());
        page.id("faults").all("a").forEach(link -> assertEquals("true", page.id(link.at("href").substring(1)).at("aria-invalid")));
    }

    @Test
    void aQuestionBackIsAnsweredByItsLinks() {
        Markup page = page(asking("pipes"));
        assertEquals(List.of(), page.all("article"));
        List<Markup> choices = page.id("notes").all("a");
        assertEquals("Pipe organ", choices.get(choices.size() - 1).text());
        assertEquals("Pipe organ", page(choices.get(choices.size() - 1).at("href")).one("h1").text());
    }

    @Test
    void whatWasNotUnderstoodIsSaidAndWithoutASourceTheNearestAreOffered() {
        assertTrue(page(asking("snare with blorgle")).id("notes").text().contains("blorgle"));
        Markup page = page(asking("clarinello"));
        Markup near = page.id("answer").all("a").get(0);
        assertFalse(page(near.at("href")).all("article").isEmpty(), near.text());
    }

    @Test
    void whereNothingFitsEachLimitThatStandsInTheWayCanBeLifted() {
        Markup page = page(asking("grand piano, only line boxes"));
        assertEquals(List.of(), page.all("article"));
        Markup without = page.id("answer").all("a").get(0);
        assertEquals("Ask without it", without.text());
        assertFalse(page(without.at("href")).all("article").isEmpty());
    }

    @Test
    void howSureComesByALinkOfItsOwn() {
        Markup page = page(asking("snare"));
        assertFalse(page.text().contains("Drawn 200 times"));
        Markup sure = page(page.id("sure").one("a").at("href"));
        assertTrue(sure.id("sure").text().contains("Drawn 200 times"), sure.id("sure").text());
        assertTrue(sure.id("o1-sure").text().startsWith("Comes first in "));
        Markup part = Markup.of(Serving.get(asking("snare") + "&part=sure").body());
        assertEquals(sure.id("sure").text(), part.id("sure").text());
    }

    @Test
    void whyNotAnotherTypeIsAskedBelowTheAnswer() {
        Markup form = page(asking("trumpet, no phantom, next to the drums")).all(one -> one.name().equals("form") && one.at("action").equals("/why-not")).get(0);
        List<String[]> fields = new ArrayList<>(form.fields());
        fields.removeIf(field -> field[0].equals("type"));
        fields.add(new String[] {"type", "large-valve-condenser"});
        Markup page = page(form.sent(fields));
        JsonNode answer = Serving.post(Serving.port(), "/api/ask/why-not", "application/json",
                "{\"question\": {\"words\": \"trumpet, no phantom, next to the drums\"}, \"micType\": \"large-valve-condenser\"}".getBytes(StandardCharsets.UTF_8)).json();
        assertTrue(page.one("main").text().contains(answer.path("says").asText()));
        assertEquals(answer.path("losses").size(), page.one("tbody").all("tr").size());
        List<Markup> changes = page.all(one -> one.is("changes")).stream().flatMap(list -> list.all("li").stream()).toList();
        assertEquals(StreamSupport.stream(answer.path("changes").spliterator(), false).map(change -> change.path("says").asText()).toList(),
                changes.stream().map(Markup::text).toList());
        changes.stream().flatMap(change -> change.all("a").stream()).forEach(link -> page(link.at("href")));
        Markup part = Markup.of(Serving.get(form.sent(fields) + "&part=why-not").body());
        assertTrue(page.one("main").text().contains(part.text()));
    }

    @Test
    void aChangeThatBringsATypeFirstDoesWhenItsLinkIsFollowed() {
        JsonNode answer = Serving.post(Serving.port(), "/api/ask/why-not", "application/json",
                "{\"question\": {\"words\": \"snare, only ribbons\"}, \"micType\": \"handheld-moving-coil\"}".getBytes(StandardCharsets.UTF_8)).json();
        List<Markup> links = page("/why-not?words=snare,+only+ribbons&type=handheld-moving-coil").all(one -> one.is("changes")).stream()
                .flatMap(list -> list.all("li").stream()).toList();
        int followed = 0;
        for (int i = 0; i < links.size(); i++) {
            JsonNode change = answer.path("changes").get(i);
            if (change.path("outcome").asText().equals("first") && change.path("at").asText().startsWith("/question/") && !links.get(i).all("a").isEmpty()) {
                Markup then = page(links.get(i).one("a").at("href"));
                assertTrue(then.id("o1").text().contains("andheld moving coil"), then.id("o1").text());
                followed++;
            }
        }
        assertTrue(followed > 0, "no change to follow; take another question");
    }

    @Test
    void whatToMoveIsAskedBelowAnOptionAndEachMoveCanBeSeenSetUp() {
        Markup option = page(asking("acoustic guitar, small room")).id("o2");
        Markup form = option.all("form").get(0);
        List<String[]> fields = new ArrayList<>(form.fields());
        fields.removeIf(field -> field[0].equals("heard"));
        fields.add(new String[] {"heard", "boomy"});
        Markup page = page(form.sent(fields));
        List<Markup> moves = page.all(one -> one.is("ask-moves")).get(0).all(one -> one.name().equals("li") && !one.within("ul"));
        assertTrue(moves.size() >= 2 && moves.size() <= 3, page.text());
        List<Markup> set = moves.stream().flatMap(move -> move.all("a").stream()).filter(link -> link.text().equals("See it set up")).toList();
        assertFalse(set.isEmpty());
        long before = centipoints(option.all(one -> one.is("score-sum")).get(0).text());
        for (Markup move : moves) {
            List<Markup> see = move.all("a").stream().filter(link -> link.text().equals("See it set up")).toList();
            if (!see.isEmpty() && move.text().contains("Score: ")) {
                Markup then = page(see.get(0).at("href"));
                assertEquals(before + centipoints(move.text().replaceAll(".*Score: (\\S+).*", "$1")),
                        centipoints(then.one("article").all(one -> one.is("score-sum")).get(0).text()), move.text());
                assertNotEquals(0, then.all("svg").size());
            }
        }
        Markup part = Markup.of(Serving.get(form.sent(fields) + "&part=moves").body());
        assertTrue(page.one("main").text().contains(part.text()));
    }

    @Test
    void theSheetShowsTheOptionWithAllItsCautionsAndWhatToFetch() {
        Markup answer = page(asking("kick drum, loud"));
        for (Markup option : answer.all("article")) {
            Markup sheet = page(option.all(one -> one.text().startsWith("Set-up sheet") && one.name().equals("a")).get(0).at("href"));
            List<String> cautions = option.all(one -> one.is("danger") || one.is("care") || one.is("note")).stream().map(Markup::text).toList();
            assertEquals(cautions, sheet.all(one -> one.is("danger") || one.is("care") || one.is("note")).stream().map(Markup::text).toList());
            assertTrue(sheet.all(one -> one.is("check-list")).get(0).all("li").size() >= 4);
            assertEquals(option.all(one -> one.is("score-sum")).get(0).text(), sheet.all(one -> one.is("score-sum")).get(0).text());
            assertTrue(page(sheet.all(one -> one.is("print-address")).get(0).text()).text().contains(cautions.get(0)));
        }
        page("/set-up?words=kick+drum&option=7", 400);
        page("/set-up?words=kick+drum&mic=x", 400);
        page("/moves?words=kick+drum", 400);
        page("/why-not?words=kick+drum", 400);
    }

    @Provide
    Arbitrary<String> queries() {
        Arbitrary<String> names = Arbitraries.of("words", "source", "way", "dynamics", "room", "character", "near", "nearDistance", "nearDegrees", "mics", "phantom",
                "gain", "noise", "only", "without", "onlyType", "withoutType", "circumstance", "technique", "wish", "options", "mic", "pair", "type", "heard",
                "option", "pattern", "position", "units", "part", "other");
        Arbitrary<String> values = Arbitraries.oneOf(Arbitraries.strings().ofMaxLength(30), Arbitraries.strings().withCharRange(' ', '~').ofMaxLength(30),
                Arbitraries.of("snare", "snare-drum", "drum-kit", "1", "-1", "2,5", "1e9", "NaN", "any", "none", "yes", "airy", "ribbon", "long-ribbon", "mid-side",
                        "long-ribbon,figure-8,over-rim,0.5,0", "boomy", "imperial", "'\"><script>alert(1)</script>", "999999999999999999999"));
        return net.jqwik.api.Combinators.combine(names, values).as((name, value) -> name + "=" + URLEncoder.encode(value, StandardCharsets.UTF_8))
                .list().ofMinSize(1).ofMaxSize(6).map(list -> String.join("&", list));
    }

    @Property(tries = 300, shrinking = ShrinkingMode.OFF)
    void noQueryIsAMistakeOfTheProgramsAndNoneGetsUnescapedOntoThePage(@ForAll("queries") String query, @ForAll("paths") String path) {
        Reply reply = Serving.get(path + "?" + query.replace("draws=", "d="));
        assertTrue(reply.status() == 200 || reply.status() == 400, reply.status() + " " + query + "\n" + reply.body());
        assertEquals("text/html", reply.mediaType(), query);
        assertFalse(reply.body().contains("<script>alert"), query);
        assertEquals(-1, reply.body().indexOf('\u0000'), query);
        Markup.of(reply.body());
    }

    @Provide
    Arbitrary<String> paths() {
        return Arbitraries.of("/", "/", "/set-up", "/moves", "/why-not");
    }
}
