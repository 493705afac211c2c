package pairwright.model;

import java.util.List;
import pairwright.acoustics.OctaveCurve;

/**
 * What makes the sound: an instrument, a voice, an amplifier, or a lead.
 *
 * @param id kebab case, the plain English name
 * @param name what people call it
 * @param family its family
 * @param says one or two sentences: where the sound leaves it and what to know
 * @param words other names: languages, slang, short forms
 * @param signal sound or a lead
 * @param level how loud, for an acoustic source; else null
 * @param lead how strong, for a lead; else null
 * @param spectrumDb average octave spectrum, strongest octave 0
 * @param fundamentalHz range of its fundamentals
 * @param attack how fast it starts
 * @param crestDb true peak over running level, one note
 * @param sizeM width of what sounds, as the microphone sees it
 * @param body how it stands, for drawings; null where nobody said, and for a lead
 * @param directivityIndexDb toward its main axis, per octave
 * @param wide whether it is usually wanted in stereo when channels allow
 * @param care what player and instrument need, in sentences
 * @param ways ways of playing that change the answer
 * @param positions where to put a microphone
 * @param habits what the trade reaches for and avoids
 * @param pairs the pairs it uses
 * @param confidence how sure the entry is
 * @param basis what the figures rest on
 */
public record Source(
        String id,
        String name,
        SourceFamily family,
        String says,
        List<String> words,
        Signal signal,
        Level level,
        LeadLevel lead,
        OctaveCurve spectrumDb,
        Range fundamentalHz,
        Attack attack,
        Range crestDb,
        double sizeM,
        Body body,
        OctaveCurve directivityIndexDb,
        boolean wide,
        List<String> care,
        List<Way> ways,
        List<Position> positions,
        List<Habit> habits,
        List<PairRecipe> pairs,
        Confidence confidence,
        List<Rests> basis) {

    /** The same as a player was heard: as loud, of that spectrum, range of fundamentals, attack and crest. */
    public Source heard(Level otherLevel, OctaveCurve otherSpectrumDb, Range otherFundamentalHz, Attack otherAttack, Range otherCrestDb) {
        return new Source(id, name, family, says, words, signal, otherLevel, lead, otherSpectrumDb, otherFundamentalHz, otherAttack, otherCrestDb, sizeM, body,
                directivityIndexDb, wide, care, ways, positions, habits, pairs, confidence, basis);
    }
}
