package pairwright.sheet;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import pairwright.session.HearingWords;
import pairwright.session.Hears;
import pairwright.session.Line;
import pairwright.session.Plan;
import pairwright.session.Seat;

/** What every microphone hears of everybody else, as a table that is the picture, and line by line in words. */
public final class BleedPage {
    /** The side of a mid-side pair hears beside its own source on purpose: whatever it hears is no cause for alarm. */
    private static final String BESIDE = "heard-beside";
    /** Where the shade of a cell changes. Nothing is judged by it; the rules of plans do that. */
    private static final double[] STEPS_DB = {0, 6, 12, 18};

    private static final int MOST_SAID = 3;

    private BleedPage() {
    }

    /**
     * What it shows.
     *
     * @param seats the columns
     * @param rows the lines that hear anything
     * @param steps what the shades mean, loudest first
     * @param silent lines that hear nothing of the room, in a sentence; empty for none
     */
    public record Content(List<String> seats, List<Row> rows, List<Step> steps, String silent) {
    }

    /** A shade: its name in the style sheet and what it means. */
    public record Step(String shade, String says) {
    }

    /** One line: its cells in the order of the columns, what it hears in sentences, and where the worst of that is held against recordings. */
    public record Row(int number, String name, String mic, List<Cell> cells, List<String> says, List<Check> checks) {
    }

    /** A neighbour to record, and the address where that is held against the plan. */
    public record Check(String neighbour, String href) {
    }

    /**
     * What a line hears of a seat.
     *
     * @param shade its name in the style sheet: own, none, or by the separation
     * @param separation own sound over this one, in dB; empty where it is the own, or nothing is heard
     * @param octave in which most of it is heard; as short as it can be written
     * @param hertz the same as it is said
     */
    public record Cell(String shade, String separation, String octave, String hertz) {
    }

    /** What the address asks for. */
    public static Page of(AtPlan at) {
        PlanChosen chosen = PlanChosen.of(at);
        PlanFrame frame = PlanFrame.of(at, "Heard where", "bleed", List.of(), chosen, chosen.fault().isEmpty() ? List.of() : List.of(chosen.fault()));
        return chosen.plan() == null ? PlanSheets.without(at, frame, chosen) : at.page(200, "bleed", frame, content(at, chosen.plan()));
    }

    static Content content(AtPlan at, Plan plan) {
        List<Seat> seats = at.lineUp().seats().stream().filter(seat -> !plan.leftOut().contains(seat.id()) || plan.bleed().stream().anyMatch(one -> one.seat().equals(seat.id()))).toList();
        List<Row> rows = new ArrayList<>();
        List<String> silent = new ArrayList<>();
        HearingWords words = HearingWords.of(at.lineUp());
        for (Line line : plan.lines()) {
            List<Hears> heard = plan.bleed().stream().filter(hears -> hears.line() == line.number()).toList();
            if (heard.isEmpty()) {
                silent.add(line.number() + " " + line.name());
                continue;
            }
            rows.add(new Row(line.number(), line.name(), line.placement().name() + (line.side() ? ", the side: it is to hear beside" : ""), seats.stream().map(seat -> cell(at, line, heard, seat)).toList(), words.of(line, heard, MOST_SAID).stream().map(at.reader()::sentence).toList(), checks(at, line, heard)));
        }
        return new Content(seats.stream().map(at::seatName).toList(), rows, steps(plan), silent.isEmpty() ? "" : "Nothing of the room reaches " + String.join(", ", silent) + ".");
    }

    /** Those that come nearest to the own sound. */
    private static List<Check> checks(AtPlan at, Line line, List<Hears> heard) {
        return heard.stream().sorted(Comparator.comparingDouble(Hears::separationDb)).limit(MOST_SAID).map(hears -> {
            String neighbour = at.lineUp().seat(hears.seat()).map(at::seatName).orElse(hears.seat());
            return new Check(neighbour, at.visit().to(Param.address("/listen", List.of(new Param("what", "bleed"), new Param("of", line.number() + " " + line.name() + ", beside the " + neighbour),
                    new Param("expectedOctavesDb", Arrays.stream(hears.octavesDb().toArray()).mapToObj(db -> Param.number(Math.rint(db * 10) / 10)).collect(Collectors.joining(", ")))))));
        }).toList();
    }

    private static Cell cell(AtPlan at, Line line, List<Hears> heard, Seat seat) {
        if (line.seat().equals(seat.id())) {
            return new Cell("own", "", "", "");
        }
        return heard.stream().filter(hears -> hears.seat().equals(seat.id())).findFirst().map(hears -> new Cell(shade(line.side(), hears.separationDb()),
                at.measures().number(hears.separationDb(), 0), octave(hears.loudestHz()), at.reader().frequency(hears.loudestHz()))).orElse(new Cell("none", "", "", ""));
    }

    static String shade(boolean side, double separationDb) {
        return side ? BESIDE : shade(separationDb);
    }

    /** heard-4 for what is louder than the own sound, down to heard-0 for what is far below it. */
    static String shade(double separationDb) {
        int louder = STEPS_DB.length;
        // as it is shown, so that no cell that reads 6 has the shade of 5
        for (double step : STEPS_DB) {
            if (Math.round(separationDb) >= step) {
                louder--;
            }
        }
        return "heard-" + louder;
    }

    private static List<Step> steps(Plan plan) {
        List<Step> steps = new ArrayList<>(List.of(new Step("heard-4", "below 0 dB: louder than its own"), new Step("heard-3", "0 to 5 dB"), new Step("heard-2", "6 to 11 dB"),
                new Step("heard-1", "12 to 17 dB"), new Step("heard-0", "18 dB and more"), new Step("own", "its own source")));
        if (plan.lines().stream().anyMatch(Line::side)) {
            steps.add(new Step(BESIDE, "the side of a mid-side pair: it is to hear beside"));
        }
        return steps;
    }

    /** "63", "500", "1k": as short as it can be. */
    private static String octave(double hertz) {
        return hertz < 1000 ? Long.toString(Math.round(hertz)) : Math.round(hertz / 1000) + "k";
    }
}
