package pairwright.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static pairwright.session.Rooms.CATALOGUE;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import pairwright.acoustics.OctaveCurve;
import pairwright.acoustics.Octaves;
import pairwright.advice.Reaching;
import pairwright.model.Pattern;
import pairwright.model.Point;
import pairwright.model.Source;
import pairwright.model.Standpoint;

/** docs/worked-session.md: its tables, its sentences, and the session it speaks of as the program has it. */
final class WorkedPage {
    private static final Path PAGE = Path.of("docs/worked-session.md");

    private final String page = read();
    private final String prose = page.replaceAll("(?m)^(\\||#).*$", "").replaceAll("`[^`]*`", "").replaceAll("\\s+", " ");
    private final Set<String> says = new LinkedHashSet<>();
    final LineUp lineUp = lineUp();
    final List<Line> lines = lines();
    final Hearing hearing = Hearing.of(lineUp, CATALOGUE);
    final List<Listening> listening = hearing.listening(lines);
    final List<Hears> hears = hearing.of(lines);

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

    Source source(String seat) {
        return CATALOGUE.sources().get(lineUp.seat(seat).orElseThrow().source());
    }

    Point surface(String seat) {
        Seat at = lineUp.seat(seat).orElseThrow();
        return InRoom.at(at.xM(), at.yM(), source(seat).body().heightM());
    }

    double offAxisDegrees(int line, String seat) {
        Line.Spot spot = lines.get(line - 1).spot();
        Point axis = InRoom.direction(lineUp.seat(seat).orElseThrow(), Standpoint.main(source(seat).body()));
        return axis.apartDegrees(InRoom.at(spot.xM(), spot.yM(), spot.zM()).minus(surface(seat)));
    }

    Reaching reaching(int line, String seat) {
        return listening.get(line - 1).others().stream().filter(one -> one.seat().equals(seat)).findFirst().orElseThrow();
    }

    Hears hears(int line, String seat) {
        return hears.stream().filter(one -> one.line() == line && one.seat().equals(seat)).findFirst().orElseThrow();
    }

    static OctaveCurve octaves(DoubleUnaryOperator ofHz) {
        return OctaveCurve.of(IntStream.range(0, Octaves.COUNT).mapToDouble(band -> ofHz.applyAsDouble(Octaves.centreHz(band))).toArray());
    }

    static double number(List<String> row, int band) {
        return Double.parseDouble(row.get(band + 1));
    }

    static void thenReads(List<String> row, OctaveCurve expected) {
        for (int band = 0; band < Octaves.COUNT; band++) {
            thenReads(row.get(band + 1), expected.at(band));
        }
    }

    /** To the last digit that is printed. */
    static void thenReads(String printed, double found) {
        int point = printed.indexOf('.');
        int digits = point < 0 ? 0 : printed.length() - point - 1;
        assertEquals(Double.parseDouble(printed), found, 0.5 * Math.pow(10, -digits) + 1e-6, printed);
    }

    /** That the page says so, wherever its lines break. */
    void thenSays(String sentence, Object... found) {
        String said = String.format(Locale.ROOT, sentence, found).replaceAll("-(0\\.0+)(?![0-9])", "$1").replaceAll("\\s+", " ");
        assertTrue(prose.contains(said), () -> PAGE + " does not say: " + said);
        says.add(said);
    }

    /** What of its prose holds a number that nothing was asked about: no table, no formula, no heading. */
    String unasked() {
        String left = prose;
        for (String said : says.stream().sorted(Comparator.comparingInt(String::length).reversed()).toList()) {
            left = left.replace(said, " ");
        }
        return left;
    }

    /** The rows under a heading, without the head. */
    List<List<String>> table(String heading) {
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
