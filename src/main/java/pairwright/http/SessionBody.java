package pairwright.http;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import pairwright.advice.Knowledge;
import pairwright.advice.Usual;
import pairwright.model.Fault;
import pairwright.model.FromLocker;
import pairwright.model.Naming;
import pairwright.model.Room;
import pairwright.session.Floor;
import pairwright.session.Gear;
import pairwright.session.Gobo;
import pairwright.session.LineUp;
import pairwright.session.LineUpCheck;
import pairwright.session.Lost;
import pairwright.session.Picks;
import pairwright.session.Seating;
import pairwright.session.SetUpTime;

/**
 * Reads a line-up, from a body or a file, by hand: every fault of its form and of what it says is found at once. What was not said, such as where
 * somebody sits, is taken as usual and told.
 */
public final class SessionBody extends JsonReader {
    static final String EXAMPLE = "{\"room\": \"barn\", \"lineUp\": [\"trumpet\", \"double-bass\", {\"source\": \"drum-kit\", \"maxMics\": 4}]}";
    private static final Set<String> FIELDS = Set.of("name", "room", "lineUp", "gobos", "contrast", "keep", "plans", "setUp", "from", "until", "locker", "bookings");
    private static final Set<String> AGAIN = Set.of("plan", "lost", "pricePoints");
    private static final Set<String> ROOM = Set.of("room", "widthM", "depthM", "heightM", "reverbTimeS", "patch");
    private static final Set<String> PATCH = Set.of("xM", "yM");
    private static final Set<String> GOBO = Set.of("id", "x1M", "y1M", "x2M", "y2M", "heightM");
    private static final Set<String> LOST = Set.of("units", "channels", "seats", "minutes");
    private static final Set<String> SET_UP = Set.of("minutes", "hands");
    static final double USUAL_GOBO_M = 1.4;

    private final Knowledge known;
    private final List<String> assumed = new ArrayList<>();
    /** Which entries of the lists could be read, so that a fault of what was read is told at the place it has in what was sent. */
    private final List<Integer> seatsRead = new ArrayList<>();
    private final List<Integer> gobosRead = new ArrayList<>();

    /**
     * What was read.
     *
     * @param request null where there are faults
     * @param faults all of them, each with its place as a pointer
     */
    public record Read(SessionRequest request, List<Fault> faults) {
    }

    private SessionBody(Knowledge known) {
        this.known = known;
    }

    /** A line-up to be planned. */
    public static Read plan(JsonNode root, Knowledge known) {
        return new SessionBody(known).read(root, false);
    }

    /** A line-up to be planned again, with {@code plan}, {@code lost} and {@code pricePoints}. */
    public static Read again(JsonNode root, Knowledge known) {
        return new SessionBody(known).read(root, true);
    }

    private Read read(JsonNode root, boolean again) {
        Set<String> fields = new TreeSet<>(FIELDS);
        if (again) {
            fields.addAll(AGAIN);
        }
        onlyKnown(root, "", fields);
        String name = text(root, "/name");
        Floor floor = floor(root);
        List<Seating.Told> told = told(root);
        LineUp unseated = new LineUp(name, floor, told.stream().map(Seating.Told::seat).toList(), list(root, "/gobos", this::gobo),
                list(root, "/contrast", this::texts), list(root, "/keep", this::texts), time(root, "/from"), time(root, "/until"), plans(root), setUp(root));
        LineUp lineUp = seated(unseated, told);
        FromLocker use = root.path("locker").isTextual() ? constant(root, "/locker", FromLocker.values(), "way to use the locker") : null;
        Gear gear = root.path("locker").isTextual() ? null : new GearBody(this, known.catalogue()).read(root, "/locker");
        List<String> bookings = texts(root, "/bookings");
        Picks before = again ? new PicksBody(this, lineUp).read(root, "/plan") : null;
        Lost lost = again ? lost(root, lineUp) : Lost.NOTHING;
        Double pricePoints = again ? price(root) : null;
        addMissing(LineUpCheck.faults(lineUp, known).stream().map(fault -> new Fault(asSent(asSent(fault.at(), "/lineUp/", seatsRead), "/gobos/", gobosRead), fault.says()))
                .filter(fault -> !(fault.at().startsWith("/contrast/") || fault.at().startsWith("/keep/")) || seatsRead.size() == root.path("lineUp").size()).toList());
        if (!faults().isEmpty()) {
            return new Read(null, List.copyOf(faults()));
        }
        return new Read(new SessionRequest(lineUp, use, gear, bookings == null ? List.of() : bookings, assumed, before, lost,
                pricePoints == null ? SessionRequest.USUAL_PRICE_POINTS : pricePoints), List.of());
    }

