package pairwright.session;

import java.util.ArrayList;
import java.util.List;
import pairwright.acoustics.OctaveCurve;
import pairwright.acoustics.Radiation;
import pairwright.acoustics.Weighting;
import pairwright.advice.Offer;
import pairwright.advice.OfferedMic;
import pairwright.advice.Reaching;
import pairwright.advice.Surroundings;
import pairwright.model.Arrangement;
import pairwright.model.Body;
import pairwright.model.Catalogue;
import pairwright.model.Neighbour;
import pairwright.model.Point;
import pairwright.model.Position;
import pairwright.model.Source;
import pairwright.model.Standpoint;
import pairwright.model.Technique;

/**
 * Who else of a line-up reaches a microphone at one of its seats: from where each sits and faces, round the gobos, and by way of the room.
 * Each is taken as one point, the middle of its sounding surface, at the place of its player; one that is large and near is in truth wider.
 */
public final class FloorSurroundings implements Surroundings {
    private final Seat seat;
    private final Body body;
    private final List<Other> others;
    private final Screens screens;

    /**
     * Another seat that sounds.
     *
     * @param surface the middle of its sounding surface
     * @param axis where it mainly sounds to
     */
    private record Other(Seat seat, Players.Player player, Point surface, Point axis) {
        static Other of(Seat seat, Players.Player player) {
            Body body = player.played().source().body();
            return new Other(seat, player, InRoom.at(seat.xM(), seat.yM(), body == null ? MicAt.USUAL_HEIGHT_M : body.heightM()),
                    InRoom.direction(seat, body == null ? Point.FORWARD : Standpoint.main(body)));
        }
    }

    FloorSurroundings(LineUp lineUp, Seat seat, Players players) {
        this(seat, players.at(seat).played().source().body(), lineUp.seats().stream()
                .filter(other -> !other.id().equals(seat.id()) && players.at(other).sounds())
                .map(other -> Other.of(other, players.at(other))).toList(), new Screens(lineUp.gobos()));
    }

    /** With one of the others elsewhere, or turned. */
    FloorSurroundings moved(Seat elsewhere) {
        return new FloorSurroundings(seat, body, others.stream().map(other -> other.seat().id().equals(elsewhere.id())
                ? Other.of(elsewhere, other.player()) : other).toList(), screens);
    }

    /** With its own player elsewhere, or turned. */
    FloorSurroundings seated(Seat elsewhere) {
        return new FloorSurroundings(elsewhere, body, others, screens);
    }

    /** Only one of the others, from elsewhere or turned. */
    Reaching from(Seat elsewhere, MicAt mic) {
        for (Other other : others) {
            if (other.seat().id().equals(elsewhere.id())) {
                return reaching(mic, Other.of(elsewhere, other.player()));
            }
        }
        throw new IllegalArgumentException("nobody is heard from seat \"" + elsewhere.id() + "\"");
    }

    private FloorSurroundings(Seat seat, Body body, List<Other> others, Screens screens) {
        this.seat = seat;
        this.body = body;
        this.others = others;
        this.screens = screens;
    }

    /**
     * Of one seat.
     *
     * @param lineUp whose sources are all in the catalogue
     * @param seat one of it
     * @param catalogue as it is, nothing of it altered for any seat: what was noted of each player is put over it here
     */
    public static FloorSurroundings of(LineUp lineUp, Seat seat, Catalogue catalogue) {
        return new FloorSurroundings(lineUp, seat, Players.of(lineUp, catalogue));
    }

    @Override
    public List<Reaching> at(Position position, double distanceM) {
        return at(mic(position, distanceM));
    }

    /**
     * Who reaches a microphone that stands anywhere about its player.
     *
     * @param surface the point of its source that it is heard from, in the player's own frame, which starts between the feet
     * @param place where it is, in the same
     */
    public List<Reaching> at(Point surface, Point place) {
        return at(MicAt.between(seat, InRoom.place(seat, surface), InRoom.place(seat, place)));
    }

    private List<Reaching> at(MicAt mic) {
        List<Reaching> all = new ArrayList<>(others.size());
        for (Other other : others) {
            all.add(reaching(mic, other));
        }
        return List.copyOf(all);
    }

    /** Where a microphone of the seat is in the room, and where it looks. */
    public Line.Spot spot(Position position, double distanceM, double aimDegrees) {
        return mic(position, distanceM).spot(seat, aimDegrees);
    }

    /**
     * The same of one microphone of an offer, from 0. A stereo pair at one place is spread and turned apart about it as its technique says, the
     * first to the left; what it hears is reckoned for its middle.
     */
    public Line.Spot spot(Offer offer, int mic) {
        OfferedMic offered = offer.mics().get(mic);
        Technique pairing = offer.pairing();
        if (pairing == null || !pairing.stereo() || !offer.mics().get(0).position().id().equals(offer.mics().get(1).position().id())) {
            return spot(offered.position(), offered.distanceM(), offered.aimDegrees());
        }
        int left = mic == 0 ? 1 : -1;
        double spacingM = pairing.spacingM() == null ? 0 : pairing.spacingM();
        double includedDegrees = pairing.includedDegrees() == null || pairing.arrangement() == Arrangement.MID_SIDE ? 0 : pairing.includedDegrees();
        return mic(offered.position(), offered.distanceM()).aside(left * spacingM / 2).spot(seat, offered.aimDegrees() + left * includedDegrees / 2);
    }

    MicAt mic(Position position, double distanceM) {
        return MicAt.of(seat, body, position, distanceM);
    }

    private Reaching reaching(MicAt mic, Other other) {
        Point way = other.surface().minus(mic.place());
        double apartM = Math.max(Neighbour.LEAST_DISTANCE_M, way.lengthM());
        Point toward = way.lengthM() == 0 ? mic.line() : way.unit();
        Source source = other.player().played().source();
        OctaveCurve open = other.player().played().directOctavesDbSpl(apartM).plus(aside(source, other.axis().apartDegrees(toward.times(-1))));
        OctaveCurve taken = screens.takenDb(other.surface(), mic.place());
        return new Reaching(other.seat().id(), source, apartM, mic.line().apartDegrees(toward), mic.across().dot(toward), open.minus(taken),
                other.player().reverberantOctavesDbSpl(), taken.at(open.plus(Weighting.octaveWeightingDb()).highestBand()));
    }

    /** What a source sends less to the side than along its axis. */
    private static OctaveCurve aside(Source source, double angleDegrees) {
        return source.directivityIndexDb().map(indexDb -> Radiation.towardDb(Math.max(0, indexDb), angleDegrees));
    }
}
