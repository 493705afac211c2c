package pairwright.lab;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import pairwright.advice.OfferedMic;
import pairwright.model.MicType;
import pairwright.model.PowerNeed;
import pairwright.model.Predicted;
import pairwright.model.Range;
import pairwright.session.Seat;

/** The figures of a plan, so that whatever is wrong with it can be found on the sheet: as the rules have them, and as a data sheet and a tape give them. */
final class FaultsFigures {
    private static final String NONE = "\u2013";
    /** Where there is no arm that tips, this ratio stands for it. */
    private static final double NOTHING_TIPS = 100;

    private final FaultsPlan plan;
    private final List<FaultsPlan.At> stood;

    FaultsFigures(FaultsPlan plan, List<FaultsPlan.At> stood) {
        this.plan = plan;
        this.stood = stood;
    }

    List<Shown.Table> tables() {
        return List.of(sources(), types(), setUps(), colours());
    }

    private Shown.Table sources() {
        List<List<String>> rows = IntStream.range(0, stood.size()).mapToObj(i -> {
            Seat seat = plan.lineUp().seats().get(i);
            return List.of(plan.source(i).name(), one(seat.xM()), one(seat.yM()), whole(seat.facingDegrees()), one(plan.source(i).sizeM()), level(plan.source(i).level().typicalDbSpl()),
                    level(plan.source(i).level().peakDbSpl()));
        }).toList();
        return new Shown.Table("The sources", List.of("Source", "x, m", "y, m", "Faces, \u00b0", "Width, m", "Level at 1 m, dB SPL", "Peaks at 1 m, dB SPL"), rows);
    }

    private Shown.Table types() {
        List<List<String>> rows = mics().map(OfferedMic::micType).distinct().map(type -> List.of(type.name(), power(type), typical(type.impedanceOhm()), typical(type.sensitivityMvPerPa()),
                typical(type.selfNoiseDba()), typical(type.maxDbSpl()), type.padsDb().isEmpty() ? NONE : String.join(", ", type.padsDb().stream().map(FaultsFigures::whole).toList()),
                one(type.massKg().typical()))).toList();
        return new Shown.Table("The microphones", List.of("Type", "Power", "Impedance, \u03a9", "Sensitivity, mV/Pa", "Own noise, dB(A)", "Takes up to, dB SPL", "Pad in it, dB", "Weight, kg"), rows);
    }

    private Shown.Table setUps() {
        return new Shown.Table("What each set-up comes to", List.of("Set-up", "Height, m", "Above people", "Stand holds, times what tips it", "Peaks there, dB SPL", "Source over all hiss, dB",
                "Gain it wants, dB", "Source over the room, dB", "Lift at 100 Hz, dB"), rows((seat, mic) -> {
                    Predicted is = mic.predicted();
                    double ratio = mic.placed().standRatio();
                    return List.of(seat, mic.position().heightM() == null ? NONE : one(mic.position().heightM()), mic.position().overPeople() ? "yes" : "no",
                            ratio >= NOTHING_TIPS ? NONE : one(ratio), number(is.peakDbSpl()), number(is.signalToNoiseDb()), number(is.gainDb()), number(is.directToReverbDb()), number(is.proximityDb()));
                }));
    }

    private Shown.Table colours() {
        return new Shown.Table("What each adds to its source as it sounds, dB against 500 Hz to 2 kHz", List.of("Set-up", "63 to 250 Hz", "500 Hz", "2 to 4 kHz", "8 to 16 kHz"), rows((seat, mic) -> {
            Predicted is = mic.predicted();
            return Stream.concat(Stream.of(seat), Stream.of(is.lowDb(), is.boxDb(), is.presenceDb(), is.airDb()).map(FaultsFigures::one)).toList();
        }));
    }

    private interface Row {
        List<String> of(String seat, OfferedMic mic);
    }

    private List<List<String>> rows(Row row) {
        List<List<String>> rows = new ArrayList<>();
        for (int seat = 0; seat < stood.size(); seat++) {
            String number = String.valueOf(seat + 1);
            stood.get(seat).trial().offer().mics().forEach(mic -> rows.add(row.of(number, mic)));
        }
        return rows;
    }

    private Stream<OfferedMic> mics() {
        return stood.stream().flatMap(at -> at.trial().offer().mics().stream());
    }

    private static String power(MicType type) {
        return type.power() == PowerNeed.NONE ? "none" : type.power() == PowerNeed.OWN_SUPPLY ? "its own supply" : type.power() == PowerNeed.PHANTOM ? "phantom" : "phantom or a cell";
    }

    private static String typical(Range range) {
        return range == null ? NONE : one(range.typical());
    }

    private static String number(Double number) {
        return number == null ? NONE : whole(number);
    }

    private static String level(double db) {
        return whole(db);
    }

    private static String whole(double number) {
        return Signs.minus(String.format(Locale.ROOT, "%.0f", number));
    }

    private static String one(double number) {
        return Signs.minus(RoundFloor.plain(number));
    }
}
