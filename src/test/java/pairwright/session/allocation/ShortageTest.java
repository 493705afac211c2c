package pairwright.session.allocation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static pairwright.session.allocation.Small.RIBBON;
import static pairwright.session.allocation.Small.bank;
import static pairwright.session.allocation.Small.condenser;
import static pairwright.session.allocation.Small.fed;
import static pairwright.session.allocation.Small.fewer;
import static pairwright.session.allocation.Small.must;
import static pairwright.session.allocation.Small.taking;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import pairwright.locker.PhantomSwitch;
import pairwright.session.allocation.Shortage.Kind;
import pairwright.session.allocation.Shortage.Lack;
import pairwright.session.allocation.Shortage.Means;
import pairwright.session.allocation.Shortage.WayOut;

class ShortageTest {
    private final Allocator allocator = new Allocator();

    @Test
    void oneMicrophoneForTwoIsOneTooFewAndThereAreThreeWaysOut() {
        Problem problem = new Problem(List.of(must("sax", taking("m", 500, "mic"), fewer("shared", 100)), must("voice", taking("m", 700, "mic"), fewer("shared", 50))),
                List.of(new Cap("mic", 1, 3)), List.of());
        Shortage shortage = allocator.shortage(problem);
        assertEquals(2, shortage.must());
        assertEquals(1, shortage.canServe());
        assertTrue(shortage.proven());
        assertEquals(List.of(new Lack(Kind.CAP, "mic", 2, 1)), shortage.lacks());

        WayOut borrow = first(shortage, Means.BORROW);
        assertEquals(Map.of("mic", 1), borrow.caps());
        assertEquals(3, borrow.price());
        assertEquals(1200, borrow.plan().centipoints());
        assertEquals(List.of("m", "m"), Small.chosen(borrow.problem(), borrow.plan()));

        WayOut drop = first(shortage, Means.DROP);
        assertEquals(Set.of(0), drop.seats(), "without the sax 700 are left, without the voice 500");
        assertEquals(List.of("left out", "m"), Small.chosen(drop.problem(), drop.plan()));

        WayOut share = first(shortage, Means.SHARE);
        assertEquals(Set.of(0), share.seats(), "100 + 700 is more than 500 + 50");
        assertEquals(800, share.plan().centipoints());
    }

    @Test
    void otherWaysOfAKindComeAfterTheBest() {
        Problem problem = new Problem(List.of(must("a", taking("m", 500, "mic")), must("b", taking("m", 700, "mic")), must("c", taking("m", 600, "mic"))),
                List.of(new Cap("mic", 2, 0)), List.of());
        List<WayOut> drops = allocator.shortage(problem).waysOut().stream().filter(way -> way.means() == Means.DROP).toList();
        assertEquals(List.of(Set.of(0), Set.of(2), Set.of(1)), drops.stream().map(WayOut::seats).toList());
        assertEquals(List.of(1300L, 1200L, 1100L), drops.stream().map(way -> way.plan().centipoints()).toList());
    }

    @Test
    void whatIsNotToBeHadIsNotBorrowed() {
        Problem problem = new Problem(List.of(must("sax", taking("m", 500, "mic"))), List.of(new Cap("mic", 0, 0)), List.of());
        Shortage shortage = allocator.shortage(problem);
        assertEquals(List.of(Means.DROP), shortage.waysOut().stream().map(WayOut::means).toList());
        assertEquals(List.of(new Lack(Kind.CAP, "mic", 1, 0)), shortage.lacks());
    }

    @Test
    void theCheaperThingIsBorrowedFirst() {
        Problem problem = new Problem(List.of(must("sax", taking("r", 900, "ribbon"), taking("d", 300, "dynamic"))), List.of(new Cap("ribbon", 0, 9), new Cap("dynamic", 0, 2)), List.of());
        List<WayOut> ways = allocator.shortage(problem).waysOut().stream().filter(way -> way.means() == Means.BORROW).toList();
        assertEquals(List.of(Map.of("dynamic", 1), Map.of("ribbon", 1)), ways.stream().map(WayOut::caps).toList());
        assertEquals(List.of(2, 9), ways.stream().map(WayOut::price).toList());
    }

