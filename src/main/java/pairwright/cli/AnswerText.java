package pairwright.cli;

import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import pairwright.drawing.Reader;
import pairwright.model.Answer;
import pairwright.model.Arrangement;
import pairwright.model.Catalogue;
import pairwright.model.Caution;
import pairwright.model.Given;
import pairwright.model.Heard;
import pairwright.model.Naming;
import pairwright.model.Option;
import pairwright.model.Placement;
import pairwright.model.Predicted;
import pairwright.model.Reading;
import pairwright.model.Reason;
import pairwright.model.RuledOut;
import pairwright.model.Severity;
import pairwright.model.Technique;
import pairwright.rules.Figure;
import pairwright.sheet.SetUpWords;

/** An answer as a person likes to read it, 80 columns wide. */
final class AnswerText {
    static final int WIDTH = 80;
    /** Reasons of fewer points are summed up in one line, so that the column still adds up to the score. */
    private static final double SMALL_POINTS = 1;
    private static final DateTimeFormatter MOMENT = DateTimeFormatter.ofPattern("EEE d MMM yyyy, HH:mm", Locale.ENGLISH);
    private static final Pattern COMMANDS = Pattern.compile("[\\p{Cc}\\p{Cf}]+");

    private final Answer answer;
    private final Catalogue catalogue;
    private final SetUpWords words;
    private final Colour colour;
    private final StringBuilder text = new StringBuilder(4096);

    AnswerText(Answer answer, Catalogue catalogue, Colour colour) {
        this.answer = answer;
        this.catalogue = catalogue;
        this.words = new SetUpWords(catalogue, answer.question().meant(), Reader.METRIC);
        this.colour = colour;
    }

    String text() {
        understood();
        answer.options().forEach(this::option);
        sureness();
        if (answer.options().isEmpty()) {
            nothing();
        }
        out();
        ruledOut();
        return text.toString();
    }

    private void understood() {
        if (!answer.question().understood().isEmpty()) {
            wrap("Understood: ", "            ", answer.question().understood().stream()
                    .map(AnswerText::reading).collect(Collectors.joining(", ")) + ".");
        }
        if (!answer.question().notUnderstood().isEmpty()) {
            wrap("Not understood: ", "                ", String.join(", ", answer.question().notUnderstood()) + ".");
        }
        answer.question().ask().forEach(ask -> wrap("Question: ", "          ", ask.says()));
        heard();
        answer.question().assumed().forEach(sentence -> wrap("Assumed: ", "         ", sentence));
    }

    private static String reading(Reading reading) {
        String name = Naming.small(reading.name());
        return reading.words().isEmpty() || reading.words().equalsIgnoreCase(name)
                ? reading.as() + " " + name
                : "\"" + reading.words() + "\" as " + reading.as() + " " + name;
    }

    private void option(Option option) {
        text.append('\n');
        String score = String.format(Locale.ROOT, "score %.2f", option.score());
        List<String> head = wrapped(option.rank() + "  ", "   ", title(option), WIDTH - score.length() - 2);
        text.append(colour.strong).append(head.get(0)).append(colour.plain)
                .append(" ".repeat(WIDTH - head.get(0).length() - score.length())).append(score).append('\n');
        head.stream().skip(1).forEach(line -> text.append(colour.strong).append(line).append(colour.plain).append('\n'));
        for (Caution caution : option.cautions()) {
            caution(option, caution);
        }
        for (int i = 0; i < option.mics().size(); i++) {
            placement(option, i);
        }
        together(option);
        reasons(option);
    }

    static String title(Option option) {
        if (option.mics().size() == 1) {
            return option.mics().get(0).name();
        }
        String first = option.mics().get(0).name();
        String second = option.mics().get(1).name();
        if (first.equals(second)) {
            return option.techniqueName() + ": " + shortName(first) + ", two of them";
        }
        boolean alike = shortName(first).equals(shortName(second)); // then what stands behind the comma tells them apart
        return option.techniqueName() + ": " + (alike ? Naming.small(first) : shortName(first)) + " and "
                + (alike ? Naming.small(second) : shortName(second));
    }

    private static String shortName(String name) {
        return Naming.small(name.contains(",") ? name.substring(0, name.indexOf(',')) : name);
    }

