package pairwright.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;
import pairwright.acoustics.OctaveCurve;
import pairwright.advice.KnowledgeStore;
import pairwright.drawing.Reader;
import pairwright.lab.Handout;
import pairwright.lab.Item;
import pairwright.lab.Shown;
import pairwright.model.Catalogue;
import pairwright.session.Floor;
import pairwright.session.LineUp;
import pairwright.session.Seat;

/** Whatever a kind of exercise shows and asks is on its page, and read back from its form. */
class ExerciseViewsTest {
    private static final Catalogue CATALOGUE = KnowledgeStore.builtIn().current().catalogue();
    private static final Html HTML = new Html(new Assets());
    private static final Visit VISIT = new Visit("/lab", Map.of(), Reader.METRIC);
    private static final List<Item.Opt> THREE = Item.Opt.lettered(List.of("closer", "lower", "turned away from the kit"));
    private static final Item ONE = new Item.OneOf("one", "Which first?", THREE);
    private static final Item SOME = new Item.SomeOf("some", "Which two?", THREE, 2);
    private static final Item ANY = new Item.SomeOf("any", "Which at all?", THREE, null);
    private static final Item ORDER = new Item.InOrder("order", "In which order?", THREE);
    private static final Item AMOUNT = new Item.Amount("delay", "How much later?", "ms", 0.1, 100);
    private static final Item SPOT = new Item.Spot("spot", "Where does it stand?", 3, 0, 8, 0, 6);
    private static final List<Item> ALL = List.of(ONE, SOME, ANY, ORDER, AMOUNT, SPOT);
    private static final Handout HANDOUT = new Handout("Everything", List.of("Ask whoever runs the room."), List.of("A sextet at the barn."), List.of(
            new Shown.Table("What there is", List.of("Unit", "Power"), List.of(List.of("Ribbon <1>", "off"))),
            new Shown.Curves("Three tones", List.of(new Shown.Curve("Curve A", OctaveCurve.of(1, 2, 3, 4, 5, 4, 3, 2, 1)), new Shown.Curve("Curve B", OctaveCurve.ZERO))),
            new Shown.FromAbove("The barn", new LineUp("Barn", new Floor(null, 8, 6, 3, 0.6),
                    List.of(new Seat("tenor", "Ada", "tenor-saxophone", 2, 3, 180, null, null, null, null, null, true, null, false)), null, null, null, null, null, 1, null))), ALL);

    private static AnswerForm read(Map<String, List<String>> sent, Locale locale) {
        return AnswerForm.read(ALL, name -> sent.getOrDefault(name, List.of()), new Reader(false, locale));
    }

    private static Document page(AnswerForm form) {
        ExerciseView view = ExerciseViews.of(CATALOGUE, VISIT, "x-").view(HANDOUT, form);
        return Jsoup.parse(HTML.fill("lab/shown.jte", Map.of("exercise", view)) + HTML.fill("lab/questions.jte", Map.of("exercise", view))
                + HTML.fill("lab/on-paper.jte", Map.of("exercise", view)));
    }

    @Test
    void cautionsComeFirstThenTheSituationThenWhatIsShownThenWhatIsAsked() {
        String text = page(AnswerForm.blank()).text();
        List<Integer> places = List.of("Ask whoever", "A sextet", "What there is", "Three tones", "The barn", "Which first?", "Where does it stand?").stream().map(text::indexOf).toList();
        assertEquals(places.stream().sorted().toList(), places, text);
        assertTrue(places.get(0) >= 0, text);
    }

    @Test
    void everyPictureSaysWhatItShowsAndTablesHaveTheirHeadings() {
        Document page = page(AnswerForm.blank());
        assertEquals(List.of("Unit", "Power"), page.select("#x-picture-1 thead th[scope=col]").eachText());
        assertEquals("Ribbon <1>", page.select("#x-picture-1 tbody th[scope=row]").text());
        assertTrue(page.select("#x-picture-2 svg desc").text().contains("Curve A"));
        assertEquals(List.of("Curve A, dB", "Curve B, dB"), page.select("#x-picture-2 table.octaves tbody th").eachText());
        assertTrue(page.select("#x-picture-3 svg desc").text().contains("2 m from the left wall, 3 m from the front"), page.select("#x-picture-3 svg desc").text());
        assertEquals("x-picture-3", page.select("#x-ask-6").attr("data-spot"));
    }

    @Test
    void everyControlHasItsLabelAndNoTwoThingsOneId() {
        Document page = page(AnswerForm.blank());
        page.select("input, select").forEach(control -> assertEquals(1, page.select("label[for=" + control.id() + "]").size(), control.toString()));
        List<String> ids = page.select("[id]").eachAttr("id");
        assertEquals(Set.copyOf(ids).size(), ids.size(), ids.toString());
        assertEquals(6, page.select("fieldset > legend").size());
    }

