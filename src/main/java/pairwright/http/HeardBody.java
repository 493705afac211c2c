package pairwright.http;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.Set;
import pairwright.acoustics.OctaveCurve;
import pairwright.acoustics.Octaves;
import pairwright.model.Attack;
import pairwright.model.HeardBefore;

/** Reads what was heard of a player before, of a seat or of a question. */
final class HeardBody {
    private static final Set<String> FIELDS = Set.of("typicalDbSpl", "peakDbSpl", "toneDb", "lowestHz", "highestHz", "crestDb", "attack", "habits");

    private HeardBody() {
    }

    /** Null where nothing was given; faults of form go to the reader. */
    static HeardBefore read(JsonReader in, JsonNode root, String at) {
        JsonNode node = root.at(at);
        if (JsonReader.absent(node)) {
            return null;
        }
        if (!node.isObject()) {
            in.wrong(at, node, "an object with typicalDbSpl, toneDb and so on");
            return null;
        }
        in.onlyKnown(node, at, FIELDS);
        return new HeardBefore(in.number(root, at + "/typicalDbSpl"), in.number(root, at + "/peakDbSpl"), tone(in, root, at + "/toneDb"),
                in.number(root, at + "/lowestHz"), in.number(root, at + "/highestHz"), in.number(root, at + "/crestDb"),
                in.constant(root, at + "/attack", Attack.values(), "attack"), in.texts(root, at + "/habits"));
    }

    private static OctaveCurve tone(JsonReader in, JsonNode root, String at) {
        List<Double> octaves = in.list(root, at, in::number);
        if (octaves == null) {
            return null;
        }
        if (root.at(at).size() != Octaves.COUNT) {
            in.fault(at, "toneDb has " + root.at(at).size() + " values, but it needs nine: one an octave from 63 Hz to 16 kHz");
        }
        return octaves.size() == Octaves.COUNT ? OctaveCurve.of(octaves.stream().mapToDouble(Double::doubleValue).toArray()) : null;
    }
}