    private void caution(Option option, Caution caution) {
        String word = caution.severity() == Severity.DANGER ? "DANGER" : caution.severity() == Severity.CARE ? "Care" : "Note";
        text.append(caution.severity() == Severity.NOTE ? "" : colour.alarm);
        wrap("   " + mark(caution.severity()) + " " + word + ": ", "     ", caution.says() + who(option, caution.mic()) + " (" + caution.rule() + ")");
        text.append(caution.severity() == Severity.NOTE ? "" : colour.plain);
    }

    private static String mark(Severity severity) {
        return severity == Severity.DANGER ? "!!" : severity == Severity.CARE ? "! " : "- ";
    }

    private static String who(Option option, int mic) {
        return option.mics().size() > 1 && mic > 0 ? " [mic " + mic + "]" : "";
    }

    private void placement(Option option, int index) {
        Placement mic = option.mics().get(index);
        String lead = option.mics().size() > 1 ? "   mic " + (index + 1) + "  " : "   ";
        String indent = " ".repeat(option.mics().size() > 1 ? 10 : 3);
        String named = option.mics().size() > 1 ? mic.name() + ", " : "";
        wrap(lead, indent, named + words.line(option, index) + ".");
        if (mic.units() != null) {
            mic.units().forEach(unit -> wrap(indent, indent, unit(unit)));
        }
        String expected = expected(mic.predicted());
        if (!expected.isEmpty()) {
            text.append(colour.faint);
            wrap(indent, indent, "Expect " + expected + ".");
            mic.neighbours().forEach(heard -> wrap(indent, indent, heard(heard)));
            text.append(colour.plain);
        }
    }

    private Arrangement arrangement(Option option) {
        Technique technique = catalogue.techniques().get(option.technique());
        return technique == null ? null : technique.arrangement();
    }

    private static String expected(Predicted predicted) {
        List<String> parts = new ArrayList<>();
        if (predicted.typicalDbSpl() != null) {
            parts.add(Math.round(predicted.typicalDbSpl()) + " dB SPL running and " + Math.round(predicted.peakDbSpl()) + " peak");
        }
        if (predicted.headroomDb() != null) {
            parts.add(Math.round(predicted.headroomDb()) + " dB in hand");
        }
        if (predicted.gainDb() != null) {
            parts.add(Math.round(predicted.gainDb()) + " dB of gain");
        }
        if (predicted.signalToNoiseDb() != null) {
            parts.add(Math.round(predicted.signalToNoiseDb()) + " dB over noise");
        }
        return String.join(", ", parts);
    }

    private static String heard(Heard heard) {
        long over = Math.round(heard.separationDb());
        String much = over < 0 ? -over + " dB louder than" : over + " dB under";
        String most = ", most around " + Figure.forPeople(heard.loudestHz(), "Hz");
        if (heard.roomAllowsDb() == null) {
            return "Hears the " + Naming.small(heard.name()) + " " + much + " its own source" + most + ".";
        }
        long room = Math.round(heard.roomAllowsDb());
        return "Hears the " + Naming.small(heard.name()) + " " + much + " its own source" + most + "; what the room adds alone is "
                + (room < 0 ? -room + " dB louder." : room + " dB under.");
    }

    private void together(Option option) {
        if (option.together() == null) {
            return;
        }
        List<String> parts = new ArrayList<>();
        if (option.together().recordingAngleDegrees() != null) {
            parts.add("recording angle about " + Math.round(option.together().recordingAngleDegrees()) + " degrees, the source takes "
                    + Math.round(option.together().sourceAngleDegrees()));
        } else if (option.together().firstNullHz() == null) {
            parts.add(arrangement(option) == Arrangement.SAME_SPOT ? "no time between them" : "each as far from what it hears as the other");
        } else {
            parts.add(String.format(Locale.ROOT, "%.2g ms apart, first cancellation at %s", option.together().delayMs(),
                    Figure.forPeople(option.together().firstNullHz(), "Hz")));
        }
        if (option.together().contrastDb() >= 0.5) {
            parts.add("their tone differs by " + Math.round(option.together().contrastDb()) + " dB");
        }
        wrap("   both   ", "          ", geometry(option) + "Expect " + String.join(", ", parts) + ".");
    }

    /** How far apart the two stand and how they are turned, where the technique and not the positions say so. */
    private String geometry(Option option) {
        Technique technique = catalogue.techniques().get(option.technique());
        if (technique == null || !technique.stereo() || technique.spacingM() == null) {
            return "";
        }
        String apart = technique.spacingM() == 0 ? "Capsules in one point" : "Capsules " + Figure.forPeople(technique.spacingM(), "m") + " apart";
        Double turned = technique.arrangement() == Arrangement.MID_SIDE ? null : technique.includedDegrees();
        return apart + (turned == null ? "" : turned == 0 ? ", parallel" : ", turned " + Math.round(turned) + " degrees apart") + ". ";
    }

