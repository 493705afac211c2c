package pairwright.session;

import java.util.ArrayList;
import java.util.List;
import pairwright.acoustics.OctaveCurve;
import pairwright.advice.Advisor;
import pairwright.advice.KnowledgeStore;
import pairwright.model.Effect;
import pairwright.model.Given;
import pairwright.model.Option;
import pairwright.model.Placement;
import pairwright.model.Request;
import pairwright.model.Severity;

/** A plan made by hand for four of a sextet, so that pages can be looked at without planning: its options are real answers, its numbers are made up. */
public final class SmallPlan {
    private static final KnowledgeStore KNOWLEDGE = KnowledgeStore.builtIn();
    private static final Advisor ADVISOR = new Advisor(KNOWLEDGE::current);
    private static final List<String[]> WHO = List.of(new String[] {"tenor", "Nora", "tenor-saxophone"}, new String[] {"kit", null, "drum-kit"},
            new String[] {"bass", "Abe", "double-bass"}, new String[] {"fiddle", null, "violin"});

    private SmallPlan() {
    }

    /** Who plays where. */
    public static LineUp lineUp() {
        List<Seat> seats = new ArrayList<>();
        for (int i = 0; i < WHO.size(); i++) {
            String[] who = WHO.get(i);
            seats.add(new Seat(who[0], who[1], who[2], 2 + 2 * i, i % 2 == 0 ? 2 : 4.5, i % 2 == 0 ? 0 : 180, null, null, null, null, null, i < 3, null, false));
        }
        return new LineUp("Folk-jazz sextet, first day", new Floor(null, 10, 7, 4, 0.6), seats, List.of(new Gobo("screen-1", 5, 3, 7, 3, 1.4)), null, null, null, null, 3, new SetUpTime(40, 2));
    }

    /** All three of them; the second without the fiddle. */
    public static Planned planned() {
        return new Planned(List.of(plan(1), plan(2), plan(3)), List.of(), List.of(),
                List.of(new Planned.Move("kit", 6, 5.5, 200, 2.4, 1, 4.1, "The drum kit would be better 1 m farther back, turned to the right: the lines it touches gain 2.4 dB on average.")),
                List.of("Nobody said how long the session lasts; four hours are taken."), "rules-1", "catalogue-1");
    }

    /** None of them. */
    public static Planned impossible() {
        return new Planned(List.of(), List.of(new Planned.Short("boom stand", 4, 2, List.of("tenor", "kit"))),
                List.of(new Planned.WayOut("borrow", "Borrow 2 boom stands.", 2, 41.2), new Planned.WayOut("drop", "Do without the fiddle.", 6, 33.5)), List.of(), List.of(), "rules-1",
                "catalogue-1");
    }

    /** One of them, proven to be the best. */
    public static Plan plan(int rank) {
        return plan(rank, 0);
    }

