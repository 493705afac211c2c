package pairwright.advice;

import pairwright.rules.Setting;

/** The same question with a source that is played louder or softer. */
final class Louder {
    private Louder() {
    }

    /** Running level and peak go up or down alike; the tone stays. */
    static Scene by(double levelDb, Scene scene) {
        Setting old = scene.setting();
        double typicalDba = old.typicalDba() + levelDb;
        Setting setting = new Setting(old.source(), old.attack(), old.room(), old.wanted(), old.criticalDistanceM(), old.typicalDbSpl() + levelDb,
                old.peakDbSpl() + levelDb, typicalDba, Scene.allowedHours(typicalDba), old.preampGainDb(),
                old.preampNoiseDbu(), old.preampOhm(), old.phantomAllowed(), old.channels(), old.neighbours(), old.loudestNeighbourDbSpl(),
                old.loudestNeighbourDegrees(), old.stereoWanted(), old.monoWanted(), old.onePerformer(), old.children(), old.live(), old.shockFelt(), old.hung(),
                old.pluggedInBeside(), old.wishes());
        return new Scene(scene.question(), scene.catalogue(), setting, scene.spectrumDb(), scene.aWeightingDb(), scene.weights(),
                scene.wantedToneDb(), scene.absorptionM2(), scene.surroundings(), scene.others(), scene.supply(), scene.remembered(), scene.assumed());
    }
}
