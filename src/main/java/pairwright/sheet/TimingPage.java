package pairwright.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import pairwright.catalogue.Shown;
import pairwright.session.Arrival;
import pairwright.session.Arrivals;
import pairwright.session.Plan;

/** Sources that reach two lines: how much later the second hears them, and what to do about it. */
public final class TimingPage {
    private static final List<Integer> RATES_HZ = List.of(44_100, 48_000, 96_000);
    private static final int USUAL_HZ = 48_000;
    private static final Map<Arrival.Treat, String> HEADINGS = Map.of(Arrival.Treat.ALIGN, "Align", Arrival.Treat.LEAVE, "Leave", Arrival.Treat.WATCH, "Watch");

    private TimingPage() {
    }

    /**
     * What it shows.
     *
     * @param rate what to choose the sample rate with
     * @param kept what else of the address is kept with it
     * @param groups what to align first, then what to watch, then what to leave
     * @param rateSays the sample rate in words
     */
    public record Content(FormField rate, List<Param> kept, List<Group> groups, String rateSays) {
    }

    /** Those that are treated alike. */
    public record Group(String heading, String says, String treat, List<Row> rows) {
    }

    /**
     * One source at two lines.
     *
     * @param source whose sound it is
     * @param own whether both are its own microphones
     * @param first the line that hears it first
     * @param second the other
     * @param why what is done about it, and why, in sentences
     */
    public record Row(String source, boolean own, String first, String second, String delayMs, String samples, String path, String firstNull, String ripple, String level,
            String polarity, String why, List<OptionView.CautionView> cautions) {
    }

    /** What the address asks for. */
    public static Page of(AtPlan at) {
        PlanChosen chosen = PlanChosen.of(at);
        List<String> faults = new ArrayList<>();
        if (!chosen.fault().isEmpty()) {
            faults.add(chosen.fault());
        }
        int rateHz = rate(at, faults);
        PlanFrame frame = PlanFrame.of(at, "When it arrives", "timing", List.of(), chosen, faults);
        return chosen.plan() == null ? PlanSheets.without(at, frame, chosen) : at.page(faults.isEmpty() ? 200 : 400, "timing", frame, content(at, chosen.plan(), rateHz));
    }

    private static int rate(AtPlan at, List<String> faults) {
        String text = at.visit().first("rate");
        for (int rateHz : RATES_HZ) {
            if (Integer.toString(rateHz).equals(text)) {
                return rateHz;
            }
        }
        if (text != null) {
            faults.add("\u201c" + Shown.of(text) + "\u201d is no sample rate. Choose 44100, 48000 or 96000.");
        }
        return USUAL_HZ;
    }

    static Content content(AtPlan at, Plan plan) {
        return content(at, plan, USUAL_HZ);
    }

    private static Content content(AtPlan at, Plan plan, int rateHz) {
        PlanWords words = new PlanWords(at, plan);
        List<Group> groups = new ArrayList<>();
        for (Arrival.Treat treat : List.of(Arrival.Treat.ALIGN, Arrival.Treat.WATCH, Arrival.Treat.LEAVE)) {
            List<Row> rows = plan.timing().stream().filter(arrival -> arrival.treat() == treat).sorted(Comparator.comparingDouble(Arrival::rippleDb).reversed())
                    .map(arrival -> row(at, words, arrival, rateHz)).toList();
            if (!rows.isEmpty()) {
                groups.add(new Group(HEADINGS.get(treat), says(treat), treat.id(), rows));
            }
        }
        List<Choice> choices = RATES_HZ.stream().map(one -> new Choice(Integer.toString(one), khz(at, one), false)).toList();
        String named = at.visit().first("plan");
        return new Content(FormField.choice("rate", "Sample rate", choices).value(Integer.toString(rateHz)), named == null ? List.of() : List.of(new Param("plan", named)), groups,
                "Samples are at " + khz(at, rateHz) + ".");
    }

    private static String khz(AtPlan at, int rateHz) {
        return at.measures().number(rateHz / 1000.0, 1) + " kHz";
    }

    private static String says(Arrival.Treat treat) {
        return switch (treat) {
            case ALIGN -> "Delay the first line, or slide its track, by so much; then both hear the source at one moment.";
            case WATCH -> "Aligning these would put something else out of step. Move a microphone, or keep one of the two low in the mix.";
            case LEAVE -> "The difference is the sound that is wanted, or too weak to be heard.";
        };
    }

    private static Row row(AtPlan at, PlanWords words, Arrival arrival, int rateHz) {
        return new Row(at.seatName(arrival.seat()), arrival.own(), words.named(arrival.lines().get(0)), words.named(arrival.lines().get(1)),
                at.measures().number(arrival.delayMs(), 2), at.measures().number(Math.rint(arrival.delayMs() * rateHz / 1000), 0), path(at, arrival.pathM()),
                arrival.firstNullHz() == null ? "none" : at.reader().frequency(arrival.firstNullHz()), at.measures().number(arrival.rippleDb(), 1) + " dB",
                at.measures().number(arrival.levelDifferenceDb(), 1) + " dB", arrival.inverted() ? "one of them inverted" : "", why(at, arrival), words.cautions(arrival));
    }

    /** Always in centimetres or inches, so that a column can be read down. */
    private static String path(AtPlan at, double pathM) {
        return at.reader().imperial() ? at.reader().distance(pathM) : at.measures().number(pathM * 100, pathM < 0.1 ? 1 : 0) + " cm";
    }

    static String why(AtPlan at, Arrival arrival) {
        if (arrival.own() && arrival.treat() == Arrival.Treat.LEAVE && arrival.rippleDb() < Arrivals.LEAST_RIPPLE_DB) {
            return "Both hear it at one moment, on purpose: there is nothing to align.";
        }
        String ripple = at.measures().number(arrival.rippleDb(), 1);
        String ratio = at.measures().number(arrival.distanceRatio(), 1);
        String says = switch (arrival.treat()) {
            case ALIGN -> "Both are to be heard, and their sum ripples by " + ripple + " dB";
            case WATCH -> arrival.own() ? "Their sum ripples by " + ripple + " dB" : "It comes into the second as bleed, and the sum ripples by " + ripple + " dB";
            case LEAVE -> arrival.own() ? "They differ on purpose; summed to one they ripple by " + ripple + " dB" : "The sum ripples by " + ripple + " dB";
        };
        return says + (ratio.equals(at.measures().number(1, 1)) ? "; the second is as far as the first." : "; the second is " + ratio + " times as far.");
    }
}
