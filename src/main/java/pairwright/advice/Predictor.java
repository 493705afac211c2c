package pairwright.advice;

import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pairwright.acoustics.FirstOrder;
import pairwright.acoustics.Gain;
import pairwright.acoustics.Headroom;
import pairwright.acoustics.Level;
import pairwright.acoustics.Loading;
import pairwright.acoustics.Noise;
import pairwright.acoustics.OctaveCurve;
import pairwright.acoustics.Octaves;
import pairwright.acoustics.Proximity;
import pairwright.acoustics.Radiation;
import pairwright.acoustics.Room;
import pairwright.model.Heard;
import pairwright.model.LeadLevel;
import pairwright.model.MicFamily;
import pairwright.model.MicType;
import pairwright.model.Mount;
import pairwright.model.Pattern;
import pairwright.model.PatternData;
import pairwright.model.Position;
import pairwright.model.PowerNeed;
import pairwright.model.Predicted;
import pairwright.model.Source;
import pairwright.rules.Placed;

/** Predicts what a placement gives. Only arithmetic: every formula is in acoustics, every figure in the catalogue. */
final class Predictor {
    private static final double PROXIMITY_HZ = 100;
    /** How much lower a ribbon's limit lies in the two lowest octaves: 6 dB at 100 Hz and 12 dB at 50 Hz, as practice has it. */
    private static final double RIBBON_LOSS_63_HZ_DB = 10;
    private static final double RIBBON_LOSS_125_HZ_DB = 4;
    /** A pad is put in when less than this is left without it. */
    private static final double WANTED_HEADROOM_DB = 6;
    private static final double FIT_DB = 3;
    private static final double SINE_DB = 3.01;
    private static final double HYPERCARDIOID = 0.25;

    private final Scene scene;
    private final Source source;
    private final OctaveCurve weights;
    /** What is heard of the others at each place; one and the same where the same others arrive there. */
    private final Map<Place, Optional<Bleed>> bleeds = new HashMap<>();
    private final Map<List<Reaching>, Optional<Bleed>> alike = new IdentityHashMap<>();
    private final Map<String, Double> noise = new HashMap<>();

    Predictor(Scene scene) {
        this.scene = scene;
        this.source = scene.setting().source();
        this.weights = scene.weights();
    }

    private record Place(String position, double distanceM) {
    }

    /** What is heard of the others at a place; null where none arrives, and where no air is between. */
    Bleed bleed(Position position, double distanceM) {
        return wired(position) || scene.others().isEmpty() ? null : bleeds.computeIfAbsent(new Place(position.id(), distanceM), place ->
                alike.computeIfAbsent(scene.surroundings().at(position, distanceM), who -> who.isEmpty() ? Optional.empty() : Optional.of(new Bleed(scene, who))))
                .orElse(null);
    }

    /** What a placement hears of each; empty where none arrives. */
    List<Heard> heard(Placed placed) {
        Bleed bleed = bleed(placed.position(), placed.distanceM());
        return bleed == null || placed.predicted().separationDb() == null ? List.of()
                : bleed.heard(Placements.pattern(placed), placed.aimDegrees(), placed.predicted().typicalDbSpl());
    }

    /**
     * A prediction and what goes with it.
     *
     * @param padDb the pad that is in; 0 for none
     * @param distanceRatio distance over the distance at which room and source are equally loud for this pattern; 0 where no air is between
     * @param sourceAngleDegrees the angle the source takes from there
     * @param turnGainDb how much lower the neighbours are picked up than from the front; 0 without any, and where no air is between
     */
    record Prediction(Predicted predicted, double padDb, double distanceRatio, double sourceAngleDegrees, double turnGainDb) {
    }

    Prediction predict(MicType mic, PatternData pattern, Position position, double distanceM, double aimDegrees) {
        return aimDegrees == Placements.SIDE_DEGREES
                ? predicted(mic, pattern, position, distanceM, Math.max(0, Placements.SIDE_DEGREES - sourceAngle(distanceM) / 2))
                : predicted(mic, pattern, position, distanceM, aimDegrees);
    }

