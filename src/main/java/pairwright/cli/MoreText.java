package pairwright.cli;

import java.util.List;
import java.util.Locale;
import pairwright.model.Answer;
import pairwright.model.Caution;
import pairwright.model.Moves;
import pairwright.model.Naming;
import pairwright.model.Placement;
import pairwright.model.RuledOut;
import pairwright.model.Severity;
import pairwright.model.WhyNot;
import pairwright.rules.Figure;

/** What is asked after an answer, as a person likes to read it, 80 columns wide. */
final class MoreText {
    /** Rules that differ by less are summed up in one line, so that the column still adds up. */
    private static final double SMALL_POINTS = 1;

    private final Colour colour;
    private final StringBuilder text = new StringBuilder(4096);

    MoreText(Colour colour) {
        this.colour = colour;
    }

    String of(WhyNot whyNot) {
        head("Why not the " + Naming.small(whyNot.name()) + "?");
        wrap("   ", "   ", whyNot.says());
        if (whyNot.placement() != null) {
            text.append('\n');
            head("Where it would stand, at its best");
            wrap("   ", "   ", stands(whyNot.placement()) + ".");
            whyNot.cautions().stream().filter(caution -> caution.severity() != Severity.NOTE).forEach(this::caution);
        }
        losses(whyNot);
        if (!whyNot.ruledOut().isEmpty() || !whyNot.limits().isEmpty()) {
            text.append('\n');
            head("What stands in the way");
            for (Answer.Instead limit : whyNot.limits()) {
                wrap("   ", "   ", limit.says());
            }
            for (RuledOut out : whyNot.ruledOut()) {
                wrap("   ", "   ", out.says() + " (" + out.rule() + ")");
            }
        }
        if (whyNot.inPair() != null) {
            text.append('\n');
            head("In a pair");
            wrap("   ", "   ", whyNot.inPair().says());
        }
        if (whyNot.standing() != WhyNot.Standing.FIRST) {
            text.append('\n');
            head("What would change that (" + whyNot.tried() + " changes were asked)");
            whyNot.changes().forEach(change -> wrap("   ", "   ", change.says()));
            if (whyNot.changes().isEmpty()) {
                wrap("   ", "   ", "Nothing alone.");
            }
        }
        return text.toString();
    }

    private void losses(WhyNot whyNot) {
        if (whyNot.losses().isEmpty() || whyNot.standing() == WhyNot.Standing.FIRST) {
            return;
        }
        text.append('\n');
        head("Points, rule by rule: first answer, here, lost");
        double there = 0;
        double here = 0;
        int count = 0;
        for (WhyNot.Loss loss : whyNot.losses()) {
            if (Math.abs(loss.lossPoints()) < SMALL_POINTS) {
                there += loss.therePoints();
                here += loss.herePoints();
                count++;
            } else {
                row(loss.therePoints(), loss.herePoints(), loss.title() + " (" + loss.rule() + ")");
            }
        }
        if (count > 0) {
            row(there, here, count == 1 ? "one rule with a small difference" : count + " rules with small differences");
        }
        row(whyNot.first().score(), whyNot.score(), "in all; the first answer is " + Naming.small(AnswerText.title(whyNot.first())));
    }

    private void row(double there, double here, String words) {
        wrap(String.format(Locale.ROOT, "   %+6.2f %+6.2f %+6.2f  ", there + 0.0, here + 0.0, there - here + 0.0), " ".repeat(25), words);
    }

    String of(Moves moves) {
        head(moves.name());
        wrap("   ", "   ", moves.says());
        moves.notes().forEach(note -> wrap("   ", "   ", note));
        text.append('\n');
        head("As it stands: " + Naming.small(AnswerText.title(moves.option())));
        moves.option().mics().forEach(mic -> wrap("   ", "   ", stands(mic) + "."));
        moves.option().cautions().stream().filter(caution -> caution.severity() == Severity.DANGER).forEach(this::caution);
        moves.ruledOut().forEach(out -> wrap("   ", "   ", out.says() + " (" + out.rule() + ")"));
        int number = 0;
        for (Moves.Move move : moves.moves()) {
            number++;
            text.append('\n').append(colour.strong);
            wrap(number + "  ", "   ", move.says());
            text.append(colour.plain);
            if (!move.change().isEmpty()) {
                wrap("   ", "   ", (moves.option().mics().size() > 1 && move.mic() > 0 ? "mic " + move.mic() + ": " : "") + move.change()
                        + (move.effect().isEmpty() ? "." : ": " + move.effect() + "."));
            } else if (!move.effect().isEmpty()) {
                wrap("   ", "   ", move.effect().substring(0, 1).toUpperCase(Locale.ROOT) + move.effect().substring(1) + ".");
            }
            wrap("   ", "   ", move.why());
            if (move.scorePoints() != null) {
                wrap("   ", "   ", String.format(Locale.ROOT, "Score %+.2f, then %.2f%s.", move.scorePoints() + 0.0, move.option().score() + 0.0,
                        move.scorePoints() < 0 ? ": only if the sound needs it" : ""));
            }
            move.newCautions().forEach(this::caution);
        }
        if (moves.moves().isEmpty()) {
            wrap("   ", "   ", "There is nothing to move.");
        }
        return text.toString();
    }

    private void head(String words) {
        text.append(colour.strong);
        wrap("", "", words);
        text.append(colour.plain);
    }

    private void caution(Caution caution) {
        String word = caution.severity() == Severity.DANGER ? "!! DANGER: " : caution.severity() == Severity.CARE ? "!  Care: " : "-  Note: ";
        text.append(caution.severity() == Severity.NOTE ? "" : colour.alarm);
        wrap("   " + word, "      ", caution.says() + " (" + caution.rule() + ")");
        text.append(caution.severity() == Severity.NOTE ? "" : colour.plain);
    }

    private String stands(Placement mic) {
        boolean air = mic.predicted().typicalDbSpl() != null;
        return mic.name() + ", " + Naming.small(mic.positionName())
                + (air ? (mic.name().endsWith(", " + mic.pattern().id()) ? "" : ", " + mic.pattern().id()) + ", " + Figure.forPeople(mic.distanceM(), "m")
                + (mic.aimDegrees() == 0 ? "" : ", turned " + Math.round(Math.abs(mic.aimDegrees())) + " degrees"
                        + (mic.aimDegrees() < 0 ? " toward the neighbour" : "")) : "")
                + (mic.phantom() ? ", phantom on" : ", phantom off") + (mic.pad() ? ", " + Math.round(mic.padDb()) + " dB pad in" : "");
    }

    private void wrap(String lead, String indent, String words) {
        List<String> lines = AnswerText.wrapped(lead, indent, words, AnswerText.WIDTH);
        lines.forEach(line -> text.append(line).append('\n'));
    }
}
