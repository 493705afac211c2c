package pairwright.advice;

import java.util.List;
import pairwright.acoustics.Level;
import pairwright.acoustics.OctaveCurve;
import pairwright.acoustics.Room;
import pairwright.model.Attack;
import pairwright.model.Source;
import pairwright.model.Vocabulary;
import pairwright.model.Way;

/**
 * A source as it is played today.
 *
 * @param source what is played
 * @param typicalDbSpl running level at one metre on its axis; 0 for a lead
 * @param peakDbSpl true peak there; 0 for a lead
 * @param spectrumDb octave spectrum, strongest octave 0
 * @param attack how fast it starts
 */
public record AsPlayed(Source source, double typicalDbSpl, double peakDbSpl, OctaveCurve spectrumDb, Attack attack) {
    /** Power level over the level at one metre all round: 10 lg of the surface of a sphere of that radius. */
    private static final double SPHERE_DB = 10 * Math.log10(4 * Math.PI);

    /**
     * With ways of playing and dynamics; those that are not known change nothing.
     *
     * @param ways ids of the source
     * @param dynamics ids of the vocabulary
     */
    public static AsPlayed of(Source source, List<String> ways, List<String> dynamics, Vocabulary words) {
        OctaveCurve spectrum = source.spectrumDb();
        double levelDb = 0;
        double peakDb = 0;
        Attack attack = source.attack();
        for (Way way : source.ways()) {
            if (ways.contains(way.id())) {
                spectrum = spectrum.plus(way.toneDb());
                levelDb += way.levelDb();
                peakDb += way.peakDb();
                attack = way.attack() == null ? attack : way.attack();
            }
        }
        for (Vocabulary.Dynamic dynamic : words.dynamics()) {
            if (dynamics.contains(dynamic.id())) {
                levelDb += dynamic.levelDb();
                peakDb += Math.min(0, dynamic.levelDb()); // the peak figure is of loud playing already
            }
        }
        boolean acoustic = source.level() != null;
        return new AsPlayed(source, acoustic ? source.level().typicalDbSpl() + levelDb : 0, acoustic ? source.level().peakDbSpl() + peakDb : 0,
                spectrum.relativeToBand(spectrum.highestBand()), attack);
    }

    /** Running level that comes straight on its axis, octave by octave, in dB SPL; from its sounding surface, in metres. */
    public OctaveCurve directOctavesDbSpl(double distanceM) {
        return octavesDbSpl(Level.withCentreOffsetDbSpl(typicalDbSpl, distanceM, source.level().centreOffsetM()));
    }

    /** What a room of so much absorption, in square metres, adds anywhere in it, octave by octave, in dB SPL: of the power, which is less for what goes forward. */
    public OctaveCurve reverberantOctavesDbSpl(double absorptionM2) {
        return octavesDbSpl(typicalDbSpl).minus(source.directivityIndexDb()).plus(SPHERE_DB).map(db -> Room.reverberantDbSpl(db, absorptionM2));
    }

    private OctaveCurve octavesDbSpl(double overallDbSpl) {
        return Scene.octavesDbSpl(overallDbSpl, spectrumDb);
    }
}
