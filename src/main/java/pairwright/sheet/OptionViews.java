package pairwright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import pairwright.advice.Knowledge;
import pairwright.drawing.Drawing;
import pairwright.drawing.LevelDrawing;
import pairwright.drawing.PointsDrawing;
import pairwright.drawing.Reader;
import pairwright.drawing.SetUpDrawing;
import pairwright.drawing.SumDrawing;
import pairwright.drawing.ToneDrawing;
import pairwright.model.Arrangement;
import pairwright.model.Catalogue;
import pairwright.model.Caution;
import pairwright.model.Effect;
import pairwright.model.Heard;
import pairwright.model.Naming;
import pairwright.model.Option;
import pairwright.model.Placement;
import pairwright.model.Predicted;
import pairwright.model.Question;
import pairwright.model.Reason;
import pairwright.model.Setup;
import pairwright.model.Severity;
import pairwright.model.Sure;
import pairwright.model.Technique;
import pairwright.model.Together;
import pairwright.model.Value;
import pairwright.rules.Figure;
import pairwright.rules.RuleBase;
import pairwright.rules.RuleInfo;

/** Makes of an option what a page shows of it. */
final class OptionViews {
    private static final Map<Severity, String> WORDS = Map.of(Severity.DANGER, "Danger", Severity.CARE, "Care", Severity.NOTE, "Note");
    private static final java.util.regex.Pattern UNIT = java.util.regex.Pattern.compile("(DbSpl|Dba|Dbu|Dbfs|Db|MvPerPa|Degrees|Hours|Ratio|Share|Fit|Ohm|Hz|Kg|Ma|Ms|M3|M2|M|S)$");
    private static final java.util.regex.Pattern HUMP = java.util.regex.Pattern.compile("(?<=[a-z0-9])(?=[A-Z])");

    private final Catalogue catalogue;
    private final RuleBase rules;
    private final Question question;
    private final Visit visit;
    private final Reader reader;
    private final SetUpWords words;
    private final List<Param> query;

    /**
     * @param query the question as its address says it
     */
    OptionViews(Knowledge now, Question question, Visit visit, List<Param> query) {
        this.catalogue = now.catalogue();
        this.rules = now.rules();
        this.question = question;
        this.visit = visit;
        this.reader = visit.reader();
        this.words = new SetUpWords(catalogue, question, reader);
        this.query = query;
    }

    SetUpWords words() {
        return words;
    }

    /**
     * @param key unlike that of any other option of the page
     * @param setUpHref its sheet; null for none
     */
    OptionView of(Option option, String key, String setUpHref) {
        boolean pair = option.mics().size() > 1;
        List<OptionView.Mic> mics = new ArrayList<>();
        for (int i = 0; i < option.mics().size(); i++) {
            mics.add(mic(option, i, pair));
        }
        Drawing sum = SumDrawing.of(catalogue, question, option, key + "-sum", reader);
        return new OptionView(key, option.rank(), words.title(option), pair ? option.techniqueName() : null,
                pair ? visit.to("/techniques/" + option.technique()) : null, Points.score(option.score(), reader),
                cautions(option, pair, false), cautions(option, pair, true), mics, both(option),
                SetUpDrawing.fromAbove(catalogue, question, option, key + "-above", reader),
                SetUpDrawing.fromSide(catalogue, question, option, key + "-side", reader),
                PointsDrawing.of(catalogue, question, option, key + "-points", reader),
                LevelDrawing.of(catalogue, question, option, key + "-level", reader),
                ToneDrawing.of(catalogue, question, option, key + "-tone", reader), sum,
                option.reasons().stream().map(reason -> reason(reason, pair)).toList(), sure(option.sure(), option.rank()), setUpHref,
                Param.joined(query, SetUpQuery.written(Setup.of(option))));
    }

    /** How sure the place of an option is; empty where nothing was drawn. */
    static String sure(Sure sure, int rank) {
        if (sure == null) {
            return "";
        }
        return "Comes first in " + Math.round(sure.firstShare() * 100) + " of 100 draws, among the first three in "
                + Math.round(sure.firstThreeShare() * 100) + ".";
    }

    private List<OptionView.CautionView> cautions(Option option, boolean pair, boolean notes) {
        return option.cautions().stream().filter(caution -> notes == (caution.severity() == Severity.NOTE)).map(caution -> caution(caution, pair)).toList();
    }

    OptionView.CautionView caution(Caution caution, boolean pair) {
        return new OptionView.CautionView(caution.severity().id(), WORDS.get(caution.severity()), reader.sentence(caution.says()),
                who(caution.mic(), pair), caution.rule(), rule(caution.rule()));
    }