    @Test
    void whereTwoThingsAreShortNeitherAloneWouldDo() {
        Problem problem = new Problem(List.of(must("sax", taking("r", 900, "ribbon")), must("kit", taking("d", 300, "dynamic"))),
                List.of(new Cap("ribbon", 0, 9), new Cap("dynamic", 0, 2)), List.of());
        Shortage shortage = allocator.shortage(problem);
        assertEquals(List.of(), shortage.lacks());
        assertEquals(0, shortage.canServe());
        WayOut borrow = first(shortage, Means.BORROW);
        assertEquals(Map.of("ribbon", 1, "dynamic", 1), borrow.caps());
        assertEquals(11, borrow.price());
    }

    @Test
    void aRibbonAndACondenserOnOneSwitchLackAChannel() {
        Problem problem = new Problem(List.of(must("sax", fed("r", 900, RIBBON)), must("piano", fed("c", 300, condenser(40)))), List.of(), List.of(bank("stage", PhantomSwitch.BANK, 8)),
                List.of(), List.of(), Map.of("line", 5));
        Shortage shortage = allocator.shortage(problem);
        assertEquals(List.of(new Lack(Kind.CHANNELS, "line", 9, 8)), shortage.lacks());
        WayOut borrow = first(shortage, Means.BORROW);
        assertEquals(Map.of("line", 1), borrow.channels());
        assertEquals(5, borrow.price());
        assertEquals(2, borrow.problem().banks().size());
        Set<Integer> banks = new TreeSet<>();
        borrow.plan().channels().forEach(of -> of.forEach(channel -> banks.add(channel.bank())));
        assertEquals(Set.of(0, 1), banks);
    }

    @Test
    void aSupplyIsShortByWhatItIsShort() {
        Problem problem = new Problem(List.of(must("a", fed("c", 900, condenser(40))), must("b", fed("c", 300, condenser(45)))), List.of(),
                List.of(bank("desk", PhantomSwitch.CHANNEL, 2, 70)));
        Shortage shortage = allocator.shortage(problem);
        assertEquals(List.of(new Lack(Kind.CHANNELS, "line", 3, 2), new Lack(Kind.CURRENT, "desk", 85, 70)), shortage.lacks());
    }

    @Test
    void whereAllCanBeServedNothingIsShort() {
        Shortage shortage = allocator.shortage(new Problem(List.of(must("a", taking("m", 900, "mic"))), List.of(new Cap("mic", 1, 1)), List.of()));
        assertEquals(new Shortage(1, 1, true, List.of(), List.of()), shortage);
    }

    /** What another solver says is impossible is told with ways out, each of which was checked. */
    @Test
    void aLargerSessionThatIsImpossibleHasWaysOut() {
        Problem enough = Instances.of(Instances.Mood.TIGHT, Instances.Size.SMALL, 1);
        Bank first = enough.banks().get(0);
        Problem problem = new Problem(enough.seats(), enough.caps(), List.of(new Bank("small", first.phantom(), first.channels().subList(0, 3), null, null)),
                List.of(), List.of(), Map.of("75 dB", 5));
        assertTrue(MixedInteger.optimum(problem).isEmpty());
        Shortage shortage = allocator.shortage(problem);
        assertTrue(shortage.canServe() < shortage.must());
        for (WayOut way : shortage.waysOut()) {
            if (way.means() == Means.BORROW) {
                assertEquals(MixedInteger.optimum(way.problem()).getAsLong(), way.plan().centipoints());
            }
        }
        assertEquals(shortage.must() - shortage.canServe(), first(shortage, Means.DROP).seats().size());
    }

    private static WayOut first(Shortage shortage, Means means) {
        return shortage.waysOut().stream().filter(way -> way.means() == means).findFirst().orElseThrow();
    }
}
