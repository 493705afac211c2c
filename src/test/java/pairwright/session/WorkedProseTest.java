package pairwright.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import pairwright.acoustics.Barrier;
import pairwright.acoustics.Delay;
import pairwright.acoustics.FirstOrder;
import pairwright.acoustics.Level;
import pairwright.acoustics.OctaveCurve;
import pairwright.acoustics.Octaves;
import pairwright.acoustics.Room;
import pairwright.acoustics.Weighting;
import pairwright.model.Point;
import pairwright.model.Source;
import pairwright.model.Standpoint;

/** What docs/worked-session.md works out between its tables is what the program finds, step by step, and no number of it goes unasked. */
class WorkedProseTest {
    /** What is left of a page of which every number was asked about: which line, which step, which octave, how the angle of a formula is written. */
    private static final Pattern NAMES = Pattern.compile("(?i)lines? \\d( and \\d)?|step \\d|\\d of the session|1 kHz|3-to-1|acos\\(a\\.b");

    private final WorkedPage page = new WorkedPage();
    private final Line.Spot one = page.lines.get(0).spot();
    private final Line.Spot four = page.lines.get(3).spot();
    private final Source tenor = page.source("tenor");
    private final Hears heard = page.hears(1, "tenor");
    private final OctaveCurve toFiddle = octaves(0.7, "fiddle");
    private OctaveCurve straight;
    private OctaveCurve byTheRoom;

    @BeforeEach
    void hear() {
        OctaveCurve pattern = page.listening.get(0).pattern().coefficient();
        straight = page.reaching(1, "tenor").directOctavesDbSpl().plus(pattern.map(a -> FirstOrder.responseDb(a, heard.angleDegrees(), FirstOrder.PRACTICAL_NULL_DB)));
        byTheRoom = page.reaching(1, "tenor").reverberantOctavesDbSpl().plus(pattern.map(a -> 10 * Math.log10(FirstOrder.randomEfficiency(a))));
    }

    private OctaveCurve octaves(double distanceM, String seat) {
        Source source = page.source(seat);
        double levelDb = Level.withCentreOffsetDbSpl(source.level().typicalDbSpl(), distanceM, source.level().centreOffsetM());
        return source.spectrumDb().plus(levelDb - Level.sumIncoherentDb(source.spectrumDb().toArray()));
    }

    private static double weightedDb(OctaveCurve octaves) {
        return Level.sumIncoherentDb(octaves.plus(Weighting.octaveWeightingDb()).toArray());
    }

    private static Object[] xyz(Point point) {
        return new Object[] {InRoom.xM(point) + 0.0, InRoom.yM(point) + 0.0, point.upM() + 0.0};
    }

    private static Object[] all(Object... some) {
        return Stream.of(some).flatMap(one -> one instanceof Object[] several ? Stream.of(several) : Stream.of(one)).toArray();
    }

    @Test
    void howDirectionsAndSpectraAreWritten() {
        page.thenSays("who faces 0 looks up the plan, who faces 90 to the right.");
        assertEquals(1, InRoom.yM(InRoom.direction(Rooms.seat("any", "violin", 0, 0, 0), Point.FORWARD)), 1e-12);
        assertEquals(1, InRoom.xM(InRoom.direction(Rooms.seat("any", "violin", 0, 0, 90), Point.FORWARD)), 1e-12);
        page.thenSays("An aim above 0 turns a microphone to the left as whoever stands behind it sees it");
        page.thenSays("which points at its own source where the aim is 0.");
        assertTrue(four.headingDegrees() < InRoom.headingDegrees(straightOfFour(), 0), "to the left is against the clock");
        page.thenSays("Spectrum of each source in dB, strongest octave 0;");
        page.lineUp.seats().forEach(seat -> assertEquals(0, page.source(seat.id()).spectrumDb().at(page.source(seat.id()).spectrumDb().highestBand()), seat.id()));
        page.thenSays("goes of it with Q = 10^(index/10) (");
    }

    /** Where line 4 would look if it were not turned. */
    private Point straightOfFour() {
        Standpoint own = Standpoint.of(page.source("guitar").body(), Rooms.position("nylon-guitar", "lower-bout"), 0.4);
        return InRoom.direction(page.lineUp.seat("guitar").orElseThrow(), own.surface().minus(own.place())).unit();
    }

