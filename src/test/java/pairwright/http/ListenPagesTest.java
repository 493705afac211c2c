package pairwright.http;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import pairwright.listen.Sounds;

/** Recordings are measured on a page, without script and without a trace. */
class ListenPagesTest {
    private static final String HTML = "Accept: text/html";
    private static final byte[] NOTES = Multipart.wav(Multipart.notes(20));
    private static final byte[] SOUND = Multipart.wav(Multipart.noise(1));

    private static Server server;

    @BeforeAll
    static void start() {
        server = Server.start(Serving.KNOWLEDGE, "127.0.0.1", 0);
    }

    @AfterAll
    static void stop() throws Exception {
        try (Stream<Path> left = Files.list(server.uploads())) {
            assertEquals(List.of(), left.toList());
        }
        server.close();
    }

    private static Markup get(String address, int status) {
        Reply reply = Serving.send(server.port(), "GET " + address + " HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n" + HTML + "\r\n\r\n");
        assertEquals(status, reply.status(), reply.body());
        return Markup.of(reply.body());
    }

    private static Markup post(Multipart form, String what, int status) {
        Reply reply = form.to(server.port(), "/listen?what=" + what, HTML, "Accept-Encoding: identity");
        assertEquals(status, reply.status(), reply.body());
        assertEquals(PageHeaders.ONLY_OURS, reply.headers().get("content-security-policy"));
        if (status == 200) {
            assertEquals("no-store", reply.headers().get("cache-control"));
        }
        return Markup.of(reply.body());
    }

    @Test
    void eachFormAsksForTheFilesItsAnswerIsMadeOf() {
        assertEquals(Set.of("file", "source", "averageDb", "distanceM", "weighting"), names(get("/listen", 200)));
        assertEquals(Set.of("file"), names(get("/listen?what=pair", 200)));
        assertEquals(Set.of("before", "after"), names(get("/listen?what=change", 200)));
        assertEquals(Set.of("own", "neighbour", "expectedOctavesDb"), names(get("/listen?what=bleed", 200)));
        Markup strange = get("/listen?what=smell", 400);
        assertTrue(strange.one("main").text().contains("There is nothing to be measured as \"smell\""), strange.text());
    }

    private static Set<String> names(Markup page) {
        Markup form = page.one("main").one("form");
        assertEquals("multipart/form-data", form.at("enctype"));
        assertEquals("post", form.at("method"));
        List<Markup> fields = Stream.of("input", "select").flatMap(name -> form.all(name).stream()).toList();
        fields.forEach(field -> assertTrue(form.all("label").stream().anyMatch(label -> field.at("id").equals(label.at("for"))), field.at("name") + " has no label"));
        return fields.stream().map(field -> field.at("name")).collect(Collectors.toSet());
    }

    @Test
    void whatWasHeardOfASourceIsToldInWordsFirst() {
        Markup page = post(Multipart.form().file("file", "tune <b>.wav", NOTES).field("source", "violin").field("averageDb", "82,5").field("distanceM", "").field("weighting", "A"), "source", 200);
        String text = page.one("main").text();
        assertEquals("tune <b>.wav", page.one("h1").text());
        assertTrue(text.indexOf("Against the usual violin it has") > 0 && text.indexOf("Against the usual violin it has") < text.indexOf("Figures"), text);
        assertTrue(text.contains("Neither the recordings nor this page are kept"), text);
        assertEquals(2, page.all("svg").size());
        page.all("table").forEach(table -> assertTrue(table.all("th").stream().anyMatch(head -> "col".equals(head.at("scope"))) && !table.one("caption").text().isBlank()));
        String lines = page.one("pre").text();
        assertTrue(lines.startsWith("heard:") || lines.startsWith("  heard:"), lines);
        assertTrue(lines.contains("typicalDbSpl: 8") && lines.contains("toneDb: ["), lines);

        String question = page.all(one -> one.name().equals("a") && one.text().startsWith("Ask what to put on it")).get(0).at("href");
        Markup answer = get(question, 200);
        String heard = answer.one("main").text();
        assertTrue(heard.contains("As this player was heard") && heard.contains("It plays at 8") && heard.contains("Against the usual violin it has"), heard);
        String sent = answer.id("parts").all("input").stream().filter(input -> input.at("name").startsWith("heard")).map(input -> input.at("name") + "=" + input.at("value")).collect(Collectors.joining("&")).replace(' ', '+');
        assertFalse(heard.contains("means nothing here"), "every name that the page itself sends is known: " + sent);
        assertTrue(get("/?source=violin&room=barn&" + sent, 200).text().contains("As this player was heard"), "changing a part keeps it: " + sent);
        assertFalse(get("/?source=trumpet&" + sent, 200).text().contains("As this player was heard"), "of another source it says nothing");
        String without = answer.all(one -> one.name().equals("a") && one.text().equals("Ask for the usual player")).get(0).at("href");
        assertFalse(without.contains("heard"), without);
        assertFalse(get(without, 200).text().contains("As this player was heard"));
        String faults = get(question.replaceFirst("heardTone=[^&]*", "heardTone=1+2+loud").replaceFirst("heardLevel=[^&]*", "heardLevel=low"), 400).id("faults").text();
        assertTrue(faults.contains("\"1 2 loud\" is not nine numbers") && faults.contains("\"low\" is no number"), faults);
        faults = get(question.replaceFirst("heardLevel=[^&]*", "heardLevel=500"), 400).id("faults").text();
        assertTrue(faults.contains("typicalDbSpl must be 20 to 160, but was 500"), faults);
    }

