package pairwright.listen;

import java.util.List;
import pairwright.acoustics.OctaveCurve;
import pairwright.model.Attack;

/**
 * What a recording of one source shows. Levels are against a sine of full scale, and in sound pressure where a reading was given.
 *
 * @param recording what the file is called
 * @param durationS of what could be read
 * @param rateHz samples a second
 * @param channels one or two
 * @param bits of a sample
 * @param runningDbfs while somebody plays
 * @param peakDbfs highest sample; the true peak may lie a little above
 * @param playingShare of the time in which somebody plays
 * @param octavesDb against the strongest octave, while all of it sounds
 * @param crestDb peak over the loudest eighth of a second, the middle one of all notes
 * @param takeCrestDb highest peak of all over the running level
 * @param riseMs from a tenth to nine tenths of a note's height, the middle one of all; null where too few notes start out of quiet
 * @param attack the same in words; null likewise
 * @param notes how many notes that rests on
 * @param noiseDbfs of the softest moments; null where it is never quiet enough to tell
 * @param fundamentals null where hardly any note is clear
 * @param resonances what stands out whatever is played, the most first
 * @param resonancesSure whether so many notes were played, with none that sounds on, that a resonance can be told from a note
 * @param loud the loudest passage of some seconds; null for a short recording
 * @param soft the softest in which somebody plays; null likewise
 * @param clips how often tops are cut off
 * @param calibrated in sound pressure; null where no reading was given
 * @param flaws what is wrong with the recording, and what to do
 */
public record Measured(String recording, double durationS, double rateHz, int channels, int bits, double runningDbfs, double peakDbfs, double playingShare, OctaveCurve octavesDb,
        double crestDb, double takeCrestDb, Double riseMs, Attack attack, int notes, Double noiseDbfs, Fundamentals fundamentals, List<Resonance> resonances, boolean resonancesSure,
        Passage loud, Passage soft, int clips, Calibrated calibrated, List<Flaw> flaws) {
    public Measured {
        resonances = List.copyOf(resonances);
        flaws = List.copyOf(flaws);
    }

    /** Whether the choice of a microphone may rest on it. */
    public boolean usable() {
        return flaws.stream().noneMatch(Flaw::serious);
    }

    /**
     * The fundamentals of the notes; of a stereo recording those of whichever channel is louder at the time.
     *
     * @param lowHz one note in twenty is lower
     * @param typicalHz as many are lower as are higher
     * @param highHz one note in twenty is higher
     * @param clearShare of all looks that showed one clear note
     */
    public record Fundamentals(double lowHz, double typicalHz, double highHz, double clearShare) {
    }

    /**
     * Something that rings.
     *
     * @param overDb over what lies half an octave about it
     */
    public record Resonance(double frequencyHz, double overDb) {
    }

    /**
     * Some seconds.
     *
     * @param fromS where they begin
     * @param lengthS how long they are
     * @param runningDbfs their level
     */
    public record Passage(double fromS, double lengthS, double runningDbfs) {
    }

    /**
     * What a sound level meter makes of it.
     *
     * @param reading as it was given
     * @param typicalDbSpl running level at one metre, unweighted
     * @param peakDbSpl highest peak at one metre
     */
    public record Calibrated(MeterReading reading, double typicalDbSpl, double peakDbSpl) {
    }

    /**
     * Something that is wrong with a recording.
     *
     * @param says what, and what to do
     * @param serious whether nothing should rest on the recording
     */
    public record Flaw(String says, boolean serious) {
    }
}