    /** Adds what is not a consequence of a fault of form at the same place. */
    private void addMissing(List<Fault> others) {
        List<Fault> ofForm = List.copyOf(faults());
        others.stream().filter(other -> ofForm.stream().noneMatch(one -> follows(other.at(), one.at()))).forEach(other -> fault(other.at(), other.says()));
    }

    /** Whether a fault may only be there because of another of form; where somebody sits or a gobo stands is spoiled by no other field than its places. */
    private static boolean follows(String at, String ofForm) {
        return ofForm.equals(at) || at.startsWith(ofForm + "/") || ofForm.startsWith(at + "/") && (!at.matches("/(lineUp|gobos)/\\d+") || ofForm.matches(".*/[xy][12]?M"));
    }

    private static String asSent(String at, String list, List<Integer> read) {
        if (!at.startsWith(list)) {
            return at;
        }
        String[] parts = at.substring(list.length()).split("/", 2);
        return list + read.get(Integer.parseInt(parts[0])) + (parts.length == 1 ? "" : "/" + parts[1]);
    }

    private static int index(String at) {
        return Integer.parseInt(at.substring(at.lastIndexOf('/') + 1));
    }

    private Floor floor(JsonNode root) {
        JsonNode node = root.path("room");
        if (!absent(node) && !node.isTextual() && !node.isObject()) {
            wrong("/room", node, "an object with widthM, depthM, heightM and reverbTimeS, or the id of a room");
        }
        if (node.isObject()) {
            onlyKnown(node, "/room", ROOM);
        }
        String id = node.isTextual() ? text(root, "/room") : node.isObject() ? text(root, "/room/room") : null;
        Room usual = known.catalogue().rooms().get(Usual.ROOM);
        Room like = id == null ? usual : known.catalogue().rooms().getOrDefault(id, usual);
        List<String> missing = new ArrayList<>();
        Floor floor = new Floor(id, size(root, "widthM", like.widthM(), missing), size(root, "depthM", like.depthM(), missing),
                size(root, "heightM", like.heightM(), missing), size(root, "reverbTimeS", like.reverbTimeS(), missing), patch(root));
        if (!missing.isEmpty()) {
            assumed.add("Nobody said " + String.join(", ", missing) + " of the room: taken as of a usual " + Naming.small(like.name()) + ", which is "
                    + plain(like.widthM()) + " by " + plain(like.depthM()) + " m, " + plain(like.heightM()) + " m high, and rings for " + plain(like.reverbTimeS()) + " s.");
        }
        return floor;
    }

    private Floor.Patch patch(JsonNode root) {
        JsonNode node = root.path("room").path("patch");
        if (absent(node)) {
            return null;
        }
        if (!node.isObject()) {
            wrong("/room/patch", node, "an object with xM and yM, where the leads end");
            return null;
        }
        onlyKnown(node, "/room/patch", PATCH);
        PATCH.stream().sorted().filter(name -> absent(node.path(name))).forEach(name -> fault("/room/patch/" + name,
                "it is not said where the leads end along " + name.charAt(0) + ". Give xM and yM, or leave patch out"));
        Double xM = number(root, "/room/patch/xM");
        Double yM = number(root, "/room/patch/yM");
        return xM == null || yM == null ? null : new Floor.Patch(xM, yM);
    }

    private double size(JsonNode root, String name, double usual, List<String> missing) {
        JsonNode node = root.path("room").path(name);
        if (absent(node)) {
            missing.add(name);
            return usual;
        }
        Double given = number(root, "/room/" + name);
        return given == null ? usual : given;
    }

    private List<Seating.Told> told(JsonNode root) {
        if (absent(root.path("lineUp"))) {
            fault("/lineUp", "there is no lineUp. List who plays, each with a source, such as " + EXAMPLE);
            return List.of();
        }
        SeatBody seats = new SeatBody(this);
        List<Seating.Told> told = list(root, "/lineUp", (tree, at) -> {
            Seating.Told one = seats.read(tree, at);
            if (one != null) {
                seatsRead.add(index(at));
            }
            return one;
        });
        return told == null ? List.of() : SeatBody.named(told);
    }

