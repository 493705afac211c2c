package pairwright.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Consumer;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pairwright.advice.Knowledge;
import pairwright.advice.KnowledgeStore;
import pairwright.drawing.Reader;
import pairwright.locker.Role;
import pairwright.session.Arrival;
import pairwright.session.Change;
import pairwright.session.Gear;
import pairwright.session.Hears;
import pairwright.session.Line;
import pairwright.session.LineUp;
import pairwright.session.Lost;
import pairwright.session.Picks;
import pairwright.session.Plan;
import pairwright.session.PlanDesk;
import pairwright.session.Planned;
import pairwright.session.Progress;
import pairwright.session.SetUpTime;
import pairwright.session.SmallPlan;
import pairwright.session.StandKind;
import pairwright.session.allocation.NotDecided;

/** What the pages of a plan say of a plan that is known. */
class PlanPagesTest {
    private static final Html HTML = new Html(new Assets(), true);
    private static final Knowledge KNOWN = KnowledgeStore.builtIn().current();
    private static final Reader GERMAN_INCHES = new Reader(true, Locale.GERMANY);

    /** Gives the same at once. */
    private record Fixed(Planned planned, Plan rebuilt) implements PlanDesk.Planning {
        @Override
        public Planned plan(LineUp lineUp, Gear gear, Consumer<Progress> progress) {
            if (planned == null) {
                throw new NotDecided();
            }
            return planned;
        }

        @Override
        public Plan rebuilt(LineUp lineUp, Gear gear, Picks picks) {
            if (rebuilt == null) {
                throw new IllegalArgumentException("Barn ribbon 1 is in repair");
            }
            return rebuilt;
        }

        @Override
        public Change again(LineUp lineUp, Gear gear, Picks before, Lost lost, double pricePoints, Consumer<Progress> progress) {
            throw new IllegalStateException("nothing is planned anew here");
        }
    }

    private static AtPlan at(PlanDesk.Planning fixed, Picks taken, Role role, Reader reader, String path, String... query) {
        Map<String, List<String>> asked = new TreeMap<>();
        for (int i = 0; i < query.length; i += 2) {
            asked.put(query[i], List.of(query[i + 1]));
        }
        PlanDesk desk = new PlanDesk(() -> List.of(1), fixed);
        LineUp lineUp = SmallPlan.lineUp();
        PlanDesk.State state = desk.state("s", lineUp, Gear.ANYTHING);
        while (state.planned() == null && state.undecided() == null) {
            Thread.onSpinWait();
            state = desk.state("s", lineUp, Gear.ANYTHING);
        }
        return new AtPlan(new AtLocker(HTML, KNOWN, null, new Visit("/sessions/s/" + path, asked, reader), role, Clock.fixed(Instant.parse("2027-03-10T09:00:00Z"), ZoneOffset.UTC)),
                "s", lineUp, Gear.ANYTHING, taken, null, desk);
    }

    private static AtPlan engineer(String path, String... query) {
        return at(new Fixed(SmallPlan.planned(), SmallPlan.plan(1)), null, Role.ENGINEER, Reader.METRIC, path, query);
    }

    private static Document page(Page page) {
        assertEquals(200, page.status());
        return whole(page);
    }

    private static Document whole(Page page) {
        Document found = Jsoup.parse(page.content());
        assertEquals(1, found.select("h1").size());
        assertEquals(List.of(), found.select("[style], main script").eachText(), "the policy forbids them");
        List<String> ids = found.select("[id]").eachAttr("id");
        assertEquals(ids.stream().distinct().toList(), ids, "no id twice");
        return found;
    }

