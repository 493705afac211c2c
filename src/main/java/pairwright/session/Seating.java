package pairwright.session;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import pairwright.model.Catalogue;
import pairwright.model.Source;

/**
 * Seats of which nobody said where they are, put on an arc open toward the reader: so far apart as the room allows, up to two metres, with who plays
 * loudest at its ends and everybody looking at its middle. The same line-up is seated the same.
 *
 * @param seats all of them, in their order
 * @param assumed what was taken as usual, in sentences
 * @param fits whether the room has a place for everybody; else those without one are in its lower left corner
 */
public record Seating(List<Seat> seats, List<String> assumed, boolean fits) {
    /** Nearer than that nobody can play. */
    static final double LEAST_APART_M = 0.6;
    /** Rather than closer than that, players sit in two rows. */
    private static final double LEAST_IN_A_ROW_M = 1.2;
    private static final double STEP_M = 0.1;
    private static final double FROM_WALL_M = 0.8;
    private static final double SMALLEST_RADIUS_M = 1.2;
    private static final double UNKNOWN_DB_SPL = 80;

    public Seating {
        seats = List.copyOf(seats);
        assumed = List.copyOf(assumed);
    }

    /**
     * A seat as it was told.
     *
     * @param seat its place means nothing where it was not said
     * @param placed whether its place was said
     * @param faced whether it was said where the player looks
     */
    public record Told(Seat seat, boolean placed, boolean faced) {
    }

    /** A place on the floor. */
    private record Place(double xM, double yM, double sideShare) {
    }

    /**
     * All seats with a place.
     *
     * @param floor a sound one
     * @param catalogue for how loud each is; a source it does not have is taken as middling
     */
    public static Seating of(Floor floor, List<Told> told, Catalogue catalogue) {
        List<Told> open = told.stream().filter(one -> !one.placed()).toList();
        List<Place> taken = told.stream().filter(Told::placed).map(one -> new Place(one.seat().xM(), one.seat().yM(), 0)).toList();
        List<Place> places = places(floor, open.size(), taken, catalogue.custom("between-players"));
        Map<Told, Place> put = assigned(open, places, catalogue);
        return seated(floor, told, put, open);
    }

    /** In one row as long as nobody sits too close in it; else in rows; at last without minding who has a place. */
    private static List<Place> places(Floor floor, int wanted, List<Place> taken, double usualM) {
        for (boolean oneRow : new boolean[] {true, false}) {
            for (double apartM = usualM; apartM > (oneRow ? LEAST_IN_A_ROW_M : LEAST_APART_M) - STEP_M / 2; apartM -= STEP_M) {
                List<Place> places = free(floor, wanted, apartM, oneRow, taken);
                if (places.size() == wanted) {
                    return places;
                }
            }
        }
        return free(floor, wanted, LEAST_APART_M, false, List.of());
    }

    private static Seating seated(Floor floor, List<Told> told, Map<Told, Place> put, List<Told> open) {
        List<Place> all = told.stream().map(one -> put.getOrDefault(one, new Place(one.seat().xM(), one.seat().yM(), 0))).toList();
        Place middle = told.size() < 2 ? new Place(floor.widthM() / 2, 0, 0) : middle(all);
        List<Seat> seats = new ArrayList<>();
        List<String> turned = new ArrayList<>();
        for (int i = 0; i < told.size(); i++) {
            Told one = told.get(i);
            Place at = all.get(i);
            double facingDegrees = one.faced() ? one.seat().facingDegrees() : towards(at, put.containsKey(one) ? arcMiddle(floor) : middle);
            seats.add(one.seat().at(at.xM(), at.yM(), facingDegrees));
            if (one.placed() && !one.faced()) {
                turned.add(called(one.seat()));
            }
        }
        List<String> assumed = new ArrayList<>();
        if (!open.isEmpty()) {
            assumed.add("Nobody said where " + list(open.stream().map(one -> called(one.seat())).toList())
                    + (open.size() == 1 ? " is: put where there is room, looking at its middle"
                            : " are: put on an arc, the loudest at its ends, looking at its middle") + ". Say xM and yM where you know better.");
        }
        if (!turned.isEmpty()) {
            assumed.add("Nobody said where " + list(turned) + (turned.size() == 1 ? " looks" : " look") + ": at the middle of the band. Say facingDegrees where you know better.");
        }
        return new Seating(seats, assumed, put.size() == open.size());
    }

