package pairwright.http;

import com.fasterxml.jackson.annotation.JsonProperty;
import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import pairwright.model.Catalogue;
import pairwright.model.Given;
import pairwright.model.Lead;
import pairwright.model.MicFamily;
import pairwright.model.Pattern;
import pairwright.model.Placement;
import pairwright.session.Arrival;
import pairwright.session.Between;
import pairwright.session.Change;
import pairwright.session.Hears;
import pairwright.session.Leads;
import pairwright.session.Line;
import pairwright.session.Plan;
import pairwright.session.Planned;
import pairwright.session.Said;
import pairwright.session.SetUpTime;
import pairwright.session.StandKind;
import pairwright.sheet.Crowding;

/** Planned sessions as programs see them. */
public final class SessionView {
    private static final double SAMPLES_PER_MS = 48;

    private SessionView() {
    }

    /**
     * Plans of a line-up.
     *
     * @param plans best first
     * @param shortOf what there is too little of; empty with a plan
     * @param waysOut what would make it possible; empty with a plan
     * @param moves whom to seat elsewhere
     * @param noMoves says that nobody would be better elsewhere; null where somebody would
     * @param noMorePlans says why there are fewer plans than were asked for; null where there are as many
     * @param assumed what was not said, in sentences
     * @param lineUp with everybody in place; sent again it asks the same
     * @param rulesVersion of the rules
     * @param catalogueVersion of the catalogue
     * @param timeShort what the best plan loses since there is no more time to set up; null where it loses nothing
     */
    public record Plans(List<PlanShown> plans, @JsonProperty("short") List<Planned.Short> shortOf, List<Planned.WayOut> waysOut, List<Planned.Move> moves,
            String noMoves, String noMorePlans, List<String> assumed, JsonNode lineUp, String rulesVersion, String catalogueVersion, Planned.TimeShort timeShort) {
        public static Plans of(Planned planned, SessionRequest request, Catalogue catalogue) {
            return new Plans(planned.plans().stream().map(plan -> PlanShown.of(plan, request, catalogue)).toList(), planned.shortOf(), planned.waysOut(), planned.moves(),
                    planned.noMoves(), planned.noMorePlans(request.lineUp()), joined(joined(request.assumed(), planned.assumed()), Crowding.of(request.lineUp(), catalogue)),
                    SessionJson.of(request.lineUp()), planned.rulesVersion(), planned.catalogueVersion(), planned.timeShort());
        }
    }

    /**
     * What to do to get from a plan to another.
     *
     * @param plan the new one
     * @param steps in the order they are to be done
     * @param timeS how long they take
     * @param kept ids of seats of which nothing is touched
     * @param costPoints what it has less than the best that could be reached: the price of leaving things as they stand
     * @param bestScore what the best plan would have, whatever had to be moved for it, in the time there is
     * @param setUp how long there is for the steps that cannot wait; null for as long as they take
     * @param assumed what was not said, in sentences
     * @param lineUp with everybody in place
     */
    public record Changed(PlanShown plan, List<Change.Step> steps, double timeS, List<String> kept, double costPoints, double bestScore, SetUpTime setUp, List<String> assumed,
            JsonNode lineUp) {
        public static Changed of(Change change, SessionRequest request, Catalogue catalogue) {
            return new Changed(PlanShown.of(change.plan(), request, catalogue), change.steps(), change.timeS(), change.kept(), change.costPoints(), change.bestScore(), change.setUp(),
                    joined(request.assumed(), Crowding.of(request.lineUp().without(request.lost().seats()), catalogue)), SessionJson.of(request.lineUp()));
        }
    }