    @Test
    void plansStandSideBySideAndSayWhetherABetterOneIsPossible() {
        Document page = page(PlanPage.of(engineer("plan")));
        double first = SmallPlan.plan(1).score();
        List<String> proven = page.select(".plan-cards .proven").eachText();
        assertEquals("Nothing better is possible.", proven.get(0));
        assertEquals(first - SmallPlan.plan(2).score(), Double.parseDouble(proven.get(1).replace(" points less than plan 1.", "")), 0.0051);
        Planned open = new Planned(List.of(SmallPlan.plan(1, 1.13)), List.of(), List.of(), List.of(), List.of(), "r", "c");
        Document found = page(PlanPage.of(at(new Fixed(open, null), null, Role.READER, Reader.METRIC, "plan")));
        assertEquals("The best that was found: no other can be better by more than 1.2 points.", found.select(".proven").text());
        assertFalse(page.select(".plan-cards").text().contains("best that was found"), "one of the two, not both");
        assertEquals("Plan 1", page.select(".plan-cards .current h2 a").text());
        assertTrue(page.select(".plan-cards li").get(1).text().contains("Without the violin."), page.select(".plan-cards").text());
        assertEquals("Plan 2", page(PlanPage.of(engineer("plan", "plan", "2"))).select("#chosen-name").text());
        assertTrue(page(PlanPage.of(engineer("plan", "plan", "2"))).text().contains("Violin: nice to have"));
    }

    @Test
    void whereThereAreFewerPlansOrNothingIsWorthMovingThePageSaysWhy() {
        Planned one = new Planned(List.of(SmallPlan.plan(1)), List.of(), List.of(), List.of(), List.of(), "r", "c");
        Document page = page(PlanPage.of(at(new Fixed(one, null), null, Role.READER, Reader.METRIC, "plan")));
        assertEquals("3 plans were asked for, and 1 is there: with what there is, no other was found that has other types or techniques at 2 of the 4 seats or more.",
                page.select(".no-more").text());
        assertEquals("Nothing is worth moving: no other place and no turn gains enough for what it asks of the players.", page.select(".no-moves").text());
        Document three = page(PlanPage.of(engineer("plan")));
        assertEquals(0, three.select(".no-more, .no-moves").size());
        assertEquals(1, three.select(".seat-moves li").size());
    }

    @Test
    void cautionsComeFirstAndDangersAreNeverFolded() {
        Document page = page(PlanPage.of(engineer("plan")));
        Element chosen = page.selectFirst(".chosen");
        List<Element> all = chosen.select(".cautions, article, form");
        assertTrue(all.get(0).hasClass("cautions"), "before anything to press and before any seat");
        assertTrue(all.get(0).select("li.danger").size() > 1 && all.get(0).child(0).hasClass("danger"));
        assertEquals(0, page.select("details .danger, details .care").size());
        Plan plan = SmallPlan.plan(1);
        long dangers = plan.served().stream().flatMap(served -> served.option().cautions().stream()).filter(caution -> caution.severity().id().equals("danger"))
                .map(caution -> caution.rule() + caution.says()).distinct().count() + 1;
        assertEquals(dangers, chosen.select("li.danger").size());
    }

    @Test
    void whatIsOnlyGoodToKnowStandsBesideItsLineAndDoesNotBuryTheRest() {
        for (Document page : List.of(page(PlanPage.of(engineer("plan"))), page(PlanSheets.of(engineer("sheets/cautions"), "cautions")))) {
            assertEquals(0, page.select(".chosen > .cautions .note, .leaf > .cautions .note").size());
            assertFalse(page.select(".chosen > .cautions .danger, .leaf > .cautions .danger").isEmpty());
        }
        Document check = page(CheckPage.of(engineer("check"), Map.of()));
        long notes = SmallPlan.plan(1).served().stream().flatMap(served -> served.option().mics().size() == 1 ? served.option().cautions().stream() : java.util.stream.Stream.empty())
                .filter(caution -> caution.severity().id().equals("note")).count();
        assertTrue(notes > 0 && check.select(".channel .note").size() >= notes, "folded, not left out");
        check.select("details.more-notes").forEach(folded -> assertEquals(folded.select("li").size() + " notes", folded.selectFirst("summary").ownText()));
    }