    /** Places on arcs, the outermost first, each as far from its neighbours as told and about as far from whoever has a place; none where they are not enough. */
    private static List<Place> free(Floor floor, int wanted, double apartM, boolean oneRow, List<Place> taken) {
        for (int slots = wanted; slots <= wanted + 3 * taken.size(); slots++) {
            List<Place> places = new ArrayList<>();
            double needM = slots < 2 ? 0 : apartM / 2 / Math.sin(Math.PI / 2 / (slots - 1));
            double radiusM = Math.min(largestM(floor), Math.max(SMALLEST_RADIUS_M, needM));
            while (places.size() < slots && radiusM > 0 && !(oneRow && !places.isEmpty())) {
                int most = apartM / 2 > radiusM ? 1 : (int) Math.floor(Math.PI / 2 / Math.asin(apartM / 2 / radiusM) + 1e-9) + 1;
                row(floor, radiusM, Math.min(slots - places.size(), most), places);
                radiusM -= Math.max(apartM, 1);
            }
            List<Place> clear = places.stream().filter(place -> taken.stream().allMatch(other -> apart(place, other) >= apartM * 0.75)).toList();
            if (clear.size() >= wanted) {
                return clear.subList(0, wanted);
            }
        }
        return List.of();
    }

    private static void row(Floor floor, double radiusM, int count, List<Place> places) {
        Place middle = arcMiddle(floor);
        for (int i = 0; i < count; i++) {
            double angle = count == 1 ? Math.PI / 2 : Math.PI * i / (count - 1);
            places.add(new Place(rounded(middle.xM() - radiusM * Math.cos(angle)), rounded(middle.yM() + radiusM * Math.sin(angle)), Math.abs(Math.cos(angle))));
        }
    }

    /** The radius of the largest arc that keeps clear of the walls. */
    private static double largestM(Floor floor) {
        double fromWallM = Math.min(FROM_WALL_M, Math.min(floor.widthM(), floor.depthM()) / 4);
        return Math.min(floor.widthM() / 2 - fromWallM, floor.depthM() - 2 * fromWallM);
    }

    /** Where everybody looks: so far up the plan that the largest arc lies in the middle of the room. */
    private static Place arcMiddle(Floor floor) {
        return new Place(rounded(floor.widthM() / 2), rounded((floor.depthM() - largestM(floor)) / 2), 0);
    }

    /** The loudest at the sides. */
    private static Map<Told, Place> assigned(List<Told> open, List<Place> places, Catalogue catalogue) {
        Map<Told, Place> put = new LinkedHashMap<>();
        if (places.size() < open.size()) {
            return put;
        }
        List<Told> byLevel = new ArrayList<>(open);
        byLevel.sort(Comparator.comparingDouble(one -> -levelDbSpl(one.seat(), catalogue)));
        List<Place> bySide = new ArrayList<>(places);
        bySide.sort(Comparator.comparingDouble(place -> -Math.round(place.sideShare() * 1000)));
        for (int i = 0; i < byLevel.size(); i++) {
            put.put(byLevel.get(i), bySide.get(i));
        }
        return put;
    }

    private static double levelDbSpl(Seat seat, Catalogue catalogue) {
        if (seat.heard() != null && seat.heard().typicalDbSpl() != null) {
            return seat.heard().typicalDbSpl();
        }
        Source source = seat.source() == null ? null : catalogue.sources().get(seat.source());
        return source == null ? UNKNOWN_DB_SPL : source.level() == null ? 0 : source.level().typicalDbSpl();
    }

    private static Place middle(List<Place> places) {
        return new Place(places.stream().mapToDouble(Place::xM).average().orElse(0), places.stream().mapToDouble(Place::yM).average().orElse(0), 0);
    }

    /** Where one looks who looks at a place: 0 up the plan, 90 to the right; toward the reader where he stands on it. */
    private static double towards(Place from, Place to) {
        if (apart(from, to) < 0.05) {
            return 180;
        }
        double degrees = Math.toDegrees(Math.atan2(to.xM() - from.xM(), to.yM() - from.yM()));
        return Math.round(degrees < 0 ? degrees + 360 : degrees) % 360;
    }

    private static double apart(Place one, Place other) {
        return Math.hypot(one.xM() - other.xM(), one.yM() - other.yM());
    }

    private static double rounded(double metres) {
        return Math.round(metres * 100) / 100.0;
    }

    private static String called(Seat seat) {
        return seat.player() != null ? seat.player() : seat.id() != null ? seat.id().replace('-', ' ') : "somebody";
    }

    private static String list(List<String> names) {
        return names.size() < 2 ? String.join("", names)
                : names.subList(0, names.size() - 1).stream().collect(Collectors.joining(", ")) + " and " + names.get(names.size() - 1);
    }
}
