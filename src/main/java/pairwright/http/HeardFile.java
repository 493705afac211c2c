package pairwright.http;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.util.List;
import pairwright.model.Fault;
import pairwright.model.HeardBefore;

/** What a recording said of a player, as listening printed it for programs. */
public final class HeardFile {
    private HeardFile() {
    }

    /** A source and what was heard of it; or what is wrong with the text. */
    public record Read(String source, HeardBefore heard, List<String> faults) {
    }

    private static final class Reader extends JsonReader {
    }

    /** Reads what {@code listen --json --source} prints, or only the traits of it. */
    public static Read of(String text, ObjectMapper json) {
        JsonNode root;
        try {
            root = json.readTree(text);
        } catch (IOException unreadable) {
            return new Read(null, null, List.of("it is no JSON. Make it with pairwright listen RECORDING --source SOURCE --json"));
        }
        JsonNode traits = root.path("traits").isObject() ? root.path("traits") : root;
        if (!traits.isObject() || !traits.path("source").isTextual()) {
            return new Read(null, null, List.of("nothing is said in it of a source. Make it with pairwright listen RECORDING --source SOURCE --json; of a recording that should not be used nothing is told"));
        }
        ObjectNode heard = ((ObjectNode) traits).deepCopy();
        heard.remove(List.of("source", "says", "restsOn"));
        Reader in = new Reader();
        HeardBefore read = HeardBody.read(in, json.createObjectNode().set("heard", heard), "/heard");
        return new Read(traits.path("source").textValue(), read, in.faults().stream().map(Fault::says).toList());
    }
}
