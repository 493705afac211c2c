package pairwright.http;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pairwright.catalogue.Json;
import pairwright.http.LockerSite.Got;
import pairwright.locker.Act;
import pairwright.locker.DocumentDraft;
import pairwright.locker.DocumentKind;
import pairwright.locker.Role;
import pairwright.session.Floor;
import pairwright.session.LineUp;
import pairwright.session.Seat;
import pairwright.session.SetUpTime;

/** The pages of sessions, over HTTP, with a real locker behind them, as somebody without script uses them. */
class SessionPagesTest {
    private static final String SESSION = "/sessions/barn-day";
    private static final String BARN_DAY = """
            name: Barn day
            room: {widthM: 8, depthM: 6, heightM: 3, reverbTimeS: 0.6}
            lineUp:
              - {id: fiddle, player: Mara, source: violin, xM: 2.3, yM: 4.1, facingDegrees: 90, character: [warm], limits: {withoutFamilies: [ribbon]},
                 heard: {typicalDbSpl: 78, toneDb: [0, 0, 1, 2, 0, 0, -1, 0, 0]}}
              - {id: kit, source: drum-kit, xM: 6, yM: 3, facingDegrees: 270, must: false, maxMics: 3}
            gobos: [{id: gobo-1, x1M: 4, y1M: 2, x2M: 4, y2M: 3.2, heightM: 1.4}]
            contrast: [[fiddle, kit]]
            """;

    @TempDir
    private Path data;
    private LockerSite site;
    private final SessionTexts texts = new SessionTexts(Json.mapper());

    @BeforeEach
    void open() {
        site = new LockerSite(data);
    }

    @AfterEach
    void close() {
        site.close();
    }

    private Got bring(String yaml) {
        return site.send(site.get("/sessions"), "bring", Map.of("file", yaml));
    }

    private LineUp kept(String id) {
        return texts.read(site.locker.documents().of(id).orElseThrow().text(), Serving.KNOWLEDGE.current()).lineUp();
    }

    /** The form with some fields filled in, and the button that is pressed. */
    private Got press(Got page, String button, Map<String, String> filled) {
        Element form = page.page().page().selectFirst("form#session");
        assertTrue(form.select("button").eachAttr("value").contains(button), "no button " + button);
        Map<String, String> fields = LockerSite.fields(form, filled);
        fields.put("do", button);
        return site.post(form.attr("action"), fields);
    }

    private static String value(Got page, String name) {
        Element field = page.page().page().selectFirst("[name=\"" + name + "\"]");
        return field == null ? null : field.tagName().equals("select") ? field.select("option[selected]").attr("value") : field.tagName().equals("textarea") ? field.wholeText() : field.attr("value");
    }

    private static String fault(Got page, String name) {
        Element field = page.page().page().selectFirst("[name=\"" + name + "\"]");
        return page.page().page().select("#" + field.id() + "-fault").text();
    }

    @Test
    void thereIsASessionToTryItWith() {
        Got made = site.send(site.get("/sessions"), "demo", Map.of());
        assertEquals(303, made.status(), made.text());
        Got page = site.get(made.location());
        assertEquals("This is a session to try it with. Change whatever you like.", page.page().page().select("[role=status]").first().text());
        assertEquals("Sessions", page.page().page().select("header nav [aria-current]").text());
        assertTrue(page.page().page().select("fieldset.seat").size() >= 6, page.text());
        assertEquals(page.page().page().select("fieldset.seat").size(), page.page().page().select("svg [data-who]").size(), "everybody is on the floor");
        Got saved = press(page, "save", Map.of());
        assertEquals(303, saved.status(), "nothing is wrong with it: " + saved.text());
        Element row = site.get("/sessions").page().page().selectFirst("tbody tr");
        assertEquals(kept(made.location().replaceFirst("/sessions/", "").replaceFirst("\\?.*", "")).name(), row.selectFirst("th").text());
    }

    @Test
    void aSessionBeginsWithWordsAndWhoHasNoPlaceIsGivenOne() {
        Got form = site.get("/sessions/new");
        Got saved = press(form, "save", Map.of("name", "Two by the door", "seat.0.what", "brushed snare, dark", "seat.1.what", "Upright bass", "seat.1.player", "J\u00f6rg"));
        assertEquals(303, saved.status(), saved.text());
        LineUp lineUp = kept("two-by-the-door");
        Seat snare = lineUp.seats().get(0);
        assertEquals(List.of("snare-drum", List.of("brushed"), List.of("dark")), List.of(snare.source(), snare.ways(), snare.character()));
        assertEquals("jorg", lineUp.seats().get(1).id());
        assertEquals("double-bass", lineUp.seats().get(1).source());
        assertTrue(lineUp.seats().stream().allMatch(seat -> lineUp.floor().holds(seat.xM(), seat.yM()) && seat.must()), lineUp.toString());
        assertTrue(Math.hypot(snare.xM() - lineUp.seats().get(1).xM(), snare.yM() - lineUp.seats().get(1).yM()) > 0.5, "not on each other");
        Got page = site.get(saved.location());
        assertEquals("Snare drum", value(page, "seat.0.what"));
        assertEquals("brushed", value(page, "seat.0.how"));
        assertEquals("dark", value(page, "seat.0.character"));
    }