    @Test
    void whereTheMicrophoneOfTheGuitarIs() {
        Standpoint own = Standpoint.of(page.source("guitar").body(), Rooms.position("nylon-guitar", "lower-bout"), 0.4);
        double share = Math.cos(Math.toRadians(45));
        page.thenSays("the speed of sound is %.0f m/s", Delay.SPEED_OF_SOUND_M_PER_S);
        page.thenSays("from a point %.2f to the right of the middle and %.2f under it: (%.0f, %.2f, %.2f).", -own.surface().leftM(),
                page.source("guitar").body().heightM() - own.surface().upM(), own.surface().forwardM(), own.surface().leftM(), own.surface().upM());
        page.thenSays("The place lies %.0f degrees off the axis, which points forward", Rooms.position("nylon-guitar", "lower-bout").offAxisDegrees().typical());
        page.thenSays("the direction is (cos 45, -sin 45, 0) = (%.4f, %.4f, 0)", share, -share);
        page.thenSays("At 0.4 that is (0 + 0.4 * %.4f, %.2f - 0.4 * %.4f, %.2f) = (%.4f, %.4f, %.2f). The player at (2, 4) faces 60, sin 60 = %.4f, cos 60 = %.1f:",
                share, own.surface().leftM(), share, own.surface().upM(), own.place().forwardM(), own.place().leftM(), own.place().upM(),
                Math.sin(Math.toRadians(60)), Math.cos(Math.toRadians(60)));
        page.thenSays("x = 2 + %.4f * 0.8660 + %.4f * 0.5 = %.3f", own.place().forwardM(), -own.place().leftM(), four.xM());
        page.thenSays("y = 4 + %.4f * 0.5 - %.4f * 0.8660 = %.3f", own.place().forwardM(), -own.place().leftM(), four.yM());
    }

    @Test
    void howFarAwayTheTenorIsFromLineOneAndFromWhichSide() {
        Point mic = InRoom.at(one.xM(), one.yM(), one.zM());
        Point way = page.surface("tenor").minus(mic);
        Point looks = page.surface("fiddle").minus(mic);
        page.thenSays("M = (%.3f, %.3f, %.3f), P = (6.5, 7.5, 0.75), so P - M = (%.3f, %.3f, %.3f) and", all(xyz(mic), xyz(way)));
        page.thenSays("r = sqrt(%.3f^2 + %.3f^2 + %.3f^2) = %.3f", Math.abs(InRoom.xM(way)), Math.abs(InRoom.yM(way)), Math.abs(way.upM()), heard.distanceM());
        page.thenSays("The fiddle's surface is at (%.3f, %.3f, %.3f), so the microphone looks along (%.3f, %.3f, %.3f), and with that P - M makes acos(%.3f / (%.3f * %.3f)) = %.1f degrees.",
                all(xyz(page.surface("fiddle")), xyz(looks), way.dot(looks), way.lengthM(), looks.lengthM(), heard.angleDegrees()));
        Point axis = InRoom.direction(page.lineUp.seat("tenor").orElseThrow(), Standpoint.main(tenor.body()));
        page.thenSays("The saxophone faces 210 and its bell %.0f degrees up: its axis is (cos 45 * sin 210, cos 45 * cos 210, sin 45) = (%.3f, %.3f, %.3f), and with that M - P makes %.1f degrees.",
                all(tenor.body().axisUpDegrees(), xyz(axis), page.offAxisDegrees(1, "tenor")));
    }

    @Test
    void howATurnedMicrophoneLooks() {
        Point straight = straightOfFour();
        Point across = InRoom.at(-InRoom.yM(straight), InRoom.xM(straight), 0).unit();
        page.thenSays("Line 4 looks along u = (%.3f, %.3f, %.3f) and is turned by 15 degrees. The level direction across it, to the left as it looks, is v = (-u_y, u_x, 0) made one long = (%.3f, %.3f, %.3f).",
                all(xyz(straight), xyz(across)));
        Point axis = straight.times(Math.cos(Math.toRadians(15))).plus(across.times(Math.sin(Math.toRadians(15))));
        page.thenSays("Its axis is u cos 15 + v sin 15 = (%.3f, %.3f, %.3f).", xyz(axis));
        assertEquals(four.headingDegrees(), InRoom.headingDegrees(axis, 0), 1e-9, "and there the plan has it look");
    }

