package pairwright.locker;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static pairwright.locker.LockerCase.hour;
import static pairwright.locker.LockerCase.places;

import java.util.Collections;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What became of microphones: noted once for each, and counted as sessions. */
interface MarkCases extends LockerCase {
    MarkDraft BASS = MarkDraft.kept("bass", 1, "upright-bass", "long-ribbon", "f-hole").by("M\u00e4rta", "barn");
    MarkDraft BASS_2 = MarkDraft.kept("bass", 2, "upright-bass", "small-condenser-cardioid", "bridge").by("M\u00e4rta", "barn");

    private void session(String id) {
        does(changes -> changes.put(DocumentDraft.lineUp(id, id, null, null, "{}"), null).id());
    }

    private List<Mark> marks(String session, Long version, MarkDraft... drafts) {
        does(changes -> String.valueOf(changes.marks(session, List.of(drafts), version).size()));
        return other().marks().of(session);
    }

    @Test
    default void aMarkComesBackAsItWasNotedAndIsReplacedByTheNextOfThatMicrophone() {
        session("one");
        MarkDraft changed = new MarkDraft("bass", 1, "upright-bass", "barn", "M\u00e4rta", "long-ribbon", "f-hole", "low-1", false, "a hand lower", "compact-ribbon",
                "bridge", "boomy on the low E,\nclear there");
        does(changes -> String.valueOf(changes.mark("one", BASS).size()));
        assertEquals(List.of(BASS), locker().marks().of("one").stream().map(Mark::draft).toList());
        turnTo(1);
        does(changes -> String.valueOf(changes.mark("one", changed).size()));
        does(changes -> String.valueOf(changes.mark("one", BASS_2).size()));
        assertEquals(List.of(changed, BASS_2), other().marks().of("one").stream().map(Mark::draft).toList());
        assertEquals(List.of(hour(1), "Ida", "one"), List.of(locker().marks().of("one").get(0).at(), locker().marks().of("one").get(0).by(),
                locker().marks().of("one").get(0).session()));
        assertEquals("marked", locker().history(Documents.about("one"), null, 1).get(0).what());
        assertTrue(locker().history(Documents.about("one"), null, 1).get(0).says().contains("1 of 2"), locker().history(null, null, 1).get(0).says());
    }

    @Test
    default void allMarksOfASessionAreReplacedUnlessSomebodyWasFaster() {
        session("one");
        assertEquals(0, locker().marks().version("one"));
        assertEquals(2, marks("one", 0L, BASS, BASS_2).size());
        assertEquals(1, locker().marks().version("one"));
        assertEquals(1, refused(LockerFault.Changed.class, changes -> changes.marks("one", List.of(BASS), 0L)).version());
        turnTo(1);
        List<Mark> after = marks("one", 1L, BASS_2.changed(null, "f-hole", null), BASS);
        assertEquals(List.of(LockerCase.NOON, hour(1)), after.stream().map(Mark::at).toList(), "one that stays was noted when it was noted");
        assertEquals(List.of(), marks("one", null));
        assertEquals(3, locker().marks().version("one"));
        assertEquals(1, locker().documents().of("one").orElseThrow().version(), "the line-up itself is as it was");
    }

    @Test
    default void markingTheSameChangesNothing() {
        session("one");
        marks("one", 0L, BASS, BASS_2);
        long revision = locker().revision();
        long marks = locker().marks().revision();
        marks("one", 1L, BASS_2, BASS);
        does(changes -> String.valueOf(changes.mark("one", BASS).size()));
        assertEquals(List.of(revision, marks), List.of(locker().revision(), locker().marks().revision()));
        marks("one", 1L, BASS);
        assertTrue(locker().marks().revision() > marks && locker().revision() > revision);
    }

    @Test
    default void everyFaultOfMarksIsToldAtOnce() {
        session("one");
        MarkDraft bare = new MarkDraft(" ", 0, null, null, null, "", null, null, true, "x", null, null, null);
        assertEquals(List.of("/marks/1/mic", "/marks/1/seat", "/marks/1/source", "/marks/1/micType", "/marks/1/kept", "/marks/2"),
                places(refused(LockerFault.Unusable.class, changes -> changes.marks("one", List.of(BASS, bare, BASS), null))));
        assertEquals(List.of("/marks"), places(refused(LockerFault.Unusable.class, changes -> changes.marks("one", Collections.nCopies(401, BASS), null))));
        refused(LockerFault.NotThere.class, changes -> changes.marks("nobody", List.of(BASS), null));
        refused(LockerFault.NotThere.class, changes -> changes.mark("nobody", BASS));
        does(changes -> changes.put(DocumentDraft.of("one", DocumentKind.PICKS, "{}"), null).id());
        refused(LockerFault.NotThere.class, changes -> changes.mark("one.picks", BASS));
        assertEquals(List.of(), locker().marks().all());
        assertEquals(0, locker().marks().version("nobody"));
    }

    @Test
    default void aSetUpIsCountedOnceASessionAndWhatItWasChangedToAsKept() {
        session("a");
        session("b");
        marks("a", 0L, BASS, new MarkDraft("bass", 2, "upright-bass", "barn", "M\u00e4rta", "long-ribbon", "f-hole", null, true, null, null, null, null));
        marks("b", 0L, BASS.changed("compact-ribbon", null, null), MarkDraft.kept("bass", 2, "upright-bass", "long-ribbon", "f-hole").by("M\u00e4rta", "barn"),
                MarkDraft.kept("bass-2", 1, "upright-bass", "long-ribbon", null), MarkDraft.kept("sax", 1, "tenor-sax", "long-ribbon", null));
        assertEquals(Set.of(new Marks.Used("a", "barn", "M\u00e4rta", "long-ribbon", "f-hole", true),
                new Marks.Used("b", null, null, "long-ribbon", null, true),
                new Marks.Used("b", "barn", "M\u00e4rta", "compact-ribbon", "f-hole", true),
                new Marks.Used("b", "barn", "M\u00e4rta", "long-ribbon", "f-hole", false)),
                Set.copyOf(locker().marks().used("upright-bass")));
        assertEquals(4, locker().marks().used("upright-bass").size());
        assertEquals(List.of(), locker().marks().used("triangle"));
    }

    @Test
    default void marksComeOutAsATable() {
        session("one");
        marks("one", 0L, BASS, BASS_2.changed(null, null, "=2+2, \"dull\""));
        assertEquals(List.of("session,seat,mic,source,room,player,micType,position,unit,kept,changedTo,toMicType,toPosition,why,at,by",
                "one,bass,1,upright-bass,barn,M\u00e4rta,long-ribbon,f-hole,,yes,,,,,2031-03-01T12:00:00Z,Ida",
                "one,bass,2,upright-bass,barn,M\u00e4rta,small-condenser-cardioid,bridge,,no,,,,\"'=2+2, \"\"dull\"\"\",2031-03-01T12:00:00Z,Ida"),
                MarkTable.write(locker().marks().all()).lines().toList());
    }
}
