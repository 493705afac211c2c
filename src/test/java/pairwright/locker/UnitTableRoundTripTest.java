package pairwright.locker;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import pairwright.catalogue.CatalogueStore;
import pairwright.model.Catalogue;
import pairwright.model.Fault;

class UnitTableRoundTripTest {
    private static final Catalogue CATALOGUE = new CatalogueStore().builtIn();

    @Property(tries = 500)
    void whatIsWrittenComesBackAndIsWrittenTheSame(@ForAll("units") List<Unit> units) {
        String text = UnitTable.write(units);
        TablePreview preview = UnitTable.preview(text, List.of(), CATALOGUE);
        assertEquals(List.of(), preview.faults());
        assertEquals(units.stream().map(Unit::draft).toList(), preview.rows().stream().map(TablePreview.Row::unit).toList());
        assertEquals(text, UnitTable.write(again(preview)));
        assertEquals(units.size(), UnitTable.preview(text, units, CATALOGUE).count(TablePreview.Effect.SAME));
    }

    @Property(tries = 300)
    void soItDoesWithDecimalCommas(@ForAll("units") List<Unit> units) {
        String text = UnitTable.writeWithDecimalComma(units);
        TablePreview preview = UnitTable.preview(text, List.of(), CATALOGUE);
        assertEquals(List.of(), preview.faults());
        assertEquals(units.stream().map(Unit::draft).toList(), preview.rows().stream().map(TablePreview.Row::unit).toList());
        assertEquals(text, UnitTable.writeWithDecimalComma(again(preview)));
    }

    @Property(tries = 15)
    void anotherLockerHoldsTheSameUnits(@ForAll("units") List<Unit> units) throws IOException {
        Path folder = Files.createTempDirectory("units");
        try (Locker locker = Locker.open(Place.in(folder), () -> CATALOGUE, Clock.systemUTC())) {
            String text = UnitTable.write(units);
            locker.change(Act.by("Ida"), changes -> UnitTable.importInto(changes, text, CATALOGUE).sum());
            List<Unit> there = new ArrayList<>();
            units.forEach(unit -> there.add(locker.unit(unit.id()).orElseThrow()));
            assertEquals(units, there);
            assertEquals(text, UnitTable.write(there));
        } finally {
            try (Stream<Path> files = Files.walk(folder)) {
                files.sorted(Comparator.reverseOrder()).forEach(file -> file.toFile().delete());
            }
        }
    }

    @Property(tries = 1000)
    void whateverTheTextItIsReadOrRefused(@ForAll("nasty") String text) {
        TablePreview preview = UnitTable.preview("id,micType,note\n" + text, List.of(), CATALOGUE);
        preview.faults().forEach(fault -> assertEquals(true, fault.line() >= 1 && !fault.says().isEmpty(), fault.toString()));
    }

    private static List<Unit> again(TablePreview preview) {
        return preview.rows().stream().map(row -> new UnitChecks(CATALOGUE.mics()).read(row.unit(), null)).toList();
    }

    @Provide
    Arbitrary<List<Unit>> units() {
        return Combinators.combine(kinds(), texts(), Arbitraries.of(Condition.values()).injectNull(0.2)).as((draft, text, condition) ->
                        new UnitDraft(draft.id(), draft.kind(), draft.micType(), text.get(0), text.get(1), text.get(2), "mate-x", condition,
                                noteOf(text.get(3), text.get(1)), text.get(4), draft.channel(), draft.stand(), draft.pad(), draft.booster(), draft.response()))
                .list().ofMinSize(1).ofMaxSize(8).map(UnitTableRoundTripTest::alone);
    }

    /** Of one line or of two. What the locker takes off a line's ends, some of it unprintable, would stay where two are joined. */
    private static String noteOf(String first, String second) {
        String begun = first == null || first.replaceAll("[\\s\\p{Z}\\p{C}]", "").isEmpty() ? "odd" : first;
        return second == null ? begun : begun.strip() + " \n " + second.strip();
    }