    @Test
    void whereTheLineToTheTenorMeetsTheScreen() {
        double share = (7.5 - 5.6) / (7.5 - four.yM());
        page.thenSays("from (6.5, 7.5, 0.75) to (%.3f, %.3f, %.3f), %.3f straight. The line is at y = 5.6 after a share %.4f of its length, at x = %.3f, z = %.3f:",
                four.xM(), four.yM(), four.zM(), page.reaching(4, "tenor").distanceM(), share, 6.5 + share * (four.xM() - 6.5), 0.75 + share * (four.zM() - 0.75));
        double toEdgeM = Math.hypot(1.9, 0.85);
        double fromEdgeM = Math.hypot(5.6 - four.yM(), 1.6 - four.zM());
        double alongM = 6.5 - four.xM();
        double overM = Math.hypot(toEdgeM + fromEdgeM, alongM);
        page.thenSays("which is %.3f off the one and %.3f off the other, %.3f along it:", toEdgeM, fromEdgeM, alongM);
        page.thenSays("sqrt((%.3f + %.3f)^2 + %.3f^2) = %.3f, d = %.3f", toEdgeM, fromEdgeM, alongM, overM, overM - page.reaching(4, "tenor").distanceM());
        page.thenSays("no more than %.0f (", Barrier.MOST_DB);
    }

    @Test
    void whatComesStraightAndByWayOfTheRoom() {
        double sumDb = Level.sumIncoherentDb(tenor.spectrumDb().toArray());
        page.thenSays("10 lg of that sum is %.2f, so its octave at 500 Hz has 91 + %.0f - %.2f = %.2f.", sumDb, tenor.spectrumDb().at(3), sumDb, 91 + tenor.spectrumDb().at(3) - sumDb);
        double centreM = tenor.level().centreOffsetM();
        page.thenSays("here 20 lg(%.3f / %.3f) = %.2f;", heard.distanceM() + centreM, 1 + centreM, 20 * Math.log10((heard.distanceM() + centreM) / (1 + centreM)));
        page.thenSays("no less than %.0f (", FirstOrder.PRACTICAL_NULL_DB);
        double absorptionM2 = Room.absorptionM2(9 * 11 * 5, 0.5);
        page.thenSays("= %.4f * %d / 0.5 = %.2f square metres", 24 * Math.log(10) / Delay.SPEED_OF_SOUND_M_PER_S, 9 * 11 * 5, absorptionM2);
        page.thenSays("with 10 lg(4 pi) = %.2f and 10 lg(4 / %.2f) = %.2f;", 10 * Math.log10(4 * Math.PI), absorptionM2, 10 * Math.log10(4 / absorptionM2));
        double fiddleM = page.source("fiddle").level().centreOffsetM();
        page.thenSays("the fiddle at 0.7 has fallen by 20 lg(%.2f / %.2f) = %.2f,", 0.7 + fiddleM, 1 + fiddleM, 20 * Math.log10((0.7 + fiddleM) / (1 + fiddleM)));
        List<List<String>> rows = page.table("Line 1 hears the tenor");
        OctaveCurve pattern = page.listening.get(0).pattern().coefficient();
        WorkedPage.thenReads(rows.get(3), pattern.map(a -> FirstOrder.responseDb(a, heard.angleDegrees(), FirstOrder.PRACTICAL_NULL_DB)));
        WorkedPage.thenReads(rows.get(4), straight);
        WorkedPage.thenReads(rows.get(6), pattern.map(a -> 10 * Math.log10(FirstOrder.randomEfficiency(a))));
        WorkedPage.thenReads(rows.get(7), byTheRoom);
        WorkedPage.thenReads(rows.get(9), toFiddle);
        WorkedPage.thenReads(page.table("Line 1 hears the tenor, A-weighted").get(2), byTheRoom.plus(Weighting.octaveWeightingDb()));
    }

