package pairwright.locker;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static pairwright.locker.LockerCase.draft;
import static pairwright.locker.LockerCase.hour;
import static pairwright.locker.LockerCase.hours;
import static pairwright.locker.LockerCase.ids;
import static pairwright.locker.LockerCase.places;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Units come, change and go; mates; what is scanned. */
interface UnitCases extends LockerCase {
    @Test
    default void everyWordAndFigureOfAUnitIsKeptExactly() {
        List<UnitDraft> drafts = List.of(
                new UnitDraft("marta", UnitKind.MIC, "long-ribbon", "M\u00e4rta \ud83c\udfb5 1", "00123", "B/\u00df", "nobody-yet", Condition.LIMITED, "hums, \"a bit\"", "Dairy; shelf 1",
                        null, null, null, null, List.of(new ResponsePoint(20.5, -1.0 / 3), new ResponsePoint(1000, 0), new ResponsePoint(16000, -12.1))),
                new UnitDraft("rack-1", UnitKind.CHANNEL, null, "Rack 1", null, null, null, null, null, null,
                        new ChannelData("Rack 1 to 4", 8.1, 66.0, 2400.0, -127.25, PhantomSwitch.BANK, 40.0), null, null, null, null),
                new UnitDraft("bare-1", UnitKind.CHANNEL, null, "Bare", null, null, null, Condition.LOST, null, null, null, null, null, null, null),
                new UnitDraft("base-1", UnitKind.STAND, null, "Base", null, null, null, null, null, null, null, new StandData(4.8, 0.0, 0.15, 0, null), null, null, null),
                new UnitDraft("pad-1", UnitKind.PAD, null, "Pad", null, null, null, null, null, null, null, null, new PadData(20.0, true), null, null),
                new UnitDraft("boost-1", UnitKind.BOOSTER, null, "Boost", null, null, null, null, null, null, null, null, null, new BoosterData(25.0, 3.5, false), null),
                new UnitDraft("boost-2", UnitKind.BOOSTER, null, "Boost 2", null, null, null, null, null, null, null, null, null, new BoosterData(20.0, null, null), null));
        List<Unit> added = new ArrayList<>();
        does(changes -> {
            drafts.forEach(draft -> added.add(changes.add(draft)));
            return "";
        });
        for (Unit unit : added) {
            assertEquals(unit, locker().unit(unit.id()).orElseThrow());
            assertEquals(unit, other().unit(unit.id()).orElseThrow());
            assertEquals(1, unit.version());
        }
        assertEquals(drafts.get(0).response(), other().unit("marta").orElseThrow().response());
        assertEquals("M\u00e4rta \ud83c\udfb5 1", other().unit("marta").orElseThrow().label());
        assertEquals(drafts.get(5).booster(), other().unit("boost-1").orElseThrow().booster());
    }

    @Test
    default void unitsComeInTheOrderOfTheirLabelsAsPeopleCount() {
        assertEquals(List.of("boom-1", "pencil-1", "pencil-2", "ribbon-2", "low-1"), ids(locker().units()));
        List<Unit> within = new ArrayList<>();
        does(changes -> {
            changes.add(UnitDraft.mic("x", "long-ribbon", "ribbon 3"));
            within.addAll(changes.units());
            return "";
        });
        assertEquals(List.of("boom-1", "pencil-1", "pencil-2", "ribbon-2", "x", "low-1"), ids(within));
        assertEquals(within, locker().units());
    }

    @Test
    default void whatIsNotSaidOfAUnitIsMade() {
        List<Unit> made = new ArrayList<>();
        does(changes -> {
            made.add(changes.add(UnitDraft.mic(null, "long-ribbon", "Br\u00fccke 7")));
            made.add(changes.add(UnitDraft.mic(null, "long-ribbon", "brucke-7")));
            made.add(changes.add(UnitDraft.mic(null, "long-ribbon", null)));
            made.add(changes.add(UnitDraft.mic(null, "long-ribbon", " ")));
            made.add(changes.add(UnitDraft.mic(null, "long-ribbon", "12")));
            made.add(changes.add(new UnitDraft(null, null, "long-ribbon", "Named by its type", null, null, null, null, null, null, null, null, null, null, null)));
            return "";
        });
        assertEquals(List.of("brucke-7", "brucke-7-2"), ids(made).subList(0, 2));
        assertTrue(made.get(2).label().endsWith(" 1") && made.get(3).label().endsWith(" 2"), made.get(2).label() + ", " + made.get(3).label());
        assertNotEquals(made.get(2).id(), made.get(3).id());
        assertEquals("unit-12", made.get(4).id());
        assertEquals(UnitKind.MIC, made.get(5).kind());
        assertEquals(Condition.GOOD, made.get(5).condition());
    }

