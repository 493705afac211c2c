package pairwright.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.IntFunction;
import pairwright.acoustics.OctaveCurve;
import pairwright.acoustics.Octaves;
import pairwright.listen.BleedHeard;
import pairwright.listen.Measured;
import pairwright.listen.PairHeard;
import pairwright.listen.TakesCompared;
import pairwright.listen.TracksHeard;
import pairwright.listen.Traits;
import pairwright.sheet.HeardLines;

/** What was heard, on a terminal. */
final class ListenText {
    private static final int BAR_DB = 2;
    private static final int LONGEST_BAR = 24;
    /** Between the loudest seconds and the softest: less is one way of playing. */
    private static final double ONE_LOUDNESS_DB = 3;
    /** Of an octave in which neither sounds. */
    private static final String NOTHING = "\u2013";

    private ListenText() {
    }

    static String source(Measured measured, Traits traits) {
        StringBuilder text = new StringBuilder();
        line(text, String.format(Locale.ROOT, "%s: %.1f s, %s, %d bits, %s", measured.recording(), measured.durationS(), measured.channels() == 1 ? "mono" : "stereo", measured.bits(),
                rate(measured.rateHz())));
        measured.flaws().forEach(flaw -> line(text, (flaw.serious() ? "Not to be used: " : "Mind: ") + flaw.says() + "."));
        text.append('\n');
        line(text, String.format(Locale.ROOT, "Level      %s dBFS while they play, highest peak %s dBFS, they play %.0f %% of the time", signed(measured.runningDbfs()), signed(measured.peakDbfs()),
                100 * measured.playingShare()));
        if (measured.calibrated() != null) {
            line(text, String.format(Locale.ROOT, "At 1 m     %.0f dB SPL, highest peak %.0f dB SPL", measured.calibrated().typicalDbSpl(), measured.calibrated().peakDbSpl()));
        }
        if (measured.loud() != null) {
            line(text, measured.loud().runningDbfs() - measured.soft().runningDbfs() < ONE_LOUDNESS_DB
                    ? String.format(Locale.ROOT, "Passages   all about as loud, %s dBFS: give a soft one as well", signed(measured.loud().runningDbfs()))
                    : String.format(Locale.ROOT, "Passages   loudest %s dBFS at %s, softest %s dBFS at %s", signed(measured.loud().runningDbfs()), clock(measured.loud().fromS()),
                    signed(measured.soft().runningDbfs()), clock(measured.soft().fromS())));
        }
        line(text, String.format(Locale.ROOT, "Peaks      %.0f dB over the note, %.0f dB over the whole", measured.crestDb(), measured.takeCrestDb()));
        line(text, "Starts     " + (measured.riseMs() == null ? "too few notes start out of quiet to tell" : String.format(Locale.ROOT, "in %.1f ms, %s (%d notes)", measured.riseMs(), measured.attack().id(), measured.notes())));
        line(text, "Notes      " + (measured.fundamentals() == null ? "hardly any clear pitch" : String.format(Locale.ROOT, "%.0f to %.0f Hz, the middle one %.0f Hz", measured.fundamentals().lowHz(),
                measured.fundamentals().highHz(), measured.fundamentals().typicalHz())));
        line(text, "Noise      " + (measured.noiseDbfs() == null ? "it is never quiet enough to tell" : signed(measured.noiseDbfs()) + " dBFS between the notes"));
        line(text, "Rings      " + (!measured.resonancesSure() ? "not to be told from a note: too few different ones, or one that sounds on" : measured.resonances().isEmpty() ? "nothing stands out" : rings(measured.resonances())));
        text.append('\n');
        octaves(text, "Octaves, against the strongest", measured.octavesDb());
        if (traits != null) {
            text.append('\n');
            traits.says().forEach(says -> line(text, says));
            traits.restsOn().forEach(says -> line(text, "Mind: " + says));
            text.append('\n');
            line(text, "For its seat in the line-up:");
            text.append(HeardLines.of(traits));
            text.append('\n');
            line(text, "To ask what to put on this player, keep what the same command prints with --json in a file and give it: pairwright ask " + traits.source() + " --played FILE");
        }
        return text.toString();
    }