    @Test
    void whatIsHeardInOneNumber() {
        OctaveCurve together = OctaveCurve.of(IntStream.range(0, Octaves.COUNT).mapToDouble(band -> Level.sumIncoherentDb(straight.at(band), byTheRoom.at(band))).toArray());
        page.thenSays("The fiddle comes to %.2f, the tenor to %.2f: line 1 hears the tenor **%.2f dB** under the fiddle. Most of it, weighted, is in the octave at %.0f Hz.",
                weightedDb(toFiddle), weightedDb(together), heard.separationDb(), heard.loudestHz());
        page.thenSays("it would hear %.2f: the fiddle would be %.2f over it", weightedDb(byTheRoom), heard.roomAllowsDb());
        Map<String, Double> hears = page.hears.stream().filter(one -> one.line() == 1).collect(Collectors.toMap(Hears::seat, Hears::separationDb));
        page.thenSays("for line 1, of %.2f, %.2f, %.2f, %.2f, %.2f, that is %.2f.", hears.get("tenor"), hears.get("guitar"), hears.get("bass"), hears.get("piano"), hears.get("voice"),
                page.listening.get(0).all().separationDb(page.listening.get(0).aimDegrees()));
    }

    @Test
    void whenItArrives() {
        double apartM = 0.6 - 0.188;
        double centreM = tenor.level().centreOffsetM();
        double lowerDb = 20 * Math.log10((0.6 + centreM) / (0.188 + centreM));
        double share = Math.pow(10, -lowerDb / 20);
        page.thenSays("Lines 2 and 3 have the tenor at 0.6 and at 0.188: %.3f apart. That is 1000 * %.3f / 343 = %.3f ms, or %.3f / 343 * 48000 = %.1f samples; their sum has its first null at 343 / (2 * %.3f) = %.1f Hz.",
                apartM, apartM, Delay.timeMs(apartM), apartM, Delay.samples(apartM, 48_000), apartM, Delay.nullHz(apartM, 1));
        page.thenSays("line 2 has it 20 lg(%.3f / %.3f) = %.2f dB lower than line 3, and the sum ripples by with g = 10^(-%.2f/20) = %.3f: %.2f dB.", 0.6 + centreM, 0.188 + centreM, lowerDb,
                lowerDb, share, Delay.rippleDb(lowerDb));
        double straightDb = weightedDb(straight);
        double underDb = weightedDb(toFiddle) - straightDb;
        page.thenSays("Line 1 hears of the tenor straight, weighted, %.2f, of the fiddle %.2f: %.2f dB lower than line 3 has the tenor.", straightDb, weightedDb(toFiddle), underDb);
        double laterM = heard.distanceM() - 0.188;
        page.thenSays("It comes %.3f - 0.188 = %.3f later: %.3f ms, first null at %.1f Hz. With g = 10^(-%.2f/20) = %.3f the sum ripples by %.2f dB. It is %.2f times as far:",
                heard.distanceM(), laterM, Delay.timeMs(laterM), Delay.nullHz(laterM, 1), underDb, Math.pow(10, -underDb / 20), Delay.rippleDb(underDb), heard.distanceM() / 0.188);
        page.thenSays("the 3-to-1 rule would ask for 3, for which equal sources at omnis would leave %.1f dB.", Delay.rippleDb(20 * Math.log10(3)));
        page.thenSays("What ripples by less than %.0f dB is left out.", Arrivals.LEAST_RIPPLE_DB);
    }

    /** The others of this class ask page by page; here all of them ask one page, and what is left holds no number but names. */
    @Test
    void noNumberOfThePageGoesUnasked() {
        howDirectionsAndSpectraAreWritten();
        whereTheMicrophoneOfTheGuitarIs();
        howFarAwayTheTenorIsFromLineOneAndFromWhichSide();
        howATurnedMicrophoneLooks();
        whereTheLineToTheTenorMeetsTheScreen();
        double straightM = page.reaching(4, "tenor").distanceM();
        page.thenSays("Round the left end d = %.3f, round the right end d = %.3f.", round(2.5) - straightM, round(5.5) - straightM);
        whatComesStraightAndByWayOfTheRoom();
        whatIsHeardInOneNumber();
        whenItArrives();
        assertEquals(List.of(), Pattern.compile("[^.:;]{0,40}\\d+[^.:;]{0,20}").matcher(NAMES.matcher(page.unasked()).replaceAll(" ")).results().map(MatchResult::group).toList(),
                "nobody asks about these numbers");
    }

    private double round(double xM) {
        return Math.hypot(Math.hypot(1.9, 6.5 - xM) + Math.hypot(5.6 - four.yM(), four.xM() - xM), 0.75 - four.zM());
    }
}
