package pairwright.http;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pairwright.locker.Act;
import pairwright.locker.Condition;
import pairwright.locker.UnitDraft;

/** The pages of a planned session, used as somebody does who has a browser and no script. */
class SessionPlanPagesTest {
    private static final String TRIO = """
            {"name": "Barn trio", "room": {"widthM": 8, "depthM": 6, "heightM": 3.5, "reverbTimeS": 0.5},
             "from": "2031-03-02T10:00:00Z", "until": "2031-03-02T14:00:00Z", "plans": 1,
             "lineUp": [{"id": "tenor", "player": "Nora", "source": "tenor-saxophone", "xM": 2, "yM": 2, "facingDegrees": 0, "maxMics": 1},
                        {"id": "bass", "source": "double-bass", "xM": 6, "yM": 3, "facingDegrees": 270, "maxMics": 1, "must": false}]}""";
    private static final String AT = "/sessions/barn-trio";

    @TempDir
    private Path folder;
    private LockerSite site;

    @BeforeEach
    void open() {
        site = new LockerSite(folder);
        site.locker.change(Act.by("Ada"), changes -> {
            changes.add(UnitDraft.mic("barn-ribbon", "long-ribbon", "Barn ribbon"));
            changes.add(UnitDraft.mic("loft-large", "large-condenser-cardioid", "Loft large"));
            changes.add(UnitDraft.mic("yard-vocal", "handheld-moving-coil", "Yard vocal"));
            return "";
        });
        assertEquals(201, site.api("POST", "/api/sessions", TRIO).statusCode());
    }

    @AfterEach
    void close() {
        site.close();
    }

    private LockerSite.Got planned(String address) {
        LockerSite.Got got = site.get(address);
        for (int looks = 0; got.page().page().selectFirst("#planned[data-again]") != null && looks < 1200; looks++) {
            pause();
            got = site.get(address);
        }
        return got;
    }

    private static void pause() {
        try {
            Thread.sleep(50);
        } catch (InterruptedException ended) {
            throw new AssertionError(ended);
        }
    }

    private void take() {
        LockerSite.Got taken = site.send(planned(AT + "/plan"), "take", Map.of());
        assertEquals(303, taken.status());
        assertEquals(AT + "/plan?plan=1&done=taken", taken.location());
    }

    @Test
    void aListOfAPlanThatIsBeingWorkedOutSaysSoAndWhenToComeAgain() {
        HttpResponse<String> early = site.api("GET", AT + "/sheets/input.csv?plan=1", "");
        assertEquals(503, early.statusCode(), early.body());
        assertEquals("2", early.headers().firstValue("Retry-After").orElseThrow());
        assertTrue(early.body().contains("The plan of this list is still being worked out: "), early.body());
        planned(AT + "/plan");
        assertEquals(200, site.api("GET", AT + "/sheets/input.csv?plan=1", "").statusCode());
        HttpResponse<String> none = site.api("GET", AT + "/sheets/input.csv?plan=2", "");
        assertEquals(400, none.statusCode(), "only one was asked for");
        assertTrue(none.body().contains("There is no plan 2. Give 1."), none.body());
    }

    @Test
    void aPlanIsTakenAndEveryPageIsAboutItFromThen() {
        LockerSite.Got plans = planned(AT + "/plan");
        assertEquals(200, plans.status());
        assertFalse(plans.page().page().select(".at-seat").isEmpty(), plans.text());
        take();
        assertEquals(200, site.api("GET", "/api/sessions/barn-trio/picks", "").statusCode());
        for (String page : List.of("bleed", "timing", "check", "sheets", "sheets/all", "recall")) {
            LockerSite.Got got = site.get(AT + "/" + page);
            assertEquals(200, got.status(), page);
            assertTrue(got.text().contains("Of the plan that was taken."), page + ": " + got.text());
        }
        assertTrue(site.get(AT + "/plan?done=taken").page().page().select("form#take").isEmpty(), "it is taken already");
    }

    @Test
    void twoWhoTickAtOnceLoseNothing() {
        take();
        LockerSite.Got mine = site.get(AT + "/check");
        LockerSite.Got yours = site.get(AT + "/check");
        List<String> keys = mine.page().page().select("input[name=tick]").eachAttr("value");
        assertTrue(keys.size() >= 3, mine.text());
        assertEquals(303, browser(mine, keys.get(0)));
        assertEquals(303, browser(yours, keys.get(1)));
        assertEquals(List.of(keys.get(0), keys.get(1)), site.get(AT + "/check").page().page().select("input[name=tick][checked]").eachAttr("value"));
        HttpResponse<String> ticked = site.api("GET", AT + "/check?part=ticks", "");
        assertTrue(ticked.body().contains("\"" + keys.get(0) + "\":") && ticked.body().contains("\"" + keys.get(1) + "\":"), ticked.body());
    }

    private HttpResponse<String> tick(String key, boolean on) {
        return site.phone(AT + "/check", (on ? "tick=" : "was=") + key);
    }

    @Test
    void aTickIsKeptAndReadWhileThereIsNoPlan() {
        HttpResponse<String> early = site.api("GET", AT + "/check?part=ticks", "");
        assertEquals(200, early.statusCode(), "nothing is planned yet: " + early.body());
        take();
        LockerSite.Got page = site.get(AT + "/check");
        String key = page.page().page().select("input[name=tick]").first().val();
        String plan = page.page().page().selectFirst("form#check").attr("data-plan");
        String unit = site.api("GET", "/api/sessions/barn-trio/picks", "").body().replaceAll("(?s).*?\"unit\" ?: ?\"([^\"]*)\".*", "$1");
        site.locker.change(Act.by("Ada"), changes -> {
            return changes.alter(unit, site.locker.unit(unit).orElseThrow().draft().in(Condition.IN_REPAIR, "fell"), null).id();
        });
        assertEquals(409, site.get(AT + "/check").status(), "the plan that was taken does not hold any more");
        HttpResponse<String> ticked = tick(key, true);
        assertEquals(200, ticked.statusCode(), ticked.body());
        assertTrue(ticked.body().contains("\"" + key + "\":") && ticked.body().contains("\"plan\":\"" + plan + "\""), ticked.body());
        assertEquals(ticked.body(), site.api("GET", AT + "/check?part=ticks", "").body());
        assertFalse(tick(key, false).body().contains(key));
    }

