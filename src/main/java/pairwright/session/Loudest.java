package pairwright.session;

import pairwright.acoustics.Exposure;
import pairwright.acoustics.Level;
import pairwright.acoustics.OctaveCurve;
import pairwright.acoustics.Weighting;
import pairwright.model.Catalogue;

/**
 * The seat of a line-up at which the others together are loudest.
 *
 * @param seat id
 * @param exposureDba how loud they are there while all play: straight and by way of the room, each as if it faced that seat, so that it is
 *     rather too much than too little; what is played there comes on top
 * @param allowedHours how long a day that may last by the 85 dBA, 3 dB rule; 24 at the most
 */
record Loudest(String seat, double exposureDba, double allowedHours) {
    private static final double DAY_HOURS = 24;
    /** Nobody sits nearer to what another plays. */
    private static final double NEAREST_M = 0.5;

    /** Null where there is nobody to hear another. */
    static Loudest of(LineUp lineUp, Catalogue catalogue) {
        Players players = Players.of(lineUp, catalogue);
        Loudest loudest = null;
        for (Seat seat : lineUp.seats()) {
            double[] each = lineUp.seats().stream().filter(other -> other != seat && players.at(other).sounds())
                    .mapToDouble(other -> heardDba(players.at(other), Math.hypot(other.xM() - seat.xM(), other.yM() - seat.yM()))).toArray();
            if (each.length > 0) {
                double exposureDba = Level.sumIncoherentDb(each);
                if (loudest == null || exposureDba > loudest.exposureDba) {
                    loudest = new Loudest(seat.id(), exposureDba,
                            Math.min(DAY_HOURS, Exposure.allowedHours(Exposure.Scheme.CRITERION_85_EXCHANGE_3, Math.rint(exposureDba))));
                }
            }
        }
        return loudest;
    }

    private static double heardDba(Players.Player player, double distanceM) {
        double straightDba = aWeighted(player.played().directOctavesDbSpl(Math.max(NEAREST_M, distanceM)));
        return player.reverberantOctavesDbSpl() == null ? straightDba
                : Level.sumIncoherentDb(straightDba, aWeighted(player.reverberantOctavesDbSpl()));
    }

    private static double aWeighted(OctaveCurve octavesDbSpl) {
        return Level.sumIncoherentDb(octavesDbSpl.plus(Weighting.octaveWeightingDb()).toArray());
    }
}