    /** A side microphone hears the edges of the source, not its middle: that is the angle it is predicted for. */
    private Prediction predicted(MicType mic, PatternData pattern, Position position, double distanceM, double aimDegrees) {
        OctaveCurve colour = colour(mic, pattern, position, distanceM, aimDegrees);
        OctaveCurve tone = scene.spectrumDb().plus(colour).relativeToBand(Band.HZ_1000);
        OctaveCurve off = colour.minus(scene.wantedToneDb());
        double mean = off.weightedMean(weights);
        double missDb = off.plus(-mean).weightedRms(weights);
        double fit = Math.max(-1, Math.min(1, 1 - missDb / FIT_DB));
        Sound sound = sound(mic, pattern, position, distanceM, aimDegrees);
        Bleed bleed = bleed(position, distanceM);
        Predicted predicted = new Predicted(
                sound.peakDbSpl,
                sound.typicalDbSpl,
                sound.headroomDb,
                sound.noiseDba,
                sound.signalToNoiseDb,
                sound.gainDb,
                sound.outputPeakDbu,
                proximity(pattern, position, distanceM, PROXIMITY_HZ, aimDegrees, pattern.coefficient() == null ? 1 : pattern.coefficient().at(1)),
                sound.directToReverbDb,
                bleed == null || sound.typicalDbSpl == null ? null : bleed.separationDb(pattern, aimDegrees, sound.typicalDbSpl),
                mic.power() == PowerNeed.NONE && mic.impedanceOhm() != null && !wired(position)
                        ? Loading.lossDb(mic.impedanceOhm().typical(), scene.setting().preampOhm()) : 0,
                wired(position) ? 0 : spread(distanceM),
                Pickup.db(pattern, Band.HZ_8000, aimDegrees),
                Band.mean(colour, weights, Band.HZ_63, Band.HZ_250),
                colour.at(Band.HZ_500),
                Band.mean(colour, weights, Band.HZ_2000, Band.HZ_4000),
                Band.mean(colour, weights, Band.HZ_8000, Band.HZ_16000),
                missDb,
                fit,
                tone,
                colour);
        return new Prediction(predicted, sound.padDb, sound.distanceRatio, sourceAngle(distanceM),
                bleed == null ? 0 : bleed.turnGainDb(pattern, aimDegrees));
    }

    /** A lead or a contact: no air between. */
    static boolean wired(Position position) {
        return position.mount() == Mount.LEAD || position.mount() == Mount.CONTACT;
    }

    private double centreM() {
        return source.level() == null ? 0 : source.level().centreOffsetM();
    }

    /** Response + closeness + turning away + place, about its own mean from 500 Hz to 2 kHz. */
    private OctaveCurve colour(MicType mic, PatternData pattern, Position position, double distanceM, double aimDegrees) {
        double[] colour = new double[Band.COUNT];
        for (int band = 0; band < colour.length; band++) {
            colour[band] = mic.responseDb().at(band) + position.toneDb().at(band);
            if (!wired(position)) {
                double coefficient = pattern.coefficient() == null ? 1 : pattern.coefficient().at(band);
                colour[band] += proximity(pattern, position, distanceM, Octaves.centreHz(band), aimDegrees, coefficient)
                        + Pickup.db(pattern, band, aimDegrees);
            }
        }
        double middle = (colour[Band.HZ_500] + colour[Band.HZ_1000] + colour[Band.HZ_2000]) / 3;
        for (int band = 0; band < colour.length; band++) {
            colour[band] -= middle;
        }
        return OctaveCurve.of(colour);
    }

    private double proximity(PatternData pattern, Position position, double distanceM, double frequencyHz, double aimDegrees,
            double coefficient) {
        if (position.rearClosed()) {
            return 0; // what reaches one side of the diaphragm only has no gradient to lift
        }
        return switch (pattern.pattern()) {
            case CONTACT, ELECTRICAL, HALF_OMNI, OMNI -> 0;
            default -> Proximity.cappedBoostDb(lobeAsFirstOrder(pattern, coefficient), distanceM + centreM(), frequencyHz,
                    Math.abs(aimDegrees));
        };
    }

    /** Below about 1 kHz an interference tube is the hypercardioid it is built on. */
    private static double lobeAsFirstOrder(PatternData pattern, double coefficient) {
        return pattern.pattern() == Pattern.LOBAR ? HYPERCARDIOID : coefficient;
    }

    private double directivityIndex(PatternData pattern) {
        return pattern.directivityIndexDb() != null
                ? pattern.directivityIndexDb().at(Band.HZ_1000)
                : pattern.coefficient() == null ? 0 : FirstOrder.directivityIndexDb(pattern.coefficient().at(Band.HZ_1000));
    }

    /** Levels, noise, gain and balance of one placement; null where a number does not apply. */
    private static final class Sound {
        Double peakDbSpl;
        Double typicalDbSpl;
        Double headroomDb;
        Double noiseDba;
        Double signalToNoiseDb;
        Double gainDb;
        Double outputPeakDbu;
        Double directToReverbDb;
        double padDb;
        double distanceRatio;
    }

    private Sound sound(MicType mic, PatternData pattern, Position position, double distanceM, double aimDegrees) {
        Sound sound = new Sound();
        if (position.mount() == Mount.LEAD) {
            onALead(mic, sound);
        } else if (position.mount() != Mount.CONTACT) {
            inTheAir(mic, pattern, position, distanceM, aimDegrees, sound);
        }
        return sound;
    }

    private void onALead(MicType mic, Sound sound) {
        LeadLevel lead = source.lead();
        if (lead == null || mic.family() != MicFamily.LINE) {
            return;
        }
        if (mic.maxInputDbu() != null) {
            for (double padDb : withNone(mic)) {
                sound.padDb = padDb;
                sound.headroomDb = mic.maxInputDbu().typical() + padDb - lead.peakDbu();
                if (sound.headroomDb >= WANTED_HEADROOM_DB) {
                    break;
                }
            }
        }
    }

