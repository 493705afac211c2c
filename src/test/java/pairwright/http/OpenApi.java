package pairwright.http;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import com.networknt.schema.Error;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SchemaRegistryConfig;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** The description of the interface, ready to check real messages against. */
final class OpenApi {
    static final ObjectMapper JSON = new ObjectMapper();
    private static final String IRI = "https://pairwright.invalid/openapi.json";

    private final JsonNode tree;
    private final SchemaRegistry registry;
    private final Map<String, Schema> schemas = new ConcurrentHashMap<>();

    OpenApi() {
        try (InputStream in = Routes.class.getResourceAsStream("/pairwright/openapi.yaml")) {
            tree = new YAMLMapper().readTree(in);
            // under a keyword whose value is no schema, so that only the parts asked for are taken for one
            String text = "{\"default\": " + JSON.writeValueAsString(tree).replace("\"#/", "\"#/default/") + "}";
            registry = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12, builder -> builder
                    .schemaRegistryConfig(SchemaRegistryConfig.builder().formatAssertionsEnabled(true).build())
                    .schemas(Map.of(IRI, text)));
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    /** The whole description. */
    JsonNode tree() {
        return tree;
    }

    /** What a node is once its reference is followed. */
    JsonNode followed(JsonNode node) {
        JsonNode reference = node.path("$ref");
        return reference.isTextual() ? followed(tree.at(reference.asText().substring(1))) : node;
    }

    /** What a value breaks of a schema that stands at a pointer into the description. */
    List<String> faults(String pointer, JsonNode value) {
        return schemas.computeIfAbsent(pointer, at -> registry.getSchema(SchemaLocation.of(IRI + "#/default" + at)))
                .validate(value).stream().map(Error::toString).toList();
    }

    /** What a value breaks of a named schema. */
    List<String> faultsAs(String schema, JsonNode value) {
        return faults("/components/schemas/" + schema, value);
    }

    /** What a real response breaks of what the description promises for that route and status. */
    List<String> faults(String method, String route, Reply reply) {
        String at = "/paths/" + route.replace("~", "~0").replace("/", "~1") + "/" + method.toLowerCase(Locale.ROOT) + "/responses";
        JsonNode responses = tree.at(at);
        if (responses.isMissingNode()) {
            return List.of(method + " " + route + " is not described");
        }
        String status = responses.has(Integer.toString(reply.status())) ? Integer.toString(reply.status()) : "default";
        at = at + "/" + status;
        if (tree.at(at).has("$ref")) {
            at = tree.at(at).path("$ref").asText().substring(1);
        }
        if (reply.body().isEmpty() && !tree.at(at).isMissingNode() && !tree.at(at).has("content")) {
            return List.of();
        }
        JsonNode content = tree.at(at).path("content").path(reply.mediaType());
        if (content.isMissingNode()) {
            return List.of(method + " " + route + " answered " + reply.status() + " as " + reply.mediaType() + ", which is not described");
        }
        return reply.mediaType().endsWith("json")
                ? faults(at + "/content/" + reply.mediaType().replace("/", "~1") + "/schema", reply.json())
                : List.of();
    }
}
