package pairwright.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static pairwright.session.Rooms.CATALOGUE;
import static pairwright.session.Rooms.lineUp;
import static pairwright.session.Rooms.seat;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pairwright.model.Pattern;

class SeatMovesTest {
    private static final Floor YARD = new Floor("open-air", 8, 10, 4, 0.05);
    private static final String CARDIOID = "small-condenser-cardioid";
    /** A trumpet that blows into the microphone of a guitar from a metre and a half. */
    private static final LineUp CROWDED = lineUp(YARD, List.of(new Gobo("g", 4, 6, 7, 6, 1.8)), seat("g", "nylon-guitar", 3, 3, 0),
            seat("t", "trumpet", 3, 5.2, 180), seat("v", "singing-voice", 6, 3, 0));
    private static final List<Line> LINES = lines(CROWDED);

    @Test
    void whoIsInTheWayIsMovedAndTheGainIsWhatTheLinesThenHave() {
        List<Planned.Move> moves = SeatMoves.of(CROWDED, CATALOGUE).of(LINES, progress -> { });
        assertTrue(moves.size() >= 1 && moves.size() <= SeatMoves.MOST, moves::toString);
        for (Planned.Move move : moves) {
            Seat before = CROWDED.seat(move.seat()).orElseThrow();
            assertTrue(move.gainDb() >= 3 + 0.5 * Math.hypot(move.xM() - before.xM(), move.yM() - before.yM()), move::toString);
            List<Seat> seats = CROWDED.seats().stream().map(seat -> seat.id().equals(move.seat())
                    ? seat.at(move.xM(), move.yM(), move.facingDegrees()) : seat).toList();
            LineUp after = CROWDED.seated(seats);
            double sumDb = 0;
            int touched = 0;
            double mostDb = 0;
            List<Line> there = lines(after);
            for (int i = 0; i < LINES.size(); i++) {
                double one = best(CROWDED, LINES.get(i));
                double two = best(after, there.get(i));
                if (Math.abs(two - one) >= SeatMoves.TOUCHED_DB) {
                    sumDb += two - one;
                    touched++;
                }
                mostDb = Math.max(mostDb, two - one);
            }
            assertEquals(sumDb / touched, move.gainDb(), 1e-9, "reckoned anew from the line-up as it is then");
            assertEquals(mostDb, move.worstGainDb(), 1e-9);
        }
        assertEquals(moves.size(), moves.stream().map(Planned.Move::seat).distinct().count());
    }

    private static double best(LineUp lineUp, Line line) {
        Listening one = Hearing.of(lineUp, CATALOGUE).listening(List.of(line)).get(0);
        return Math.max(one.all().separationDb(0), one.all().separationDb(one.all().bestAimDegrees(30)));
    }

    @Test
    void nobodyIsPutIntoAWallAGoboOrAnotherPlayer() {
        for (Planned.Move move : SeatMoves.of(CROWDED, CATALOGUE).of(LINES, progress -> { })) {
            assertTrue(move.xM() >= 0.5 && move.xM() <= 7.5 && move.yM() >= 0.5 && move.yM() <= 9.5, move::toString);
            for (Seat other : CROWDED.seats()) {
                assertTrue(other.id().equals(move.seat()) || Math.hypot(other.xM() - move.xM(), other.yM() - move.yM()) >= 1);
            }
            assertTrue(FloorSpace.apartM(CROWDED.gobos().get(0), move.xM(), move.yM()) >= 0.4);
        }
    }

    @Test
    void whoIsFixedStays() {
        List<Seat> fixed = CROWDED.seats().stream().map(seat -> seat.id().equals("t") ? new Seat(seat.id(), null, seat.source(), seat.xM(), seat.yM(),
                seat.facingDegrees(), null, null, null, null, null, true, null, true) : seat).toList();
        List<Planned.Move> moves = SeatMoves.of(CROWDED.seated(fixed), CATALOGUE).of(LINES, progress -> { });
        assertTrue(moves.stream().noneMatch(move -> move.seat().equals("t")), moves::toString);
        assertTrue(SeatMoves.of(CROWDED, CATALOGUE).of(LINES, progress -> { }).stream().anyMatch(move -> move.seat().equals("t")));
    }

