package pairwright.lab;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.IntFunction;
import pairwright.model.Limits;
import pairwright.model.MicType;
import pairwright.model.Room;
import pairwright.model.Source;
import pairwright.model.SourceFamily;
import pairwright.session.Floor;
import pairwright.session.LineUp;
import pairwright.session.Seat;

/** Players in a ring who look at each other. */
final class RoundFloor {
    /** For a seat of which nothing in particular is wanted. */
    static final String AS_IT_IS = "-";
    private static final double LEAST_ROOM_M = 4.5;
    private static final double LEAST_HEIGHT_M = 2;
    private static final double TO_THE_WALL_M = 0.8;
    /** A player has no more of the width of a room than one of so many parts. */
    private static final double PARTS = 3;
    private static final int STEP_DEGREES = 30;

    private RoundFloor() {
    }

    /** Rooms in which a few people can sit in a ring. */
    static List<Room> rooms(Lab lab) {
        return lab.catalogue().rooms().values().stream().filter(any -> any.widthM() >= LEAST_ROOM_M && any.depthM() >= LEAST_ROOM_M && any.heightM() >= LEAST_HEIGHT_M).toList();
    }

    /** Sources that have more than one place for a microphone and that fit into a part of a room, but for whole ensembles and what sounds all round. */
    static List<Source> sources(Lab lab, Room room) {
        double mostM = Math.min(room.widthM(), room.depthM()) / PARTS;
        return OneMic.sources(lab, 2).stream().filter(source -> source.sizeM() <= mostM && source.family() != SourceFamily.ENSEMBLES && source.family() != SourceFamily.AMBIENCE).toList();
    }

    /** Types of one channel that take sound from the air and go straight into a microphone input. */
    static List<MicType> types(Lab lab) {
        return OneMic.types(lab).stream().filter(type -> !type.wantsBox()).toList();
    }

    /** Places for so many, each as x, y and facing, as far from the middle as is wanted and the room allows. */
    static List<String> places(Draw draw, Room room, int seats, double radiusM) {
        double ringM = Math.min(radiusM, Math.min(room.widthM(), room.depthM()) / 2 - TO_THE_WALL_M);
        int turnedDegrees = STEP_DEGREES * draw.below(360 / STEP_DEGREES);
        List<String> places = new ArrayList<>();
        for (int seat = 0; seat < seats; seat++) {
            double angleDegrees = turnedDegrees + 360.0 * seat / seats;
            places.add(String.format(Locale.ROOT, "%.1f %.1f %d", room.widthM() / 2 + ringM * Math.sin(Math.toRadians(angleDegrees)),
                    room.depthM() / 2 + ringM * Math.cos(Math.toRadians(angleDegrees)), Math.round(angleDegrees + 180) % 360));
        }
        return places;
    }

    /**
     * A line-up of them.
     *
     * @param characters that are wanted, {@value #AS_IT_IS} for none
     * @param limits by seat, from 0
     * @param apart two seats by two that shall not sound alike, by their ids, which are seat-1 and so on; null for none
     * @param sections seats that shall sound as one; null for none
     * @throws IllegalArgumentException where the catalogue does not have something of it
     */
    static LineUp lineUp(String roomId, List<String> sources, List<String> places, List<String> characters, IntFunction<Limits> limits, List<List<String>> apart, List<List<String>> sections, Lab lab) {
        Room room = lab.room(roomId);
        List<Seat> seats = new ArrayList<>();
        for (int i = 0; i < sources.size(); i++) {
            String[] place = places.get(i).split(" ");
            seats.add(new Seat("seat-" + (i + 1), null, lab.source(sources.get(i)).id(), Double.parseDouble(place[0]), Double.parseDouble(place[1]), Double.parseDouble(place[2]), null, null,
                    characters.get(i).equals(AS_IT_IS) ? null : List.of(characters.get(i)), null, limits.apply(i), true, null, true));
        }
        return new LineUp(null, new Floor(room.id(), room.widthM(), room.depthM(), room.heightM(), room.reverbTimeS()), seats, null, apart, sections, null, null, 1);
    }

    /** The room in a sentence. */
    static String says(Room room) {
        return room.name() + ", " + plain(room.widthM()) + " by " + plain(room.depthM()) + " m, " + plain(room.heightM()) + " m high, reverberation " + plain(room.reverbTimeS()) + " s.";
    }

    /** With one decimal at most. */
    static String plain(double number) {
        return java.math.BigDecimal.valueOf(number).setScale(1, java.math.RoundingMode.HALF_UP).stripTrailingZeros().toPlainString();
    }
}
