package pairwright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import pairwright.acoustics.OctaveCurve;
import pairwright.acoustics.Octaves;
import pairwright.drawing.Drawing;
import pairwright.drawing.Look;
import pairwright.drawing.OctaveDrawing;
import pairwright.drawing.Reader;
import pairwright.listen.BleedHeard;
import pairwright.listen.Measured;
import pairwright.listen.TakesCompared;
import pairwright.listen.TracksHeard;
import pairwright.listen.Traits;
import pairwright.model.Request;

/** What recordings show, as pages. */
public final class HeardPages {
    private final Html html;
    private final Visit visit;
    private final Reader reader;

    public HeardPages(Html html, Visit visit) {
        this.html = html;
        this.visit = visit;
        this.reader = visit.reader();
    }

    /**
     * Of one source.
     *
     * @param traits against its kind; null for none
     */
    public String source(Measured measured, Traits traits) {
        List<Drawing> drawings = new ArrayList<>(List.of(octaves("Octaves of the recording", "dB, strongest 0", measured.octavesDb(), null, "heard-octaves")));
        if (traits != null) {
            drawings.add(octaves("What it has more or less than its kind", "dB", traits.toneDb(), null, "heard-tone"));
        }
        List<String> says = traits != null ? traits.says() : List.of(measured.usable() ? "Say what plays, and it is told how it differs from its kind." : "Nothing is told of it, as nothing should rest on this recording.");
        return page(measured.recording(), "source", List.of(new HeardView.Leaf(measured.recording(), flaws(measured, true), Stream.concat(flaws(measured, false).stream(), traits == null ? Stream.of() : traits.restsOn().stream()).toList(),
                says, drawings, List.of(figures(measured), bands("Octaves", List.of("Octave", "Against the strongest"), List.of(measured.octavesDb()))), traits == null ? "" : HeardLines.of(traits), traits == null ? null : asked(traits))));
    }

    /** The address of the question what to put on this player. */
    private String asked(Traits traits) {
        return visit.to(Param.address("/", AskQuery.written(Request.of(null).of(traits.source(), traits.heard()))));
    }

    /** Of tracks, each with each. */
    public String pairs(TracksHeard tracks) {
        PairLeaf leaf = new PairLeaf(reader);
        List<HeardView.Leaf> leaves = new ArrayList<>();
        if (!tracks.says().isEmpty()) {
            leaves.add(new HeardView.Leaf("All of them", List.of(), List.of(), tracks.says().stream().map(reader::figures).toList(), List.of(), List.of(), ""));
        }
        IntStream.range(0, tracks.pairs().size()).forEach(i -> leaves.add(leaf.of(tracks.pairs().get(i), tracks.says(tracks.pairs().get(i)), "pair-" + (i + 1))));
        return page("Tracks that belong together", "pair", leaves);
    }

    /** Of two takes. */
    public String change(Measured before, Measured after, TakesCompared change) {
        return page("Before and after", "change", List.of(new HeardView.Leaf(change.after() + " over " + change.before(), flaws(true, before, after), flaws(false, before, after), change.says(),
                List.of(octaves("What changed, at equal level", "dB", change.octavesDb(), null, "heard-change")), List.of(bands("Octaves, at equal level", List.of("Octave", "After over before"), List.of(change.octavesDb()))), "")));
    }

    /** Of a neighbour. */
    public String bleed(Measured own, Measured neighbour, BleedHeard bleed) {
        boolean expected = bleed.expectedOctavesDb() != null;
        return page("Bleed", "bleed", List.of(new HeardView.Leaf(bleed.own() + " over " + bleed.neighbour(), flaws(true, own, neighbour), flaws(false, own, neighbour), bleed.says(),
                List.of(octaves("Own source over neighbour", "dB", bleed.octavesDb(), bleed.expectedOctavesDb(), "heard-bleed")),
                List.of(bands("Octaves", expected ? List.of("Octave", "Own over neighbour", "As reckoned") : List.of("Octave", "Own over neighbour"),
                        expected ? List.of(bleed.octavesDb(), bleed.expectedOctavesDb()) : List.of(bleed.octavesDb()))), "")));
    }

    private String page(String title, String way, List<HeardView.Leaf> leaves) {
        return ListenPage.heard(html, visit, new HeardView(title, visit.to("/listen?what=" + way), leaves));
    }

    private Drawing octaves(String title, String unit, OctaveCurve curveDb, OctaveCurve reckonedDb, String key) {
        return OctaveDrawing.of(title, unit, reckonedDb == null ? List.of(new OctaveDrawing.Series("", curveDb, Look.ONE))
                : List.of(new OctaveDrawing.Series("heard", curveDb, Look.ONE), new OctaveDrawing.Series("as reckoned", reckonedDb, Look.WANTED)), null, key, reader);
    }

    private static List<String> flaws(boolean serious, Measured one, Measured other) {
        return Stream.of(one, other).flatMap(measured -> flaws(measured, serious).stream().map(says -> measured.recording() + ": " + says)).toList();
    }

    private static List<String> flaws(Measured measured, boolean serious) {
        return measured.flaws().stream().filter(flaw -> flaw.serious() == serious).map(flaw -> flaw.says() + ".").toList();
    }

    private HeardView.Table figures(Measured measured) {
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("Length", figure("%.1f s", measured.durationS())));
        rows.add(List.of("Level while they play", db(measured.runningDbfs()) + "FS"));
        rows.add(List.of("Highest peak", db(measured.peakDbfs()) + "FS"));
        if (measured.calibrated() != null) {
            rows.add(List.of("Level at one metre", figure("%.0f dB SPL", measured.calibrated().typicalDbSpl())));
            rows.add(List.of("Highest peak at one metre", figure("%.0f dB SPL", measured.calibrated().peakDbSpl())));
        }
        rows.add(List.of("They play", figure("%.0f %% of the time", 100 * measured.playingShare())));
        rows.add(List.of("Peaks over the note", figure("%.0f dB", measured.crestDb())));
        rows.add(List.of("Notes start", measured.riseMs() == null ? "too few start out of quiet to tell" : figure("in %.1f ms, ", measured.riseMs()) + measured.attack().id() + ", by " + measured.notes() + " notes"));
        rows.add(List.of("Notes lie", measured.fundamentals() == null ? "hardly any has a clear pitch" : figure("from %.0f", measured.fundamentals().lowHz()) + figure(" to %.0f Hz", measured.fundamentals().highHz())));
        rows.add(List.of("Noise", measured.noiseDbfs() == null ? "never quiet enough to tell" : db(measured.noiseDbfs()) + "FS between the notes"));
        rows.add(List.of("What rings", !measured.resonancesSure() ? "not to be told from a note: too few different ones, or one that sounds on" : measured.resonances().isEmpty() ? "nothing stands out"
                : String.join("; ", measured.resonances().stream().map(one -> figure("%.0f Hz", one.frequencyHz()) + figure(" by %.0f dB", one.overDb())).toList())));
        return new HeardView.Table("Figures", List.of("What", "How much"), rows);
    }

    private HeardView.Table bands(String caption, List<String> heads, List<OctaveCurve> curves) {
        return HeardFigures.bands(reader, caption, heads, curves);
    }

    private String db(double value) {
        return HeardFigures.db(reader, value);
    }

    private String figure(String format, double value) {
        return HeardFigures.figure(reader, format, value);
    }
}