    @Test
    void everythingThatIsWrongIsSaidAtItsFieldAndNothingTypedIsLost() {
        bring(BARN_DAY);
        Map<String, String> typed = new HashMap<>(Map.of("name", "", "widthM", "wide", "seat.0.what", "blorpophone", "seat.0.xM", "2,5", "seat.0.how", "sideways", "seat.1.yM", "60",
                "seat.1.maxMics", "a few", "seat.1.section", "horns"));
        typed.put("gobo.0.heightM", "40 m");
        typed.put("until", "soon");
        typed.put("seat.1.habits", "leans back\nstamps");
        Got page = press(site.get(SESSION), "save", typed);
        assertEquals(400, page.status());
        typed.forEach((name, text) -> assertEquals(text, value(page, name).strip(), name));
        Map.of("name", "has no name", "widthM", "\"wide\" is no number", "seat.0.what", "\u201cblorpophone\u201d is no source", "seat.0.how", "\u201csideways\u201d is no way to play it", "seat.1.yM",
                "This must be 0 m to 6 m, as the room is that deep, but was 60 m", "seat.1.maxMics", "\u201ca few\u201d is no number", "seat.1.section", "Only this seat is in section", "gobo.0.heightM",
                "This must be 0.2 m to 3 m", "until", "soon").forEach((name, says) -> assertTrue(fault(page, name).contains(says), name + ": " + fault(page, name)));
        List<String> links = page.page().page().select(".form-faults a").eachAttr("href");
        assertEquals(9, links.size(), page.page().page().select(".form-faults").text());
        assertTrue(links.stream().allMatch(link -> page.page().page().select(link).size() == 1), links.toString());
        assertTrue(page.page().page().select(".form-faults").text().contains("Drum kit: From the front, m"), "it is said whose field it is");
        assertEquals("Mara", kept("barn-day").seats().get(0).player());
    }

    @Test
    void theTimeToSetUpIsKeptAndWhatIsNoneIsSaidAtItsField() {
        bring(BARN_DAY);
        assertEquals(303, press(site.get(SESSION), "save", Map.of("setUpMinutes", "60", "setUpHands", "2")).status());
        assertEquals(new SetUpTime(60, 2), kept("barn-day").setUp());
        assertEquals("60", value(site.get(SESSION), "setUpMinutes"));
        Got wrong = press(site.get(SESSION), "save", Map.of("setUpMinutes", "0", "setUpHands", "two"));
        assertEquals(400, wrong.status());
        assertEquals("two", value(wrong, "setUpHands"));
        assertTrue(fault(wrong, "setUpMinutes").contains("This must be 1 to 1440, but was 0"), fault(wrong, "setUpMinutes"));
        assertTrue(fault(wrong, "setUpHands").contains("\u201ctwo\u201d is not a number of hands"), fault(wrong, "setUpHands"));
        assertTrue(fault(press(site.get(SESSION), "save", Map.of("setUpMinutes", "", "setUpHands", "2")), "setUpMinutes").contains("how many minutes these hands have"));
        assertEquals(303, press(site.get(SESSION), "save", Map.of("setUpMinutes", "", "setUpHands", "")).status());
        assertEquals(null, kept("barn-day").setUp());
    }

    @Test
    void seatsAndGobosComeAndGoByButtonsAndWhatWasTypedStays() {
        bring(BARN_DAY);
        Got added = press(site.get(SESSION), "add-seat", Map.of("seat.0.player", "Mara again"));
        assertEquals(200, added.status());
        assertEquals("Mara again", value(added, "seat.0.player"));
        assertEquals("seat-2-what", added.page().page().select("[autofocus]").attr("id"));
        Got doubled = press(added, "double-seat.0", Map.of("seat.2.what", "trumpet"));
        assertEquals("Violin", value(doubled, "seat.3.what"));
        assertEquals("", value(doubled, "seat.3.player"), "somebody else");
        assertTrue(value(doubled, "seat.2.xM").matches("\\d+(\\.\\d+)?"), "the trumpet has a place now");
        assertEquals(4, doubled.page().page().select("svg [data-who]").size());
        Got screened = press(doubled, "add-gobo", Map.of());
        assertEquals("1.4", value(screened, "gobo.1.heightM"));
        Got without = press(press(screened, "remove-seat.1", Map.of()), "remove-gobo.0", Map.of());
        assertEquals(null, value(without, "seat.1.what"));
        Got saved = press(without, "save", Map.of());
        assertEquals(303, saved.status(), saved.text());
        LineUp lineUp = kept("barn-day");
        assertEquals(List.of("fiddle", "trumpet", "violin"), lineUp.seats().stream().map(Seat::id).toList());
        assertEquals(List.of(), lineUp.contrast(), "it named the kit, which left");
        assertEquals(1, lineUp.gobos().size());
        assertEquals("Barn day", lineUp.name());
    }