    @Test
    void theDrumsOfAKitAreNotTakenApart() {
        List<Seat> seats = new ArrayList<>(CROWDED.seats());
        seats.add(seat("k", "drum-kit", 3, 5.9, 180));
        LineUp withKit = CROWDED.seated(seats);
        List<Line> lines = lines(withKit);
        assertTrue(SeatMoves.of(withKit, CATALOGUE).of(lines, progress -> { }).stream().noneMatch(move -> List.of("t", "k").contains(move.seat())),
                "0.7 m apart they are one");
        seats.set(3, seat("k", "drum-kit", 3, 6.9, 180));
        assertTrue(SeatMoves.of(CROWDED.seated(seats), CATALOGUE).of(lines, progress -> { }).stream().anyMatch(move -> List.of("t", "k").contains(move.seat())));
    }

    @Test
    void itAnswersTheSameEachTimeAndEndsWhenItIsTold() {
        assertEquals(SeatMoves.of(CROWDED, CATALOGUE).of(LINES, progress -> { }), SeatMoves.of(CROWDED, CATALOGUE).of(LINES, progress -> { }));
        List<Progress> told = new ArrayList<>();
        assertThrows(CancellationException.class, () -> SeatMoves.of(CROWDED, CATALOGUE).of(LINES, progress -> {
            told.add(progress);
            if (progress.done() == 1) {
                throw new CancellationException();
            }
        }));
        assertEquals(List.of(0, 1), told.stream().map(Progress::done).toList());
        assertEquals(3, told.get(0).of());
    }

    @Test
    void whoHearsNobodyNeedsNoBetterSeat() {
        LineUp alone = lineUp(YARD, List.of(), seat("g", "nylon-guitar", 3, 3, 0));
        assertEquals(List.of(), SeatMoves.of(alone, CATALOGUE).of(List.of(Lines.line(alone, 1, "g", CARDIOID, Pattern.CARDIOID, "front", 0.75, 0)), progress -> { }));
    }

    @Test
    void theSentenceSaysWhereToAndWhatFor() {
        Planned.Move move = SeatMoves.of(CROWDED, CATALOGUE).of(LINES, progress -> { }).stream().filter(one -> one.seat().equals("t")).findFirst().orElseThrow();
        assertTrue(move.says().startsWith("The trumpet "), move.says());
        assertTrue(move.says().matches("The trumpet (moved .+ m .+|turned \\d+ degrees to the (left|right)): line \\d \\(.\\) has .+ dB more of its own over the others(; the \\d lines that it touches have .+ dB more on average)?\\."),
                move.says());
    }

    @ParameterizedTest
    @CsvSource({"0, 0, 2, 2, true", "0, 0, 0, 2, false", "0, 2, 2, 0, true", "1.5, 1.5, 2, 2, false", "3, 0, 5, 2, false"})
    void aGoboIsCrossedWhereItStands(double x1M, double y1M, double x2M, double y2M, boolean crossed) {
        assertEquals(crossed, FloorSpace.crosses(new Gobo("g", 0.5, 1, 1.5, 1, 2), x1M, y1M, x2M, y2M));
        assertFalse(FloorSpace.crosses(new Gobo("g", 0.5, 1, 0.5, 1, 2), x1M, y1M, x2M, y2M));
    }

    private static List<Line> lines(LineUp lineUp) {
        return List.of(Lines.line(lineUp, 1, "g", CARDIOID, Pattern.CARDIOID, "front", 0.75, 0),
                Lines.line(lineUp, 2, "t", CARDIOID, Pattern.CARDIOID, position("trumpet"), 0.5, 0),
                Lines.line(lineUp, 3, "v", CARDIOID, Pattern.CARDIOID, "forearm", 0.45, 0));
    }

    private static String position(String source) {
        return CATALOGUE.sources().get(source).positions().get(0).id();
    }
}
