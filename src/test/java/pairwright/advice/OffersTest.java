package pairwright.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import org.junit.jupiter.api.Test;
import pairwright.acoustics.OctaveCurve;
import pairwright.model.FromLocker;
import pairwright.model.Given;
import pairwright.model.Limits;
import pairwright.model.Neighbour;
import pairwright.model.Option;
import pairwright.model.Question;
import pairwright.model.Reason;
import pairwright.model.Source;
import pairwright.model.Stock;
import pairwright.model.Stock.Held;

/** What a plan is made of. */
class OffersTest extends LockersOfAllKinds {
    private static final String PENCIL = "small-condenser-cardioid";
    private static final List<Held> MATCHED = List.of(Stocks.mated(Stocks.unit("p1", PENCIL), "p2"), Stocks.mated(Stocks.unit("p2", PENCIL), "p1"));

    @Property(tries = 60, shrinking = ShrinkingMode.OFF)
    void aSmallerLockerOffersNothingThatALargerOneDoesNotOfferAtTheSamePoints(@ForAll("sources") Source source, @ForAll("lockers") List<Held> locker) {
        Map<String, Long> all = points(offers(source.id(), locker));
        Map<String, Long> fewer = points(offers(source.id(), locker.subList(0, locker.size() / 2)));
        assertEquals(fewer, fewer.keySet().stream().filter(all::containsKey).collect(Collectors.toMap(key -> key, all::get)));
    }

    @Property(tries = 40, shrinking = ShrinkingMode.OFF)
    void whoHasAUnitDoesNotMatter(@ForAll("sources") Source source, @ForAll("lockers") List<Held> locker) {
        List<Held> back = locker.stream().map(unit -> Stocks.out(unit, null)).toList();
        assertEquals(points(offers(source.id(), back)), points(offers(source.id(), locker)));
    }

    @Property(tries = 40, shrinking = ShrinkingMode.OFF)
    void theFirstIsTheFirstOfTheAnswer(@ForAll("sources") Source source, @ForAll("lockers") List<Held> locker) {
        List<Offer> offers = offers(source.id(), locker).all();
        List<Option> options = Stocks.advisor(Stocks.of(locker)).ask(CoverageTest.asked(source.id(), FromLocker.OWNED)).options();
        assertEquals(options.isEmpty(), offers.isEmpty());
        if (!offers.isEmpty()) {
            assertEquals(options.get(0).score(), offers.get(0).centipoints() / 100.0, 0);
        }
    }

    @Property(tries = 30, shrinking = ShrinkingMode.OFF)
    void thePointsOfTheReasonsAreThePointsOfTheOffer(@ForAll("sources") Source source, @ForAll("lockers") List<Held> locker) {
        Offers offers = offers(source.id(), locker);
        List<Offer> shown = offers.all().stream().limit(12).toList();
        List<Option> options = offers.explained(shown);
        for (int i = 0; i < shown.size(); i++) {
            long sum = options.get(i).reasons().stream().mapToLong(reason -> Math.round(reason.points() * 100)).sum();
            assertEquals(shown.get(i).centipoints(), sum, options.get(i).techniqueName());
            assertEquals(shown.get(i).centipoints() / 100.0, options.get(i).score(), 0);
            assertEquals(i + 1, options.get(i).rank());
            assertEquals(shown.get(i).mics().size(), options.get(i).mics().size());
        }
    }

    private static Offers harp(int channels, String... circumstances) {
        Question question = new Question("", "harp", List.of(), List.of(), null, List.of(), new Limits(channels, null, null, null, null, null, List.of(PENCIL, "stereo-coincident"), null), List.of(),
                List.of(circumstances), List.of(), 1, null, null);
        return Offers.of(question, Asking.KNOWLEDGE.current().catalogue(), Asking.KNOWLEDGE.current().rules(), null, null);
    }