    private void inTheAir(MicType mic, PatternData pattern, Position position, double distanceM, double aimDegrees, Sound sound) {
        double centreM = centreM();
        sound.peakDbSpl = Level.withCentreOffsetDbSpl(scene.setting().peakDbSpl(), distanceM, centreM) + position.levelDb();
        sound.typicalDbSpl = Level.withCentreOffsetDbSpl(scene.setting().typicalDbSpl(), distanceM, centreM) + position.levelDb();
        double peakSine = Headroom.sineEquivalentDbSpl(sound.peakDbSpl);
        if (mic.maxDbSpl() != null) {
            double limit = mic.maxDbSpl().typical() - lowFrequencyLoss(mic);
            for (double padDb : withNone(mic)) {
                sound.padDb = padDb;
                sound.headroomDb = Headroom.headroomDb(limit, padDb, peakSine);
                if (sound.headroomDb >= WANTED_HEADROOM_DB) {
                    break;
                }
            }
        }
        if (mic.sensitivityMvPerPa() != null) {
            electrics(mic, pattern, aimDegrees, sound);
        }
        balance(pattern, position, distanceM, aimDegrees, sound);
    }

    /** No pad first, then the pads of the body from the smallest. */
    private static double[] withNone(MicType mic) {
        double[] pads = new double[mic.padsDb().size() + 1];
        for (int i = 1; i < pads.length; i++) {
            pads[i] = mic.padsDb().get(i - 1);
        }
        return pads;
    }

    /** A ribbon travels farther the lower the note: what that costs depends on how much of the source is down there. */
    private double lowFrequencyLoss(MicType mic) {
        return mic.family() != MicFamily.RIBBON ? 0 : Math.max(0, Math.max(
                scene.spectrumDb().at(Band.HZ_63) + RIBBON_LOSS_63_HZ_DB, scene.spectrumDb().at(Band.HZ_125) + RIBBON_LOSS_125_HZ_DB));
    }

    private void electrics(MicType mic, PatternData pattern, double aimDegrees, Sound sound) {
        double sensitivity = mic.sensitivityMvPerPa().typical();
        double turned = Pickup.db(pattern, Band.HZ_1000, aimDegrees);
        sound.noiseDba = noise.computeIfAbsent(mic.id(), any -> noise(mic)) + (mic.selfNoiseDba() == null ? 0 : sound.padDb);
        double typicalDba = sound.typicalDbSpl + scene.aWeightingDb();
        sound.signalToNoiseDb = typicalDba + turned - sound.noiseDba;
        double picked = sound.typicalDbSpl + turned - sound.padDb;
        double forAverage = Gain.gainDb(sensitivity, picked, Usual.TARGET_DBFS, Usual.FULL_SCALE_DBU);
        double peakSine = sound.peakDbSpl - SINE_DB + turned - sound.padDb;
        double forPeak = Gain.gainDb(sensitivity, peakSine, Usual.PEAK_DBFS, Usual.FULL_SCALE_DBU);
        sound.gainDb = Math.max(0, Math.min(forAverage, forPeak));
        sound.outputPeakDbu = Gain.outputDbu(sensitivity, peakSine);
    }

    private double noise(MicType mic) {
        double sensitivity = mic.sensitivityMvPerPa().typical();
        double inputNoiseDbu = scene.setting().preampNoiseDbu();
        return mic.selfNoiseDba() != null
                ? Noise.activeNoiseDba(mic.selfNoiseDba().typical(), inputNoiseDbu, sensitivity)
                : Noise.passiveNoiseDba(inputNoiseDbu, mic.impedanceOhm().typical(), sensitivity);
    }

    private void balance(PatternData pattern, Position position, double distanceM, double aimDegrees, Sound sound) {
        if (scene.absorptionM2() == null) {
            return;
        }
        double sourceIndexDb = source.directivityIndexDb().at(Band.HZ_1000);
        double towardMicDb = sourceIndexDb + Radiation.towardDb(Math.max(0, sourceIndexDb), Math.min(180, position.offAxisDegrees().typical()));
        double sourceFactor = Math.pow(10, towardMicDb / 10);
        double micFactor = Math.pow(10, directivityIndex(pattern) / 10);
        double apartM = distanceM + centreM();
        double equalM = Room.criticalDistanceM(scene.setting().room().volumeM3(), scene.setting().room().reverbTimeS(), sourceFactor, micFactor);
        double turned = Pickup.db(pattern, Band.HZ_1000, aimDegrees);
        sound.directToReverbDb = 20 * Math.log10(equalM / apartM) + turned;
        sound.distanceRatio = apartM / equalM;
    }

    private double spread(double distanceM) {
        double half = source.sizeM() / 2;
        return 20 * Math.log10(Math.hypot(distanceM, half) / distanceM);
    }

    private double sourceAngle(double distanceM) {
        return 2 * Math.toDegrees(Math.atan(source.sizeM() / 2 / distanceM));
    }
}
