package pairwright.model;

import java.util.List;
import pairwright.acoustics.OctaveCurve;

/**
 * A generic class of microphone or line box, never a product.
 *
 * @param id kebab case, reads as words
 * @param name what people call it
 * @param family its family
 * @param says one or two sentences: how it is built and what for
 * @param words other names it goes by
 * @param tier price class, 1 cheapest to 5 dearest
 * @param patterns the patterns it offers, with their figures
 * @param responseDb on-axis response far away, re 1 kHz
 * @param sensitivityMvPerPa open-circuit sensitivity; null for a lead box or a bare contact
 * @param selfNoiseDba equivalent noise of an active type; null for a passive one
 * @param maxDbSpl sound pressure level, sine equivalent, at 0.5 to 1 % distortion; null where it does not apply
 * @param impedanceOhm source impedance
 * @param inputOhm input impedance of a line box; null otherwise
 * @param maxInputDbu largest input of a line box; null otherwise
 * @param needsLoadOhm the least load it wants; null where the usual preamp will do
 * @param power where it takes power from
 * @param currentMa phantom current per channel; null where none
 * @param padsDb pads in the body, smallest first; empty where none
 * @param highPass whether a low cut is in the body
 * @param channels how many preamp channels it takes
 * @param captures false for a box that plays back, such as a re-amp box
 * @param address which part looks at the source
 * @param speed how fast it follows a transient
 * @param massKg with its usual mount
 * @param ruggedness 1 fragile to 5 takes a fall
 * @param blastTolerance how well it stands moving air
 * @param humidityTolerance how well it stands breath and damp
 * @param handling sentences an assistant must know
 * @param confidence how sure the figures are
 * @param basis what the figures rest on
 */
public record MicType(
        String id,
        String name,
        MicFamily family,
        String says,
        List<String> words,
        int tier,
        List<PatternData> patterns,
        OctaveCurve responseDb,
        Range sensitivityMvPerPa,
        Range selfNoiseDba,
        Range maxDbSpl,
        Range impedanceOhm,
        Range inputOhm,
        Range maxInputDbu,
        Double needsLoadOhm,
        PowerNeed power,
        Range currentMa,
        List<Double> padsDb,
        boolean highPass,
        int channels,
        boolean captures,
        Address address,
        Speed speed,
        Range massKg,
        int ruggedness,
        Tolerance blastTolerance,
        Tolerance humidityTolerance,
        List<String> handling,
        Confidence confidence,
        List<Rests> basis) {

    /** Another unit of the type: the same but for what differs from unit to unit. */
    public MicType unit(OctaveCurve otherResponseDb, Range otherSensitivityMvPerPa, Range otherSelfNoiseDba, Range otherMaxDbSpl) {
        return new MicType(id, name, family, says, words, tier, patterns, otherResponseDb, otherSensitivityMvPerPa, otherSelfNoiseDba, otherMaxDbSpl,
                impedanceOhm, inputOhm, maxInputDbu, needsLoadOhm, power, currentMa, padsDb, highPass, channels, captures, address, speed, massKg,
                ruggedness, blastTolerance, humidityTolerance, handling, confidence, basis);
    }

    /** No microphone input has such an input impedance: what wants more goes into a line box or the instrument input of a channel. */
    public static final double BOX_LOAD_OHM = 100_000;

    /** Whether it must not go straight into a microphone input, which would swallow it. */
    public boolean wantsBox() {
        return family != MicFamily.LINE && needsLoadOhm != null && needsLoadOhm >= BOX_LOAD_OHM;
    }

    /** Whether it is a line box with an input high enough for a pickup or microphone. */
    public boolean boxFor(MicType other) {
        return family == MicFamily.LINE && captures && inputOhm != null && other.wantsBox() && inputOhm.typical() >= other.needsLoadOhm;
    }

    /** Whether phantom power must be on for it to work. */
    public boolean needsPhantom() {
        return power == PowerNeed.PHANTOM;
    }

    /** A ribbon without electronics: the one class that stray direct current or a gust can ruin. */
    public boolean passiveRibbon() {
        return family == MicFamily.RIBBON && power == PowerNeed.NONE;
    }
}