    @Test
    void whatAPlanReckonsWithIsInTheFormOfBleed() {
        Markup form = get("/listen?what=bleed&of=3+violin%2C+beside+the+%3Cb%3Edrums&expectedOctavesDb=12%2C+9.5%2C+8%2C+8%2C+8%2C+8%2C+8%2C+8%2C+-3", 200);
        assertTrue(form.text().contains("Held against what the plan reckons with: 3 violin, beside the <b>drums."), form.text());
        assertEquals("12, 9.5, 8, 8, 8, 8, 8, 8, -3", form.id("in-expectedOctavesDb").at("value"));
        assertFalse(get("/listen?what=bleed", 200).text().contains("Held against"));
    }

    @Test
    void aPairAChangeAndBleedAreToldToo() {
        double[] one = Multipart.noise(1);
        Markup pair = post(Multipart.form().file("file", "both.wav", Multipart.wav(one, Sounds.filtered(one, 24, hz -> -1))), "pair", 200);
        assertTrue(pair.text().contains("both.wav, right is the other way up"), pair.text());
        assertEquals(1, pair.all("svg").size());
        assertEquals(2, pair.all("table").size());
        pair.all("table").forEach(table -> assertEquals(10, table.all("tr").size(), "a head and nine octaves"));
        assertTrue(pair.all("table").get(1).text().contains("One flipped"), pair.text());
        assertTrue(pair.one("svg").text().contains("one flipped"), "the curve has its name beside it");
        assertTrue(post(Multipart.form().file("before", "b.wav", SOUND).file("after", "a.wav", SOUND), "change", 200).text().contains("At equal level no octave differs"));
        assertTrue(post(Multipart.form().file("own", "o.wav", SOUND).file("neighbour", "n.wav", SOUND).field("expectedOctavesDb", "0,0,0,0,0,0,0,0,0"), "bleed", 200).text().contains("That is as reckoned"));
    }

    @Test
    void whatIsWrongStandsOverTheFormThatWasSent() {
        Markup none = post(Multipart.form().file("before", "", new byte[0]).file("after", "", new byte[0]), "change", 400);
        assertTrue(none.text().contains("there is no file under before") && none.text().contains("there is no file under after"), none.text());
        assertEquals(Set.of("before", "after"), names(none));
        Markup letter = post(Multipart.form().file("file", "letter.wav", new byte[100]).field("source", "violin"), "source", 422);
        assertTrue(letter.text().contains("letter.wav: It is no WAV or AIFF file"), letter.text());
        assertEquals(400, Multipart.form().to(server.port(), "/listen?what=smell", HTML).status());
        assertEquals(415, Multipart.send(server.port(), "/listen", "application/x-www-form-urlencoded", "what=pair".getBytes(StandardCharsets.UTF_8), HTML).status());
    }

    @Test
    void aPageOfAnotherSiteMeasuresNothing() {
        for (String from : List.of("Origin: http://other.example", "Sec-Fetch-Site: cross-site")) {
            Reply reply = Multipart.form().file("file", "a.wav", SOUND).to(server.port(), "/listen", HTML, from);
            assertEquals(403, reply.status());
            assertFalse(reply.body().contains("Figures"));
        }
    }
}
