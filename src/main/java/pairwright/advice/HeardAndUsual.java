package pairwright.advice;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import pairwright.acoustics.OctaveCurve;
import pairwright.acoustics.Octaves;
import pairwright.model.Answer;
import pairwright.model.HeardBefore;
import pairwright.model.Level;
import pairwright.model.Naming;
import pairwright.model.Predicted;
import pairwright.model.Range;
import pairwright.model.Source;
import pairwright.rules.Figure;

/** A player who was heard before, against the kind of source: what was heard, and what is advised otherwise for it. */
final class HeardAndUsual {
    /** Less is within what players of one instrument differ by. */
    private static final double WORTH_SAYING_DB = 1.5;
    private static final double WORTH_SAYING_POINTS = 0.5;

    private HeardAndUsual() {
    }

    /**
     * Both together.
     *
     * @param usual the entry as it stands in the catalogue
     * @param heard what was heard of the player
     * @param now the options with it, best first
     * @param before the same question asked without it, best first
     */
    static Answer.Heard of(Source usual, HeardBefore heard, List<Candidate> now, List<Candidate> before) {
        return new Answer.Heard(noted(usual, heard), changed(now, before));
    }

    private static List<String> noted(Source usual, HeardBefore heard) {
        Source source = heard.over(usual);
        List<String> says = new ArrayList<>();
        if (usual.level() != null) {
            level(usual, source.level(), heard, says);
        }
        if (heard.toneDb() != null) {
            says.add(tone(heard.toneDb(), Naming.small(usual.name())));
        }
        if (heard.lowestHz() != null && heard.lowestHz() != usual.fundamentalHz().low()) {
            says.add("Its lowest note is " + hz(heard.lowestHz()) + " in place of " + hz(usual.fundamentalHz().low()) + ".");
        }
        if (heard.highestHz() != null && heard.highestHz() != usual.fundamentalHz().high()) {
            says.add("Its highest note is " + hz(heard.highestHz()) + " in place of " + hz(usual.fundamentalHz().high()) + ".");
        }
        if (heard.crestDb() != null) {
            says.add("Its peaks stand " + Figure.forPeople(heard.crestDb(), "dB") + " over a note" + (usual.crestDb() == null ? "." : "; of its kind " + range(usual.crestDb()) + " are usual.")
                    + (heard.higherPeaksDb(usual.crestDb()) > 0 ? " The peaks are reckoned higher by what is more." : ""));
        }
        if (heard.attack() != null && heard.attack() != usual.attack()) {
            says.add("Its notes start " + heard.attack().id() + "; of its kind " + usual.attack().id() + " is usual.");
        }
        return says;
    }

    private static String range(Range usualDb) {
        return Figure.forPeople(usualDb.low(), "dB").replace(" dB", "") + " to " + Figure.forPeople(usualDb.high(), "dB");
    }

    private static void level(Source kind, Level level, HeardBefore heard, List<String> says) {
        Level usual = kind.level();
        if (heard.typicalDbSpl() == null && heard.peakDbSpl() == null) {
            says.add("How loud it is was not read from a meter: " + (heard.higherPeaksDb(kind.crestDb()) > 0 ? "the running level is that of its kind, " + dbSpl(usual.typicalDbSpl())
                    + " at one metre, peaks " + dbSpl(level.peakDbSpl()) + " in place of " + dbSpl(usual.peakDbSpl())
                    : "the levels are those of its kind, " + dbSpl(usual.typicalDbSpl()) + " at one metre, peaks " + dbSpl(usual.peakDbSpl())) + ". Read one while they play.");
            return;
        }
        says.add("It plays at " + dbSpl(level.typicalDbSpl()) + " at one metre, peaks " + dbSpl(level.peakDbSpl()) + "; of its kind " + dbSpl(usual.typicalDbSpl()) + " and "
                + dbSpl(usual.peakDbSpl()) + " are usual.");
    }

