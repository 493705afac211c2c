package pairwright.session;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import pairwright.advice.Knowledge;
import pairwright.catalogue.Shown;
import pairwright.model.Fault;

/**
 * What is wrong with a line-up that its form does not show: every fault at once, each at the pointer it has in the JSON of a line-up, such as
 * {@code /lineUp/2/xM}. Planning takes a line-up for granted that has none.
 */
public final class LineUpCheck {
    /** Two players closer than that sit on each other. */
    public static final double LEAST_APART_M = 0.3;
    /** A screen shorter than that screens nothing. */
    public static final double SHORTEST_GOBO_M = 0.2;
    static final int LONGEST_NAME = 120;
    static final int LONGEST_ID = 60;
    private static final Pattern ID = Pattern.compile("[a-z0-9]+(-[a-z0-9]+)*");

    private final LineUp lineUp;
    private final Faults faults;
    private final SeatCheck seats;

    private LineUpCheck(LineUp lineUp, Knowledge known) {
        this.lineUp = lineUp;
        this.faults = new Faults(known);
        this.seats = new SeatCheck(faults, known.catalogue());
    }

    /** Every fault; none where it can be planned with. Anything in the line-up may be null or no number. */
    public static List<Fault> faults(LineUp lineUp, Knowledge known) {
        LineUpCheck check = new LineUpCheck(lineUp, known);
        check.all(known);
        return List.copyOf(check.faults.all());
    }

    private void all(Knowledge known) {
        faults.text("/name", lineUp.name(), LONGEST_NAME, "name");
        Walls walls = floor(known);
        if (lineUp.seats().isEmpty()) {
            faults.add("/lineUp", "nobody is in the line-up. Name at least one source");
        } else if (lineUp.seats().size() > LineUp.MOST_SEATS) {
            faults.add("/lineUp", lineUp.seats().size() + " seats are given; at most " + LineUp.MOST_SEATS + " are planned at once. Plan a section at a time");
            return;
        }
        Map<String, Integer> first = new HashMap<>();
        for (int i = 0; i < lineUp.seats().size(); i++) {
            Seat seat = lineUp.seats().get(i);
            String at = "/lineUp/" + i;
            id(at, seat.id(), "seat", first, i);
            seats.check(at, seat);
            place(at, i, walls);
        }
        gobos(walls);
        contrast(first.keySet());
        keep(first.keySet());
        if (lineUp.from() != null && lineUp.until() != null && !lineUp.from().isBefore(lineUp.until())) {
            faults.add("/until", "until (" + lineUp.until() + ") is not after from (" + lineUp.from() + "). Swap them or correct one");
        }
        faults.within("/plans", lineUp.plans(), 1, LineUp.MOST_PLANS, "plans");
        if (lineUp.setUp() != null) {
            faults.within("/setUp/minutes", lineUp.setUp().minutes(), 1, SetUpTime.MOST_MINUTES, "minutes");
            faults.within("/setUp/hands", lineUp.setUp().hands(), 1, SetUpTime.MOST_HANDS, "hands");
        }
    }

    /** What is wrong with so many lost minutes; empty where nothing is. */
    public static Optional<String> lostMinutes(LineUp lineUp, int minutes) {
        if (minutes < 0) {
            return Optional.of("no fewer than 0 minutes can be lost, but it was " + minutes + ". Give the minutes that are gone");
        }
        if (minutes > 0 && lineUp.setUp() == null) {
            return Optional.of(minutes + " minutes are lost, and the line-up does not say how long there was to set up. Say it in setUp, or take the lost minutes out");
        }
        return minutes > 0 && minutes > lineUp.setUp().minutes() ? Optional.of(minutes + " minutes are lost of " + lineUp.setUp().minutes()
                + " that there were to set up. Give at most " + lineUp.setUp().minutes()) : Optional.empty();
    }

    /** Which measures of the room can be gone by; what does not depend on one that cannot is checked all the same. */
    private record Walls(boolean wide, boolean deep, boolean high) {
    }

    private Walls floor(Knowledge known) {
        Floor floor = lineUp.floor();
        faults.known("/room/room", floor.room(), known.catalogue().rooms().keySet(), "room");
        Walls walls = new Walls(faults.within("/room/widthM", floor.widthM(), Floor.LEAST_M, Floor.MOST_M, "widthM"),
                faults.within("/room/depthM", floor.depthM(), Floor.LEAST_M, Floor.MOST_M, "depthM"), faults.within("/room/heightM", floor.heightM(), Floor.LEAST_M, Floor.MOST_M, "heightM"));
        faults.within("/room/reverbTimeS", floor.reverbTimeS(), Floor.LEAST_REVERB_S, Floor.MOST_REVERB_S, "reverbTimeS");
        if (floor.patch() != null) {
            inX("/room/patch/xM", floor.patch().xM(), "xM", walls);
            inY("/room/patch/yM", floor.patch().yM(), "yM", walls);
        }
        return walls;
    }

    private boolean inX(String at, double xM, String name, Walls walls) {
        return !walls.wide() || faults.within(at, xM, 0, lineUp.floor().widthM(), name, "the room is that wide");
    }

