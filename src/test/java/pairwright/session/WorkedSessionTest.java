package pairwright.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static pairwright.session.Rooms.CATALOGUE;

import java.util.List;
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
import pairwright.model.Point;
import pairwright.model.Source;
import pairwright.model.Standpoint;

/** docs/worked-session.md was reckoned apart from the program: every number in its tables is what the program finds. */
class WorkedSessionTest {
    private final WorkedPage page = new WorkedPage();

    @Test
    void theSourcesAreThoseOfTheCatalogue() {
        for (List<String> row : page.table("Seats")) {
            Source source = CATALOGUE.sources().get(row.get(1));
            Body body = source.body();
            WorkedPage.thenReads(row.get(5), body.heightM());
            WorkedPage.thenReads(row.get(6), body.axisUpDegrees());
            WorkedPage.thenReads(row.get(7), body.axisTurnDegrees() == null ? 0 : body.axisTurnDegrees());
            WorkedPage.thenReads(row.get(8), source.level().typicalDbSpl());
            WorkedPage.thenReads(row.get(9), source.level().centreOffsetM());
        }
        for (List<String> row : page.table("Octaves")) {
            String[] of = row.get(0).split(" ");
            WorkedPage.thenReads(row, switch (of[of.length - 1]) {
                case "spectrum" -> page.source(of[0]).spectrumDb();
                case "index" -> page.source(of[0]).directivityIndexDb();
                case "pattern" -> page.listening.get(Integer.parseInt(of[1]) - 1).pattern().coefficient();
                default -> Weighting.octaveWeightingDb();
            });
        }
        assertEquals(6 + 6 + 7 + 1, page.table("Octaves").size());
    }

    @Test
    void theMicrophonesAreWhereTheyAreWorkedOutToBe() {
        for (List<String> row : page.table("Places")) {
            Line line = page.lines.get(Integer.parseInt(row.get(0)) - 1);
            Standpoint own = Standpoint.of(page.source(line.seat()).body(), Rooms.position(line.source(), line.placement().position()), line.placement().distanceM());
            WorkedPage.thenReads(row.get(1), own.surface().forwardM());
            WorkedPage.thenReads(row.get(2), own.surface().leftM());
            WorkedPage.thenReads(row.get(3), own.surface().upM());
            Point way = own.place().minus(own.surface()).unit();
            String[] direction = row.get(4).replaceAll("[()]", "").split(", ");
            WorkedPage.thenReads(direction[0], way.forwardM());
            WorkedPage.thenReads(direction[1], way.leftM());
            WorkedPage.thenReads(direction[2], way.upM());
            WorkedPage.thenReads(row.get(5), line.spot().xM());
            WorkedPage.thenReads(row.get(6), line.spot().yM());
            WorkedPage.thenReads(row.get(7), line.spot().zM());
        }
        assertEquals(page.lines.size(), page.table("Places").size());
    }

    @Test
    void theGoboTakesWhatItsThreeEdgesDo() {
        Reaching tenor = page.reaching(4, "tenor");
        Line.Spot spot = page.lines.get(3).spot();
        OctaveCurve taken = new Screens(page.lineUp.gobos()).takenDb(page.surface("tenor"), InRoom.at(spot.xM(), spot.yM(), spot.zM()));
        double straightM = tenor.distanceM();
        double overM = Math.hypot(Math.hypot(1.9, 0.85) + Math.hypot(5.6 - spot.yM(), 1.6 - spot.zM()), 6.5 - spot.xM()) - straightM;
        double leftM = round(2.5, spot) - straightM;
        double rightM = round(5.5, spot) - straightM;
        List<List<String>> rows = page.table("The gobo between line 4 and the tenor");
        WorkedPage.thenReads(rows.get(0), WorkedPage.octaves(hz -> Barrier.edgeDb(overM, hz)));
        WorkedPage.thenReads(rows.get(1), WorkedPage.octaves(hz -> Barrier.edgeDb(leftM, hz)));
        WorkedPage.thenReads(rows.get(2), WorkedPage.octaves(hz -> Barrier.edgeDb(rightM, hz)));
        WorkedPage.thenReads(rows.get(3), taken);
        page.thenSays("%.3f straight", straightM);
        page.thenSays(",  d = %.3f", overM);
        page.thenSays("Round the left end d = %.3f, round the right end d = %.3f.", leftM, rightM);
    }

    /** Round an upright edge at x, unfolded: the heights hardly differ. */
    private static double round(double xM, Line.Spot spot) {
        return Math.hypot(Math.hypot(1.9, 6.5 - xM) + Math.hypot(5.6 - spot.yM(), spot.xM() - xM), 0.75 - spot.zM());
    }

