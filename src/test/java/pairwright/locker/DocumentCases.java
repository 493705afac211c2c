package pairwright.locker;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static pairwright.locker.LockerCase.hour;
import static pairwright.locker.LockerCase.places;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What is kept of sessions: it comes back to the letter, is not written over by whoever did not see it, and goes with what it belongs to. */
interface DocumentCases extends LockerCase {
    String TEXT = "{\"seats\": [\"M\u00e4rta \ud83c\udfb5\", 0.1]}\n";

    Path folder();

    Place another() throws Exception;

    default Document writes(DocumentDraft draft, Long version) {
        Document[] written = new Document[1];
        does(changes -> {
            written[0] = changes.put(draft, version);
            return written[0].id();
        });
        return written[0];
    }

    private Document barn() {
        return writes(DocumentDraft.lineUp("barn-day", "Barn, first day", hour(24), hour(32), TEXT), null);
    }

    @Test
    default void whatIsWrittenComesBackToTheLetter() {
        Document barn = barn();
        assertEquals(new Document("barn-day", DocumentKind.LINE_UP, "Barn, first day", null, hour(24), hour(32), null, TEXT, 1, LockerCase.NOON, "Ida"), barn);
        Document picks = writes(DocumentDraft.of("barn-day", DocumentKind.PICKS, "{}"), 0L);
        assertEquals(List.of("barn-day.picks", "Barn, first day", "barn-day"), List.of(picks.id(), picks.name(), picks.belongsTo()));
        assertEquals(Optional.of(barn), other().documents().of("barn-day"));
        assertEquals(Optional.of(picks), other().documents().of("barn-day", DocumentKind.PICKS));
        assertEquals(List.of(picks), locker().documents().belonging("barn-day"));
        assertEquals(List.of(barn), locker().documents().all(DocumentKind.LINE_UP, 10));
        assertEquals(1, locker().documents().count(DocumentKind.PICKS));
        assertEquals(Optional.empty(), locker().documents().of("nobody"));
        assertEquals(Optional.empty(), locker().documents().of("barn-day", DocumentKind.RECALL));
    }

    @Test
    default void whoeverDidNotSeeAChangeDoesNotWriteOverIt() {
        Document barn = barn();
        turnTo(1);
        Document after = writes(DocumentDraft.lineUp("barn-day", "Barn, first day", null, null, "[]"), 1L);
        assertEquals(List.of(2L, hour(1)), List.of(after.version(), after.at()));
        assertEquals(2, refused(LockerFault.Changed.class, changes -> changes.put(barn.draft(), 1L)).version());
        assertEquals(2, refused(LockerFault.Changed.class, changes -> changes.put(barn.draft(), 0L)).version(), "there is one already");
        refused(LockerFault.NotThere.class, changes -> changes.put(DocumentDraft.lineUp("gone", "Gone", null, null, "[]"), 3L));
        assertEquals(after, other().documents().of("barn-day").orElseThrow());
        assertEquals(3, writes(barn.draft(), null).version());
    }

    @Test
    default void writingTheSameChangesNothing() {
        Document barn = barn();
        long revision = locker().revision();
        turnTo(1);
        assertEquals(barn, writes(barn.draft(), 1L));
        assertEquals(revision, locker().revision());
        writes(DocumentDraft.lineUp("barn-day", "Barn", null, null, TEXT), 1L);
        assertTrue(locker().revision() > revision);
    }