    private void reasons(Option option) {
        double small = 0;
        int count = 0;
        for (Reason reason : option.reasons()) {
            if (Math.abs(reason.points()) < SMALL_POINTS) {
                small += reason.points();
                count++;
                continue;
            }
            wrap(String.format(Locale.ROOT, "   %+6.2f  ", reason.points()), "           ",
                    reason.says() + who(option, reason.mic()) + " (" + reason.rule() + ")");
        }
        if (count > 0) {
            wrap(String.format(Locale.ROOT, "   %+6.2f  ", small + 0.0), "           ",
                    count == 1 ? "one smaller reason." : count + " smaller reasons.");
        }
    }

    private void heard() {
        if (answer.heard() != null) {
            answer.heard().noted().forEach(says -> wrap("Heard: ", "       ", says));
            answer.heard().changed().forEach(says -> wrap("Changed: ", "         ", says));
        }
    }

    private void sureness() {
        if (answer.sureness() == null) {
            return;
        }
        text.append('\n');
        wrap("How sure: ", "          ", answer.sureness().says());
        answer.sureness().turns().forEach(turn -> wrap("          ", "          ", turn.says()));
    }

    private void nothing() {
        text.append('\n');
        if (answer.question().meant().source() == null) {
            wrap("", "", answer.question().ask().isEmpty()
                    ? "No source was understood. Name what is recorded: an instrument, a voice, an amplifier."
                    : "No source is certain. Answer the question above, or name what is recorded: an instrument, a voice, an amplifier.");
            return;
        }
        wrap("", "", "Nothing fits " + Naming.small(catalogue.sources().get(answer.question().meant().source()).name())
                + " within these limits.");
        answer.instead().forEach(way -> wrap("  ", "  ", way.says()));
    }

    /** Which unit to take, where it lies, what to know of it, and when it is free again. */
    private static String unit(Given unit) {
        String again = unit.out() == null ? "" : unit.freeFrom() == null ? "; it cannot be had then" : "; free again " + MOMENT.format(unit.freeFrom());
        return "Take " + unit.label() + (unit.storedAt() == null ? "" : ", from " + unit.storedAt()) + again + "."
                + (unit.note() == null ? "" : " Mind: " + UnitText.oneLine(unit.note()) + ".");
    }

    private void out() {
        if (answer.out() == null || answer.out().isEmpty()) {
            return;
        }
        text.append("\nBetter, but out\n");
        answer.out().forEach(missed -> wrap("   ", "   ", missed.says()));
    }

    private void ruledOut() {
        if (answer.ruledOut().isEmpty()) {
            return;
        }
        text.append("\nRuled out\n");
        for (RuledOut out : answer.ruledOut()) {
            wrap("   ", "   ", catalogue.mics().get(out.micType()).name() + ": " + out.says()
                    + (out.rule().equals("limit") ? "" : " (" + out.rule() + ")"));
        }
    }

    /** Writes words behind a lead, broken at blanks within the width. */
    private void wrap(String lead, String indent, String words) {
        wrapped(lead, indent, words, WIDTH).forEach(line -> text.append(line).append('\n'));
    }

    static List<String> wrapped(String lead, String indent, String words, int width) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder(lead);
        boolean empty = true;
        for (String word : pieces(words, width - Math.max(lead.length(), indent.length()))) {
            if (!empty && line.length() + 1 + word.length() > width) {
                lines.add(line.toString());
                line = new StringBuilder(indent);
                empty = true;
            }
            line.append(empty ? "" : " ").append(word);
            empty = false;
        }
        lines.add(line.toString());
        return lines;
    }

    /** Words without anything that could command a terminal. */
    static String harmless(String words) {
        return COMMANDS.matcher(words).replaceAll(" ");
    }

    /** Words short enough for a line. What came in is said back in parts, and nothing in it can command a terminal. */
    private static List<String> pieces(String words, int longest) {
        List<String> pieces = new ArrayList<>();
        for (String word : harmless(words).strip().split(" +")) {
            String rest = word;
            while (rest.length() > longest) {
                int cut = Character.isHighSurrogate(rest.charAt(longest - 1)) ? longest - 1 : longest;
                pieces.add(rest.substring(0, cut));
                rest = rest.substring(cut);
            }
            pieces.add(rest);
        }
        return pieces;
    }
}
