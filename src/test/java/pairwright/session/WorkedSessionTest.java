package pairwright.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static pairwright.session.Rooms.CATALOGUE;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import pairwright.acoustics.Barrier;
import pairwright.acoustics.Level;
import pairwright.acoustics.OctaveCurve;
import pairwright.acoustics.Octaves;
import pairwright.acoustics.Radiation;
import pairwright.acoustics.Weighting;
import pairwright.advice.KnowledgeStore;
import pairwright.advice.Offer;
import pairwright.advice.Offers;
import pairwright.advice.Reaching;
import pairwright.model.Body;
import pairwright.model.Limits;
import pairwright.model.Pattern;
import pairwright.model.Point;
import pairwright.model.Source;
import pairwright.model.Standpoint;

/** docs/worked-session.md was reckoned apart from the program: every number in its tables is what the program finds. */
class WorkedSessionTest {
    private static final Path PAGE = Path.of("docs/worked-session.md");

    private final String page = read();
    private final LineUp lineUp = lineUp();
    private final List<Line> lines = lines();
    private final Hearing hearing = Hearing.of(lineUp, CATALOGUE);
    private final List<Listening> listening = hearing.listening(lines);
    private final List<Hears> hears = hearing.of(lines);

    @Test
    void theSourcesAreThoseOfTheCatalogue() {
        for (List<String> row : table("Seats")) {
            Source source = CATALOGUE.sources().get(row.get(1));
            Body body = source.body();
            thenReads(row.get(5), body.heightM());
            thenReads(row.get(6), body.axisUpDegrees());
            thenReads(row.get(7), body.axisTurnDegrees() == null ? 0 : body.axisTurnDegrees());
            thenReads(row.get(8), source.level().typicalDbSpl());
            thenReads(row.get(9), source.level().centreOffsetM());
        }
        for (List<String> row : table("Octaves")) {
            String[] of = row.get(0).split(" ");
            thenReads(row, switch (of[of.length - 1]) {
                case "spectrum" -> source(of[0]).spectrumDb();
                case "index" -> source(of[0]).directivityIndexDb();
                case "pattern" -> listening.get(Integer.parseInt(of[1]) - 1).pattern().coefficient();
                default -> Weighting.octaveWeightingDb();
            });
        }
        assertEquals(6 + 6 + 7 + 1, table("Octaves").size());
    }

    @Test
    void theMicrophonesAreWhereTheyAreWorkedOutToBe() {
        for (List<String> row : table("Places")) {
            Line line = lines.get(Integer.parseInt(row.get(0)) - 1);
            Standpoint own = Standpoint.of(source(line.seat()).body(), Rooms.position(line.source(), line.placement().position()), line.placement().distanceM());
            thenReads(row.get(1), own.surface().forwardM());
            thenReads(row.get(2), own.surface().leftM());
            thenReads(row.get(3), own.surface().upM());
            Point way = own.place().minus(own.surface()).unit();
            String[] direction = row.get(4).replaceAll("[()]", "").split(", ");
            thenReads(direction[0], way.forwardM());
            thenReads(direction[1], way.leftM());
            thenReads(direction[2], way.upM());
            thenReads(row.get(5), line.spot().xM());
            thenReads(row.get(6), line.spot().yM());
            thenReads(row.get(7), line.spot().zM());
        }
        assertEquals(lines.size(), table("Places").size());
    }

    @Test
    void theGoboTakesWhatItsThreeEdgesDo() {
        Reaching tenor = reaching(4, "tenor");
        Line.Spot spot = lines.get(3).spot();
        OctaveCurve taken = new Screens(lineUp.gobos()).takenDb(surface("tenor"), InRoom.at(spot.xM(), spot.yM(), spot.zM()));
        double straightM = tenor.distanceM();
        double overM = Math.hypot(Math.hypot(1.9, 0.85) + Math.hypot(5.6 - spot.yM(), 1.6 - spot.zM()), 6.5 - spot.xM()) - straightM;
        double leftM = round(2.5, spot) - straightM;
        double rightM = round(5.5, spot) - straightM;
        List<List<String>> rows = table("The gobo between line 4 and the tenor");
        thenReads(rows.get(0), octaves(hz -> Barrier.edgeDb(overM, hz)));
        thenReads(rows.get(1), octaves(hz -> Barrier.edgeDb(leftM, hz)));
        thenReads(rows.get(2), octaves(hz -> Barrier.edgeDb(rightM, hz)));
        thenReads(rows.get(3), taken);
        thenSays("%.3f straight", straightM);
        thenSays(",  d = %.3f", overM);
        thenSays("Round the left end d = %.3f, round the right end d = %.3f.", leftM, rightM);
    }

    /** Round an upright edge at x, unfolded: the heights hardly differ. */
    private static double round(double xM, Line.Spot spot) {
        return Math.hypot(Math.hypot(1.9, 6.5 - xM) + Math.hypot(5.6 - spot.yM(), spot.xM() - xM), 0.75 - spot.zM());
    }

