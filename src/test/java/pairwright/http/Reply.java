package pairwright.http;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import java.util.Map;

/**
 * What came back.
 *
 * @param status the HTTP status
 * @param headers by name in small letters
 * @param body as text
 */
record Reply(int status, Map<String, String> headers, String body) {
    String mediaType() {
        return headers.getOrDefault("content-type", "").split(";")[0].strip();
    }

    JsonNode json() {
        try {
            return OpenApi.JSON.readTree(body);
        } catch (JsonProcessingException broken) {
            throw new AssertionError("not JSON: " + body, broken);
        }
    }
}
