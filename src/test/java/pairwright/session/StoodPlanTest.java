package pairwright.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import pairwright.advice.HouseMemory;
import pairwright.advice.KnowledgeStore;
import pairwright.advice.Offers;
import pairwright.locker.PhantomSwitch;
import pairwright.model.Effect;
import pairwright.model.Setup;

/** A plan that somebody made by hand is judged as one that was searched. */
class StoodPlanTest {
    private static final KnowledgeStore KNOWLEDGE = KnowledgeStore.builtIn();
    private static final Floor LIVE = new Floor(null, 8, 7, 3.5, 0.6);

    private static Gear.Channel channel(String id, double inputOhm, PhantomSwitch phantom) {
        return new Gear.Channel(id, id, null, phantom, 0.0, 65.0, inputOhm, null, null);
    }

    private static LineUp lineUp() {
        return new LineUp(null, LIVE, List.of(Sessions.at("violin", "violin", 2, 3, 90, 1), Sessions.at("accordion", "accordion", 6, 3, 270, 1)), null, null, null, null, null, 1);
    }

    private static StoodPlan stoodPlan(Gear.Channel... channels) {
        return new StoodPlan(lineUp(), List.of(channels), KNOWLEDGE.current());
    }

    private static List<String> rules(Line line) {
        return line.cautions().stream().map(Said::rule).sorted().toList();
    }

    @Test
    void aPlanThatWasSearchedIsWorthAsMuchPutUpByHandAndWarnsOfTheSame() {
        List<Gear.Channel> channels = List.of(channel("one", 2400, PhantomSwitch.CHANNEL), channel("two", 2400, PhantomSwitch.CHANNEL));
        Plan searched = new Planner(KNOWLEDGE::current, HouseMemory.NOTHING).plan(lineUp(), new Gear(null, channels, null, null, null), step -> { }).plans().get(0);
        StoodPlan hand = stoodPlan(channels.toArray(Gear.Channel[]::new));
        List<StoodPlan.Put> put = searched.served().stream().map(served -> {
            Offers stood = hand.stood(served.seat(), List.of(Setup.of(served.option())));
            return new StoodPlan.Put(served.seat(), stood, stood.all().get(0), searched.linesOf(served.seat()).stream().map(Line::channel).toList());
        }).toList();
        Plan again = hand.plan(put, List.of());
        assertEquals(searched.served().stream().map(served -> served.option().score()).toList(), again.served().stream().map(served -> served.option().score()).toList());
        for (Line line : searched.lines()) {
            assertEquals(rules(line), rules(again.linesOf(line.seat()).get(line.mic() - 1)), line.toString());
            assertEquals(line.gainDb(), again.linesOf(line.seat()).get(line.mic() - 1).gainDb());
        }
    }

    @Test
    void whatASearchWouldNeverDoIsJudgedAsWell() {
        StoodPlan hand = stoodPlan(channel("low", 300, PhantomSwitch.CHANNEL), channel("other", 2400, PhantomSwitch.CHANNEL));
        Offers ribbon = hand.stood("violin", List.of(new Setup(null, List.of(new Setup.Put("long-ribbon", null, position("violin"), 0.5, 0.0)))));
        Offers far = hand.stood("accordion", List.of(new Setup(null, List.of(new Setup.Put("long-ribbon", null, position("accordion"), 4.0, 0.0)))));
        Plan plan = hand.plan(List.of(new StoodPlan.Put("violin", ribbon, ribbon.all().get(0), List.of("low")),
                new StoodPlan.Put("accordion", far, far.all().get(0), List.of("other"))), List.of("other"));
        assertTrue(rules(plan.linesOf("violin").get(0)).contains("PLN-044"), plan.lines().toString());
        assertTrue(plan.linesOf("accordion").get(0).phantom());
        assertFalse(plan.linesOf("violin").get(0).phantom());
        assertTrue(far.findings(far.all()).get(0).stream().anyMatch(finding -> finding.rule().effect() == Effect.AGAINST), "nothing against a ribbon across the room");
    }

    @Test
    void aChannelThatThereIsNotIsRefused() {
        StoodPlan hand = stoodPlan(channel("one", 2400, PhantomSwitch.CHANNEL));
        Offers stood = hand.stood("violin", List.of(new Setup(null, List.of(new Setup.Put("long-ribbon", null, position("violin"), 0.5, 0.0)))));
        assertThrows(IllegalArgumentException.class, () -> hand.plan(List.of(new StoodPlan.Put("violin", stood, stood.all().get(0), List.of("none"))), List.of()));
    }

    private static String position(String source) {
        return KNOWLEDGE.current().catalogue().sources().get(source).positions().stream().filter(position -> !position.notAlone() && position.onlyFamilies().isEmpty()).findFirst().orElseThrow().id();
    }
}
