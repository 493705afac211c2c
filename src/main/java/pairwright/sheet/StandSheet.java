package pairwright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import pairwright.drawing.Reader;
import pairwright.model.Lead;
import pairwright.model.Mount;
import pairwright.model.PowerNeed;
import pairwright.session.Between;
import pairwright.session.Leads;
import pairwright.session.Line;
import pairwright.session.Plan;
import pairwright.session.StandKind;

/** What stands and hangs where: stands, what needs none, and leads. */
public final class StandSheet {
    /** What is as steady as that is no more so for being told exactly. */
    private static final double STEADY_RATIO = 10;
    private static final double FOOT_M = 0.3048;

    private StandSheet() {
    }

    /**
     * What it shows.
     *
     * @param counts how many of each kind of stand
     * @param rows line by line
     * @param leads how many leads, and how long all of it takes, in sentences
     */
    public record Content(List<Count> counts, List<Row> rows, List<String> leads) {
    }

    /** So many of a kind, counted without those that carry two more than once. */
    public record Count(String kind, int stands) {
    }

    /** One line: what holds it, which stand that is, how high, how steady, and its lead. */
    public record Row(int number, String name, String held, String stand, String height, String steady, boolean tips, String lead) {
    }

    static Content of(AtPlan at, Plan plan) {
        List<Count> counts = new ArrayList<>();
        for (StandKind kind : StandKind.values()) {
            int stands = (int) plan.lines().stream().filter(line -> line.standKind() == kind && line.sharesStandWith() == null).count();
            if (stands > 0) {
                counts.add(new Count(kind(kind), stands));
            }
        }
        Leads leads = leads(at, plan);
        return new Content(counts, plan.lines().stream().map(line -> row(at, line, leads)).toList(), says(at, plan, leads));
    }

    private static Row row(AtPlan at, Line line, Leads leads) {
        boolean tips = line.standRatio() != null && line.standRatio() < 1;
        String steady = line.standRatio() == null ? "" : line.standRatio() >= STEADY_RATIO ? "holds ten times what tips it, or more" : "holds " + at.measures().number(line.standRatio(), 1) + " times what tips it";
        String stand = line.sharesStandWith() != null ? "on the stand of line " + line.sharesStandWith() : line.standLabel() != null ? line.standLabel()
                : line.standKind() == null ? "" : "any";
        return new Row(line.number(), line.name(), line.standKind() == null ? Choices.capital(SetUpWords.held(line.placement().mount())) : kindOne(line.standKind()), stand,
                line.placement().heightM() == null ? "" : at.reader().distance(line.placement().heightM()), steady, tips,
                leads.runs().stream().filter(run -> run.line() == line.number()).findFirst().map(run -> lead(at, run)).orElse(""));
    }

    /** How long each lead of a plan has to be. */
    static Leads leads(AtPlan at, Plan plan) {
        return Leads.of(at.lineUp(), plan, at.catalogue().leads().get(Lead.MICROPHONE));
    }

    /** "15 m", "2 \u00d7 15 m", "30 m and 5 m". */
    private static String lead(AtPlan at, Leads.Run run) {
        String lengths = run.lengthsM().stream().map(lengthM -> length(at, lengthM)).collect(Collectors.joining(" and "));
        return run.leads() > 1 ? run.leads() + " \u00d7 " + lengths : lengths;
    }

    /** "30 m", as it is written on the lead; "30 m (98 ft)" for who thinks in feet. */
    private static String length(AtPlan at, double lengthM) {
        String metres = Reader.METRIC.distance(lengthM);
        return at.reader().imperial() ? metres + " (" + Math.round(lengthM / FOOT_M) + " ft)" : metres;
    }