    /** One of them, with so much room above it. */
    public static Plan plan(int rank, double gap) {
        LineUp lineUp = lineUp();
        List<Plan.Served> served = new ArrayList<>();
        List<Line> lines = new ArrayList<>();
        for (Seat seat : lineUp.seats()) {
            if (rank == 2 && seat.id().equals("fiddle")) {
                continue;
            }
            List<Option> options = ADVISOR.ask(new Request(null, seat.source(), null, null, null, null, null, null, null, null, null, null, null, null)).options();
            Option option = options.get(Math.min(options.size(), rank) - 1);
            served.add(new Plan.Served(seat.id(), option));
            for (int mic = 1; mic <= option.mics().size(); mic++) {
                lines.add(line(lines.size() + 1, seat, option.mics().get(mic - 1), mic, option.mics().size()));
            }
        }
        List<Hears> bleed = new ArrayList<>();
        for (Line line : lines) {
            for (Seat other : lineUp.seats()) {
                if (!other.id().equals(line.seat()) && line.spot() != null) {
                    double separationDb = (line.number() * 7 + other.id().length() * 5) % 31 - 4;
                    bleed.add(new Hears(line.number(), other.id(), other.source(), 2.2 + line.number() * 0.3, 120, other.id().equals("kit") ? 6.2 : 0, separationDb,
                            OctaveCurve.flat(separationDb), 250 * (1 << line.number() % 4), 21.0, separationDb - line.number() % 3 * 2,
                            line.placement().aimDegrees(), separationDb));
                }
            }
        }
        Said danger = new Said("SAF-005", List.of("kit"), List.of(), Effect.CAUTION, 0, Severity.DANGER, "Stands over people's heads are weighed down.", List.of(), "Practice");
        Said care = new Said("PWR-001", List.of("tenor"), List.of(1), Effect.CAUTION, 0, Severity.CARE, "Phantom power stays off on Rack A until the ribbon is out.", List.of(), "Practice");
        List<Arrival> timing = List.of(
                new Arrival("kit", "drum-kit", List.of(2, 3), true, 1.02, 2.97, 168.0, 3.1, 11.2, 3.4, false, Arrival.Treat.ALIGN, List.of()),
                new Arrival("kit", "drum-kit", List.of(2, 1), false, 2.4, 7.0, 71.4, 14.0, 3.4, 6, false, Arrival.Treat.WATCH, List.of(care)),
                new Arrival("tenor", "tenor-saxophone", List.of(1, 2), false, 2.2, 6.41, 78.0, 22.0, 1.4, 7, true, Arrival.Treat.LEAVE, List.of()));
        double options = served.stream().mapToDouble(one -> one.option().score()).sum();
        List<Said> reasons = List.of(new Said("TON-001", List.of("tenor", "fiddle"), List.of(), Effect.FOR, 1.5, null, "The two differ in tone by 4 dB, so they sound apart.", List.of(), "Estimate"),
                new Said("LVL-001", List.of("kit"), List.of(), Effect.AGAINST, -2, null, "The kit has two microphones more than it had on the first day.", List.of(), "Estimate"));
        double score = options - 0.5;
        return new Plan(rank, score, gap == 0, score + gap, served, rank == 2 ? List.of("fiddle") : List.of(), lines, bleed, timing,
                List.of(new Plan.Supply("Rack A", true, 11.5, 40.0, 3, 8), new Plan.Supply("Loft 1", false, 0, null, 1, 1)),
                List.of(new Plan.Count("channels", lines.size(), 9), new Plan.Count("boom stands", 3, 4)), new Plan.SetUp(40, 2, 300 * lines.size()),
                List.of("Switch phantom power off on Rack A.", "Patch lines 1 to " + lines.size() + ".", "Switch phantom power on for lines 2 and 3, with the channels down."), reasons, List.of(danger, care));
    }

    private static Line line(int number, Seat seat, Placement mic, int which, int of) {
        String unit = "barn-" + mic.micType() + "-" + which;
        boolean air = mic.heightM() != null;
        String name = (seat.player() == null ? seat.id() : seat.player()) + (of > 1 ? " " + which : "");
        return new Line(number, "rack-a-" + number, "Rack A " + number, "Rack A", new Given(unit, "Barn " + mic.micType() + " " + which, "0" + number, number % 3 == 0 ? null : "Shelf " + number % 3, number == 1 ? "Hums near the lamp" : null, null, null, null),
                seat.id(), name, seat.source(), which, mic, air ? new Line.Spot(seat.xM(), seat.yM() + 0.5, mic.heightM(), 180, 0) : null, air ? "boom-" + number : null,
                air ? "Boom " + number : null, air ? StandKind.BOOM : null, air ? 1.4 : null, null, null, 0, mic.phantom(), mic.phantom(), mic.currentMa(), 34.0, air ? 63.0 : null, new Between(null, false, null, null, 0, mic.padDb(), null), List.of());
    }
}