    /** Each with an id and a tag of its own, and as the locker would hold it. */
    private static List<Unit> alone(List<UnitDraft> drafts) {
        List<Unit> units = new ArrayList<>();
        for (int i = 0; i < drafts.size(); i++) {
            UnitDraft draft = drafts.get(i);
            UnitChecks checks = new UnitChecks(CATALOGUE.mics());
            Unit unit = checks.read(new UnitDraft("u-" + i, draft.kind(), draft.micType(), draft.label() == null || draft.label().isBlank() ? "L" : draft.label(), draft.serial(),
                    draft.tag() == null ? null : draft.tag().strip() + i, draft.pairMate(), draft.condition(), draft.note(), draft.storedAt(), draft.channel(),
                    draft.stand(), draft.pad(), draft.booster(), draft.response()), null);
            assertEquals(List.of(), checks.faults());
            units.add(unit);
        }
        return units;
    }

    private static Arbitrary<UnitDraft> kinds() {
        Arbitrary<UnitDraft> mics = Combinators.combine(Arbitraries.of(CATALOGUE.mics().keySet()), responses()).as((type, response) ->
                draft(UnitKind.MIC, type, null, null, null, null, response));
        Arbitrary<UnitDraft> channels = Combinators.combine(line(), number(-60, 10), number(20, 90), number(50, 1e7), number(-140, -60),
                        Arbitraries.of(PhantomSwitch.CHANNEL, PhantomSwitch.BANK).injectNull(0.3), number(0, 2000))
                .as(ChannelData::new).map(channel -> draft(UnitKind.CHANNEL, null, channel, null, null, null, null));
        Arbitrary<UnitDraft> stands = Combinators.combine(number(0.05, 200), number(0, 6), number(0.02, 3), Arbitraries.of(0, 3, 12).injectNull(0.3), number(0.02, 10))
                .as(StandData::new).map(stand -> draft(UnitKind.STAND, null, null, stand, null, null, null));
        Arbitrary<UnitDraft> pads = Combinators.combine(Arbitraries.doubles().between(1, 80), Arbitraries.of(true, false).injectNull(0.3))
                .as(PadData::new).map(pad -> draft(UnitKind.PAD, null, null, null, pad, null, null));
        Arbitrary<UnitDraft> boosters = Combinators.combine(Arbitraries.doubles().between(1, 60), number(0, 30), Arbitraries.of(true, false).injectNull(0.3))
                .as(BoosterData::new).map(booster -> draft(UnitKind.BOOSTER, null, null, null, null, booster, null));
        return Arbitraries.oneOf(mics, channels, stands, pads, boosters);
    }

    private static UnitDraft draft(UnitKind kind, String type, ChannelData channel, StandData stand, PadData pad, BoosterData booster, List<ResponsePoint> response) {
        return new UnitDraft(null, kind, type, null, null, null, null, null, null, null, channel, stand, pad, booster, response);
    }

    private static Arbitrary<Double> number(double least, double most) {
        // a negative zero is written as zero
        return Arbitraries.doubles().between(least, most).ofScale(6).map(number -> number + 0.0).injectNull(0.2);
    }

    private static Arbitrary<List<ResponsePoint>> responses() {
        return Arbitraries.maps(Arbitraries.doubles().between(127, 7999).ofScale(4), Arbitraries.doubles().between(-60, 30).ofScale(5)).ofMaxSize(6).map(found -> {
            if (found.isEmpty()) {
                return List.<ResponsePoint>of();
            }
            TreeMap<Double, Double> points = new TreeMap<>(found);
            points.put(20.5, -3.25);
            points.put(2e4, 0.0);
            return points.entrySet().stream().map(point -> new ResponsePoint(point.getKey(), point.getValue() + 0.0)).toList();
        }).injectNull(0.2);
    }

    private static Arbitrary<List<String>> texts() {
        return line().list().ofSize(5);
    }

    /** What the locker takes as one line, most of it as awkward for a table as can be. */
    private static Arbitrary<String> line() {
        Arbitrary<String> nasty = Arbitraries.strings().withChars("'=+-@,;\"\\ :.#|\u00A0\u2003\uFF1D\uFEFFé1a").ofMinLength(1).ofMaxLength(12);
        Arbitrary<String> any = Arbitraries.strings().ofMaxLength(20);
        return Arbitraries.oneOf(nasty, any).filter(text -> {
            List<Fault> faults = new ArrayList<>();
            Said.line(text, 60, "", faults);
            return faults.isEmpty();
        }).injectNull(0.2);
    }

    @Provide
    Arbitrary<String> nasty() {
        return Arbitraries.strings().withChars("'=\",;\r\n a-1\u0000").ofMaxLength(60);
    }
}