    @Test
    default void anIdOrTagIsThereOnceWhateverTheCase() {
        assertEquals(List.of("/id"), places(refused(LockerFault.Unusable.class, changes -> changes.add(UnitDraft.mic("low-1", "long-ribbon", "x")))));
        assertEquals(List.of("/tag"), places(refused(LockerFault.Unusable.class, changes -> changes.add(UnitDraft.mic("new", "long-ribbon", "x").tagged(" b-10 ")))));
        assertEquals(List.of("/tag"), places(refused(LockerFault.Unusable.class, changes ->
                changes.alter("pencil-1", changes.unit("pencil-1").draft().tagged("b-10"), null))));
        does(changes -> {
            changes.alter("low-1", changes.unit("low-1").draft().tagged(null), null);
            return changes.alter("pencil-1", changes.unit("pencil-1").draft().tagged("b-10"), null).id();
        });
        assertEquals(List.of("pencil-1"), ids(locker().scanned("B-10")));
        does(changes -> changes.alter("pencil-1", changes.unit("pencil-1").draft().tagged("B-10"), null).id());
        assertEquals("B-10", locker().unit("pencil-1").orElseThrow().tag());
    }

    @Test
    default void everyFaultOfAUnitIsToldAtOnce() {
        assertEquals(List.of("/micType", "/id", "/label", "/note"), places(refused(LockerFault.Unusable.class, changes ->
                changes.add(UnitDraft.mic("A B", "compact-ribon", "x\u0000").in(Condition.LIMITED, null)))));
        assertEquals(List.of("/kind"), places(refused(LockerFault.Unusable.class, changes ->
                changes.add(new UnitDraft("x", null, null, null, null, null, null, null, null, null, null, null, null, null, null)))));
        assertEquals(5, locker().units().size());
    }

    @Test
    default void alteringSaysWhatTheDraftSaysAndRaisesTheVersion() {
        Unit before = locker().unit("low-1").orElseThrow();
        does(changes -> changes.alter("low-1", UnitDraft.mic(null, "long-ribbon", null), 1L).id());
        Unit after = locker().unit("low-1").orElseThrow();
        assertEquals(2, after.version());
        assertEquals("Ribbon 10", after.label(), "the label stays");
        assertEquals("long-ribbon", after.micType());
        assertEquals(null, after.tag(), "what the draft leaves out is taken away");
        LockerFault.Changed changed = refused(LockerFault.Changed.class, changes -> changes.alter("low-1", before.draft(), 1L));
        assertEquals(2, changed.version());
        does(changes -> changes.alter("low-1", before.draft(), null).id());
        assertEquals(3, other().unit("low-1").orElseThrow().version());
        assertEquals(before.draft(), other().unit("low-1").orElseThrow().draft());
        refused(LockerFault.NotThere.class, changes -> changes.alter("nobody", before.draft(), null));
        assertEquals(List.of("/id"), places(refused(LockerFault.Unusable.class, changes -> changes.alter("pencil-1", UnitDraft.mic("pencil-9", "long-ribbon", "x"), null))));
    }

    @Test
    default void alteringNothingChangesNothing() {
        long revision = locker().revision();
        does(changes -> changes.alter("low-1", changes.unit("low-1").draft(), 1L).id());
        assertEquals(1, locker().unit("low-1").orElseThrow().version());
        assertEquals(revision, locker().revision());
        assertEquals(1, locker().history("low-1", null, 10).size());
    }

