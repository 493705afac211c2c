package pairwright.advice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import pairwright.acoustics.Exposure;
import pairwright.acoustics.Level;
import pairwright.acoustics.OctaveCurve;
import pairwright.acoustics.Room;
import pairwright.acoustics.Weighting;
import pairwright.model.Answer;
import pairwright.model.Catalogue;
import pairwright.model.Character;
import pairwright.model.Naming;
import pairwright.model.Position;
import pairwright.model.Question;
import pairwright.model.Signal;
import pairwright.model.Source;
import pairwright.model.SourceFamily;
import pairwright.model.ToneWeights;
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
 * @param surroundings who reaches a microphone where
 * @param others each who does, as it arrives at whichever of the usual places of the source it is loudest
 * @param supply what may be used
 * @param remembered what was kept before
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
        Surroundings surroundings,
        List<Reaching> others,
        Supply supply,
        Remembered remembered,
        List<String> assumed) {

    private static final double OPEN_AIR_CRITICAL_DISTANCE_M = 1000;
    private static final double FULL_DAY_H = 24;

    /** With the whole catalogue at hand. */
    static Scene of(Question question, Catalogue catalogue) {
        return of(question, catalogue, Supply.EVERYTHING);
    }

    /** With the neighbours of the question. */
    static Scene of(Question question, Catalogue catalogue, Supply supply) {
        return of(question, catalogue, supply, HouseMemory.NOTHING);
    }

    /** The same in a house that remembers. */
    static Scene of(Question question, Catalogue catalogue, Supply supply, HouseMemory memory) {
        return of(question, catalogue, supply, memory, null);
    }

    /** @param around who reaches a microphone where; null for the neighbours of the question */
    static Scene of(Question question, Catalogue catalogue, Supply supply, HouseMemory memory, Surroundings around) {
        Source usual = catalogue.sources().get(question.source());
        Source source = question.heard() == null ? usual : question.heard().over(usual);
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

        AsPlayed played = AsPlayed.of(source, question.ways(), question.dynamics(), catalogue.words());
        OctaveCurve spectrum = played.spectrumDb();
        double typicalDbSpl = played.typicalDbSpl();
        boolean acoustic = source.level() != null;
        double aWeightingDb = Weighting.aWeightedOffsetDb(spectrum);
        double typicalDba = acoustic ? typicalDbSpl + aWeightingDb : 0;

        assumed.addAll(supply.assumed());
        Double absorptionM2 = room.outdoors() ? null : Room.absorptionM2(room.volumeM3(), room.reverbTimeS());
        Surroundings surroundings = around == null ? Alongside.of(question, catalogue, absorptionM2, assumed) : around;
        List<Reaching> others = others(question, source, surroundings);
        Reaching loudest = loudest(others);
        Character wanted = Character.together(question.character().stream().map(catalogue.characters()::get).toList());
        Setting setting = new Setting(
                source,
                played.attack(),
                room,
                wanted,
                room.outdoors() ? OPEN_AIR_CRITICAL_DISTANCE_M : Room.criticalDistanceM(room.volumeM3(), room.reverbTimeS()),
                typicalDbSpl,
                played.peakDbSpl(),
                typicalDba,
                acoustic ? allowedHours(typicalDba) : FULL_DAY_H,
                question.limits().preampGainDb() == null ? Usual.PREAMP_GAIN_DB : question.limits().preampGainDb(),
                question.limits().preampNoiseDbu() == null ? Usual.PREAMP_NOISE_DBU : question.limits().preampNoiseDbu(),
                Usual.PREAMP_OHM,
                !Boolean.FALSE.equals(question.limits().phantom()),
                question.limits().mics() == null ? Usual.CHANNELS : question.limits().mics(),
                others.size(),
                loudest == null ? 0 : loudest.directDbSpl(),
                loudest == null ? 0 : loudest.angleDegrees(),
                question.circumstances().contains("stereo"),
                question.circumstances().contains("mono"),
                question.circumstances().contains("one-performer"),
                question.circumstances().contains("children"),
                question.circumstances().contains("live"),
                question.circumstances().contains("shock"),
                question.circumstances().contains("hung"),
                Stream.concat(question.neighbours().stream().map(neighbour -> catalogue.sources().get(neighbour.source())), others.stream().map(Reaching::source))
                        .anyMatch(other -> other.family() == SourceFamily.AMPLIFIERS || other.signal() != Signal.ACOUSTIC),
                question.wishes());
        return new Scene(question, catalogue, setting, spectrum, aWeightingDb, ToneWeights.of(spectrum),
                wanted == null ? OctaveCurve.ZERO : wanted.toneDb(), absorptionM2, surroundings, others, supply,
                Remembered.of(memory, question), List.copyOf(assumed));
    }

    /**
     * The same scene with what is uncertain set to other values.
     *
     * @param louderDb how much louder the source plays
     * @param brighterDb how much more its spectrum has at 8 kHz than at 1 kHz, and less at 125 Hz
     * @param ringing reverberation time over the usual one
     * @param neighbourLouderDb how much louder each of the others plays
     */
    Scene drawn(double louderDb, double brighterDb, double ringing, double[] neighbourLouderDb) {
        OctaveCurve spectrum = brighterDb == 0 ? spectrumDb : spectrumDb.plus(Band.tilt(brighterDb));
        double weightingDb = brighterDb == 0 ? aWeightingDb : Weighting.aWeightedOffsetDb(spectrum);
        pairwright.model.Room room = setting.room().ringing(ringing);
        Double absorption = room.outdoors() ? null : Double.valueOf(Room.absorptionM2(room.volumeM3(), room.reverbTimeS()));
        Map<String, Double> louder = new HashMap<>();
        List<Reaching> drawnOthers = new ArrayList<>();
        for (int i = 0; i < others.size(); i++) {
            louder.put(others.get(i).seat(), neighbourLouderDb[i]);
            drawnOthers.add(others.get(i).louder(neighbourLouderDb[i], ringing));
        }
        Surroundings around = (position, distanceM) -> surroundings.at(position, distanceM).stream()
                .map(one -> one.louder(louder.getOrDefault(one.seat(), 0.0), ringing)).toList();
        boolean acoustic = setting.source().level() != null;
        Setting drawn = setting.drawn(
                room,
                room.outdoors() ? OPEN_AIR_CRITICAL_DISTANCE_M : Room.criticalDistanceM(room.volumeM3(), room.reverbTimeS()),
                acoustic ? setting.typicalDbSpl() + louderDb : 0,
                acoustic ? setting.peakDbSpl() + louderDb : 0,
                acoustic ? setting.typicalDbSpl() + louderDb + weightingDb : 0,
                drawnOthers.stream().mapToDouble(Reaching::directDbSpl).max().orElse(0));
        return new Scene(question, catalogue, drawn, spectrum, weightingDb, brighterDb == 0 ? weights : ToneWeights.of(spectrum), wantedToneDb,
                absorption, around, drawnOthers, supply, remembered, assumed);
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
                others.isEmpty() ? null : setting.loudestNeighbourDbSpl(),
                others.isEmpty() ? null : setting.loudestNeighbourDegrees());
    }

    /** How long a level may last in a day, for the level as it is told: whole decibels, so that whoever reckons again finds the same. */
    static double allowedHours(double typicalDba) {
        return Math.min(FULL_DAY_H, Exposure.allowedHours(Exposure.Scheme.CRITERION_85_EXCHANGE_3, Math.rint(typicalDba)));
    }

    /** Whether those who reach a microphone have seats of their own; else they are told by their source. */
    boolean seated() {
        return !(surroundings instanceof Alongside);
    }

    /** Where there is air between, so far as the source has such places: each other where it is loudest. */
    private static List<Reaching> others(Question question, Source source, Surroundings surroundings) {
        List<Position> sensible = source.positions().stream().filter(position -> Placements.sensible(question, position)).toList();
        List<Position> open = sensible.stream().filter(position -> !Predictor.wired(position)).toList();
        Map<String, Reaching> loudest = new LinkedHashMap<>();
        for (Position position : open.isEmpty() ? sensible : open) {
            for (Reaching one : surroundings.at(position, position.distanceM().typical())) {
                loudest.merge(one.seat(), one, (before, now) -> now.directDbSpl() > before.directDbSpl() ? now : before);
            }
        }
        return List.copyOf(loudest.values());
    }

    /** The loudest of some, as it comes straight; null of none. */
    static Reaching loudest(List<Reaching> some) {
        return some.stream().max(Comparator.comparingDouble(Reaching::directDbSpl)).orElse(null);
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
}
