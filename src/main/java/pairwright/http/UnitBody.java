package pairwright.http;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.Set;
import pairwright.locker.BoosterData;
import pairwright.locker.ChannelData;
import pairwright.locker.Condition;
import pairwright.locker.PadData;
import pairwright.locker.PhantomSwitch;
import pairwright.locker.ResponsePoint;
import pairwright.locker.StandData;
import pairwright.locker.UnitDraft;
import pairwright.locker.UnitKind;

/** Reads what is said of a unit. */
final class UnitBody extends JsonReader {
    static final String EXAMPLE = "{\"micType\": \"long-ribbon\", \"label\": \"Ribbon 1\"}";
    private static final Set<String> FIELDS = Set.of("id", "kind", "micType", "label", "serial", "tag", "pairMate", "condition", "note", "storedAt", "channel", "stand",
            "pad", "booster", "response");
    private static final Set<String> CHANNEL = Set.of("bank", "leastGainDb", "mostGainDb", "inputOhm", "noiseDbu", "phantom", "phantomMa");
    private static final Set<String> STAND = Set.of("massKg", "reachM", "footRadiusM", "legs", "heightM");
    private static final Set<String> PAD = Set.of("lossDb", "passesPhantom");
    private static final Set<String> BOOSTER = Set.of("gainDb", "phantomMa", "passesPhantom");
    private static final Set<String> POINT = Set.of("frequencyHz", "levelDb");

    private UnitBody() {
    }

    /**
     * What a body says of a unit.
     *
     * @throws BadRequest with status 400 and every fault of form
     */
    static UnitDraft read(JsonNode root) {
        UnitBody reader = new UnitBody();
        return reader.sound(reader.unit(root));
    }

    private UnitDraft unit(JsonNode root) {
        onlyKnown(root, "", FIELDS);
        return new UnitDraft(
                text(root, "/id"),
                constant(root, "/kind", UnitKind.values(), "kind of unit"),
                text(root, "/micType"),
                text(root, "/label"),
                text(root, "/serial"),
                text(root, "/tag"),
                text(root, "/pairMate"),
                constant(root, "/condition", Condition.values(), "condition"),
                text(root, "/note"),
                text(root, "/storedAt"),
                channel(root, "/channel"),
                stand(root, "/stand"),
                pad(root, "/pad"),
                booster(root, "/booster"),
                response(root, "/response"));
    }

    private ChannelData channel(JsonNode root, String at) {
        return object(root, at, CHANNEL) ? new ChannelData(
                text(root, at + "/bank"),
                number(root, at + "/leastGainDb"),
                number(root, at + "/mostGainDb"),
                number(root, at + "/inputOhm"),
                number(root, at + "/noiseDbu"),
                constant(root, at + "/phantom", PhantomSwitch.values(), "switch for phantom power"),
                number(root, at + "/phantomMa")) : null;
    }

    private StandData stand(JsonNode root, String at) {
        return object(root, at, STAND) ? new StandData(
                number(root, at + "/massKg"),
                number(root, at + "/reachM"),
                number(root, at + "/footRadiusM"),
                whole(root, at + "/legs"),
                number(root, at + "/heightM")) : null;
    }

    private PadData pad(JsonNode root, String at) {
        return object(root, at, PAD) ? new PadData(number(root, at + "/lossDb"), yesOrNo(root, at + "/passesPhantom")) : null;
    }

    private BoosterData booster(JsonNode root, String at) {
        return object(root, at, BOOSTER)
                ? new BoosterData(number(root, at + "/gainDb"), number(root, at + "/phantomMa"), yesOrNo(root, at + "/passesPhantom"))
                : null;
    }

    private List<ResponsePoint> response(JsonNode root, String at) {
        return list(root, at, this::point);
    }

    private ResponsePoint point(JsonNode root, String at) {
        if (!object(root, at, POINT)) {
            return null;
        }
        Double frequencyHz = needed(root, at + "/frequencyHz", "its frequency in hertz");
        Double levelDb = needed(root, at + "/levelDb", "its level in decibels");
        return frequencyHz == null || levelDb == null ? null : new ResponsePoint(frequencyHz, levelDb);
    }

    private Double needed(JsonNode root, String at, String what) {
        if (absent(root.at(at))) {
            fault(at, "a point of the response has no " + at.substring(at.lastIndexOf('/') + 1) + ". Give " + what);
        }
        return number(root, at);
    }

    /** Whether there is an object of these fields. */
    private boolean object(JsonNode root, String at, Set<String> fields) {
        JsonNode node = root.at(at);
        if (absent(node)) {
            return false;
        }
        if (!node.isObject()) {
            wrong(at, node, "an object");
            return false;
        }
        onlyKnown(node, at, fields);
        return true;
    }
}