    @Test
    default void aUnitIsRemovedForGoodOnceNothingIsAheadOfIt() {
        String id = books(1, 2, "pencil-1", "pencil-2");
        assertEquals(List.of(id), refused(LockerFault.Taken.class, changes -> {
            changes.remove("pencil-1", null);
            return "";
        }).clashes().stream().map(Booking::id).toList());
        turnTo(1.5);
        takesOut("pencil-1");
        turnTo(5);
        refused(LockerFault.Taken.class, changes -> {
            changes.remove("pencil-1", null);
            return "";
        });
        bringsBack("pencil-1");
        refused(LockerFault.Changed.class, changes -> {
            changes.remove("pencil-1", 7L);
            return "";
        });
        does(changes -> {
            changes.remove("pencil-1", 1L);
            return "";
        });
        assertEquals(Optional.empty(), locker().unit("pencil-1"));
        assertEquals("Pencil 1", line(id, "pencil-1").label());
        assertEquals("removed", locker().history("pencil-1", null, 1).get(0).what());
        assertEquals(List.of(), locker().scanned("Pencil 1"));
        refused(LockerFault.NotThere.class, changes -> {
            changes.remove("pencil-1", null);
            return "";
        });
    }

    @Test
    default void aLabelIsTheSameInItsBookings() {
        String id = books(1, 2, "pencil-1");
        does(changes -> changes.alter("pencil-1", UnitDraft.mic(null, "small-condenser-cardioid", "Thin one"), null).id());
        assertEquals("Thin one", line(id, "pencil-1").label());
    }

    @Test
    default void twoAreAPairOnlyWhereNobodyDisagrees() {
        assertEquals(Map.of("low-1", "ribbon-2", "ribbon-2", "low-1"), locker().mates());
        matches("low-1", "not-there-yet");
        assertEquals(Map.of(), locker().mates(), "the other names somebody else");
        does(changes -> changes.add(UnitDraft.mic("not-there-yet", "compact-ribbon", "Late")).id());
        assertEquals(Map.of("low-1", "not-there-yet", "not-there-yet", "low-1"), other().mates(), "adding the mate completes it on both sides");
        matches("low-1", null);
        matches("ribbon-2", null);
        matches("pencil-1", "low-1");
        assertEquals(Map.of(), locker().mates(), "of two types");
        matches("pencil-1", "pencil-2");
        matches("pencil-2", "pencil-1");
        assertEquals(Map.of("pencil-1", "pencil-2", "pencil-2", "pencil-1"), locker().mates());
        does(changes -> {
            changes.remove("pencil-2", null);
            return "";
        });
        assertEquals(Map.of(), locker().mates());
        assertEquals(List.of("/pairMate"), places(refused(LockerFault.Unusable.class, changes ->
                changes.alter("low-1", changes.unit("low-1").draft().matchedWith("low-1"), null))));
    }

    private void matches(String unit, String mate) {
        does(changes -> changes.alter(unit, changes.unit(unit).draft().matchedWith(mate), null).id());
    }

    @Test
    default void whatIsScannedIsTheTagFirstThenTheIdThenSerialAndLabel() {
        does(changes -> {
            changes.add(UnitDraft.mic("one", "long-ribbon", "Barn").tagged("two"));
            changes.add(UnitDraft.mic("two", "long-ribbon", "barn"));
            return "";
        });
        assertEquals(List.of("one"), ids(locker().scanned(" TWO ")));
        assertEquals(List.of("one"), ids(locker().scanned("one")));
        assertEquals(List.of("one", "two"), ids(locker().scanned("bARN")).stream().sorted().toList());
        for (String nothing : new String[] {null, "", "  ", "nobody", "\u0000", "'; DROP TABLE unit; --", "%"}) {
            assertEquals(List.of(), locker().scanned(nothing));
        }
        assertEquals(List.of("/scanned"), places(refused(LockerFault.Unusable.class, changes -> changes.takeOut("Barn", null, hour(1)))));
        refused(LockerFault.NotThere.class, changes -> changes.takeOut("nobody", null, hour(1)));
        refused(LockerFault.NotThere.class, changes -> changes.takeOut(null, null, hour(1)));
    }

    @Test
    default void whatNoDatabaseHoldsIsFoundNowhere() {
        for (String odd : List.of("\u0000", "low-1\u0000", "\ud800", "x".repeat(100_000))) {
            assertEquals(Optional.empty(), locker().unit(odd));
            assertEquals(Optional.empty(), locker().booking(odd));
            assertEquals(List.of(), locker().bookings(hours(0, 1), odd));
            assertEquals(List.of(), locker().history(odd, null, 5));
            assertEquals(List.of(), locker().free(hours(0, 1), odd));
            refused(LockerFault.NotThere.class, changes -> changes.booking(odd));
            refused(LockerFault.NotThere.class, changes -> changes.unit(odd));
            refused(LockerFault.Unusable.class, changes -> changes.book(draft(0, 1, odd)));
        }
    }
}