    @Test
    void theStandSheetSaysHowLongEachLeadIsAndCountsThem() {
        Document page = page(PlanSheets.of(engineer("sheets/stands"), "stands"));
        List<String> leads = page.select("td[data-label=Lead]").eachText();
        assertEquals(SmallPlan.plan(1).lines().size(), leads.size());
        assertTrue(leads.stream().allMatch(lead -> lead.matches("(\\d+ × )?\\d+ m( and \\d+ m)*")), leads.toString());
        assertTrue(page.text().contains("Nobody said where the box is: taken in the middle of the front wall"), page.text());
        PackingList list = PackingList.of(engineer("sheets/packing"), SmallPlan.plan(1));
        int counted = list.counted().stream().filter(one -> one.what().startsWith("Microphone leads, ")).mapToInt(PackingList.Counted::count).sum();
        assertTrue(counted >= SmallPlan.plan(1).lines().size(), list.counted().toString());
    }

    @Test
    void theReasonsAddUpToTheScore() {
        Plan plan = SmallPlan.plan(1);
        Document page = page(PlanPage.of(engineer("plan")));
        Element score = page.selectFirst("section[aria-labelledby=score-name]");
        double sum = score.select(".points").eachText().stream().mapToDouble(text -> Double.parseDouble(text.replace('\u2212', '-'))).sum();
        assertEquals(plan.score(), sum, 0.011);
        assertEquals(Points.score(plan.score(), Reader.METRIC), score.select(".score-sum").text());
    }

    @Test
    void aReaderSeesAllOfItAndHasNothingToPress() {
        AtPlan reader = at(new Fixed(SmallPlan.planned(), SmallPlan.plan(1)), null, Role.READER, Reader.METRIC, "plan");
        Document page = page(PlanPage.of(reader));
        assertEquals(4, page.select(".at-seat").size());
        assertEquals(0, page.select("main form").size());
        Document check = page(CheckPage.of(reader, Map.of()));
        assertEquals(0, check.select("button[type=submit], input:not([disabled])").size());
    }

    @Test
    void whatALineHearsWorstIsHeldAgainstRecordings() {
        Document page = page(BleedPage.of(at(new Fixed(SmallPlan.planned(), null), null, Role.ENGINEER, Reader.METRIC, "bleed")));
        List<String> links = page.select(".heard-words a").eachAttr("href");
        assertFalse(links.isEmpty());
        Hears worst = SmallPlan.plan(1).bleed().stream().filter(hears -> hears.line() == SmallPlan.plan(1).bleed().get(0).line())
                .min(Comparator.comparingDouble(Hears::separationDb)).orElseThrow();
        String first = URLDecoder.decode(links.get(0), StandardCharsets.UTF_8);
        assertTrue(first.startsWith("/listen?what=bleed&of=" + worst.line() + " "), first);
        String[] octaves = first.replaceFirst(".*expectedOctavesDb=", "").split(", ");
        assertEquals(9, octaves.length, first);
        for (int band = 0; band < octaves.length; band++) {
            assertEquals(worst.octavesDb().at(band), Double.parseDouble(octaves[band]), 0.051, first);
        }
    }

    @Test
    void whatIsShortIsSaidWithTheWaysOut() {
        Document page = page(PlanPage.of(at(new Fixed(SmallPlan.impossible(), null), null, Role.ENGINEER, Reader.METRIC, "plan")));
        assertEquals(List.of("Boom stand", "4", "2", "Nora, Drum kit"), page.select("tbody tr > *").eachText());
        assertEquals("borrow Borrow 2 boom stands. The plan then has 41.20 points.", page.select(".ways-out li").first().text());
        Page bleed = BleedPage.of(at(new Fixed(SmallPlan.impossible(), null), null, Role.ENGINEER, Reader.METRIC, "bleed"));
        assertTrue(whole(bleed).text().contains("No plan is possible as it stands"));
    }

    @Test
    void aSearchThatCameToItsLimitRestsOnThePageAndCanBeBegunAnew() {
        Fixed open = new Fixed(null, null);
        for (PlanPageOf one : List.<PlanPageOf>of(PlanPage::of, BleedPage::of)) {
            Document page = page(one.of(at(open, null, Role.ENGINEER, Reader.METRIC, "plan")));
            assertTrue(page.select(".fault").text().startsWith("No plan was found in the time there is"), page.text());
            assertEquals("/sessions/s/plan/again", page.select("form.search-again").attr("action"));
            assertEquals(0, page.select("#planned[data-again], progress").size(), "it does not look again by itself");
        }
        assertEquals(0, page(PlanPage.of(at(open, null, Role.READER, Reader.METRIC, "plan"))).select("form.search-again").size());
    }