    @Test
    default void everyFaultOfADocumentIsToldAtOnce() {
        assertEquals(List.of("/id", "/name", "/until", ""), places(refused(LockerFault.Unusable.class, changes ->
                changes.put(DocumentDraft.lineUp("A B", " ", hour(2), hour(2), ""), null))));
        assertEquals(List.of(""), places(refused(LockerFault.Unusable.class, changes ->
                changes.put(DocumentDraft.lineUp(null, "x", null, null, "x".repeat(DocumentDraft.LONGEST + 1)), null))));
        assertEquals(List.of(""), places(refused(LockerFault.Unusable.class, changes -> changes.put(DocumentDraft.lineUp(null, "x", null, null, "\"\ud83c\""), null))));
        assertEquals(List.of("/belongsTo"), places(refused(LockerFault.Unusable.class, changes -> changes.put(DocumentDraft.of(null, DocumentKind.PICKS, "{}"), null))));
        assertEquals(List.of("/kind"), places(refused(LockerFault.Unusable.class, changes -> changes.put(DocumentDraft.of(null, null, "{}"), null))));
        barn();
        assertEquals(List.of("/belongsTo"), places(refused(LockerFault.Unusable.class, changes ->
                changes.put(new DocumentDraft("x", DocumentKind.LINE_UP, "X", "barn-day", null, null, "{}"), null))));
        assertEquals(List.of("/id"), places(refused(LockerFault.Unusable.class, changes ->
                changes.put(new DocumentDraft("mine", DocumentKind.PICKS, null, "barn-day", null, null, "{}"), null))));
        refused(LockerFault.NotThere.class, changes -> changes.put(DocumentDraft.of("nobody", DocumentKind.PICKS, "{}"), null));
        writes(DocumentDraft.of("barn-day", DocumentKind.PICKS, "{}"), null);
        refused(LockerFault.NotThere.class, changes -> changes.put(DocumentDraft.of("barn-day.picks", DocumentKind.TICKS, "{}"), null));
        refused(LockerFault.NotThere.class, changes -> changes.document(null));
    }

    @Test
    default void anIdIsMadeFromTheNameAndNeverTakenTwice() {
        DocumentDraft unnamed = DocumentDraft.lineUp(null, "Br\u00fccke, Tag 2", null, null, "{}");
        assertEquals("brucke-tag-2", writes(unnamed, null).id());
        assertEquals("brucke-tag-2-2", writes(unnamed, null).id());
    }

    @Test
    default void theLatestSessionComesFirst() {
        writes(DocumentDraft.lineUp("early", "Early", hour(-48), null, "{}"), null);
        writes(DocumentDraft.lineUp("untimed", "Untimed", null, null, "{}"), null);
        writes(DocumentDraft.lineUp("late", "Late", hour(48), null, "{}"), null);
        assertEquals(List.of("late", "untimed", "early"), locker().documents().all(DocumentKind.LINE_UP, 9).stream().map(Document::id).toList());
        assertEquals(List.of("late"), locker().documents().all(DocumentKind.LINE_UP, 1).stream().map(Document::id).toList());
    }

    @Test
    default void aSessionGoesWithAllThatBelongsToIt() {
        barn();
        writes(DocumentDraft.lineUp("other", "Other", null, null, "{}"), null);
        for (DocumentKind kind : List.of(DocumentKind.PICKS, DocumentKind.TICKS, DocumentKind.RECALL)) {
            writes(DocumentDraft.of("barn-day", kind, "{}"), null);
        }
        does(changes -> {
            changes.mark("barn-day", MarkDraft.kept("bass", 1, "upright-bass", "long-ribbon", "f-hole"));
            changes.mark("other", MarkDraft.kept("bass", 1, "upright-bass", "long-ribbon", "f-hole"));
            return "";
        });
        long marks = locker().marks().revision();
        refused(LockerFault.Changed.class, changes -> {
            changes.removeDocument("barn-day", 7L);
            return "";
        });
        does(changes -> {
            changes.removeDocument("barn-day", 1L);
            return "";
        });
        assertEquals(List.of("other"), locker().documents().all(DocumentKind.LINE_UP, 9).stream().map(Document::id).toList());
        assertEquals(List.of(), other().documents().belonging("barn-day"));
        assertEquals(0, locker().documents().count(DocumentKind.TICKS));
        assertEquals(List.of("other"), locker().marks().all().stream().map(Mark::session).toList());
        assertTrue(locker().marks().revision() > marks);
        refused(LockerFault.NotThere.class, changes -> {
            changes.removeDocument("barn-day", null);
            return "";
        });
    }

    @Test
    default void theHistorySaysWhatWasWrittenButNotEveryTick() {
        barn();
        writes(DocumentDraft.of("barn-day", DocumentKind.PICKS, "{}"), null);
        writes(DocumentDraft.of("barn-day", DocumentKind.TICKS, "[1]"), null);
        writes(DocumentDraft.of("barn-day", DocumentKind.TICKS, "[1, 2]"), null);
        writes(DocumentDraft.of("barn-day", DocumentKind.PICKS, "{\"a\": 1}"), 1L);
        List<Event> told = locker().history(Documents.about("barn-day"), null, 9);
        assertEquals(List.of("altered", "wrote", "wrote"), told.stream().map(Event::what).toList());
        assertTrue(told.get(2).says().contains("Barn, first day"), told.get(2).says());
        assertEquals(List.of(), locker().history("barn-day", null, 9), "a unit of that id is something else");
    }

