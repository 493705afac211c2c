package pairwright.http;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import pairwright.model.Limits;
import pairwright.session.Seat;
import pairwright.session.Seating;

/** Reads one entry of a line-up: an object, or the id of a source alone. */
final class SeatBody {
    private static final Set<String> FIELDS = Set.of("id", "player", "source", "xM", "yM", "facingDegrees", "ways", "dynamics", "character", "circumstances",
            "maxMics", "limits", "must", "heard", "fixed");
    /** What an id may be made of. */
    private static final String NAMES_ITSELF = "[a-z0-9]+(-[a-z0-9]+)*";
    private static final int LONGEST = 50;

    private final JsonReader in;

    SeatBody(JsonReader in) {
        this.in = in;
    }

    /** A seat, its id null where none was given; null for what is no seat at all. */
    Seating.Told read(JsonNode root, String at) {
        JsonNode node = root.at(at);
        if (node.isTextual()) {
            return new Seating.Told(new Seat(null, null, node.textValue(), 0, 0, 0, null, null, null, null, null, true, null, false), false, false);
        }
        if (!node.isObject()) {
            in.wrong(at, node, "an object with a source, or the id of one");
            return null;
        }
        in.onlyKnown(node, at, FIELDS);
        Double xM = in.number(root, at + "/xM");
        Double yM = in.number(root, at + "/yM");
        boolean placed = !JsonReader.absent(node.path("xM")) && !JsonReader.absent(node.path("yM"));
        if (!placed && JsonReader.absent(node.path("xM")) != JsonReader.absent(node.path("yM"))) {
            String missing = JsonReader.absent(node.path("xM")) ? "xM" : "yM";
            in.fault(at + "/" + missing, "only half of the place is said, and " + missing + " is missing. Give both xM and yM, or neither");
        }
        Double facingDegrees = in.number(root, at + "/facingDegrees");
        Boolean must = in.yesOrNo(root, at + "/must");
        Seat seat = new Seat(in.text(root, at + "/id"), in.text(root, at + "/player"), in.text(root, at + "/source"), xM == null ? 0 : xM, yM == null ? 0 : yM,
                facingDegrees == null ? 0 : facingDegrees, in.texts(root, at + "/ways"), in.texts(root, at + "/dynamics"), in.texts(root, at + "/character"),
                in.texts(root, at + "/circumstances"), limits(root, at), must == null || must, HeardBody.read(in, root, at + "/heard"),
                Boolean.TRUE.equals(in.yesOrNo(root, at + "/fixed")));
        return new Seating.Told(seat, placed, !JsonReader.absent(node.path("facingDegrees")));
    }

    /** The same, each with an id: whoever was given none is called as the source, with a number from the second on. */
    static List<Seating.Told> named(List<Seating.Told> told) {
        Set<String> taken = told.stream().map(one -> one.seat().id()).filter(Objects::nonNull).collect(Collectors.toCollection(HashSet::new));
        List<Seating.Told> named = new ArrayList<>();
        for (Seating.Told one : told) {
            Seat seat = one.seat();
            named.add(seat.id() != null ? one : new Seating.Told(new Seat(free(seat.source(), taken), seat.player(), seat.source(), seat.xM(), seat.yM(),
                    seat.facingDegrees(), seat.ways(), seat.dynamics(), seat.character(), seat.circumstances(), seat.limits(), seat.must(), seat.heard(),
                    seat.fixed()), one.placed(), one.faced()));
        }
        return named;
    }

    private static String free(String source, Set<String> taken) {
        String base = source != null && source.length() <= LONGEST && source.matches(NAMES_ITSELF) ? source : "seat";
        String id = base;
        for (int number = 2; !taken.add(id); number++) {
            id = base + "-" + number;
        }
        return id;
    }

    /** maxMics is the short way to say how many microphones there may be. */
    private Limits limits(JsonNode root, String at) {
        Integer most = in.whole(root, at + "/maxMics");
        Limits limits = in.limits(root, at + "/limits");
        if (most == null) {
            return limits;
        }
        if (limits != null && limits.mics() != null && !limits.mics().equals(most)) {
            in.fault(at + "/limits/mics", "maxMics is " + most + " and mics is " + limits.mics() + ". Keep one of the two");
        }
        Limits more = limits == null ? Limits.NONE : limits;
        return new Limits(most, more.phantom(), more.preampGainDb(), more.preampNoiseDbu(), more.onlyFamilies(), more.withoutFamilies(), more.onlyMicTypes(),
                more.withoutMicTypes());
    }
}