    private interface PlanPageOf {
        Page of(AtPlan at);
    }

    @Test
    void whatTheTimeToSetUpCostsIsSaidWithTheWaysOut() {
        Planned.TimeShort time = new Planned.TimeShort(55, 40, 3.5, List.of("Nothing stands for the violin."), List.of(new Planned.WayOut("borrow", "Begin 15 min earlier.", 3, 44.7)));
        Planned pressed = new Planned(List.of(SmallPlan.plan(1)), List.of(), List.of(), List.of(), List.of(), "r", "c", time);
        Document page = page(PlanPage.of(at(new Fixed(pressed, null), null, Role.READER, Reader.METRIC, "plan")));
        assertTrue(page.select("section[aria-labelledby=time-name]").text().contains("With 55 min to set up in place of 40 the best plan would be worth 3.50 points more. Nothing stands for the violin."),
                page.select("section[aria-labelledby=time-name]").text());
        assertEquals("borrow Begin 15 min earlier. The plan then has 44.70 points.", page.select(".ways-out li").text());
        assertTrue(page(PlanPage.of(engineer("plan"))).select("#time-name").isEmpty(), "nothing is short");
    }

    @Test
    void howLongSettingUpTakesStandsWithWhatIsUsedAndOnTheSheetOfStands() {
        int minutes = SmallPlan.plan(1).lines().size() * 5;
        String says = minutes + " of 80 min of work (40 min with 2 pairs of hands)";
        assertTrue(page(PlanPage.of(engineer("plan"))).select("dl.used").text().contains("Setting up takes about " + says), page(PlanPage.of(engineer("plan"))).select("dl.used").text());
        assertTrue(StandSheet.of(engineer("sheets"), SmallPlan.plan(1)).leads().contains("Setting all of it up takes about " + says + "."));
    }

    @Test
    void whatNoLockerCountsStandsOnTheSheetOfStandsAsWell() {
        Plan plan = SmallPlan.plan(1);
        int second = plan.lines().stream().filter(line -> line.mic() == 2).findFirst().orElseThrow().number();
        List<Line> lines = plan.lines().stream().map(line -> line.number() == second - 1 ? held(line, StandKind.OVERHEAD, null)
                : line.number() == second ? held(line, StandKind.OVERHEAD, second - 1) : held(line, StandKind.BOOM, null)).toList();
        Plan tall = new Plan(plan.rank(), plan.score(), plan.proven(), plan.bound(), plan.served(), plan.leftOut(), lines, plan.bleed(), plan.timing(), plan.supplies(), plan.counts(),
                plan.setUp(), plan.patch(), plan.reasons(), plan.cautions());
        String besides = StandSheet.of(engineer("sheets"), tall).leads().stream().filter(says -> says.startsWith("Besides: ")).findFirst().orElseThrow();
        assertTrue(besides.contains("1 \u00d7 sandbag (line " + (second - 1) + ")"), besides);
        assertTrue(besides.contains("1 \u00d7 bar for two microphones on one stand (line " + second + ")"), besides);
        assertTrue(besides.endsWith("1 screen for the floor."), besides);
    }

    private static Line held(Line line, StandKind kind, Integer with) {
        return new Line(line.number(), line.channel(), line.channelLabel(), line.bank(), line.unit(), line.seat(), line.name(), line.source(), line.mic(), line.placement(), line.spot(),
                line.stand(), line.standLabel(), kind, line.standRatio(), with, line.booster(), line.boosterGainDb(), line.phantom(), line.phantomWanted(), line.currentMa(),
                line.gainDb(), line.highPassHz(), line.between(), line.cautions());
    }