    @Test
    void whoTicksAPlanThatWasReplacedIsTold() {
        take();
        String before = site.get(AT + "/check").page().page().selectFirst("form#check").attr("data-plan");
        assertTrue(site.api("GET", AT + "/check?part=ticks", "").body().contains("\"plan\":\"" + before + "\""), before);
        site.send(site.get(AT + "/replan?seat=bass&price=50"), "take-change", Map.of());
        String after = site.get(AT + "/check").page().page().selectFirst("form#check").attr("data-plan");
        assertFalse(after.isEmpty() || after.equals(before), after);
        assertTrue(site.api("GET", AT + "/check?part=ticks", "").body().contains("\"plan\":\"" + after + "\""), after);
    }

    @Test
    void searchingAgainLeadsToThePlansAndThrowsNothingAway() {
        String before = planned(AT + "/plan").text();
        LockerSite.Got again = site.post(AT + "/plan/again", Map.of());
        assertEquals(303, again.status(), again.text());
        assertEquals(AT + "/plan", again.location());
        LockerSite.Got after = site.get(AT + "/plan");
        assertTrue(after.page().page().select("#planned[data-again]").isEmpty(), "what was found is still there");
        assertEquals(before, after.text());
        assertEquals(404, site.post("/sessions/nosuch/plan/again", Map.of()).status());
    }

    @Test
    void whatIsShortIsSaidOfAChangeThatCannotBe() {
        take();
        LockerSite.Got none = site.get(AT + "/replan?seat=bass&price=5&" + site.locker.units().stream().map(unit -> "unit=" + unit.id()).collect(Collectors.joining("&")));
        assertEquals(200, none.status(), none.text());
        assertTrue(none.text().contains("Short: "), none.text());
        assertTrue(none.page().page().select("form#take-change").isEmpty(), "there is nothing to take");
        LockerSite.Got wrong = site.post(AT + "/replan", Map.of("unit", "yard-vocal", "price", "much"));
        assertEquals(303, wrong.status(), wrong.text());
        assertEquals(400, site.get(wrong.location()).status(), "it is told what is wrong with it: " + wrong.location());
    }

    private int browser(LockerSite.Got page, String key) {
        return site.send(page, "check", Map.of(), "tick", List.of(key)).status();
    }

    @Test
    void whatFailedIsPlannedAroundAndTaken() {
        take();
        LockerSite.Got asked = site.get(AT + "/replan?seat=bass&price=50");
        assertEquals(200, asked.status(), asked.text());
        assertTrue(asked.text().contains("Untouched: Nora."), asked.text());
        LockerSite.Got taken = site.send(asked, "take-change", Map.of());
        assertEquals(303, taken.status(), taken.text());
        assertFalse(site.api("GET", "/api/sessions/barn-trio/picks", "").body().contains("\"bass\""));
        assertEquals(400, site.get(AT + "/replan?price=much").status());
    }

    @Test
    void itsUnitsAreBookedAndDoNotStandInItsOwnWay() {
        LockerSite.Got booked = site.send(planned(AT + "/plan"), "book", Map.of());
        assertEquals(303, booked.status(), booked.text());
        assertTrue(booked.location().startsWith("/locker/bookings/"), booked.location());
        LockerSite.Got again = planned(AT + "/plan");
        assertFalse(again.page().page().select(".at-seat").isEmpty(), again.text());
        assertTrue(again.text().contains("What is booked for it"), again.text());
    }

    @Test
    void whatBecameOfItIsNoted() {
        take();
        LockerSite.Got recall = site.get(AT + "/recall");
        String key = recall.page().page().select("input[type=radio]").first().attr("name").replace(".kept", "");
        LockerSite.Got wrong = site.send(recall, "recall", Map.of(key + ".kept", "kept", key + ".to", "a hand lower"));
        assertEquals(400, wrong.status());
        assertTrue(wrong.text().contains("it was kept, and yet something else is said"), wrong.text());
        LockerSite.Got noted = site.send(recall, "recall", Map.of(key + ".kept", "changed", key + ".to", "a hand lower", key + ".why", "less key noise"));
        assertEquals(303, noted.status(), noted.text());
        assertEquals("less key noise", site.locker.marks().of("barn-trio").get(0).why());
        assertTrue(site.get(AT + "/recall").text().contains("1 of "), "what is noted is said");
    }

    @Test
    void listsAreTakenByPrograms() {
        take();
        HttpResponse<String> csv = site.api("GET", AT + "/sheets/input.csv", "");
        assertEquals("text/csv;charset=utf-8", csv.headers().firstValue("Content-Type").orElse("").replace(" ", "").toLowerCase(java.util.Locale.ROOT));
        assertTrue(csv.body().startsWith("number,channel,"), csv.body());
        assertTrue(site.api("GET", AT + "/sheets/packing.json", "").body().contains("\"places\":["), "by place");
        assertEquals(404, site.get(AT + "/sheets/nosuch").status());
    }

    @Test
    void aSessionThereIsNotIsSaidOnAPage() {
        LockerSite.Got none = site.get("/sessions/nosuch/plan");
        assertEquals(404, none.status());
        assertTrue(none.text().contains("There is no session"), none.text());
    }
}