    private LineUp seated(LineUp lineUp, List<Seating.Told> told) {
        Floor floor = lineUp.floor();
        boolean sound = Stream.of(floor.widthM(), floor.depthM()).allMatch(size -> size >= Floor.LEAST_M && size <= Floor.MOST_M);
        if (!sound || told.isEmpty() || told.size() > LineUp.MOST_SEATS) {
            return lineUp;
        }
        Seating seating = Seating.of(floor, told, known.catalogue());
        if (!seating.fits()) {
            fault("/lineUp", "a room of " + plain(floor.widthM()) + " by " + plain(floor.depthM()) + " m has no place for all " + told.size()
                    + " seats of which xM and yM were not said. Say where they are, or give a larger room");
        }
        assumed.addAll(seating.assumed());
        return lineUp.seated(seating.seats());
    }

    private Gobo gobo(JsonNode root, String at) {
        JsonNode node = root.at(at);
        if (!node.isObject()) {
            wrong(at, node, "an object with x1M, y1M, x2M, y2M and heightM");
            return null;
        }
        gobosRead.add(index(at));
        onlyKnown(node, at, GOBO);
        String id = text(root, at + "/id");
        Double heightM = number(root, at + "/heightM");
        return new Gobo(id != null ? id : "gobo-" + (index(at) + 1),
                end(root, at, "x1M"), end(root, at, "y1M"), end(root, at, "x2M"), end(root, at, "y2M"), heightM == null ? USUAL_GOBO_M : heightM);
    }

    private double end(JsonNode root, String at, String name) {
        Double given = number(root, at + "/" + name);
        if (absent(root.at(at).path(name))) {
            fault(at + "/" + name, "a gobo has no " + name + ". Give both its ends in metres from the lower left corner of the room");
        }
        return given == null ? Double.NaN : given;
    }

    private int plans(JsonNode root) {
        Integer plans = whole(root, "/plans");
        return plans == null ? LineUp.USUAL_PLANS : plans;
    }

    private SetUpTime setUp(JsonNode root) {
        JsonNode node = root.path("setUp");
        if (absent(node)) {
            return null;
        }
        if (!node.isObject()) {
            wrong("/setUp", node, "an object with minutes and hands");
            return null;
        }
        onlyKnown(node, "/setUp", SET_UP);
        Integer minutes = whole(root, "/setUp/minutes");
        Integer hands = whole(root, "/setUp/hands");
        if (absent(node.path("minutes"))) {
            fault("/setUp/minutes", "setUp has no minutes. Say how many there are to set up, or leave setUp out");
        }
        return minutes == null ? null : new SetUpTime(minutes, hands == null ? 1 : hands);
    }

    private Lost lost(JsonNode root, LineUp lineUp) {
        JsonNode node = root.path("lost");
        if (absent(node)) {
            return Lost.NOTHING;
        }
        if (!node.isObject()) {
            wrong("/lost", node, "an object with units, channels, seats and minutes");
            return Lost.NOTHING;
        }
        onlyKnown(node, "/lost", LOST);
        Integer minutes = whole(root, "/lost/minutes");
        if (minutes != null && (lineUp.setUp() != null || absent(root.path("setUp")))) {
            LineUpCheck.lostMinutes(lineUp, minutes).ifPresent(says -> fault("/lost/minutes", says));
        }
        return new Lost(texts(root, "/lost/units"), texts(root, "/lost/channels"), texts(root, "/lost/seats"), minutes == null ? 0 : minutes);
    }

    private Double price(JsonNode root) {
        Double price = number(root, "/pricePoints");
        if (price != null && !(price >= 0 && price <= SessionRequest.MOST_PRICE_POINTS)) {
            fault("/pricePoints", "pricePoints must be 0 to " + plain(SessionRequest.MOST_PRICE_POINTS) + ", but was " + plain(price));
        }
        return price;
    }

    /** As it was given, without the ".0" of a whole number. */
    static String plain(double number) {
        return number == Math.rint(number) && Math.abs(number) < 1e15 ? Long.toString((long) number) : Double.toString(number);
    }
}
