package pairwright.http;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.javalin.http.Context;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Objects;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import pairwright.catalogue.Shown;

/** Takes in the body of a request: JSON, of a size, within a time, and in UTF-8. */
final class Body {
    private static final int LARGEST_BYTES = 64 * 1024;
    private static final String TOO_LARGE = "The body is larger than " + LARGEST_BYTES + " bytes. Ask one question at a time";
    private static final String TOO_SLOW = "The body did not arrive in time. Send it in one go";

    private Body() {
    }

    /**
     * The text of a JSON body.
     *
     * @param mostMs how long it may take to arrive
     * @throws BadRequest 400, 408, 413 or 415
     */
    static String json(Context context, int mostMs) {
        // the header itself, as the parsed content type fails on a charset nobody knows
        onlyJson(Objects.requireNonNullElse(context.header("Content-Type"), ""), context.header("Content-Encoding"));
        if (context.req().getContentLengthLong() > LARGEST_BYTES) {
            throw new BadRequest(Problem.of(413, TOO_LARGE));
        }
        try {
            return StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes(context.bodyInputStream(), mostMs))).toString();
        } catch (CharacterCodingException notUtf8) {
            throw new BadRequest(Problem.of(400, "The body is not UTF-8. Send it in that encoding"));
        } catch (IOException broken) {
            throw new BadRequest(broken.getCause() instanceof TimeoutException
                    ? Problem.of(408, TOO_SLOW)
                    : Problem.of(400, "The body broke off. Send it again, and in full"));
        }
    }

    /**
     * The JSON object a body is.
     *
     * @param example one that would do
     * @throws BadRequest 400
     */
    static JsonNode object(String body, ObjectMapper json, String example) {
        if (body.isBlank()) {
            throw new BadRequest(Problem.of(400, "The body is empty. Send a JSON object such as " + example));
        }
        JsonNode root;
        try {
            root = json.readTree(body);
        } catch (JsonProcessingException broken) {
            var place = broken.getLocation();
            throw new BadRequest(Problem.of(400, "The body is not JSON: it breaks at line " + (place == null ? 1 : place.getLineNr())
                    + ", column " + (place == null ? 1 : place.getColumnNr()) + ". Check quotes, commas, brackets and repeated names there"));
        }
        if (!root.isObject()) {
            throw new BadRequest(Problem.of(400, "The body is " + RequestBody.kind(root) + ", not an object. Send one such as " + example));
        }
        return root;
    }

    private static byte[] bytes(InputStream in, int mostMs) throws IOException {
        long start = System.nanoTime();
        ByteArrayOutputStream body = new ByteArrayOutputStream();
        byte[] part = new byte[8 * 1024];
        for (int count = in.read(part); count >= 0; count = in.read(part)) {
            body.write(part, 0, count);
            if (body.size() > LARGEST_BYTES) {
                throw new BadRequest(Problem.of(413, TOO_LARGE));
            }
            if (TimeUnit.NANOSECONDS.toMillis(System.nanoTime() - start) > mostMs) {
                throw new BadRequest(Problem.of(408, TOO_SLOW));
            }
        }
        return body.toByteArray();
    }

    private static void onlyJson(String type, String encoding) {
        String[] parts = type.toLowerCase(Locale.ROOT).split(";");
        String media = parts.length == 0 ? "" : parts[0].strip();
        if (!media.equals("application/json")) {
            throw new BadRequest(Problem.of(415, "Content-Type is " + (media.isEmpty() ? "missing" : "\"" + Shown.of(media) + "\"")
                    + ". Send application/json"));
        }
        for (int i = 1; i < parts.length; i++) {
            String parameter = parts[i].replace("\"", "").strip();
            if (parameter.startsWith("charset=") && !parameter.equals("charset=utf-8") && !parameter.equals("charset=utf8")) {
                throw new BadRequest(Problem.of(415, "\"" + Shown.of(parameter) + "\" is not read here. Send JSON in UTF-8"));
            }
        }
        if (encoding != null && !encoding.strip().equalsIgnoreCase("identity")) {
            throw new BadRequest(Problem.of(415, "Content-Encoding \"" + Shown.of(encoding) + "\" is not read here. Send the body as it is"));
        }
    }
}
