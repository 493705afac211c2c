package pairwright.advice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import pairwright.acoustics.Exposure;
import pairwright.acoustics.Level;
import pairwright.acoustics.OctaveCurve;
import pairwright.acoustics.Room;
import pairwright.acoustics.Weighting;
import pairwright.model.Answer;
import pairwright.model.Attack;
import pairwright.model.Catalogue;
import pairwright.model.Character;
import pairwright.model.Naming;
import pairwright.model.Neighbour;
import pairwright.model.Question;
import pairwright.model.Signal;
import pairwright.model.Source;
import pairwright.model.SourceFamily;
import pairwright.model.ToneWeights;
import pairwright.model.Vocabulary;
import pairwright.model.Way;
import pairwright.rules.Setting;

/**
 * A question made ready for prediction: the source as it is played, the room in numbers, what is wanted. Made once per question.
 *
 * @param question what is asked
 * @param catalogue what is known
 * @param setting the same for rules to read
 * @param spectrumDb of the source as it is played, strongest octave 0
 * @param aWeightingDb its A-weighted level less its unweighted one
 * @param weights how much each octave counts: where the source sounds and the ear listens, 0 to 1
 * @param wantedToneDb the colour that is wanted, all zero for natural
 * @param absorptionM2 of the room; null in the open air
 * @param beside the neighbours
 * @param supply what may be used
 * @param assumed what was not said, in sentences
 */
