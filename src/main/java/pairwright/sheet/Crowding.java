package pairwright.sheet;

import java.util.ArrayList;
import java.util.List;
import pairwright.drawing.Footprint;
import pairwright.model.Catalogue;
import pairwright.model.Naming;
import pairwright.model.Source;
import pairwright.model.SourceFamily;
import pairwright.rules.Figure;
import pairwright.session.LineUp;
import pairwright.session.Seat;

/** What stands on top of something else, or across a wall, by the outlines a floor plan draws. */
public final class Crowding {
    /** Outlines are of a usual one of its kind: what is less is theirs and not the room's. */
    private static final double TOLD_M = 0.2;

    private Crowding() {
    }

    /** In sentences; empty where everything has room. */
    public static List<String> of(LineUp lineUp, Catalogue catalogue) {
        List<String> says = new ArrayList<>();
        List<Seat> seats = lineUp.seats().stream().filter(seat -> catalogue.sources().containsKey(seat.source()))
                .filter(seat -> catalogue.sources().get(seat.source()).family() != SourceFamily.AMBIENCE).toList();
        List<Footprint> all = seats.stream().map(seat -> Footprint.of(catalogue.sources().get(seat.source()), seat.xM(), seat.yM(), seat.facingDegrees())).toList();
        for (int i = 0; i < seats.size(); i++) {
            double acrossM = all.get(i).acrossWallsM(lineUp.floor().widthM(), lineUp.floor().depthM());
            if (acrossM >= TOLD_M) {
                says.add(FloorOf.name(seats.get(i), catalogue) + " reaches " + Figure.forPeople(acrossM, "m") + " across a wall as it is drawn. Move it into the room, or turn it.");
            }
            for (int j = 0; j < i; j++) {
                double onTopM = one(seats.get(j), seats.get(i), catalogue) ? 0 : all.get(j).onTopM(all.get(i));
                if (onTopM >= TOLD_M) {
                    says.add(FloorOf.name(seats.get(j), catalogue) + " and " + within(seats.get(i), catalogue) + " lie " + Figure.forPeople(onTopM, "m")
                            + " on top of each other as they are drawn. Put them further apart, or turn one.");
                }
            }
        }
        return says;
    }

    private static String within(Seat seat, Catalogue catalogue) {
        String name = FloorOf.name(seat, catalogue);
        return seat.player() == null ? Naming.small(name) : name;
    }

    /** Drums of one kit stand over each other, and one player is at both. */
    private static boolean one(Seat first, Seat second, Catalogue catalogue) {
        Source one = catalogue.sources().get(first.source());
        Source two = catalogue.sources().get(second.source());
        return one.family() == SourceFamily.DRUM_KIT && two.family() == SourceFamily.DRUM_KIT || first.samePlayer(second);
    }
}