    /** One plan, as {@link Plan} has it, and how long its leads have to be. */
    public record PlanShown(int rank, double score, boolean proven, double bound, List<Plan.Served> served, List<String> leftOut, List<LineShown> lines, List<Hears> bleed,
            List<ArrivalShown> timing, List<Plan.Supply> supplies, List<Plan.Count> counts, Plan.SetUp setUp, List<String> patch, List<Said> reasons, List<Said> cautions, Leads leads) {
        static PlanShown of(Plan plan, SessionRequest request, Catalogue catalogue) {
            Map<String, String> techniques = plan.served().stream().collect(Collectors.toMap(Plan.Served::seat, served -> served.option().technique(), (one, other) -> one));
            return new PlanShown(plan.rank(), plan.score(), plan.proven(), plan.bound(), plan.served(), plan.leftOut(),
                    plan.lines().stream().map(line -> LineShown.of(line, techniques.get(line.seat()))).toList(), plan.bleed(),
                    plan.timing().stream().map(ArrivalShown::of).toList(), plan.supplies(), plan.counts(), plan.setUp(), plan.patch(), plan.reasons(), plan.cautions(),
                    Leads.of(request.lineUp(), plan, catalogue.leads().get(Lead.MICROPHONE)));
        }
    }

    /** One microphone on its channel: what {@link Line} has, and what of its placement is needed where it is set up. */
    public record LineShown(int number, String channel, String channelLabel, String bank, String unit, Given given, String seat, String name, String source, String technique,
            int mic, String micType, String micName, MicFamily family, Pattern pattern, String position, String positionName, double distanceM, Double heightM,
            double aimDegrees, Line.Spot spot, String stand, String standLabel, StandKind standKind, Double standRatio, Integer sharesStandWith, String booster,
            double boosterGainDb, boolean phantom, boolean phantomWanted, double currentMa, String box, String boxLabel, String boxType, Between.BoxPower boxPower, boolean instrumentInput, boolean pad,
            double padDb, double ownPadDb, String linePad, double linePadDb, Double overDb, boolean invertPolarity, Double typicalDbSpl,
            Double peakDbSpl, Double gainDb, Double highPassHz, List<Said> cautions) {
        static LineShown of(Line line, String technique) {
            Placement at = line.placement();
            Between between = line.between();
            Between.Box box = between.box();
            return new LineShown(line.number(), line.channel(), line.channelLabel(), line.bank(), line.unit() == null ? null : line.unit().id(), line.unit(), line.seat(),
                    line.name(), line.source(), technique, line.mic(), at.micType(), at.name(), at.family(), at.pattern(), at.position(), at.positionName(),
                    at.distanceM(), at.heightM(), at.aimDegrees(), line.spot(), line.stand(), line.standLabel(), line.standKind(), line.standRatio(), line.sharesStandWith(),
                    line.booster(), line.boosterGainDb(), line.phantom(), line.phantomWanted(), line.currentMa(), box == null ? null : box.unit(), box == null ? null : box.label(),
                    box == null ? null : box.micType(), box == null ? null : box.power(), between.instrument(), between.allPadsDb() > 0, between.allPadsDb(), between.ownPadDb(), between.pad(),
                    between.padLossDb(), between.overDb(), at.invertPolarity(),
                    at.predicted().typicalDbSpl(), at.predicted().peakDbSpl(), line.gainDb(), line.highPassHz(), line.cautions());
        }
    }

    /** A source that two lines hear, as {@link Arrival} has it, with the delay in whole samples at 48 kHz. */
    public record ArrivalShown(String seat, String source, List<Integer> lines, boolean own, double pathM, double delayMs, int samples, Double firstNullHz,
            double levelDifferenceDb, double rippleDb, double distanceRatio, boolean inverted, Arrival.Treat treat, List<Said> cautions) {
        static ArrivalShown of(Arrival arrival) {
            return new ArrivalShown(arrival.seat(), arrival.source(), arrival.lines(), arrival.own(), arrival.pathM(), arrival.delayMs(), samplesOf(arrival.delayMs()),
                    arrival.firstNullHz(), arrival.levelDifferenceDb(), arrival.rippleDb(), arrival.distanceRatio(), arrival.inverted(), arrival.treat(), arrival.cautions());
        }
    }

    /** A delay in whole samples at 48 kHz. */
    public static int samplesOf(double delayMs) {
        return (int) Math.round(delayMs * SAMPLES_PER_MS);
    }

    private static List<String> joined(List<String> some, List<String> more) {
        return Stream.concat(some.stream(), more.stream()).distinct().toList();
    }
}