    OptionView.ReasonView reason(Reason reason, boolean pair) {
        RuleInfo rule = rules.rule(reason.rule());
        return new OptionView.ReasonView(reason.effect() == Effect.FOR, Points.signed(reason.points(), reader), reader.sentence(reason.says()),
                who(reason.mic(), pair), reason.rule(), rule == null ? reason.rule() : rule.title(), rule(reason.rule()),
                reason.values().stream().map(this::value).toList(), reader.sentence(reason.basis()));
    }

    private OptionView.Figure value(Value value) {
        return new OptionView.Figure(named(value.name()), reader.value(value.value(), value.unit()));
    }

    /** The name of a number without its unit: "toneMissDb" is "tone miss". */
    static String named(String name) {
        String bare = UNIT.matcher(name).replaceFirst("");
        return HUMP.matcher(bare.isEmpty() ? name : bare).replaceAll(" ").toLowerCase(java.util.Locale.ROOT).replace('.', ' ');
    }

    String rule(String id) {
        return visit.to("/rules/" + id);
    }

    private static String who(int mic, boolean pair) {
        return pair && mic > 0 ? "mic " + mic : "";
    }

    private OptionView.Mic mic(Option option, int index, boolean pair) {
        Placement mic = option.mics().get(index);
        return new OptionView.Mic(pair ? "Mic " + (index + 1) : "", mic.name(), visit.to("/mics/" + mic.micType()), words.line(option, index),
                reader.sentence(mic.brings()), figures(mic), mic.neighbours().stream().map(this::heard).map(reader::sentence).toList());
    }

    private List<OptionView.Figure> figures(Placement mic) {
        Predicted predicted = mic.predicted();
        List<OptionView.Figure> figures = new ArrayList<>();
        if (predicted.typicalDbSpl() != null) {
            add(figures, "Level there", predicted.typicalDbSpl(), "dB SPL");
            add(figures, "Loudest peak", predicted.peakDbSpl(), "dB SPL");
        }
        add(figures, "Headroom", predicted.headroomDb(), "dB");
        add(figures, "Gain", predicted.gainDb(), "dB");
        add(figures, "Noise as a level", predicted.noiseDba(), "dB(A)");
        add(figures, "Over noise", predicted.signalToNoiseDb(), "dB");
        if (predicted.proximityDb() >= 0.5) {
            add(figures, "Proximity at 100 Hz", predicted.proximityDb(), "dB");
        }
        add(figures, "Direct over room", predicted.directToReverbDb(), "dB");
        add(figures, "Over neighbours", predicted.separationDb(), "dB");
        if (mic.heightM() != null) {
            figures.add(new OptionView.Figure("Height", reader.distance(mic.heightM())));
        }
        return figures;
    }

    private void add(List<OptionView.Figure> figures, String name, Double value, String unit) {
        if (value != null) {
            figures.add(new OptionView.Figure(name, reader.value(value, unit).replace('-', '\u2212')));
        }
    }

    private String heard(Heard heard) {
        long over = Math.round(heard.separationDb());
        String much = over < 0 ? -over + " dB louder than" : over + " dB under";
        String says = "Hears the " + Naming.small(heard.name()) + " " + much + " its own source, most around "
                + Figure.forPeople(heard.loudestHz(), "Hz");
        if (heard.roomAllowsDb() == null) {
            return says + ".";
        }
        long room = Math.round(heard.roomAllowsDb());
        return says + "; what the room adds alone is " + (room < 0 ? -room + " dB louder." : room + " dB under.");
    }

    private List<OptionView.Figure> both(Option option) {
        Together together = option.together();
        if (together == null) {
            return List.of();
        }
        List<OptionView.Figure> figures = new ArrayList<>();
        Technique technique = catalogue.techniques().get(option.technique());
        if (technique != null && technique.stereo() && technique.spacingM() != null) {
            figures.add(new OptionView.Figure("Capsules", technique.spacingM() == 0 ? "in one point" : reader.distance(technique.spacingM()) + " apart"));
            if (technique.includedDegrees() != null && technique.arrangement() != Arrangement.MID_SIDE) {
                figures.add(new OptionView.Figure("Turned", technique.includedDegrees() == 0 ? "parallel"
                        : Math.round(technique.includedDegrees()) + " degrees apart"));
            }
        }
        if (together.recordingAngleDegrees() != null) {
            figures.add(new OptionView.Figure("Recording angle", Math.round(together.recordingAngleDegrees()) + " degrees; the source takes "
                    + Math.round(together.sourceAngleDegrees())));
        }
        if (together.firstNullHz() != null) {
            figures.add(new OptionView.Figure("Apart in time", reader.number(together.delayMs(), 2) + " ms"));
            figures.add(new OptionView.Figure("First null of the sum", reader.frequency(together.firstNullHz())));
            figures.add(new OptionView.Figure("Ripple of the sum", reader.value(together.rippleDb(), "dB")));
        }
        if (together.contrastDb() >= 0.5) {
            figures.add(new OptionView.Figure("Contrast in tone", reader.value(together.contrastDb(), "dB")));
        }
        return figures;
    }
}
