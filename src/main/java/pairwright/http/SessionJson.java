package pairwright.http;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Collection;
import java.util.List;
import java.util.function.Function;
import pairwright.model.HeardBefore;
import pairwright.model.Limits;
import pairwright.model.Word;
import pairwright.session.Floor;
import pairwright.session.Gobo;
import pairwright.session.LineUp;
import pairwright.session.Picks;
import pairwright.session.Seat;

/** Line-ups and picks as JSON that {@link SessionBody} reads back as they were: no number is rounded. */
public final class SessionJson {
    private static final JsonNodeFactory NODES = JsonNodeFactory.withExactBigDecimals(true);

    private SessionJson() {
    }

    /** A line-up, all of it. */
    public static ObjectNode of(LineUp lineUp) {
        ObjectNode node = NODES.objectNode();
        put(node, "name", lineUp.name());
        node.set("room", of(lineUp.floor()));
        node.set("lineUp", list(lineUp.seats(), SessionJson::of));
        listed(node, "gobos", lineUp.gobos(), SessionJson::of);
        listed(node, "contrast", lineUp.contrast(), SessionJson::texts);
        listed(node, "keep", lineUp.keep(), SessionJson::texts);
        node.put("plans", lineUp.plans());
        if (lineUp.setUp() != null) {
            node.putObject("setUp").put("minutes", lineUp.setUp().minutes()).put("hands", lineUp.setUp().hands());
        }
        put(node, "from", lineUp.from());
        put(node, "until", lineUp.until());
        return node;
    }

    /** What was picked, as the {@code plan} of a request to plan again. */
    public static ObjectNode of(Picks picks) {
        ArrayNode lines = NODES.arrayNode();
        picks.seats().forEach(seat -> {
            for (int i = 0; i < seat.mics().size(); i++) {
                Picks.Mic mic = seat.mics().get(i);
                ObjectNode line = lines.addObject();
                put(line, "seat", seat.seat());
                line.put("mic", i + 1);
                put(line, "technique", seat.technique());
                put(line, "micType", mic.micType());
                put(line, "pattern", mic.pattern() == null ? null : mic.pattern().id());
                put(line, "position", mic.position());
                put(line, "distanceM", mic.distanceM());
                put(line, "aimDegrees", mic.aimDegrees());
                put(line, "unit", mic.unit());
                put(line, "channel", mic.channel());
                put(line, "stand", mic.stand());
                put(line, "booster", mic.booster());
                put(line, "box", mic.box());
                put(line, "linePad", mic.pad());
            }
        });
        ObjectNode node = NODES.objectNode();
        node.set("lines", lines);
        return node;
    }

    private static ObjectNode of(Floor floor) {
        ObjectNode node = NODES.objectNode();
        put(node, "room", floor.room());
        put(node, "widthM", floor.widthM());
        put(node, "depthM", floor.depthM());
        put(node, "heightM", floor.heightM());
        put(node, "reverbTimeS", floor.reverbTimeS());
        if (floor.patch() != null) {
            ObjectNode patch = node.putObject("patch");
            put(patch, "xM", floor.patch().xM());
            put(patch, "yM", floor.patch().yM());
        }
        return node;
    }

    private static ObjectNode of(Seat seat) {
        ObjectNode node = NODES.objectNode();
        put(node, "id", seat.id());
        put(node, "player", seat.player());
        put(node, "source", seat.source());
        put(node, "xM", seat.xM());
        put(node, "yM", seat.yM());
        put(node, "facingDegrees", seat.facingDegrees());
        listed(node, "ways", seat.ways(), NODES::textNode);
        listed(node, "dynamics", seat.dynamics(), NODES::textNode);
        listed(node, "character", seat.character(), NODES::textNode);
        listed(node, "circumstances", seat.circumstances(), NODES::textNode);
        if (seat.limits().mics() != null) {
            node.put("maxMics", seat.limits().mics());
        }
        ObjectNode limits = of(seat.limits());
        if (!limits.isEmpty()) {
            node.set("limits", limits);
        }
        node.put("must", seat.must());
        if (seat.heard() != null) {
            node.set("heard", of(seat.heard()));
        }
        node.put("fixed", seat.fixed());
        return node;
    }

    /** But for the number of microphones, which has a field of its own. */
    private static ObjectNode of(Limits limits) {
        ObjectNode node = NODES.objectNode();
        if (limits.phantom() != null) {
            node.put("phantom", limits.phantom());
        }
        put(node, "preampGainDb", limits.preampGainDb());
        put(node, "preampNoiseDbu", limits.preampNoiseDbu());
        listed(node, "onlyFamilies", limits.onlyFamilies(), SessionJson::of);
        listed(node, "withoutFamilies", limits.withoutFamilies(), SessionJson::of);
        listed(node, "onlyMicTypes", limits.onlyMicTypes(), NODES::textNode);
        listed(node, "withoutMicTypes", limits.withoutMicTypes(), NODES::textNode);
        return node;
    }

    private static ObjectNode of(HeardBefore heard) {
        ObjectNode node = NODES.objectNode();
        put(node, "typicalDbSpl", heard.typicalDbSpl());
        put(node, "peakDbSpl", heard.peakDbSpl());
        if (heard.toneDb() != null) {
            ArrayNode tone = node.putArray("toneDb");
            for (double band : heard.toneDb().toArray()) {
                tone.add(number(band));
            }
        }
        put(node, "lowestHz", heard.lowestHz());
        put(node, "highestHz", heard.highestHz());
        put(node, "crestDb", heard.crestDb());
        put(node, "attack", heard.attack() == null ? null : heard.attack().id());
        listed(node, "habits", heard.habits(), NODES::textNode);
        return node;
    }

    private static ObjectNode of(Gobo gobo) {
        ObjectNode node = NODES.objectNode();
        put(node, "id", gobo.id());
        put(node, "x1M", gobo.x1M());
        put(node, "y1M", gobo.y1M());
        put(node, "x2M", gobo.x2M());
        put(node, "y2M", gobo.y2M());
        put(node, "heightM", gobo.heightM());
        return node;
    }

    private static JsonNode of(Word word) {
        return NODES.textNode(word.id());
    }

    private static ArrayNode texts(List<String> texts) {
        return list(texts, NODES::textNode);
    }

    private static <T> void listed(ObjectNode node, String name, Collection<T> entries, Function<T, JsonNode> written) {
        if (!entries.isEmpty()) {
            node.set(name, list(entries, written));
        }
    }

    private static <T> ArrayNode list(Collection<T> entries, Function<T, JsonNode> written) {
        ArrayNode list = NODES.arrayNode();
        entries.forEach(entry -> list.add(written.apply(entry)));
        return list;
    }

    private static void put(ObjectNode node, String name, String text) {
        if (text != null) {
            node.put(name, text);
        }
    }

    private static void put(ObjectNode node, String name, OffsetDateTime time) {
        put(node, name, time == null ? null : DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(time));
    }

    private static void put(ObjectNode node, String name, Double number) {
        if (number != null) {
            node.put(name, number(number));
        }
    }

    private static BigDecimal number(double number) {
        BigDecimal plain = BigDecimal.valueOf(number).stripTrailingZeros();
        return plain.scale() < 0 ? plain.setScale(0) : plain;
    }
}