    private static String tone(OctaveCurve toneDb, String kind) {
        List<String> parts = new ArrayList<>();
        for (int band = 0; band < Octaves.COUNT; band++) {
            double db = toneDb.at(band);
            if (Math.abs(db) >= WORTH_SAYING_DB) {
                parts.add(Figure.forPeople(Math.abs(db), "dB") + (db > 0 ? " more" : " less") + " at " + hz(Octaves.centreHz(band)));
            }
        }
        return parts.isEmpty() ? "Its sound is that of its kind, octave by octave." : "Against the usual " + kind + " it has " + listed(parts) + ".";
    }

    private static List<String> changed(List<Candidate> now, List<Candidate> before) {
        List<String> says = new ArrayList<>();
        if (now.isEmpty() || before.isEmpty()) {
            if (now.isEmpty() != before.isEmpty()) {
                says.add(now.isEmpty() ? "Of the usual player something would fit; of this one nothing does." : "Of the usual player nothing would fit; of this one something does.");
            }
            return says.isEmpty() ? List.of("It changes nothing: nothing fits with or without it.") : says;
        }
        Candidate first = now.get(0);
        Candidate other = before.get(0);
        boolean sameFirst = setUp(first).equals(setUp(other));
        if (!sameFirst) {
            says.add("First comes " + Draws.oneLine(first) + "; for the usual player it would be " + Draws.oneLine(other) + ".");
        }
        List<String> come = unlike(now, before, sameFirst);
        List<String> gone = unlike(before, now, sameFirst);
        if (!come.isEmpty()) {
            says.add("Among the options for it: " + listed(come) + ".");
        }
        if (!gone.isEmpty()) {
            says.add("No longer among them: " + listed(gone) + ".");
        }
        if (says.isEmpty()) {
            says.add("It changes nothing of the order.");
        }
        if (sameFirst) {
            numbers(first, other, says);
        }
        return says;
    }

    /** Those of other ideas, less a first one that was told already. */
    private static List<String> unlike(List<Candidate> some, List<Candidate> others, boolean withFirst) {
        Set<String> known = new LinkedHashSet<>(others.stream().map(Candidate::idea).toList());
        return some.stream().skip(withFirst ? 0 : 1).filter(one -> !known.contains(one.idea())).map(Draws::oneLine).toList();
    }

    private static void numbers(Candidate now, Candidate before, List<String> says) {
        Predicted with = now.first().placed().predicted();
        Predicted without = before.first().placed().predicted();
        number("The peaks at " + (now.isSingle() ? "its microphone" : "the first microphone") + " are ", with.peakDbSpl(), without.peakDbSpl(), "dB SPL", says);
        number("Its headroom is ", with.headroomDb(), without.headroomDb(), "dB", says);
        number("It wants a gain of ", with.gainDb(), without.gainDb(), "dB", says);
        if (Math.abs(now.centipoints() - before.centipoints()) >= 100 * WORTH_SAYING_POINTS) {
            says.add("Its score is " + points(now) + " in place of " + points(before) + ".");
        }
    }

    private static void number(String what, Double with, Double without, String unit, List<String> says) {
        if (with != null && without != null && Math.abs(with - without) >= WORTH_SAYING_DB) {
            says.add(what + Figure.forPeople(with, unit) + " in place of " + Figure.forPeople(without, unit) + ".");
        }
    }

    private static String points(Candidate candidate) {
        return Figure.forPeople(candidate.centipoints() / 100.0, "").strip();
    }

    private static String setUp(Candidate candidate) {
        return candidate.technique() + " " + candidate.first().place() + (candidate.isSingle() ? "" : " " + candidate.second().place());
    }

    private static String dbSpl(double db) {
        return Figure.forPeople(db, "dB SPL");
    }

    private static String hz(double hertz) {
        return Figure.forPeople(hertz, "Hz");
    }

    private static String listed(List<String> parts) {
        return parts.size() == 1 ? parts.get(0) : String.join(", ", parts.subList(0, parts.size() - 1)) + " and " + parts.get(parts.size() - 1);
    }
}
