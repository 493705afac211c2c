package pairwright.http;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;

/** Asks a server, holds what comes against the description, and remembers which of it was seen. */
final class HeldToDescription {
    /** Answers, as method, path and status; and fields of their schemas. */
    final Set<String> seen = new TreeSet<>();
    final Set<String> fields = new TreeSet<>();
    final List<String> wrong = new ArrayList<>();

    /** Something that can be asked, with what it answers by status. */
    interface Operation<T> {
        T of(String method, String path, JsonNode responses);
    }

    Reply ask(LockerServing serving, String method, String path, String target, String body, String... headers) {
        return see(method, path, serving.send(method, target, body, headers));
    }

    /** The same with an answer that is already there. */
    Reply see(String method, String path, Reply reply) {
        String what = method + " " + path + " " + reply.status();
        seen.add(what);
        Serving.OPEN_API.faults(method, path, reply).forEach(fault -> wrong.add(what + ": " + fault));
        if (reply.mediaType().endsWith("json")) {
            JsonNode responses = Serving.OPEN_API.tree().path("paths").path(path).path(method.toLowerCase(Locale.ROOT)).path("responses");
            String status = Integer.toString(reply.status());
            DescribedFields.see(schema(responses.path(responses.has(status) ? status : "default")), reply.json(), fields);
        }
        return reply;
    }

    /** All that is described of addresses that begin so. */
    static <T> List<T> operations(String begins, Operation<T> operation) {
        List<T> all = new ArrayList<>();
        Serving.OPEN_API.tree().path("paths").properties().stream().filter(path -> path.getKey().startsWith(begins)).forEach(path -> path.getValue().properties()
                .forEach(one -> all.add(operation.of(one.getKey().toUpperCase(Locale.ROOT), path.getKey(), one.getValue().path("responses")))));
        return all;
    }

    /** The name of the schema of a response; empty where it is not JSON. */
    static String schema(JsonNode response) {
        for (JsonNode media : Serving.OPEN_API.followed(response).path("content")) {
            String reference = media.at("/schema/$ref").asText();
            return reference.substring(reference.lastIndexOf('/') + 1);
        }
        return "";
    }
}
