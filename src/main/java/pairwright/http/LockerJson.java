package pairwright.http;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializerProvider;
import com.fasterxml.jackson.databind.module.SimpleModule;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.ser.std.StdScalarSerializer;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;

/** JSON of the locker: figures as they were given and not rounded, since what is read here is written back. */
final class LockerJson {
    private final ObjectMapper json;

    LockerJson(ObjectMapper usual) {
        SimpleModule exact = new SimpleModule("exact");
        exact.addSerializer(Double.class, new Exact());
        exact.addSerializer(Double.TYPE, new Exact());
        json = usual.copy().registerModule(exact);
    }

    ObjectMapper mapper() {
        return json;
    }

    String write(Object value) {
        return Routes.write(json, value);
    }

    ObjectNode tree(Object value) {
        return json.valueToTree(value);
    }

    <T> T read(String text, Class<T> type) {
        try {
            return json.readValue(text, type);
        } catch (JsonProcessingException notOurs) {
            throw new UncheckedIOException(notOurs);
        }
    }

    /** What a value becomes by a merge patch (RFC 7396): objects are gone through field by field, null removes, anything else replaces. */
    static JsonNode merged(JsonNode value, JsonNode patch) {
        if (!patch.isObject()) {
            return patch;
        }
        ObjectNode merged = value.isObject() ? value.deepCopy() : ((ObjectNode) patch).objectNode();
        patch.properties().forEach(field -> {
            if (field.getValue().isNull()) {
                merged.remove(field.getKey());
            } else {
                merged.set(field.getKey(), merged(merged.path(field.getKey()), field.getValue()));
            }
        });
        return merged;
    }

    private static final class Exact extends StdScalarSerializer<Double> {
        private static final long serialVersionUID = 1;

        Exact() {
            super(Double.class);
        }

        @Override
        public void serialize(Double value, JsonGenerator out, SerializerProvider provider) throws IOException {
            BigDecimal plain = BigDecimal.valueOf(value).stripTrailingZeros();
            out.writeNumber(plain.scale() < 0 ? plain.setScale(0) : plain);
        }
    }
}