    static String pairs(TracksHeard tracks) {
        StringBuilder text = new StringBuilder();
        tracks.says().forEach(says -> line(text, says));
        for (PairHeard pair : tracks.pairs()) {
            if (!text.isEmpty()) {
                text.append('\n');
            }
            line(text, pair.first() + " and " + pair.second() + ":");
            tracks.says(pair).forEach(says -> AnswerText.wrapped("  - ", "    ", AnswerText.harmless(says), AnswerText.WIDTH).forEach(one -> text.append(one).append('\n')));
            text.append('\n');
            List<List<String>> rows = new ArrayList<>();
            for (int band = 0; band < Octaves.COUNT; band++) {
                if (!pair.heard(band)) {
                    rows.add(List.of(octave(band), NOTHING, NOTHING, NOTHING, NOTHING, NOTHING, NOTHING));
                    continue;
                }
                rows.add(List.of(octave(band), signed(pair.differenceOctavesDb().at(band)), String.format(Locale.ROOT, "%.0f %%", 100 * pair.coherence().at(band)), signed(pair.sumDb().at(band)),
                        signed(pair.flippedDb().at(band)), signed(pair.alignedDb().at(band)), String.format(Locale.ROOT, "%.2f", pair.correlationOctavesShare().at(band)).replace('-', '\u2212')));
            }
            text.append(Columns.of(List.of("octave", "second over first", "in common", "sum", "one inverted", "aligned", "corr."), rows));
            line(text, "Sums in dB over what two strangers of these levels would give: 3 dB is full addition.");
        }
        return text.toString();
    }

    static String change(Measured before, Measured after, TakesCompared compared) {
        StringBuilder text = new StringBuilder();
        compared.says().forEach(says -> line(text, says));
        flaws(text, before, after);
        text.append('\n');
        differences(text, compared.after() + " over " + compared.before() + ", at equal level", compared.octavesDb());
        return text.toString();
    }

    static String bleed(Measured own, Measured neighbour, BleedHeard bleed) {
        StringBuilder text = new StringBuilder();
        bleed.says().forEach(says -> line(text, says));
        flaws(text, own, neighbour);
        text.append('\n');
        differences(text, bleed.own() + " over " + bleed.neighbour(), bleed.octavesDb());
        return text.toString();
    }

    private static void flaws(StringBuilder text, Measured... recordings) {
        for (Measured one : recordings) {
            one.flaws().forEach(flaw -> line(text, (flaw.serious() ? "Not to be used: " : "Mind: ") + one.recording() + ": " + flaw.says() + "."));
        }
    }

    private static void differences(StringBuilder text, String title, OctaveCurve octavesDb) {
        table(text, title, octavesDb, band -> "");
    }

    /** With a bar that is as long as the octave is strong. */
    private static void octaves(StringBuilder text, String title, OctaveCurve octavesDb) {
        table(text, title, octavesDb, band -> "#".repeat((int) Math.max(0, LONGEST_BAR + Math.round(octavesDb.at(band) / BAR_DB))));
    }

    private static void table(StringBuilder text, String title, OctaveCurve octavesDb, IntFunction<String> bar) {
        line(text, title + ":");
        for (int band = 0; band < Octaves.COUNT; band++) {
            text.append(String.format(Locale.ROOT, "  %7s %6s dB  %s", octave(band), signed(octavesDb.at(band)), bar.apply(band)).stripTrailing()).append('\n');
        }
    }

    private static String rings(List<Measured.Resonance> resonances) {
        return String.join(", ", resonances.stream().map(one -> String.format(Locale.ROOT, "%.0f Hz, %.0f dB", one.frequencyHz(), one.overDb())).toList());
    }

    private static String octave(int band) {
        double centreHz = Octaves.centreHz(band);
        return centreHz < 1000 ? String.format(Locale.ROOT, "%.0f Hz", centreHz) : String.format(Locale.ROOT, "%.0f kHz", centreHz / 1000);
    }

    private static String rate(double rateHz) {
        return String.format(Locale.ROOT, "%.1f kHz", rateHz / 1000).replace(".0 kHz", " kHz");
    }

    private static String clock(double momentS) {
        return String.format(Locale.ROOT, "%d:%02d", (int) momentS / 60, (int) momentS % 60);
    }

    private static String signed(double value) {
        String text = String.format(Locale.ROOT, "%.1f", Math.abs(value));
        return value < 0 && !text.equals("0.0") ? "\u2212" + text : text;
    }

    private static void line(StringBuilder text, String line) {
        AnswerText.wrapped("", "  ", AnswerText.harmless(line), AnswerText.WIDTH).forEach(one -> text.append(one).append('\n'));
    }
}