    /** Half of a stereo pair is no microphone that makes no picture, and where there is one channel there is no other choice. */
    @Test
    void oneChannelIsWorthLessWhereStereoIsAskedForAndNoPairHearsOfThat() {
        Map<String, Long> asked = points(harp(2, "stereo"));
        Map<String, Long> not = points(harp(2));
        harp(2, "stereo").all().stream().filter(offer -> offer.mics().size() == 1).forEach(offer -> {
            boolean mono = offer.channels() == 1;
            assertEquals(mono ? -500 : 600, asked.get(key(offer)) - not.get(key(offer)), key(offer));
            assertEquals(mono, rules(offer).contains("STE-020"), key(offer));
        });
        assertTrue(harp(2, "stereo").all().stream().filter(offer -> offer.mics().size() == 2).noneMatch(offer -> rules(offer).contains("STE-020")));
        assertEquals(points(harp(1)), points(harp(1, "stereo")));
    }

    private static String key(Offer offer) {
        return offer.matchedPair() + " " + place(offer);
    }

    private static List<String> rules(Offer offer) {
        return offer.findings().stream().map(finding -> finding.rule().id()).toList();
    }

    @Test
    void aMatchedPairIsOfferedAsOneAndAsTwo() {
        Offers offers = offers("grand-piano", MATCHED);
        List<Offer> matched = offers.all().stream().filter(Offer::matchedPair).toList();
        assertFalse(matched.isEmpty());
        for (Offer one : matched) {
            Offer apart = offers.all().stream().filter(other -> !other.matchedPair() && place(other).equals(place(one))).findFirst().orElseThrow();
            assertTrue(apart.centipoints() < one.centipoints(), place(one));
            assertEquals(List.of("p1", "p2"), one.mics().get(0).units());
            assertEquals(one.mics().get(0).units(), one.mics().get(1).units());
        }
        assertTrue(offers("grand-piano", List.of(Stocks.unit("p1", PENCIL), Stocks.unit("p2", PENCIL))).all().stream().noneMatch(Offer::matchedPair));
    }

    @Test
    void aUnitWithAResponseOfItsOwnIsOfferedAsThatUnitAndInATwosomeAsItsType() {
        Held own = Stocks.measured(Stocks.unit("own", PENCIL), OctaveCurve.of(-2, 0, 0, 0, 0, 0, 1, 2, 3));
        Offers offers = offers("grand-piano", List.of(own, Stocks.unit("plain", PENCIL)));
        Set<String> singles = new HashSet<>();
        for (Offer offer : offers.all()) {
            if (offer.mics().size() == 1) {
                OfferedMic mic = offer.mics().get(0);
                singles.add(mic.unit() + " " + mic.units());
            } else {
                assertEquals(List.of(Set.of("own", "plain")), offer.mics().stream().map(mic -> Set.copyOf(mic.units())).distinct().toList());
                assertNull(offer.mics().get(0).unit());
            }
        }
        assertEquals(Set.of("own [own]", "null [plain]"), singles);
    }

    @Test
    void whatIsLostIsNotOfferedAndWhatIsOutIs() {
        Held lost = Stocks.out(Stocks.unit("p1", PENCIL), new Stock.Out("lost", null, null, null));
        assertEquals(List.of(), offers("grand-piano", List.of(lost)).all());
        assertFalse(offers("grand-piano", List.of(Stocks.out(Stocks.unit("p1", PENCIL)))).all().isEmpty());
    }

    @Test
    void anEmptyLockerOffersNothingAndNoLockerEverything() {
        assertEquals(List.of(), offers("grand-piano", List.of()).all());
        Offers everything = offers("grand-piano", null);
        assertTrue(everything.all().stream().map(offer -> offer.mics().get(0).micType().id()).distinct().count() > 10);
        assertEquals(List.of(), everything.all().get(0).mics().get(0).units());
        assertNull(everything.all().get(0).option().mics().get(0).units());
    }