    private String booksFor(String session, BookingDraft draft) {
        return does(changes -> changes.bookFor(session, draft).id());
    }

    @Test
    default void aSessionRemembersItsBookingWhileItsTextStaysAsItWas() {
        Document barn = barn();
        String booking = booksFor("barn-day", LockerCase.draft(24, 32, "low-1"));
        Document after = other().documents().of("barn-day").orElseThrow();
        assertEquals(booking, after.booking());
        assertEquals(barn.draft(), after.draft());
        assertEquals(barn.version(), after.version());
        writes(DocumentDraft.lineUp("barn-day", "Barn", null, null, "{}"), 1L);
        assertEquals(booking, locker().documents().of("barn-day").orElseThrow().booking(), "altering it does not forget it");
        refused(LockerFault.NotThere.class, changes -> changes.bookFor("nobody", LockerCase.draft(40, 41, "low-1")));
        assertEquals(1, locker().bookings(LockerCase.hours(0, 50), null).size());
    }

    @Test
    default void bookingASessionAnewTakesThePlaceOfWhatItHadOrLeavesThat() {
        barn();
        String first = booksFor("barn-day", LockerCase.draft(24, 32, "low-1", "pencil-1"));
        books(24, 25, "pencil-2");
        refused(LockerFault.Taken.class, changes -> changes.bookFor("barn-day", LockerCase.draft(24, 32, "ribbon-2", "pencil-2")));
        assertEquals(List.of("low-1", "pencil-1"), booking(first).units());
        assertEquals(first, booksFor("barn-day", LockerCase.draft(26, 34, "low-1", "ribbon-2")));
        assertEquals(List.of("low-1", "ribbon-2"), booking(first).units());
        assertEquals(LockerCase.hours(26, 34), booking(first).span());
        does(changes -> {
            changes.cancel(first, null);
            return "";
        });
        String second = booksFor("barn-day", LockerCase.draft(24, 32, "low-1"));
        assertEquals(second, locker().documents().of("barn-day").orElseThrow().booking());
        assertEquals(List.of("low-1"), booking(second).units());
    }

    @Test
    default void wordsThatAddressesUseAreNoIds() {
        assertEquals(List.of("/id"), places(refused(LockerFault.Unusable.class, changes -> changes.put(DocumentDraft.lineUp("buy", "Buy", null, null, "{}"), null))));
        assertEquals("plan-2", writes(DocumentDraft.lineUp(null, "Plan", null, null, "{}"), null).id());
    }

    @Test
    default void aBackupHoldsDocumentsAndMarks() throws Exception {
        writes(DocumentDraft.of(barn().id(), DocumentKind.RECALL, TEXT), null);
        // by its id it would come in before what it belongs to
        writes(DocumentDraft.lineUp("zz", "Last", null, null, "{}"), null);
        writes(DocumentDraft.of("zz", DocumentKind.PICKS, "{}"), null);
        does(changes -> {
            changes.mark("barn-day", MarkDraft.kept("bass", 1, "upright-bass", "long-ribbon", null).by("Ida", "barn").changed(null, "bridge", "boomy"));
            return "";
        });
        Path backup = folder().resolve("documents.backup");
        locker().backUp(backup);
        List<Document> documents = locker().documents().belonging("barn-day");
        List<Mark> marks = locker().marks().all();
        try (Locker there = Locker.open(another(), Load.CATALOGUE, clock())) {
            there.restore(backup, "Wren");
            assertEquals(documents, there.documents().belonging("barn-day"));
            assertEquals(locker().documents().all(DocumentKind.LINE_UP, 9), there.documents().all(DocumentKind.LINE_UP, 9));
            assertEquals(marks, there.marks().all());
        }
        long revision = locker().marks().revision();
        does(changes -> {
            changes.removeDocument("barn-day", null);
            return "";
        });
        locker().restore(backup, "Wren");
        assertEquals(marks, locker().marks().all());
        assertTrue(locker().marks().revision() > revision + 1, "whoever counted them has to count again");
    }
}