    @Test
    void oneLineAndOneSourceOctaveByOctave() {
        Reaching tenor = page.reaching(1, "tenor");
        Hears heard = page.hears(1, "tenor");
        double offDegrees = page.offAxisDegrees(1, "tenor");
        OctaveCurve atOneMetre = page.source("tenor").spectrumDb().plus(91 - Level.sumIncoherentDb(page.source("tenor").spectrumDb().toArray()));
        OctaveCurve own = page.source("fiddle").spectrumDb()
                .plus(page.lines.get(0).placement().predicted().typicalDbSpl() - Level.sumIncoherentDb(page.source("fiddle").spectrumDb().toArray()));
        List<List<String>> rows = page.table("Line 1 hears the tenor");
        WorkedPage.thenReads(rows.get(0), atOneMetre);
        WorkedPage.thenReads(rows.get(1), page.source("tenor").directivityIndexDb().map(index -> Radiation.towardDb(index, offDegrees)));
        WorkedPage.thenReads(rows.get(2), tenor.directOctavesDbSpl());
        WorkedPage.thenReads(rows.get(5), tenor.reverberantOctavesDbSpl());
        WorkedPage.thenReads(rows.get(8), own.minus(heard.octavesDb()));
        WorkedPage.thenReads(rows.get(9), own);
        WorkedPage.thenReads(rows.get(10), heard.octavesDb());
        for (int band = 0; band < Octaves.COUNT; band++) {
            double straight = WorkedPage.number(rows.get(4), band);
            double viaRoom = WorkedPage.number(rows.get(7), band);
            assertEquals(WorkedPage.number(rows.get(8), band), Level.sumIncoherentDb(straight, viaRoom), 0.011);
            assertEquals(straight, WorkedPage.number(rows.get(2), band) + WorkedPage.number(rows.get(3), band), 0.011);
            assertEquals(viaRoom, WorkedPage.number(rows.get(5), band) + WorkedPage.number(rows.get(6), band), 0.011);
        }
        List<List<String>> weighted = page.table("Line 1 hears the tenor, A-weighted");
        WorkedPage.thenReads(weighted.get(0), own.plus(Weighting.octaveWeightingDb()));
        WorkedPage.thenReads(weighted.get(1), own.minus(heard.octavesDb()).plus(Weighting.octaveWeightingDb()));
        page.thenSays("r = sqrt(3.952^2 + 0.491^2 + 1.047^2) = %.3f", heard.distanceM());
        page.thenSays("= %.1f degrees.", heard.angleDegrees());
        page.thenSays("M - P makes %.1f degrees.", offDegrees);
        page.thenSays("the tenor **%.2f dB** under the fiddle", heard.separationDb());
        page.thenSays("in the octave at %.0f Hz", heard.loudestHz());
        page.thenSays("%.2f over it, and no turn", heard.roomAllowsDb());
    }

    @Test
    void everyLineHearsEveryOtherSeatAsItIsWorkedOut() {
        List<List<String>> rows = page.table("Every line and every other seat");
        assertEquals(page.hears.size(), rows.size());
        assertEquals(7 * 5, rows.size());
        for (List<String> row : rows) {
            int line = Integer.parseInt(row.get(0));
            Hears heard = page.hears(line, row.get(1));
            Line.Spot spot = page.lines.get(line - 1).spot();
            WorkedPage.thenReads(row.get(2), heard.distanceM());
            WorkedPage.thenReads(row.get(3), page.offAxisDegrees(line, row.get(1)));
            WorkedPage.thenReads(row.get(4), heard.angleDegrees());
            WorkedPage.thenReads(row.get(5), new Screens(page.lineUp.gobos()).takenDb(page.surface(row.get(1)), InRoom.at(spot.xM(), spot.yM(), spot.zM())).at(4));
            WorkedPage.thenReads(row.get(6), heard.separationDb());
            WorkedPage.thenReads(row.get(7), heard.loudestHz());
            WorkedPage.thenReads(row.get(8), heard.roomAllowsDb());
        }
        for (List<String> row : page.table("Every line and all others")) {
            Listening one = page.listening.get(Integer.parseInt(row.get(0)) - 1);
            WorkedPage.thenReads(row.get(1), one.all().separationDb(one.aimDegrees()));
        }
    }

    @Test
    void everythingArrivesWhenItIsWorkedOutTo() {
        List<Arrival> arrivals = Arrivals.of(page.lineUp, CATALOGUE).of(List.of(new Plan.Served("tenor", tenor().option())), page.lines);
        List<List<String>> rows = page.table("Arrivals");
        assertEquals(arrivals.size(), rows.size());
        for (int i = 0; i < rows.size(); i++) {
            List<String> row = rows.get(i);
            Arrival arrival = arrivals.get(i);
            assertEquals(row.get(0), arrival.seat());
            assertEquals(List.of(Integer.parseInt(row.get(1)), Integer.parseInt(row.get(2))), arrival.lines());
            WorkedPage.thenReads(row.get(3), arrival.pathM());
            WorkedPage.thenReads(row.get(4), arrival.delayMs());
            WorkedPage.thenReads(row.get(5), arrival.samples(48_000));
            WorkedPage.thenReads(row.get(6), arrival.firstNullHz());
            WorkedPage.thenReads(row.get(7), arrival.levelDifferenceDb());
            WorkedPage.thenReads(row.get(8), arrival.rippleDb());
            WorkedPage.thenReads(row.get(9), arrival.distanceRatio());
        }
        assertTrue(arrivals.get(0).own() && arrivals.stream().skip(1).noneMatch(Arrival::own));
        page.thenSays("%.3f ms, first null at", arrivals.get(1).delayMs());
        page.thenSays("the sum ripples by %.2f dB. It is", arrivals.get(1).rippleDb());
    }

    /** The two microphones of lines 2 and 3, as the advice offers them. */
    private Offer tenor() {
        Seat seat = page.lineUp.seat("tenor").orElseThrow();
        Seat limited = new Seat(seat.id(), null, seat.source(), seat.xM(), seat.yM(), seat.facingDegrees(), null, null, null, null,
                new Limits(2, null, null, null, null, null, List.of("compact-ribbon", "wide-body-moving-coil"), null), true, null, false);
        return Offers.of(SeatQuestion.of(limited, CATALOGUE), Altered.of(CATALOGUE, page.lineUp, limited), KnowledgeStore.builtIn().current().rules(), null,
                FloorSurroundings.of(page.lineUp, limited, CATALOGUE)).all().stream()
                .filter(offer -> offer.technique().equals("two-spots") && offer.mics().get(0).distanceM() == 0.6 && offer.mics().get(1).distanceM() == 0.188)
                .findFirst().orElseThrow();
    }
}