    @Test
    void theLimitsOfTheQuestionHold() {
        Limits one = new Limits(1, false, null, null, null, null, null, null);
        Question question = new Question("", "grand-piano", List.of(), List.of(), null, List.of(), one, List.of(), List.of(), List.of(), 3, null, null);
        Offers offers = Offers.of(question, Asking.KNOWLEDGE.current().catalogue(), Asking.KNOWLEDGE.current().rules(), null, null);
        assertFalse(offers.all().isEmpty());
        assertTrue(offers.all().stream().allMatch(offer -> offer.channels() == 1));
        assertTrue(offers.all().stream().noneMatch(offer -> offer.mics().get(0).phantom()));
    }

    @Test
    void aPlanNamesTheUnitsAndAWrongNameIsRefused() {
        Offers offers = offers("grand-piano", MATCHED);
        Offer pair = offers.all().stream().filter(Offer::matchedPair).findFirst().orElseThrow();
        Option option = offers.explained(List.of(pair), List.of(List.of("p2", "p1"))).get(0);
        assertEquals(List.of("p2", "p1"), option.mics().stream().map(mic -> mic.units().get(0).id()).toList());
        assertEquals(List.of("p1", "p2"), option.mics().stream().map(mic -> mic.units().get(0)).map(Given::mate).toList());
        assertEquals(List.of(), pair.option().mics().get(0).units(), "not named yet");
        assertThrows(IllegalArgumentException.class, () -> offers.explained(List.of(pair), List.of(List.of("p1", "p9"))));
        assertThrows(IllegalArgumentException.class, () -> offers.explained(List.of(pair), List.of(List.of("p1"))));
    }

    @Test
    void whatASceneAssumesSaysNothingOfATime() {
        Offers offers = offers("grand-piano", MATCHED);
        assertTrue(offers.assumed().stream().anyMatch(said -> said.startsWith("No room was named")));
        assertTrue(offers.assumed().stream().noneMatch(said -> said.contains("time")), offers.assumed()::toString);
        assertEquals(offers.setting().typicalDba(), offers.numbers().typicalDba(), 0);
    }

    @Test
    void theReasonsOfAnOfferAreThoseOfTheAnswer() {
        Neighbour kit = new Neighbour("drum-kit", 3, 120);
        Question question = SurroundingsTest.question("singing-voice", kit);
        Offers offers = Offers.of(question, Asking.KNOWLEDGE.current().catalogue(), Asking.KNOWLEDGE.current().rules(), null, null);
        Option first = Asking.ask("singing-voice", null, List.of(), Limits.NONE, List.of(kit)).options().get(0);
        Option offered = offers.all().get(0).option();
        assertEquals(first.reasons().stream().map(Reason::says).toList(), offered.reasons().stream().map(Reason::says).toList());
        assertEquals(first.cautions(), offered.cautions());
        assertEquals(first.mics(), offered.mics());
        assertEquals(first.mics().get(0).neighbours(), offers.heard(offers.all().get(0).mics().get(0)));
    }

    private static Offers offers(String source, List<Held> units) {
        return Offers.of(SurroundingsTest.question(source), Asking.KNOWLEDGE.current().catalogue(), Asking.KNOWLEDGE.current().rules(),
                units == null ? null : new Stock(true, units), null);
    }

    private static Map<String, Long> points(Offers offers) {
        Map<String, Long> points = new HashMap<>();
        offers.all().forEach(offer -> points.merge(offer.matchedPair() + " " + place(offer), offer.centipoints(), (one, other) -> {
            throw new AssertionError("twice: " + place(offer));
        }));
        return points;
    }

    /** What it is, apart from the units being matched. */
    private static String place(Offer offer) {
        List<String> mics = new ArrayList<>();
        offer.mics().forEach(mic -> mics.add(mic.micType().id() + " " + mic.unit() + " " + mic.pattern() + " " + mic.position().id() + " " + mic.distanceM() + " "
                + mic.aimDegrees()));
        return offer.technique() + " " + mics;
    }
}