    @Test
    void oneLineAndOneSourceOctaveByOctave() {
        Reaching tenor = reaching(1, "tenor");
        Hears heard = hears(1, "tenor");
        double offDegrees = offAxisDegrees(1, "tenor");
        OctaveCurve atOneMetre = source("tenor").spectrumDb().plus(91 - Level.sumIncoherentDb(source("tenor").spectrumDb().toArray()));
        OctaveCurve own = source("fiddle").spectrumDb()
                .plus(lines.get(0).placement().predicted().typicalDbSpl() - Level.sumIncoherentDb(source("fiddle").spectrumDb().toArray()));
        List<List<String>> rows = table("Line 1 hears the tenor");
        thenReads(rows.get(0), atOneMetre);
        thenReads(rows.get(1), source("tenor").directivityIndexDb().map(index -> Radiation.towardDb(index, offDegrees)));
        thenReads(rows.get(2), tenor.directOctavesDbSpl());
        thenReads(rows.get(5), tenor.reverberantOctavesDbSpl());
        thenReads(rows.get(8), own.minus(heard.octavesDb()));
        thenReads(rows.get(9), own);
        thenReads(rows.get(10), heard.octavesDb());
        for (int band = 0; band < Octaves.COUNT; band++) {
            double straight = number(rows.get(4), band);
            double viaRoom = number(rows.get(7), band);
            assertEquals(number(rows.get(8), band), Level.sumIncoherentDb(straight, viaRoom), 0.011);
            assertEquals(straight, number(rows.get(2), band) + number(rows.get(3), band), 0.011);
            assertEquals(viaRoom, number(rows.get(5), band) + number(rows.get(6), band), 0.011);
        }
        List<List<String>> weighted = table("Line 1 hears the tenor, A-weighted");
        thenReads(weighted.get(0), own.plus(Weighting.octaveWeightingDb()));
        thenReads(weighted.get(1), own.minus(heard.octavesDb()).plus(Weighting.octaveWeightingDb()));
        thenSays("r = sqrt(3.952^2 + 0.491^2 + 1.047^2) = %.3f", heard.distanceM());
        thenSays("= %.1f degrees.", heard.angleDegrees());
        thenSays("M - P makes %.1f degrees.", offDegrees);
        thenSays("the tenor **%.2f dB** under the fiddle", heard.separationDb());
        thenSays("in the octave at %.0f Hz", heard.loudestHz());
        thenSays("%.2f over it, and no turn", heard.roomAllowsDb());
    }

    @Test
    void everyLineHearsEveryOtherSeatAsItIsWorkedOut() {
        List<List<String>> rows = table("Every line and every other seat");
        assertEquals(hears.size(), rows.size());
        assertEquals(7 * 5, rows.size());
        for (List<String> row : rows) {
            int line = Integer.parseInt(row.get(0));
            Hears heard = hears(line, row.get(1));
            Line.Spot spot = lines.get(line - 1).spot();
            thenReads(row.get(2), heard.distanceM());
            thenReads(row.get(3), offAxisDegrees(line, row.get(1)));
            thenReads(row.get(4), heard.angleDegrees());
            thenReads(row.get(5), new Screens(lineUp.gobos()).takenDb(surface(row.get(1)), InRoom.at(spot.xM(), spot.yM(), spot.zM())).at(4));
            thenReads(row.get(6), heard.separationDb());
            thenReads(row.get(7), heard.loudestHz());
            thenReads(row.get(8), heard.roomAllowsDb());
        }
        for (List<String> row : table("Every line and all others")) {
            Listening one = listening.get(Integer.parseInt(row.get(0)) - 1);
            thenReads(row.get(1), one.all().separationDb(one.aimDegrees()));
        }
    }

    @Test
    void everythingArrivesWhenItIsWorkedOutTo() {
        List<Arrival> arrivals = Arrivals.of(lineUp, CATALOGUE).of(List.of(new Plan.Served("tenor", tenor().option())), lines);
        List<List<String>> rows = table("Arrivals");
        assertEquals(arrivals.size(), rows.size());
        for (int i = 0; i < rows.size(); i++) {
            List<String> row = rows.get(i);
            Arrival arrival = arrivals.get(i);
            assertEquals(row.get(0), arrival.seat());
            assertEquals(List.of(Integer.parseInt(row.get(1)), Integer.parseInt(row.get(2))), arrival.lines());
            thenReads(row.get(3), arrival.pathM());
            thenReads(row.get(4), arrival.delayMs());
            thenReads(row.get(5), arrival.samples(48_000));
            thenReads(row.get(6), arrival.firstNullHz());
            thenReads(row.get(7), arrival.levelDifferenceDb());
            thenReads(row.get(8), arrival.rippleDb());
            thenReads(row.get(9), arrival.distanceRatio());
        }
        assertTrue(arrivals.get(0).own() && arrivals.stream().skip(1).noneMatch(Arrival::own));
        thenSays("%.3f ms, first null at", arrivals.get(1).delayMs());
        thenSays("the sum ripples by %.2f dB. It is", arrivals.get(1).rippleDb());
    }

