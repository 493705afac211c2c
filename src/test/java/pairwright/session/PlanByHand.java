package pairwright.session;

import java.util.ArrayList;
import java.util.List;
import pairwright.acoustics.OctaveCurve;
import pairwright.locker.PhantomSwitch;
import pairwright.model.Given;
import pairwright.model.MicType;
import pairwright.model.Option;
import pairwright.model.Placement;
import pairwright.model.Position;
import pairwright.model.PowerNeed;
import pairwright.model.Predicted;
import pairwright.model.Stock;

/** A small plan that is put together by hand, line by line, so that rules meet what no search would plan. */
final class PlanByHand {
    private final List<Plan.Served> served = new ArrayList<>();
    private final List<Line> lines = new ArrayList<>();
    private final List<Hears> bleed = new ArrayList<>();
    private final List<Arrival> timing = new ArrayList<>();
    private final List<Plan.Supply> supplies = new ArrayList<>();
    private final List<String> leftOut = new ArrayList<>();

    /** How a line differs from an ordinary one: what is null is as usual. */
    record Odd(String channel, String bank, Boolean phantom, Double gainDb, Double standRatio, String note, Double highPassHz, String unit) {
        static final Odd NOTHING = new Odd(null, null, null, null, null, null, null, null);
    }

    /** Serves a seat with one microphone or two of a technique, each on the next channel. */
    PlanByHand serve(Seat seat, String technique, Odd odd, String... micAtPosition) {
        List<Placement> mics = new ArrayList<>();
        for (int i = 0; i < micAtPosition.length; i++) {
            String[] at = micAtPosition[i].split("@");
            mics.add(placement(Rooms.CATALOGUE.mics().get(at[0]), Rooms.position(seat.source(), at[1]), odd));
            lines.add(line(seat, i + 1, mics.get(i), odd));
        }
        served.add(new Plan.Served(seat.id(), new Option(1, 12, technique, technique, mics, null, List.of(), List.of(), null)));
        return this;
    }

    PlanByHand hears(int line, String seat, double separationDb, double straightDb, double roomAllowsDb) {
        bleed.add(new Hears(line, seat, "any", 3, 90, 0, separationDb, OctaveCurve.ZERO, 63, roomAllowsDb, straightDb, 20, separationDb));
        return this;
    }

    PlanByHand arrives(String seat, boolean own, double delayMs, double rippleDb, double distanceRatio, Arrival.Treat treat, int first, int second) {
        timing.add(new Arrival(seat, "any", List.of(first, second), own, delayMs * 0.343, delayMs, 500 / delayMs, 3, rippleDb, distanceRatio, false, treat,
                List.of()));
        return this;
    }

    PlanByHand supply(String bank, double drawnMa, Double supplyMa) {
        supplies.add(new Plan.Supply(bank, true, drawnMa, supplyMa, 1, 8));
        return this;
    }

    PlanByHand without(Seat seat) {
        leftOut.add(seat.id());
        return this;
    }

    Plan plan() {
        return new Plan(1, 0, true, 0, served, leftOut, lines, bleed, timing, supplies, List.of(), new Plan.SetUp(null, null, 300 * lines.size()), List.of(), List.of(), List.of());
    }

    /** Channels of an interface whose phantom power is switched for all of them. */
    static Gear gear(int channels, List<Stock.Held> units) {
        List<Gear.Channel> all = new ArrayList<>();
        for (int i = 1; i <= channels; i++) {
            all.add(new Gear.Channel("in-" + i, "input " + i, "the interface", PhantomSwitch.BANK, null, 60.0, 1500.0, -128.0, 40.0));
        }
        return new Gear(units == null ? null : new Stock(true, units), all, null, null, null);
    }

    private Line line(Seat seat, int mic, Placement placement, Odd odd) {
        int number = lines.size() + 1;
        boolean needs = Rooms.CATALOGUE.mics().get(placement.micType()).power() == PowerNeed.PHANTOM;
        String unit = odd.unit() == null ? "u-" + number : odd.unit();
        return new Line(number, odd.channel() == null ? "in-" + number : odd.channel(), odd.channel() == null ? "input " + number : odd.channel(),
                odd.bank() == null ? "the interface" : odd.bank(), new Given(unit, unit.toUpperCase(java.util.Locale.ROOT), null, null, odd.note(), null, null, null),
                seat.id(), seat.id() + " " + mic, seat.source(), mic, placement, null, null, null, null, odd.standRatio(), null, null, 0,
                odd.phantom() == null ? needs : odd.phantom(), needs, needs ? 3 : 0, odd.gainDb() == null ? Double.valueOf(35) : odd.gainDb(), odd.highPassHz(), Between.NOTHING, List.of());
    }

    private static Placement placement(MicType mic, Position position, Odd odd) {
        OctaveCurve colourDb = mic.responseDb();
        Predicted predicted = new Predicted(110.0, 90.0, 20.0, 15.0, 60.0, 35.0, -20.0, 0, 8.0, null, 0, 0, 0, 0, 0, 0, 0, 0, 0,
                OctaveCurve.of(-20, -6, 0, 0, -2, -4, -8, -14, -22).plus(colourDb), colourDb);
        return new Placement(mic.id(), mic.name(), mic.family(), mic.patterns().get(0).pattern(), position.id(), position.name(), position.brings(),
                position.mount(), position.distanceM().typical(), position.heightM(), 20, null, null, null, 60, 0.4, odd.standRatio(), null, null, 0,
                mic.currentMa() == null ? 0 : mic.currentMa().high(), mic.power() == PowerNeed.PHANTOM, false, 0, false, 1, 1, List.of(), predicted, List.of());
    }
}