    @Test
    void whatTheFormDoesNotShowStaysAndWhatIsNotTouchedIsExactlyAsItWas() {
        bring(BARN_DAY);
        LineUp before = kept("barn-day");
        assertEquals(303, press(site.get(SESSION), "save", Map.of()).status());
        assertEquals(before, kept("barn-day"));
        assertEquals(1, site.locker.documents().of("barn-day").orElseThrow().version(), "nothing was changed");
        assertEquals(303, press(site.get(SESSION + "?units=imperial"), "save", Map.of("seat.1.player", "Bo")).status());
        LineUp after = kept("barn-day");
        assertEquals(before.seats().get(0), after.seats().get(0), "feet lost nothing");
        assertEquals(before.floor(), after.floor());
        assertEquals(before.gobos(), after.gobos());
        assertEquals("Bo", after.seats().get(1).player());
    }

    @Test
    void whereTheLeadsEndIsSaidWithBothOrNotAtAll() {
        bring(BARN_DAY);
        Got half = press(site.get(SESSION), "save", Map.of("patchXM", "2"));
        assertEquals(400, half.status());
        assertTrue(fault(half, "patchYM").contains("Give both, or leave both empty"), half.text());
        Got outside = press(site.get(SESSION), "save", Map.of("patchXM", "2", "patchYM", "7"));
        assertTrue(fault(outside, "patchYM").contains("This must be 0 m to 6 m, as the room is that deep, but was 7 m"), outside.text());
        assertEquals(303, press(site.get(SESSION), "save", Map.of("patchXM", "2", "patchYM", "0")).status());
        assertEquals(new Floor.Patch(2, 0), kept("barn-day").floor().patch());
        Got page = site.get(SESSION);
        assertEquals(1, page.page().page().select("svg .lead-box").size());
        assertEquals(303, press(page, "save", Map.of("patchXM", "", "patchYM", "")).status());
        assertNull(kept("barn-day").floor().patch());
    }

    @Test
    void feetAreReadAsFeet() {
        bring(BARN_DAY);
        Got page = site.get(SESSION + "?units=imperial");
        assertTrue(page.text().contains("From the left, ft"), page.text());
        press(page, "save", Map.of("seat.0.xM", "10"));
        assertEquals(3.048, kept("barn-day").seats().get(0).xM(), 1e-9);
        press(site.get(SESSION + "?units=imperial"), "save", Map.of("seat.0.xM", "2 m"));
        assertEquals(2, kept("barn-day").seats().get(0).xM(), 1e-9);
    }

    @Test
    void seatsWithTheSameWordAreOneSectionAndTwoShallNotSoundAlike() {
        bring(BARN_DAY);
        Got saved = press(site.get(SESSION), "save", Map.of("seat.0.section", "strings", "seat.1.section", "Strings", "contrast.0.a", "", "contrast.0.b", ""));
        assertEquals(303, saved.status(), saved.text());
        assertEquals(List.of(List.of("fiddle", "kit")), kept("barn-day").keep());
        assertEquals(List.of(), kept("barn-day").contrast());
        Got page = press(site.get(SESSION), "save", Map.of("contrast.0.a", "fiddle", "contrast.0.b", "fiddle"));
        assertEquals(400, page.status());
        assertTrue(page.text().contains("Two seats are needed"), page.text());
    }

    @Test
    void whatSomebodyChangedMeanwhileIsNotOverwrittenUnseen() {
        bring(BARN_DAY);
        Got mine = site.get(SESSION);
        LineUp theirs = kept("barn-day").named("Barn day, moved");
        site.locker.change(Act.by("Cleo"), changes -> changes.put(DocumentDraft.lineUp("barn-day", theirs.name(), null, null, texts.written(theirs)), 1L).id());
        Got refused = press(mine, "save", Map.of("seat.0.player", "Nora"));
        assertEquals(412, refused.status());
        assertTrue(refused.text().contains("Somebody changed this session since you opened the page: Cleo, today"), refused.text());
        assertEquals("Nora", value(refused, "seat.0.player"));
        assertEquals("Barn day, moved", kept("barn-day").name());
        assertEquals(303, press(refused, "save", Map.of()).status());
        assertEquals("Nora", kept("barn-day").seats().get(0).player());
    }