    @Test
    void lostMinutesArePlannedWithAndAreNoMoreThanThereWere() {
        Document page = page(RePlanPage.of(engineer("replan", "minutes", "30"), (before, lost, pricePoints) -> {
            assertEquals(30, lost.minutes());
            return new Change(SmallPlan.plan(2), List.of(), 0, List.of("bass"), 1.25, 40, new SetUpTime(10, 2));
        }));
        assertEquals("30", page.select("form.replan input[name=minutes]").attr("value"));
        assertEquals("30", page.select("form#take-change input[name=minutes]").attr("value"));
        assertTrue(page.select("section.change").text().contains("Time to set up 10 min with 2 pairs of hands"), page.select("section.change").text());
        for (String minutes : List.of("41", "many", "-3")) {
            Page wrong = RePlanPage.of(engineer("replan", "minutes", minutes), (before, lost, pricePoints) -> {
                throw new AssertionError("nothing is planned for " + minutes);
            });
            assertEquals(400, wrong.status(), minutes);
            assertTrue(whole(wrong).select(".fault").text().contains(minutes), whole(wrong).select(".fault").text());
        }
    }

    /** Finds plans, and comes to its limit with whatever was taken. */
    private static final class Undecided implements PlanDesk.Planning {
        @Override
        public Planned plan(LineUp lineUp, Gear gear, Consumer<Progress> progress) {
            return SmallPlan.planned();
        }

        @Override
        public Plan rebuilt(LineUp lineUp, Gear gear, Picks picks) {
            throw new NotDecided();
        }

        @Override
        public Change again(LineUp lineUp, Gear gear, Picks before, Lost lost, double pricePoints, Consumer<Progress> progress) {
            throw new NotDecided();
        }
    }

    @Test
    void whatCameToItsLimitIsSaidOnThePageInWords() {
        AtPlan check = at(new Undecided(), Picks.of(SmallPlan.plan(1)), Role.ENGINEER, Reader.METRIC, "check");
        assertTrue(page(CheckPage.of(check, Map.of())).select(".fault").text().startsWith("No plan was found in the time there is for it"), "not a fault of the page");
        AtPlan again = at(new Undecided(), Picks.of(SmallPlan.plan(1)), Role.ENGINEER, Reader.METRIC, "replan", "seat", "bass");
        Document replan = page(RePlanPage.of(again, (before, lost, pricePoints) -> again.desk().again(again.lineUp(), again.gear(), before, lost, pricePoints)));
        assertTrue(replan.select(".fault").text().startsWith("No plan was found in the time there is for it"), replan.text());
        assertFalse(replan.select("form.replan").isEmpty(), "something else can be asked");
    }

    @Test
    void aPlanThatNoLongerHoldsSaysWhich() {
        Page gone = BleedPage.of(at(new Fixed(SmallPlan.planned(), null), Picks.of(SmallPlan.plan(1)), Role.ENGINEER, Reader.METRIC, "bleed"));
        assertEquals(409, gone.status());
        assertTrue(whole(gone).select(".fault").text().contains("Barn ribbon 1 is in repair."), gone.content());
    }

    @Test
    void aPlanThereIsNotIsAFaultWithItsValue() {
        for (Map.Entry<String, String> wrong : Map.of("7", "There is no plan 7. Give 1 to 3.", "<b>", "\u201c<b>\u201d is no plan.", "0", "\u201c0\u201d is no plan.").entrySet()) {
            Page page = PlanPage.of(engineer("plan", "plan", wrong.getKey()));
            assertEquals(400, page.status(), wrong.getKey());
            assertTrue(whole(page).select(".fault").text().startsWith(wrong.getValue()), page.content());
        }
    }

    @ParameterizedTest
    @CsvSource({"-0.6, heard-4", "-0.4, heard-3", "0, heard-3", "5.4, heard-3", "5.6, heard-2", "11.49, heard-2", "11.5, heard-1", "17.6, heard-0", "60, heard-0"})
    void aCellHasTheShadeOfTheNumberItShows(double separationDb, String shade) {
        assertEquals(shade, BleedPage.shade(false, separationDb));
        assertEquals("heard-beside", BleedPage.shade(true, separationDb), "of the side of a mid-side pair nothing is alarming");
    }

