package pairwright.http;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import pairwright.catalogue.Shown;
import pairwright.session.LineUp;
import pairwright.session.Picks;
import pairwright.session.Seat;

/** Reads from a plan, as it was answered, what was picked; everything else in it follows from that and is passed over. Its lines alone suffice. */
final class PicksBody {
    private final JsonReader in;
    private final LineUp lineUp;

    PicksBody(JsonReader in, LineUp lineUp) {
        this.in = in;
        this.lineUp = lineUp;
    }

    /** One line of the plan. */
    private record Put(String seat, int order, String technique, Picks.Mic mic) {
    }

    /** What was picked; null where there is a fault. */
    Picks read(JsonNode root, String at) {
        JsonNode node = root.at(at);
        if (!node.isObject()) {
            in.fault(at, JsonReader.absent(node) ? "there is no plan. Send one that was answered before, or its lines" : "plan must be an object with lines, but was " + JsonReader.kind(node));
            return null;
        }
        if (JsonReader.absent(node.path("lines"))) {
            in.fault(at + "/lines", "the plan has no lines. Send them as they were answered");
            return null;
        }
        List<Put> lines = in.list(root, at + "/lines", this::line);
        if (lines == null) {
            return null;
        }
        Map<String, String> techniques = techniques(node.path("served"));
        Map<String, List<Put>> bySeat = new LinkedHashMap<>();
        lines.forEach(line -> bySeat.computeIfAbsent(line.seat(), seat -> new ArrayList<>()).add(line));
        List<Picks.AtSeat> seats = new ArrayList<>();
        bySeat.forEach((seat, its) -> {
            its.sort(Comparator.comparingInt(Put::order));
            String technique = its.get(0).technique() != null ? its.get(0).technique() : techniques.get(seat);
            seats.add(new Picks.AtSeat(seat, technique, its.stream().map(Put::mic).toList()));
        });
        return new Picks(seats);
    }

    private Put line(JsonNode root, String at) {
        JsonNode node = root.at(at);
        if (!node.isObject()) {
            in.wrong(at, node, "an object with seat, micType and position");
            return null;
        }
        String seat = seat(root, at);
        String micType = needed(root, at, "micType");
        String position = needed(root, at, "position");
        Integer mic = in.whole(root, at + "/mic");
        Double distanceM = in.number(root, at + "/distanceM");
        if (distanceM != null && !(distanceM >= 0 && distanceM <= 100)) {
            in.fault(at + "/distanceM", "distanceM must be 0 to 100, but was " + SessionBody.plain(distanceM));
        }
        if (seat == null || micType == null || position == null) {
            return null;
        }
        return new Put(seat, mic == null ? Integer.MAX_VALUE : mic, in.text(root, at + "/technique"), new Picks.Mic(micType, in.pattern(root, at + "/pattern"), position,
                distanceM, in.number(root, at + "/aimDegrees"), in.text(root, at + "/unit"), in.text(root, at + "/channel"),
                in.text(root, at + "/stand"), in.text(root, at + "/booster"), box(root, at), in.text(root, at + "/linePad")));
    }

    private String needed(JsonNode root, String at, String name) {
        if (JsonReader.absent(root.at(at).path(name))) {
            in.fault(at + "/" + name, "a line of the plan has no " + name + ". Send it as it was answered");
        }
        return in.text(root, at + "/" + name);
    }

    /** A line that is a box itself names it as its unit already. */
    private String box(JsonNode root, String at) {
        String box = in.text(root, at + "/box");
        return box == null || box.equals(in.text(root, at + "/unit")) ? null : box;
    }

    /** The seat that is named, which may have left since; else the only one that has the source. */
    private String seat(JsonNode root, String at) {
        if (!JsonReader.absent(root.at(at).path("seat"))) {
            return in.text(root, at + "/seat");
        }
        String source = in.text(root, at + "/source");
        List<String> seats = source == null ? List.of() : lineUp.seats().stream().filter(seat -> source.equals(seat.source())).map(Seat::id).toList();
        if (seats.size() != 1) {
            in.fault(at + "/seat", source == null ? "a line of the plan has no seat. Give the id of one"
                    : seats.isEmpty() ? "a line of the plan has no seat, and nobody in the line-up has the source \"" + Shown.of(source) + "\". Give the id of the seat"
                    : "a line of the plan has no seat, and " + seats.size() + " in the line-up have the source " + source + ". Give the id of the one");
            return null;
        }
        return seats.get(0);
    }

    private static Map<String, String> techniques(JsonNode served) {
        Map<String, String> techniques = new HashMap<>();
        served.forEach(one -> {
            String technique = one.path("option").path("technique").textValue();
            if (one.path("seat").isTextual() && technique != null) {
                techniques.put(one.path("seat").textValue(), technique);
            }
        });
        return techniques;
    }
}