    private static List<String> says(AtPlan at, Plan plan, Leads found) {
        List<String> leads = new ArrayList<>();
        int mics = found.runs().stream().mapToInt(Leads.Run::leads).sum();
        if (mics > 0) {
            leads.add(mics + (mics == 1 ? " microphone lead" : " microphone leads") + " to the box of the channels, one for each: "
                    + found.counts().stream().map(count -> count.count() + " of " + length(at, count.lengthM())).collect(Collectors.joining(", ")) + ".");
            Lead usual = at.catalogue().leads().get(Lead.MICROPHONE);
            leads.add("Each along the walls and up to its microphone, a " + at.measures().number(usual.slackShare() * 100, 0) + "% longer way and " + length(at, usual.slackM())
                    + " for the ends, rounded up to a usual length. " + (found.box().assumed() == null ? "" : "Nobody said where the box is: taken in the middle of the "
                    + wall(found.box().assumed()) + ", from where it takes least. Say under Line-up where the leads end."));
        }
        // who has a box or an instrument input of its own is counted with that
        long wired = plan.lines().stream().filter(line -> SetUpWords.wired(line.placement()) && !line.between().boxed() && !line.between().instrument()).count();
        if (wired > 0) {
            leads.add(wired + (wired == 1 ? " lead" : " leads") + " from an instrument to its box.");
        }
        long boxes = plan.lines().stream().filter(line -> line.between().boxed()).count();
        if (boxes > 0) {
            leads.add(boxes + (boxes == 1 ? " short lead from a pickup to its box." : " short leads from a pickup to its box."));
        }
        long inputs = plan.lines().stream().filter(line -> line.between().instrument()).count();
        if (inputs > 0) {
            leads.add(inputs + (inputs == 1 ? " lead from a pickup" : " leads from pickups") + " to an instrument input, 5 m at the most.");
        }
        long boosters = plan.lines().stream().filter(line -> line.booster() != null).count();
        if (boosters > 0) {
            leads.add(boosters + (boosters == 1 ? " short lead" : " short leads") + " between a microphone and its booster.");
        }
        List<String> besides = besides(at, plan);
        if (!besides.isEmpty()) {
            leads.add("Besides: " + String.join(", ", besides) + ".");
        }
        leads.add("Setting all of it up takes about " + plan.setUp().words() + ".");
        return leads;
    }

    /** What is easily forgotten, as no locker counts it. */
    private static List<String> besides(AtPlan at, Plan plan) {
        List<String> besides = new ArrayList<>();
        Map<Integer, Line> byNumber = plan.lines().stream().collect(Collectors.toMap(Line::number, line -> line));
        add(besides, "sandbag", plan.lines().stream().filter(line -> line.standKind() == StandKind.OVERHEAD && line.sharesStandWith() == null));
        // the two halves of one stereo microphone share its stand without a bar
        add(besides, "bar for two microphones on one stand", plan.lines().stream().filter(line -> line.sharesStandWith() != null && byNumber.get(line.sharesStandWith()).mic() != line.mic()));
        add(besides, "pop screen", plan.lines().stream().filter(line -> line.placement().positionName().contains("pop screen")));
        add(besides, "clip for an instrument", plan.lines().stream().filter(line -> line.placement().mount() == Mount.CLIP));
        add(besides, "supply of its own, with its cable", plan.lines().stream().filter(line -> at.catalogue().mics().get(line.placement().micType()).power() == PowerNeed.OWN_SUPPLY));
        add(besides, "fresh cell", plan.lines().stream().filter(line -> line.between().box() != null && line.between().box().power() == Between.BoxPower.BATTERY));
        if (!at.lineUp().gobos().isEmpty()) {
            besides.add(at.lineUp().gobos().size() + (at.lineUp().gobos().size() == 1 ? " screen" : " screens") + " for the floor");
        }
        return besides;
    }

    private static void add(List<String> besides, String thing, Stream<Line> lines) {
        List<String> numbers = lines.map(line -> Integer.toString(line.number())).toList();
        if (!numbers.isEmpty()) {
            besides.add(numbers.size() + " \u00d7 " + thing + " (" + (numbers.size() == 1 ? "line " : "lines ") + String.join(", ", numbers) + ")");
        }
    }

    /** As the plan is drawn, the lower wall is the front. */
    private static String wall(String assumed) {
        return switch (assumed) {
            case "lower" -> "front wall";
            case "upper" -> "back wall";
            default -> assumed + " wall";
        };
    }

    /** Several of a kind. */
    static String kind(StandKind kind) {
        return switch (kind) {
            case SHORT -> "Short stands";
            case STRAIGHT -> "Straight stands";
            case BOOM -> "Boom stands";
            case OVERHEAD -> "Tall stands with a boom and a sandbag";
        };
    }

    static String kindOne(StandKind kind) {
        return switch (kind) {
            case SHORT -> "Short stand";
            case STRAIGHT -> "Straight stand";
            case BOOM -> "Boom stand";
            case OVERHEAD -> "Tall stand, boom, sandbag";
        };
    }
}