    @Test
    void onPaperEverythingAskedHasRoomForItsAnswerAndNothingToPress() {
        Document page = Jsoup.parse(HTML.fill("lab/on-paper.jte", Map.of("exercise", ExerciseViews.of(CATALOGUE, VISIT, "x-").view(HANDOUT, AnswerForm.blank()))));
        assertTrue(page.select("input, select, button, form, [id]").isEmpty(), page.html());
        assertEquals(ALL.stream().map(Item::asks).toList(), page.select(".on-paper > li > .paper-asks").eachText());
        assertEquals(9, page.select(".box").size());
        assertEquals(3 + 1 + 3, page.select(".lab-blank").size());
    }

    @Test
    void whatWasFilledInIsReadAsItIsAnsweredAndStandsThereAgain() {
        AnswerForm form = read(Map.of("a.one", List.of("b"), "a.some", List.of("a", "c"), "a.order.a", List.of("2"), "a.order.b", List.of("3"), "a.order.c", List.of("1"),
                "a.delay", List.of("2,9 ms"), "a.spot.x", List.of("250 cm"), "a.spot.y", List.of("3"), "a.spot.aim", List.of("90\u00b0")), Locale.GERMANY);
        assertEquals(Map.of(), form.faults());
        assertEquals(Map.of("one", List.of("b"), "some", List.of("a", "c"), "order", List.of("c", "a", "b"), "delay", List.of("2,9 ms"), "spot", List.of("2.5", "3.0", "90.0")), form.answer().given());
        Document page = page(form);
        assertEquals(List.of("b", "a", "c"), page.select("input[checked]").eachAttr("value"));
        assertEquals(List.of("2", "3", "1"), page.select("option[selected]").eachAttr("value"));
        assertEquals(List.of("2,9 ms", "250 cm", "3", "90\u00b0"), page.select("input[type=text]").eachAttr("value"));
    }

    @Test
    void whatCannotBeAnAnswerIsToldAtItsQuestionAllAtOnce() {
        AnswerForm form = read(Map.of("a.one", List.of("z"), "a.some", List.of("a", "b", "c"), "a.order.a", List.of("1"), "a.order.b", List.of("1"),
                "a.delay", List.of("2.9 kg"), "a.spot.x", List.of("9"), "a.spot.y", List.of("far")), Locale.UK);
        assertEquals(Set.of("one", "some", "order", "delay", "spot"), form.faults().keySet());
        assertTrue(form.answer().given().isEmpty());
        assertEquals("1 of 3 have no place yet. Give each a place from 1 to 3. Place 1 is given 2 times. Give it once.", form.faults().get("order"));
        assertTrue(form.faults().get("spot").contains("\"9\" is not from 0 to 8 m") && form.faults().get("spot").contains("\"far\" is no number"), form.faults().get("spot"));
        Document page = page(form);
        assertEquals(5, page.select("fieldset > .fault").size());
        assertEquals(Set.of("x-ask-1-fault", "x-ask-2-hint x-ask-2-fault", "x-ask-4-hint x-ask-4-fault", "x-ask-5-fault", "x-ask-6-hint x-ask-6-fault"),
                page.select("fieldset:has(.fault)").eachAttr("aria-describedby").stream().collect(Collectors.toSet()));
    }

    @Test
    void aPlaceWithoutADirectionIsNoneYetAndWhatIsLeftOutIsNoFault() {
        assertTrue(read(Map.of("a.spot.x", List.of("1"), "a.spot.y", List.of("1")), Locale.UK).faults().get("spot").contains("all three"));
        assertTrue(read(Map.of(), Locale.UK).isBlank());
        assertEquals(Map.of(), read(Map.of(), Locale.UK).faults());
        assertFalse(read(Map.of("a.any", List.of("a", "b", "c")), Locale.UK).isBlank());
    }

    @Test
    void aPlaceThatIsGivenIsNotAskedAndGoesAlongWithTheDirection() {
        Item turn = new Item.Spot("turn", "Where does it look?", 3, 2.35, 2.35, 1, 1);
        Handout handout = new Handout("Turn it", List.of(), List.of(), HANDOUT.shown(), List.of(turn));
        AnswerForm blank = AnswerForm.read(List.of(turn), name -> name.equals("a.turn.aim") ? List.of() : List.of("7"), Reader.METRIC);
        assertTrue(blank.isBlank(), "what is given is nothing that was filled in");
        AnswerForm form = AnswerForm.read(List.of(turn), name -> name.equals("a.turn.aim") ? List.of("-30") : List.of("7"), Reader.METRIC);
        assertEquals(Map.of("turn", List.of("2.35", "1.0", "-30.0")), form.answer().given());
        Document page = Jsoup.parse(HTML.fill("lab/questions.jte", Map.of("exercise", ExerciseViews.of(CATALOGUE, VISIT, "").view(handout, form))));
        assertEquals(List.of("2.35", "1.0"), page.select("input[type=hidden]").eachAttr("value"));
        assertEquals(List.of("-30"), page.select("input[type=text]").eachAttr("value"));
    }
}
