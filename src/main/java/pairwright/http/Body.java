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
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import pairwright.catalogue.Shown;

/** Takes in the body of a request: in a form that is read there, of a size, within a time, and in UTF-8. */
final class Body {
    private static final String TOO_SLOW = "The body did not arrive in time. Send it in one go";

    /**
     * What is read at an address.
     *
     * @param media the forms
     * @param largestBytes the size
     * @param instead what to do with more than that
     */
    private record Form(List<String> media, int largestBytes, String instead) {
        static final Form JSON = new Form(List.of("application/json"), 64 * 1024, "Ask one question at a time");
        static final Form SESSION = new Form(List.of("application/json"), 512 * 1024, "Plan one session at a time");
        static final Form PATCH = new Form(List.of("application/json", "application/merge-patch+json"), 64 * 1024, "Alter it in steps");
        static final Form CSV = new Form(List.of("text/csv"), 4 * 1024 * 1024, "Send the table in parts");
        static final Form ANSWERS = new Form(List.of("application/json", "text/csv"), 1024 * 1024, "Send the answers in parts");

        String tooLarge() {
            return "The body is larger than " + largestBytes + " bytes. " + instead;
        }
    }

    private Body() {
    }

    /**
     * The text of a JSON body.
     *
     * @param mostMs how long it may take to arrive
     * @throws BadRequest 400, 408, 413 or 415
     */
    static String json(Context context, int mostMs) {
        return text(context, mostMs, Form.JSON);
    }

    /** The same of a line-up with its gear and a plan, which takes more room. */
    static String session(Context context, int mostMs) {
        return text(context, mostMs, Form.SESSION);
    }

    /** The same of one that says only what differs. */
    static String patch(Context context, int mostMs) {
        return text(context, mostMs, Form.PATCH);
    }

    /** The same of a table. */
    static String csv(Context context, int mostMs) {
        return text(context, mostMs, Form.CSV);
    }

    /** The same of the answers of a class, as JSON or as a table. */
    static String answers(Context context, int mostMs) {
        return text(context, mostMs, Form.ANSWERS);
    }

    /** Whether what was sent is a table. */
    static boolean isCsv(Context context) {
        return Objects.requireNonNullElse(context.header("Content-Type"), "").toLowerCase(Locale.ROOT).strip().startsWith("text/csv");
    }

    /** The same of what a page sends. */
    static String form(Context context, int mostMs, int largestBytes) {
        return text(context, mostMs, new Form(List.of("application/x-www-form-urlencoded"), largestBytes, "Send less at a time"));
    }

    private static String text(Context context, int mostMs, Form form) {
        // the header itself, as the parsed content type fails on a charset nobody knows
        only(form, Objects.requireNonNullElse(context.header("Content-Type"), ""), context.header("Content-Encoding"));
        if (context.req().getContentLengthLong() > form.largestBytes()) {
            throw new BadRequest(Problem.of(413, form.tooLarge()));
        }
        try {
            return StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes(context.bodyInputStream(), mostMs, form))).toString();
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
            throw new BadRequest(Problem.of(400, "The body is " + JsonReader.kind(root) + ", not an object. Send one such as " + example));
        }
        return root;
    }

    private static byte[] bytes(InputStream in, int mostMs, Form form) throws IOException {
        long start = System.nanoTime();
        ByteArrayOutputStream body = new ByteArrayOutputStream();
        byte[] part = new byte[8 * 1024];
        for (int count = in.read(part); count >= 0; count = in.read(part)) {
            body.write(part, 0, count);
            if (body.size() > form.largestBytes()) {
                throw new BadRequest(Problem.of(413, form.tooLarge()));
            }
            if (TimeUnit.NANOSECONDS.toMillis(System.nanoTime() - start) > mostMs) {
                throw new BadRequest(Problem.of(408, TOO_SLOW));
            }
        }
        return body.toByteArray();
    }

    private static void only(Form form, String type, String encoding) {
        String[] parts = type.toLowerCase(Locale.ROOT).split(";");
        String media = parts.length == 0 ? "" : parts[0].strip();
        if (!form.media().contains(media)) {
            throw new BadRequest(Problem.of(415, "Content-Type is " + (media.isEmpty() ? "missing" : "\"" + Shown.of(media) + "\"")
                    + ". Send " + String.join(" or ", form.media())));
        }
        for (int i = 1; i < parts.length; i++) {
            String parameter = parts[i].replace("\"", "").strip();
            if (parameter.startsWith("charset=") && !parameter.equals("charset=utf-8") && !parameter.equals("charset=utf8")) {
                throw new BadRequest(Problem.of(415, "\"" + Shown.of(parameter) + "\" is not read here. Send it in UTF-8"));
            }
        }
        if (encoding != null && !encoding.strip().equalsIgnoreCase("identity")) {
            throw new BadRequest(Problem.of(415, "Content-Encoding \"" + Shown.of(encoding) + "\" is not read here. Send the body as it is"));
        }
    }
}
