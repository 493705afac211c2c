package pairwright.session;

import java.util.ArrayList;
import java.util.List;
import pairwright.advice.Overheard;
import pairwright.advice.Reaching;
import pairwright.model.Catalogue;
import pairwright.model.Heard;
import pairwright.model.PatternData;
import pairwright.model.Placement;
import pairwright.model.Position;

/** What every microphone of a plan hears of everybody else. */
public final class Hearing {
    private static final double WORTH_TURNING_DB = 1;

    private final LineUp lineUp;
    private final Catalogue catalogue;
    private final Players players;

    private Hearing(LineUp lineUp, Catalogue catalogue) {
        this.lineUp = lineUp;
        this.catalogue = catalogue;
        this.players = Players.of(lineUp, catalogue);
    }

    /** @param catalogue as it is, nothing of it altered for any seat */
    public static Hearing of(LineUp lineUp, Catalogue catalogue) {
        return new Hearing(lineUp, catalogue);
    }

    /** Line by line in their order, and of each the other seats in the order of the line-up. Lines without air between hear nobody. */
    public List<Hears> of(List<Line> lines) {
        List<Hears> all = new ArrayList<>();
        for (Listening one : listening(lines)) {
            all.addAll(hears(one));
        }
        return List.copyOf(all);
    }

    Players players() {
        return players;
    }

    /** The lines that hear anybody. */
    List<Listening> listening(List<Line> lines) {
        List<Listening> all = new ArrayList<>();
        for (Line line : lines) {
            if (Listening.inTheAir(line.placement())) {
                Listening one = listening(line);
                if (!one.others().isEmpty()) {
                    all.add(one);
                }
            }
        }
        return all;
    }

    private Listening listening(Line line) {
        Seat seat = lineUp.seat(line.seat()).orElseThrow(() -> new IllegalArgumentException("there is no seat \"" + line.seat() + "\""));
        Players.Player player = players.at(seat);
        Placement placement = line.placement();
        Position position = Listening.position(player.played().source(), placement.position());
        FloorSurroundings around = new FloorSurroundings(lineUp, seat, players);
        return new Listening(line, position, player.played().spectrumDb(), pattern(placement), around, around.at(position, placement.distanceM()));
    }

    private PatternData pattern(Placement placement) {
        return catalogue.mics().get(placement.micType()).patterns().stream().filter(data -> data.pattern() == placement.pattern()).findFirst()
                .orElseThrow(() -> new IllegalArgumentException(placement.micType() + " has no pattern " + placement.pattern().id()));
    }

    private static List<Hears> hears(Listening one) {
        Overheard all = one.all();
        List<Heard> asItIs = all.each(one.aimDegrees());
        List<Heard> straight = one.aimDegrees() == 0 ? asItIs : all.each(0);
        List<Hears> hears = new ArrayList<>();
        for (int i = 0; i < asItIs.size(); i++) {
            hears.add(hears(one, all, one.others().get(i), asItIs.get(i), straight.get(i)));
        }
        return hears;
    }

    private static Hears hears(Listening one, Overheard all, Reaching other, Heard asItIs, Heard straight) {
        Overheard alone = one.alone(other);
        double turn = alone.bestAimDegrees(one.mostTurnDegrees());
        double turnedDb = alone.separationDb(turn);
        boolean better = one.mayTurn() && turnedDb >= asItIs.separationDb() + WORTH_TURNING_DB
                && all.separationDb(turn) >= all.separationDb(one.aimDegrees()) - WORTH_TURNING_DB;
        return new Hears(one.line().number(), other.seat(), other.source().id(), other.distanceM(), other.offAxisDegrees(one.aimDegrees()), other.screenDb(),
                asItIs.separationDb(), asItIs.octavesDb(), asItIs.loudestHz(), asItIs.roomAllowsDb(), straight.separationDb(),
                better ? turn : one.aimDegrees(), better ? turnedDb : asItIs.separationDb());
    }
}
