package pairwright.sheet;

import java.util.ArrayList;
import java.util.List;
import pairwright.session.Line;
import pairwright.session.Plan;
import pairwright.session.StandKind;

/** What stands and hangs where: stands, what needs none, and leads. */
public final class StandSheet {
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

    /** One line: what holds it, which stand that is, how high, how steady. */
    public record Row(int number, String name, String held, String stand, String height, String steady, boolean tips) {
    }

    static Content of(AtPlan at, Plan plan) {
        List<Count> counts = new ArrayList<>();
        for (StandKind kind : StandKind.values()) {
            int stands = (int) plan.lines().stream().filter(line -> line.standKind() == kind && line.sharesStandWith() == null).count();
            if (stands > 0) {
                counts.add(new Count(kind(kind), stands));
            }
        }
        return new Content(counts, plan.lines().stream().map(line -> row(at, line)).toList(), leads(at, plan));
    }

    private static Row row(AtPlan at, Line line) {
        boolean tips = line.standRatio() != null && line.standRatio() < 1;
        String steady = line.standRatio() == null ? "" : "holds " + at.measures().number(line.standRatio(), 1) + " times what tips it";
        String stand = line.sharesStandWith() != null ? "on the stand of line " + line.sharesStandWith() : line.standLabel() != null ? line.standLabel()
                : line.standKind() == null ? "" : "any";
        return new Row(line.number(), line.name(), line.standKind() == null ? Choices.capital(SetUpWords.held(line.placement().mount())) : kindOne(line.standKind()), stand,
                line.placement().heightM() == null ? "" : at.reader().distance(line.placement().heightM()), steady, tips);
    }

    private static List<String> leads(AtPlan at, Plan plan) {
        List<String> leads = new ArrayList<>();
        int mics = plan.lines().stream().mapToInt(line -> line.placement().channels()).sum();
        leads.add(mics + (mics == 1 ? " microphone lead" : " microphone leads") + " to the desk or its boxes, one for each channel. How long they must be depends on the way"
                + " round the room, which the line-up does not say.");
        long wired = plan.lines().stream().filter(line -> SetUpWords.wired(line.placement())).count();
        if (wired > 0) {
            leads.add(wired + (wired == 1 ? " lead" : " leads") + " from an instrument to its box.");
        }
        long boosters = plan.lines().stream().filter(line -> line.booster() != null).count();
        if (boosters > 0) {
            leads.add(boosters + (boosters == 1 ? " short lead" : " short leads") + " between a microphone and its booster.");
        }
        leads.add("Setting all of it up takes about " + plan.setUp().words() + ".");
        return leads;
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
