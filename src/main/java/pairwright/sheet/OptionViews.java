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
import pairwright.model.Mount;
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
    private final Takes takes;
    private final SetUpWords words;
    private final List<Param> query;

    /**
     * @param query the question as its address says it
     */
    OptionViews(Knowledge now, Question question, AtQuestion at, List<Param> query) {
        this.catalogue = now.catalogue();
        this.rules = now.rules();
        this.question = question;
        this.visit = at.visit();
        this.reader = visit.reader();
        this.takes = new Takes(at, question);
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
        Drawing above = SetUpDrawing.fromAbove(catalogue, question, option, key + "-above", reader);
        Drawing side = SetUpDrawing.fromSide(catalogue, question, option, key + "-side", reader);
        return new OptionView(key, option.rank(), words.title(option), pair ? option.techniqueName() : null,
                pair ? visit.to("/techniques/" + option.technique()) : null, Points.score(option.score(), reader),
                cautions(option, pair, false), cautions(option, pair, true), mics, both(option),
                above, side.says().equals(above.says()) ? null : side, // a lead looks the same from everywhere
                PointsDrawing.of(catalogue, question, option, key + "-points", reader),
                LevelDrawing.of(catalogue, question, option, key + "-level", reader),
                ToneDrawing.of(catalogue, question, option, key + "-tone", reader),
                SumDrawing.of(catalogue, question, option, key + "-sum", reader),
                option.reasons().stream().map(reason -> reason(reason, pair)).toList(), sure(option.sure(), option.rank()), setUpHref, takes.book(option),
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
        List<Caution> all = option.cautions().stream().filter(caution -> notes == (caution.severity() == Severity.NOTE)).toList();
        List<OptionView.CautionView> views = new ArrayList<>();
        for (Caution caution : all) {
            Caution first = pair ? of(all, caution.rule(), 1) : null;
            Caution second = pair ? of(all, caution.rule(), 2) : null;
            if (first == null || second == null || caution.mic() == 0) {
                views.add(caution(caution, pair));
            } else if (caution == first || caution == second) {
                if (all.indexOf(caution) == Math.min(all.indexOf(first), all.indexOf(second))) {
                    views.add(caution(caution, TwoSayings.joined(reader.sentence(first.says()), reader.sentence(second.says())), "mics 1 and 2"));
                }
            } else {
                views.add(caution(caution, pair));
            }
        }
        return List.copyOf(views);
    }

    /** The first that a rule says of a microphone; null for none. */
    private static Caution of(List<Caution> cautions, String rule, int mic) {
        return cautions.stream().filter(one -> one.rule().equals(rule) && one.mic() == mic).findFirst().orElse(null);
    }

    OptionView.CautionView caution(Caution caution, boolean pair) {
        return caution(caution, reader.sentence(caution.says()), who(caution.mic(), pair));
    }

    private OptionView.CautionView caution(Caution caution, String says, String who) {
        return new OptionView.CautionView(caution.severity().id(), WORDS.get(caution.severity()), says, who, caution.rule(), rule(caution.rule()));
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
                takes.of(option, index), reader.sentence(mic.brings()), figures(mic), mic.neighbours().stream().map(this::heard).map(reader::sentence).toList());
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
        add(figures, predicted.signalToNoiseDb(), "Over noise", "Under noise");
        if (predicted.proximityDb() >= 0.5) {
            add(figures, "Proximity at 100 Hz", predicted.proximityDb(), "dB");
        }
        add(figures, predicted.directToReverbDb(), "Direct over room", "Direct under room");
        add(figures, predicted.separationDb(), "Over neighbours", "Under neighbours");
        if (mic.heightM() != null) {
            figures.add(new OptionView.Figure("Height", reader.distance(mic.heightM())));
        }
        return figures;
    }

    /** A difference by the name that suits its sign. */
    private void add(List<OptionView.Figure> figures, Double differenceDb, String over, String under) {
        if (differenceDb != null) {
            add(figures, differenceDb < 0 ? under : over, Math.abs(differenceDb), "dB");
        }
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
        } else {
            boolean wire = option.mics().stream().anyMatch(mic -> mic.mount() == Mount.LEAD);
            figures.add(new OptionView.Figure("First null of the sum", wire ? "no first null: there is hardly any air on the way of either"
                    : together.spacingM() > 0 ? "no first null for the middle of the source: both hear it at the same moment; its sides reach one of them earlier"
                    : "no first null: both hear the sound at the same moment"));
        }
        for (int i = 0; i < option.mics().size(); i++) {
            if (option.mics().get(i).invertPolarity()) {
                figures.add(new OptionView.Figure("Polarity", "inverted on the channel of mic " + (i + 1)
                        + ", which hears the surface move the other way; left as it is, the two cancel in the bass"));
            }
        }
        if (together.contrastDb() >= 0.5) {
            figures.add(new OptionView.Figure("Contrast in tone", reader.value(together.contrastDb(), "dB")));
        }
        return figures;
    }
}