    /** The two microphones of lines 2 and 3, as the advice offers them. */
    private Offer tenor() {
        Seat seat = lineUp.seat("tenor").orElseThrow();
        Seat limited = new Seat(seat.id(), null, seat.source(), seat.xM(), seat.yM(), seat.facingDegrees(), null, null, null, null,
                new Limits(2, null, null, null, null, null, List.of("compact-ribbon", "wide-body-moving-coil"), null), true, null, false);
        return Offers.of(SeatQuestion.of(limited, CATALOGUE), Altered.of(CATALOGUE, lineUp, limited), KnowledgeStore.builtIn().current().rules(), null,
                FloorSurroundings.of(lineUp, limited, CATALOGUE)).all().stream()
                .filter(offer -> offer.technique().equals("two-spots") && offer.mics().get(0).distanceM() == 0.6 && offer.mics().get(1).distanceM() == 0.188)
                .findFirst().orElseThrow();
    }

    private LineUp lineUp() {
        List<Seat> seats = table("Seats").stream().map(row -> Rooms.seat(row.get(0), row.get(1), Double.parseDouble(row.get(2)), Double.parseDouble(row.get(3)),
                Double.parseDouble(row.get(4)))).toList();
        thenSays("The room is 9 wide, 11 deep and 5 high and rings for 0.5 s.");
        thenSays("A gobo 1.6 high stands from (2.5, 5.6) to (5.5, 5.6).");
        return Rooms.lineUp(new Floor(null, 9, 11, 5, 0.5), List.of(new Gobo("g", 2.5, 5.6, 5.5, 5.6, 1.6)), seats.toArray(Seat[]::new));
    }

    private List<Line> lines() {
        List<Line> made = new ArrayList<>();
        for (List<String> row : table("Lines")) {
            Pattern pattern = Stream.of(Pattern.values()).filter(one -> one.id().equals(row.get(3))).findFirst().orElseThrow();
            made.add(Lines.line(lineUp, Integer.parseInt(row.get(0)), row.get(1), row.get(2), pattern, row.get(4), Double.parseDouble(row.get(5)),
                    Double.parseDouble(row.get(6))));
        }
        return made;
    }

    private Source source(String seat) {
        return CATALOGUE.sources().get(lineUp.seat(seat).orElseThrow().source());
    }

    private Point surface(String seat) {
        Seat at = lineUp.seat(seat).orElseThrow();
        return InRoom.at(at.xM(), at.yM(), source(seat).body().heightM());
    }

    private double offAxisDegrees(int line, String seat) {
        Line.Spot spot = lines.get(line - 1).spot();
        Point axis = InRoom.direction(lineUp.seat(seat).orElseThrow(), Standpoint.main(source(seat).body()));
        return axis.apartDegrees(InRoom.at(spot.xM(), spot.yM(), spot.zM()).minus(surface(seat)));
    }

    private Reaching reaching(int line, String seat) {
        return listening.get(line - 1).others().stream().filter(one -> one.seat().equals(seat)).findFirst().orElseThrow();
    }

    private Hears hears(int line, String seat) {
        return hears.stream().filter(one -> one.line() == line && one.seat().equals(seat)).findFirst().orElseThrow();
    }

    private static OctaveCurve octaves(DoubleUnaryOperator ofHz) {
        return OctaveCurve.of(IntStream.range(0, Octaves.COUNT).mapToDouble(band -> ofHz.applyAsDouble(Octaves.centreHz(band))).toArray());
    }

    private static double number(List<String> row, int band) {
        return Double.parseDouble(row.get(band + 1));
    }

    private static void thenReads(List<String> row, OctaveCurve expected) {
        for (int band = 0; band < Octaves.COUNT; band++) {
            thenReads(row.get(band + 1), expected.at(band));
        }
    }

    /** To the last digit that is printed. */
    private static void thenReads(String printed, double found) {
        int point = printed.indexOf('.');
        int digits = point < 0 ? 0 : printed.length() - point - 1;
        assertEquals(Double.parseDouble(printed), found, 0.5 * Math.pow(10, -digits) + 1e-6, printed);
    }

    private void thenSays(String sentence, Object... found) {
        String said = String.format(Locale.ROOT, sentence, found);
        assertTrue(page.contains(said), () -> PAGE + " does not say: " + said);
    }

    /** The rows under a heading, without the head. */
    private List<List<String>> table(String heading) {
        String after = page.substring(page.indexOf("### " + heading + "\n"));
        List<List<String>> rows = new ArrayList<>();
        for (String line : after.lines().dropWhile(one -> !one.startsWith("|")).takeWhile(one -> one.startsWith("|")).skip(2).toList()) {
            rows.add(Stream.of(line.substring(1, line.length() - 1).split("\\|")).map(String::strip).toList());
        }
        assertTrue(!rows.isEmpty(), heading);
        return rows;
    }

    private static String read() {
        try {
            return Files.readString(PAGE);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