    @Test
    void theMatrixSaysEveryNumberOfThePlan() {
        Plan plan = SmallPlan.plan(1);
        Document page = page(BleedPage.of(engineer("bleed")));
        Element table = page.selectFirst("table.bleed");
        assertEquals(List.of("Line", "Nora", "Drum kit", "Abe", "Violin"), table.select("thead th[scope=col]").eachText());
        List<Line> hearing = plan.lines().stream().filter(line -> plan.bleed().stream().anyMatch(hears -> hears.line() == line.number())).toList();
        assertEquals(hearing.size(), table.select("tbody th[scope=row]").size());
        assertEquals(plan.bleed().size(), table.select("td[class^=heard]").size());
        assertEquals(hearing.size(), table.select("td.own").size());
        table.select("[aria-hidden]").remove();
        assertTrue(table.select("td[class^=heard]").stream().allMatch(cell -> cell.text().matches("\u2212?\\d+ dB, most around .*Hz")), table.text());
        assertEquals(1, page.select(".scroll[tabindex=0][role=region][aria-label]").size());
        assertEquals(hearing.size(), page.select(".heard-words dt").size());
    }

    @ParameterizedTest
    @CsvSource({"44100, 131", "48000, 143", "96000, 285"})
    void aDelayIsGivenInSamplesOfTheRateThatWasChosen(String rate, String samples) {
        Document page = page(TimingPage.of(engineer("timing", "rate", rate)));
        assertEquals("2.97", page.select("table.align td[data-label=ms]").first().text());
        assertEquals(samples, page.select("table.align td[data-label=Samples]").first().text(), "2.97 ms");
        assertEquals("102 cm", page.select("table.align td[data-label='Farther by']").first().text());
        assertEquals(List.of("align", "watch", "leave"), page.select("table.timing").stream().map(table -> table.className().replaceAll(".* ", "")).toList());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"true | 0 | 1 | Both hear it at one moment, on purpose: there is nothing to align.",
        "true | 12 | 1.01 | They differ on purpose; summed to one they ripple by 12 dB; the second is as far as the first.",
        "false | 3.4 | 6 | The sum ripples by 3.4 dB; the second is 6 times as far."})
    void whatIsLeftSaysWhyInWordsThatMeanSomething(boolean own, double rippleDb, double ratio, String expected) {
        Arrival left = new Arrival("kit", "drum-kit", List.of(2, 3), own, 0.1, 0.3, rippleDb == 0 ? null : Double.valueOf(1700), 0, rippleDb, ratio, false, Arrival.Treat.LEAVE, List.of());
        assertEquals(expected, TimingPage.why(engineer("timing"), left));
    }

    @Test
    void aRateThereIsNotIsAFault() {
        Page page = TimingPage.of(engineer("timing", "rate", "48001"));
        assertEquals(400, page.status());
        assertTrue(whole(page).select(".fault").text().contains("\u201c48001\u201d is no sample rate"));
    }

    @Test
    void eachChannelHasItsBoxesAndTicksSayWho() {
        AtPlan at = engineer("check");
        Document page = page(CheckPage.of(at, Map.of()));
        int lines = SmallPlan.plan(1).lines().size();
        assertEquals(lines, page.select(".channel").size());
        assertEquals(3 * lines + 3, page.select("input[name=tick]").size());
        assertEquals(0, page.select("input[name=tick][checked]").size());
        String key = page.select(".channel input[name=tick]").first().val();
        Map<String, AtPlan.Tick> ticks = Map.of(key, new AtPlan.Tick(true, "Ada", OffsetDateTime.parse("2027-03-10T08:30:00Z")), "of-another-plan",
                new AtPlan.Tick(true, "Ben", OffsetDateTime.parse("2027-03-10T08:30:00Z")));
        Document ticked = page(CheckPage.of(at, ticks));
        assertEquals(List.of(key), ticked.select("input[name=tick][checked]").eachAttr("value"));
        assertEquals("Ada, 08:30", ticked.select(".channel .tick-who").first().text());
        assertEquals("1", ticked.select("#check-count").text());
        assertEquals(new CheckPage.Ticked("", Map.of(key, "Ada, 08:30", "of-another-plan", "Ben, 08:30")), CheckPage.ticked(at, ticks));
    }

    @Test
    void aFormOfTicksChangesWhatItChangedAndNothingElse() {
        Map<String, Boolean> changed = CheckPage.changed(new Sent(Map.of("was", List.of("a", "b"), "tick", List.of("b", "c"))));
        assertEquals(Map.of("a", false, "c", true), changed);
    }

    @Test
    void allSheetsTogetherSayWhatEachSaysAlone() {
        Document all = page(PlanSheets.of(engineer("sheets/all"), "all"));
        for (String name : List.of("input", "cautions", "floor", "set-ups", "tables", "stands", "packing")) {
            Document one = page(PlanSheets.of(engineer("sheets/" + name), name));
            assertFalse(one.select(".leaf").isEmpty(), name);
            one.select(".leaf table tbody").forEach(body -> assertTrue(all.text().contains(body.text()), name));
        }
        assertEquals(4, all.select(".set-up-leaf").size());
        assertNull(PlanSheets.of(engineer("sheets/nosuch"), "nosuch"));
    }

    @Test
    void aListForProgramsIsInMetresWhoeverReadsAndHoldsNoFormula() {
        AtPlan inches = at(new Fixed(SmallPlan.planned(), null), null, Role.READER, GERMAN_INCHES, "sheets/input.csv");
        String csv = InputList.of(inches, SmallPlan.plan(1)).csv();
        String[] rows = csv.split("\r\n");
        assertEquals(1 + SmallPlan.plan(1).lines().size(), rows.length);
        assertTrue(rows[0].startsWith("number,channel,bank,name,"), rows[0]);
        assertTrue(rows[1].startsWith("1,Rack A 1,Rack A,Nora 1,Nora,Tenor saxophone,barn-"), rows[1]);
        assertEquals("'=1+1", Csv.text("=1+1"));
        assertEquals("-3.5", Csv.text(-3.5));
        assertEquals("a,\"b \"\"c\"\", d\"\r\n1,\r\n", Csv.of(List.of("a", "b \"c\", d"), List.of(List.of("1", ""))));
    }

    @Test
    void aPackingListNamesEveryUnitOnce() {
        PackingList list = PackingList.of(engineer("sheets/packing"), SmallPlan.plan(1));
        List<String> units = list.places().stream().flatMap(place -> place.things().stream()).map(PackingList.Thing::unit).toList();
        assertEquals(units.stream().distinct().toList(), units);
        assertEquals(pairwright.session.Booked.units(Picks.of(SmallPlan.plan(1))).stream().sorted().toList(), units.stream().sorted().toList());
    }

    @Test
    void aChangeIsListedStepByStepAndCanBeTaken() {
        AtPlan at = engineer("replan", "unit", "barn-x", "price", "2,5");
        Document page = page(RePlanPage.of(at, (before, lost, pricePoints) -> {
            assertEquals(List.of("barn-x"), lost.units());
            assertEquals(2.5, pricePoints);
            return new Change(SmallPlan.plan(2), List.of(new Change.Step("set-up", "tenor", "Set up Loft pencil 2.", 240)), 240, List.of("bass"), 1.25, 40, null);
        }));
        assertEquals("Set up Loft pencil 2. 4 min", page.select(".change-steps li").text());
        assertTrue(page.text().contains("Untouched: Abe."));
        assertEquals(List.of("barn-x"), page.select("form#take-change input[name=unit]").eachAttr("value"));
        assertTrue(page.body().html().indexOf("change-steps") < page.body().html().indexOf("class=\"replan\""), "what is to be done stands before what was asked");
        Page wrong = RePlanPage.of(engineer("replan", "price", "much"), (before, lost, pricePoints) -> {
            throw new AssertionError("nothing is planned for a price that is none");
        });
        assertEquals(400, wrong.status());
        Page none = RePlanPage.of(engineer("replan", "seat", "kit"), (before, lost, pricePoints) -> {
            throw new IllegalStateException("No plan is left without Rack A 2");
        });
        assertEquals("No plan is left without Rack A 2.", whole(none).select(".fault").text());
    }
}
