package pairwright.session;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import pairwright.model.Lead;
import pairwright.model.MicFamily;

/**
 * How long the leads of a plan have to be, and how many of each usual length that makes.
 *
 * @param box where they end
 * @param runs line by line, but for lines that take no lead
 * @param counts so many of each length, the longest first
 */
public record Leads(Box box, List<Run> runs, List<Count> counts) {
    public Leads {
        runs = List.copyOf(runs);
        counts = List.copyOf(counts);
    }

    /**
     * The box, or the desk, in which the channels come out.
     *
     * @param xM from the left wall
     * @param yM from the lower wall of the plan
     * @param assumed the wall in the middle of which it is taken to be, as nobody said: left, right, upper or lower; null where it was said
     */
    public record Box(double xM, double yM, String assumed) {
    }

    /**
     * The leads of one line.
     *
     * @param line its number
     * @param leads how many lie side by side
     * @param wayM along the walls
     * @param heightM up to the microphone
     * @param neededM both, and what is left over
     * @param lengthsM what each is made of: one usual length, or several that are plugged together
     */
    public record Run(int line, int leads, double wayM, double heightM, double neededM, List<Double> lengthsM) {
    }

    /** So many of a length. */
    public record Count(double lengthM, int count) {
    }

    /** Those of a plan; of several walls without a box the one that takes least. */
    public static Leads of(LineUp lineUp, Plan plan, Lead lead) {
        Floor floor = lineUp.floor();
        if (floor.patch() != null) {
            return of(lineUp, plan, lead, new Box(floor.patch().xM(), floor.patch().yM(), null));
        }
        return Stream.of(new Box(0, floor.depthM() / 2, "left"), new Box(floor.widthM(), floor.depthM() / 2, "right"),
                new Box(floor.widthM() / 2, floor.depthM(), "upper"), new Box(floor.widthM() / 2, 0, "lower"))
                .map(box -> of(lineUp, plan, lead, box)).min(Comparator.comparingDouble(Leads::allM)).orElseThrow();
    }

    private double allM() {
        return runs.stream().mapToDouble(run -> run.leads() * run.neededM()).sum();
    }

    private static Leads of(LineUp lineUp, Plan plan, Lead lead, Box box) {
        LeadWay way = new LeadWay(lineUp.floor());
        List<Run> runs = plan.lines().stream().filter(line -> line.placement().channels() > 0).map(line -> run(lineUp, line, lead, box, way)).toList();
        Map<Double, Integer> counts = new TreeMap<>(Comparator.reverseOrder());
        runs.forEach(run -> run.lengthsM().forEach(lengthM -> counts.merge(lengthM, run.leads(), Integer::sum)));
        return new Leads(box, runs, counts.entrySet().stream().map(count -> new Count(count.getKey(), count.getValue())).toList());
    }

    private static Run run(LineUp lineUp, Line line, Lead lead, Box box, LeadWay way) {
        Seat seat = lineUp.seat(line.seat()).orElseThrow();
        // what is plugged into an instrument goes to a box on the floor beside its player
        boolean wired = line.spot() == null || line.placement().family() == MicFamily.LINE || line.placement().family() == MicFamily.PICKUP;
        double wayM = wired ? way.lengthM(seat.xM(), seat.yM(), box.xM(), box.yM()) : way.lengthM(within(line.spot().xM(), lineUp.floor().widthM()),
                within(line.spot().yM(), lineUp.floor().depthM()), box.xM(), box.yM());
        double heightM = wired ? 0 : Math.max(0, line.spot().zM());
        double neededM = (wayM + heightM) * (1 + lead.slackShare()) + lead.slackM();
        return new Run(line.number(), line.placement().channels(), wayM, heightM, neededM, lengths(neededM, lead));
    }

    private static double within(double placeM, double sizeM) {
        return Math.max(0, Math.min(sizeM, placeM));
    }

    /** The shortest that will do; beyond the longest as many of that as are needed, and the shortest for the rest. */
    private static List<Double> lengths(double neededM, Lead lead) {
        List<Double> usualM = lead.lengthsM().stream().sorted().toList();
        double longestM = usualM.get(usualM.size() - 1);
        List<Double> lengthsM = new ArrayList<>();
        double restM = neededM;
        while (restM > longestM) {
            lengthsM.add(longestM);
            restM -= longestM;
        }
        double lastM = restM;
        lengthsM.add(usualM.stream().filter(lengthM -> lengthM >= lastM).findFirst().orElse(longestM));
        return List.copyOf(lengthsM);
    }
}