    private boolean inY(String at, double yM, String name, Walls walls) {
        return !walls.deep() || faults.within(at, yM, 0, lineUp.floor().depthM(), name, "the room is that deep");
    }

    private void id(String at, String id, String kind, Map<String, Integer> first, int index) {
        if (id == null) {
            faults.add(at + "/id", "a " + kind + " has no id. Give it one, such as " + kind + "-" + (index + 1));
        } else if (id.length() > LONGEST_ID || !ID.matcher(id).matches()) {
            faults.add(at + "/id", "\"" + Shown.of(id) + "\" is no id. Use small letters, digits and single hyphens between them, at most " + LONGEST_ID + " characters");
        } else if (first.putIfAbsent(id, index) != null) {
            faults.add(at + "/id", "the id " + id + " is given twice, first to entry " + (first.get(id) + 1) + ". Give each " + kind + " its own");
        }
    }

    private void place(String at, int index, Walls walls) {
        Seat seat = lineUp.seats().get(index);
        if (!(inX(at + "/xM", seat.xM(), "xM", walls) & inY(at + "/yM", seat.yM(), "yM", walls))) {
            return;
        }
        for (Seat other : lineUp.seats().subList(0, index)) {
            double apartM = Math.hypot(seat.xM() - other.xM(), seat.yM() - other.yM());
            if (apartM < LEAST_APART_M && !seat.samePlayer(other)) {
                faults.add(at, "the seats " + other.id() + " and " + seat.id() + " are " + Faults.plain(Math.round(apartM * 100) / 100.0)
                        + " m apart. Put " + Faults.plain(LEAST_APART_M) + " m or more between them. One who sings and plays is one seat of the source voice-and-guitar with maxMics 2; of other two things give both seats the same player");
                return;
            }
        }
    }

    private void gobos(Walls walls) {
        if (lineUp.gobos().size() > LineUp.MOST_GOBOS) {
            faults.add("/gobos", lineUp.gobos().size() + " gobos are given; at most " + LineUp.MOST_GOBOS + " are reckoned with. Leave out those that stand aside");
            return;
        }
        Map<String, Integer> first = new HashMap<>();
        for (int i = 0; i < lineUp.gobos().size(); i++) {
            Gobo gobo = lineUp.gobos().get(i);
            String at = "/gobos/" + i;
            id(at, gobo.id(), "gobo", first, i);
            boolean inside = inX(at + "/x1M", gobo.x1M(), "x1M", walls) & inY(at + "/y1M", gobo.y1M(), "y1M", walls)
                    & inX(at + "/x2M", gobo.x2M(), "x2M", walls) & inY(at + "/y2M", gobo.y2M(), "y2M", walls);
            if (walls.high()) {
                faults.within(at + "/heightM", gobo.heightM(), SHORTEST_GOBO_M, lineUp.floor().heightM(), "heightM", "the room is that high");
            }
            if (inside && Math.hypot(gobo.x2M() - gobo.x1M(), gobo.y2M() - gobo.y1M()) < SHORTEST_GOBO_M) {
                faults.add(at, "the gobo " + gobo.id() + " is shorter than " + Faults.plain(SHORTEST_GOBO_M) + " m. Put its ends further apart, or take it out");
            }
        }
    }

    private void contrast(Set<String> ids) {
        for (int i = 0; i < lineUp.contrast().size(); i++) {
            List<String> pair = lineUp.contrast().get(i);
            String at = "/contrast/" + i;
            if (pair.size() != 2) {
                faults.add(at, "an entry of contrast names " + pair.size() + (pair.size() == 1 ? " seat" : " seats") + ". Name the two that shall not sound alike");
            } else if (seats(at, pair, ids) && pair.get(0).equals(pair.get(1))) {
                faults.add(at, "the seat " + pair.get(0) + " shall not sound like itself. Name two");
            } else if (lineUp.keep().stream().anyMatch(group -> group.containsAll(pair))) {
                faults.add(at, "the seats " + pair.get(0) + " and " + pair.get(1) + " shall not sound alike, and shall be kept together as one section. Take one of the two out");
            }
        }
    }

    private void keep(Set<String> ids) {
        Set<String> kept = new HashSet<>();
        for (int i = 0; i < lineUp.keep().size(); i++) {
            List<String> group = lineUp.keep().get(i);
            String at = "/keep/" + i;
            if (group.size() < 2) {
                faults.add(at, "an entry of keep names " + group.size() + (group.size() == 1 ? " seat" : " seats") + ". Name two or more that are one section");
                continue;
            }
            seats(at, group, ids);
            for (int j = 0; j < group.size(); j++) {
                if (ids.contains(group.get(j)) && !kept.add(group.get(j))) {
                    faults.add(at + "/" + j, "the seat " + group.get(j) + " is kept together twice. Leave it in one section");
                }
            }
        }
    }

    private boolean seats(String at, List<String> named, Set<String> ids) {
        List<String> known = new ArrayList<>(ids);
        boolean sound = true;
        for (int j = 0; j < named.size(); j++) {
            sound &= faults.near(at + "/" + j, named.get(j), known, "seat");
        }
        return sound;
    }
}