record Scene(
        Question question,
        Catalogue catalogue,
        Setting setting,
        OctaveCurve spectrumDb,
        double aWeightingDb,
        OctaveCurve weights,
        OctaveCurve wantedToneDb,
        Double absorptionM2,
        List<Beside> beside,
        Supply supply,
        List<String> assumed) {

    /** Power level over the level at one metre all round: 10 lg of the surface of a sphere of that radius. */
    private static final double SPHERE_DB = 10 * Math.log10(4 * Math.PI);
    private static final double OPEN_AIR_CRITICAL_DISTANCE_M = 1000;
    private static final double FULL_DAY_H = 24;

    /**
     * A neighbour in numbers.
     *
     * @param source who
     * @param distanceM from the microphone
     * @param angleDegrees between the recorded source and the neighbour, 0 to 180
     * @param directDbSpl running level that reaches the microphone straight
     * @param directOctavesDbSpl the same octave by octave
     * @param reverberantOctavesDbSpl what the room adds, octave by octave; null in the open air
     */
    record Beside(Source source, double distanceM, double angleDegrees, double directDbSpl, OctaveCurve directOctavesDbSpl,
            OctaveCurve reverberantOctavesDbSpl) {
        /** The same neighbour, louder, in a room that rings so many times as long and holds so many times as much of it. */
        Beside louder(double db, double ringing) {
            return new Beside(source, distanceM, angleDegrees, directDbSpl + db, directOctavesDbSpl.plus(db),
                    reverberantOctavesDbSpl == null ? null : reverberantOctavesDbSpl.plus(db + 10 * Math.log10(ringing)));
        }
    }

    /** With the whole catalogue at hand. */
    static Scene of(Question question, Catalogue catalogue) {
        return of(question, catalogue, Supply.EVERYTHING);
    }

    static Scene of(Question question, Catalogue catalogue, Supply supply) {
        Source source = catalogue.sources().get(question.source());
        List<String> assumed = new ArrayList<>();
        if (question.room() == null) {
            assumed.add("No room was named: taken as " + Naming.small(catalogue.rooms().get(Usual.ROOM).name()) + ".");
        }
        pairwright.model.Room room = catalogue.rooms().get(question.room() == null ? Usual.ROOM : question.room());
        if (question.limits().mics() == null) {
            assumed.add("No number of channels was named: up to " + Usual.CHANNELS + " are used.");
        }

        for (String technique : question.techniques()) {
            if (source.pairs().stream().noneMatch(pair -> pair.technique().equals(technique))) {
                assumed.add(catalogue.techniques().get(technique).name() + " is not known for " + Naming.small(source.name())
                        + ": left aside.");
            }
        }

        OctaveCurve spectrum = source.spectrumDb();
        double levelDb = 0;
        double peakDb = 0;
        Attack attack = source.attack();
        for (Way way : source.ways()) {
            if (question.ways().contains(way.id())) {
                spectrum = spectrum.plus(way.toneDb());
                levelDb += way.levelDb();
                peakDb += way.peakDb();
                attack = way.attack() == null ? attack : way.attack();
            }
        }
        for (Vocabulary.Dynamic dynamic : catalogue.words().dynamics()) {
            if (question.dynamics().contains(dynamic.id())) {
                levelDb += dynamic.levelDb();
                peakDb += Math.min(0, dynamic.levelDb()); // the peak figure is of loud playing already
            }
        }
        spectrum = spectrum.plus(-loudest(spectrum));
        boolean acoustic = source.level() != null;
        double typicalDbSpl = acoustic ? source.level().typicalDbSpl() + levelDb : 0;
        double peakDbSpl = acoustic ? source.level().peakDbSpl() + peakDb : 0;
        double aWeightingDb = Weighting.aWeightedOffsetDb(spectrum);
        double typicalDba = acoustic ? typicalDbSpl + aWeightingDb : 0;

        assumed.addAll(supply.assumed());
        Double absorptionM2 = room.outdoors() ? null : Room.absorptionM2(room.volumeM3(), room.reverbTimeS());
        List<Beside> beside = new ArrayList<>();
        for (Neighbour neighbour : question.neighbours()) {
            Source other = catalogue.sources().get(neighbour.source());
            if (other.level() == null) {
                assumed.add(other.name() + " as a neighbour makes no sound in the room: left out.");
                continue;
            }
            beside.add(beside(neighbour, other, absorptionM2));
        }
        Beside loudest = beside.stream().max(Comparator.comparingDouble(Beside::directDbSpl)).orElse(null);
        Character wanted = Character.together(question.character().stream().map(catalogue.characters()::get).toList());
        Setting setting = new Setting(
                source,
                attack,
                room,
                wanted,
                room.outdoors() ? OPEN_AIR_CRITICAL_DISTANCE_M : Room.criticalDistanceM(room.volumeM3(), room.reverbTimeS()),
                typicalDbSpl,
                peakDbSpl,
                typicalDba,
                acoustic ? allowedHours(typicalDba) : FULL_DAY_H,
                question.limits().preampGainDb() == null ? Usual.PREAMP_GAIN_DB : question.limits().preampGainDb(),
                question.limits().preampNoiseDbu() == null ? Usual.PREAMP_NOISE_DBU : question.limits().preampNoiseDbu(),
                Usual.PREAMP_OHM,
                !Boolean.FALSE.equals(question.limits().phantom()),
                question.limits().mics() == null ? Usual.CHANNELS : question.limits().mics(),
                beside.size(),
                loudest == null ? 0 : loudest.directDbSpl(),
                loudest == null ? 0 : loudest.angleDegrees(),
                question.circumstances().contains("stereo"),
                question.circumstances().contains("mono"),
                question.circumstances().contains("one-performer"),
                question.circumstances().contains("children"),
                question.circumstances().contains("live"),
                question.circumstances().contains("shock"),
                question.circumstances().contains("hung"),
                question.neighbours().stream().map(neighbour -> catalogue.sources().get(neighbour.source()))
                        .anyMatch(other -> other.family() == SourceFamily.AMPLIFIERS || other.signal() != Signal.ACOUSTIC),
                question.wishes());
        return new Scene(question, catalogue, setting, spectrum, aWeightingDb, ToneWeights.of(spectrum),
                wanted == null ? OctaveCurve.ZERO : wanted.toneDb(), absorptionM2, List.copyOf(beside), supply, List.copyOf(assumed));
    }

    /**
     * The same scene with what is uncertain set to other values.
     *
     * @param louderDb how much louder the source plays
     * @param brighterDb how much more its spectrum has at 8 kHz than at 1 kHz, and less at 125 Hz
     * @param ringing reverberation time over the usual one
     * @param neighbourLouderDb how much louder each neighbour plays
     */
    Scene drawn(double louderDb, double brighterDb, double ringing, double[] neighbourLouderDb) {
        OctaveCurve spectrum = brighterDb == 0 ? spectrumDb : spectrumDb.plus(Band.tilt(brighterDb));
        double weightingDb = brighterDb == 0 ? aWeightingDb : Weighting.aWeightedOffsetDb(spectrum);
        pairwright.model.Room room = setting.room().ringing(ringing);
        Double absorption = room.outdoors() ? null : Double.valueOf(Room.absorptionM2(room.volumeM3(), room.reverbTimeS()));
        List<Beside> others = new ArrayList<>();
        for (int i = 0; i < beside.size(); i++) {
            others.add(beside.get(i).louder(neighbourLouderDb[i], ringing));
        }
        boolean acoustic = setting.source().level() != null;
        Setting drawn = setting.drawn(
                room,
                room.outdoors() ? OPEN_AIR_CRITICAL_DISTANCE_M : Room.criticalDistanceM(room.volumeM3(), room.reverbTimeS()),
                acoustic ? setting.typicalDbSpl() + louderDb : 0,
                acoustic ? setting.peakDbSpl() + louderDb : 0,
                acoustic ? setting.typicalDbSpl() + louderDb + weightingDb : 0,
                others.stream().mapToDouble(Beside::directDbSpl).max().orElse(0));
        return new Scene(question, catalogue, drawn, spectrum, weightingDb, brighterDb == 0 ? weights : ToneWeights.of(spectrum), wantedToneDb,
                absorption, others, supply, assumed);
    }

    /** The same for the answer, so that every number a reason uses can be found in it. */
    Answer.Numbers numbers() {
        boolean acoustic = setting.source().level() != null;
        boolean indoors = !setting.room().outdoors();
        return new Answer.Numbers(
                acoustic ? setting.typicalDbSpl() : null,
                acoustic ? setting.peakDbSpl() : null,
                acoustic ? setting.typicalDba() : null,
                setting.source().fundamentalHz().low(),
                setting.allowedHours(),
                setting.preampGainDb(),
                setting.preampNoiseDbu(),
                setting.preampOhm(),
                setting.channels(),
                indoors ? setting.volumeM3() : null,
                indoors ? setting.room().heightM() : null,
                indoors ? setting.room().reverbTimeS() : null,
                indoors ? setting.criticalDistanceM() : null,
                setting.room().noiseDba(),
                beside.isEmpty() ? null : setting.loudestNeighbourDbSpl(),
                beside.isEmpty() ? null : setting.loudestNeighbourDegrees());
    }

    /** How long a level may last in a day, for the level as it is told: whole decibels, so that whoever reckons again finds the same. */
    static double allowedHours(double typicalDba) {
        return Math.min(FULL_DAY_H, Exposure.allowedHours(Exposure.Scheme.CRITERION_85_EXCHANGE_3, Math.rint(typicalDba)));
    }

    private static Beside beside(Neighbour neighbour, Source other, Double absorptionM2) {
        double oneMetreDbSpl = other.level().typicalDbSpl();
        double direct = Level.withCentreOffsetDbSpl(oneMetreDbSpl, neighbour.distanceM(), other.level().centreOffsetM());
        OctaveCurve powerDb = octavesDbSpl(oneMetreDbSpl, other.spectrumDb()).minus(other.directivityIndexDb()).plus(SPHERE_DB);
        return new Beside(other, neighbour.distanceM(), foldedDegrees(neighbour.angleDegrees()), direct, octavesDbSpl(direct, other.spectrumDb()),
                absorptionM2 == null ? null : powerDb.map(db -> Room.reverberantDbSpl(db, absorptionM2)));
    }

    /** Octave levels of a sound of an overall level. */
    static OctaveCurve octavesDbSpl(double overallDbSpl, OctaveCurve spectrumDb) {
        return spectrumDb.plus(overallDbSpl - Level.sumIncoherentDb(spectrumDb.toArray()));
    }

    /** The same direction as an angle from 0 to 180: 200 degrees to the left are 160 to the right. */
    static double foldedDegrees(double angleDegrees) {
        double turned = Math.abs(angleDegrees) % 360;
        return turned > 180 ? 360 - turned : turned;
    }

    private static double loudest(OctaveCurve spectrum) {
        double loudest = spectrum.at(0);
        for (int band = 1; band < Band.COUNT; band++) {
            loudest = Math.max(loudest, spectrum.at(band));
        }
        return loudest;
    }
}