    @Test
    void aButtonOfTheFormDoesNotForgetWhichVersionWasOpened() {
        bring(BARN_DAY);
        Got mine = site.get(SESSION);
        LineUp theirs = kept("barn-day").named("Barn day, moved");
        site.locker.change(Act.by("Cleo"), changes -> changes.put(DocumentDraft.lineUp("barn-day", theirs.name(), null, null, texts.written(theirs)), 1L).id());
        assertEquals(412, press(press(mine, "add-gobo", Map.of()), "save", Map.of()).status());
    }

    @Test
    void aFileThatIsWrongSaysInWhichLineAndStaysInItsField() {
        String wrong = BARN_DAY.replace("source: violin", "source: violinn").replace("xM: 6,", "xM: 16,");
        Got page = bring(wrong);
        assertEquals(400, page.status());
        List<String> said = page.page().page().select("#wrong li").eachText();
        assertEquals(2, said.size(), said.toString());
        assertTrue(said.get(0).startsWith("line 4: ") && said.get(0).contains("violinn"), said.get(0));
        assertTrue(said.get(1).startsWith("line 6: "), said.get(1));
        assertEquals(wrong.strip(), value(page, "file").strip());
        assertEquals(0, site.locker.documents().count(DocumentKind.LINE_UP));
        assertEquals(400, bring("{\"lineUp\": [").status());
        assertEquals(303, bring("{\n\t\"lineUp\": [\"trumpet\"]\n}").status(), "JSON may have tabs");
    }

    @Test
    void aSessionIsRemovedOnlyAfterItWasAsked() {
        bring(BARN_DAY);
        Got asks = site.get(SESSION + "/remove");
        assertTrue(asks.text().contains("Remove Barn day?"), asks.text());
        Got gone = site.send(asks, "remove", Map.of());
        assertEquals(303, gone.status());
        assertTrue(site.get(gone.location()).text().contains("The session is removed."));
        assertEquals(404, site.get(SESSION).status());
        assertEquals(404, site.post(SESSION, Map.of("do", "save")).status());
    }

    @Test
    void whatWasKeptAndCanNoLongerBeReadIsSaidAndNotAMistake() {
        site.locker.change(Act.by("Ada"), changes -> changes.put(DocumentDraft.lineUp("old", "Old", null, null, "{\"lineUp\": [\"nosuch\"]}"), null).id());
        Got page = site.get("/sessions/old");
        assertEquals(200, page.status());
        assertTrue(page.text().contains("can no longer be read") && page.text().contains("nosuch"), page.text());
        assertTrue(site.get("/sessions").text().contains("cannot be read as it is"));
    }

    @Test
    void aReaderLooksAndAnEngineerChanges(@TempDir Path other) {
        try (LockerSite guarded = new LockerSite(other, Map.of("Finch", Role.READER, "Wren", Role.ENGINEER))) {
            guarded.locker.change(Act.by("Wren"), changes -> changes.put(DocumentDraft.lineUp("barn-day", "Barn day", null, null, BARN_DAY), null).id());
            Got reader = guarded.get("/sessions/barn-day", "Finch");
            assertEquals(0, reader.page().page().select("main form, main button[type=submit]").size());
            assertTrue(reader.text().contains("engineers change sessions"), reader.text());
            assertTrue(reader.page().page().select(".who-is-where").text().contains("2.3 m from the left wall, 4.1 m from the front, facing 90 degrees"), reader.text());
            assertEquals(0, guarded.get("/sessions", "Finch").page().page().select("main form").size());
            assertEquals(403, guarded.get("/sessions/new", "Finch").status());
            assertEquals(1, guarded.get("/sessions/barn-day", "Wren").page().page().select("form#session").size());
        }
    }

    @Test
    void noFormWhateverItHoldsIsAMistakeOfTheProgram() {
        bring(BARN_DAY);
        for (Map<String, String> sent : List.of(Map.of("do", "remove-seat.999"), Map.of("do", "double-seat.77"), Map.of("seat.0.what", "x".repeat(5000)), Map.of("seat.0.xM", "1e308", "seat.0.what", "violin"),
                Map.of("gobo.3.x1M", "NaN"), Map.of("contrast.0.a", "nobody", "contrast.0.b", "somebody"), Map.of("seat.200.what", "trumpet"), Map.of("from", "2027-03-28T02:30", "until", "x"),
                Map.of("widthM", "0", "depthM", "-3"), Map.of("room", "nosuch"), Map.of("plans", "99999999999"), Map.of("seat.0.id", "../x", "seat.0.what", "violin"))) {
            Got page = site.post(SESSION, sent);
            assertTrue(page.status() < 500, sent + ": " + page.status());
            assertFalse(page.status() == 303, sent + " was taken");
        }
    }
}
