package pairwright.http;

import io.javalin.http.Context;
import java.net.URLDecoder;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import pairwright.locker.Act;
import pairwright.sheet.Assets;
import pairwright.sheet.SendForm;
import pairwright.sheet.Sent;

/** Takes in what a form of a page sent: of a size, within a time, and in UTF-8. */
final class FormBody {
    /** Enough for any form but one that holds a whole table. */
    static final int LARGEST_BYTES = 64 * 1024;
    private static final int MOST_FIELDS = 6000;
    // a page can show no other, and no field has a use for them
    private static final Pattern CONTROL = Pattern.compile("[\\p{Cc}&&[^\n\t]]");

    private FormBody() {
    }

    /**
     * The fields of a form.
     *
     * @param mostMs how long it may take to arrive
     * @throws BadRequest 400, 408, 413 or 415
     */
    static Sent read(Context context, int mostMs) {
        return read(context, mostMs, LARGEST_BYTES);
    }

    /** The same for a form of another size. */
    static Sent read(Context context, int mostMs, int largestBytes) {
        Map<String, List<String>> values = new LinkedHashMap<>();
        int fields = 0;
        for (String pair : Body.form(context, mostMs, largestBytes).split("&")) {
            if (pair.isEmpty()) {
                continue;
            }
            if (++fields > MOST_FIELDS) {
                throw new BadRequest(Problem.of(400, "The form has more than " + MOST_FIELDS + " fields. Send less at a time"));
            }
            int equals = pair.indexOf('=');
            values.computeIfAbsent(decoded(equals < 0 ? pair : pair.substring(0, equals)), any -> new ArrayList<>())
                    .add(equals < 0 ? "" : decoded(pair.substring(equals + 1)));
        }
        return new Sent(values);
    }

    /** Who does what a form asks for, and by what it is known again when it is sent twice. */
    static Act act(Context context, Sent sent) {
        String key = sent.first(SendForm.KEY);
        if (key == null) {
            return Act.by(Access.who(context));
        }
        StringBuilder asked = new StringBuilder(context.path());
        sent.values().forEach((name, values) -> asked.append(name.equals(SendForm.KEY) ? "" : "\n" + name + "=" + String.join("\n", values)));
        return new Act(Access.who(context), key, Assets.mark(asked.toString().getBytes(StandardCharsets.UTF_8)));
    }

    private static String decoded(String text) {
        try {
            // as single bytes first, so that what is no UTF-8 is refused and not replaced
            byte[] bytes = URLDecoder.decode(text, StandardCharsets.ISO_8859_1).getBytes(StandardCharsets.ISO_8859_1);
            String whole = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
            return CONTROL.matcher(whole.replace("\r\n", "\n").replace('\r', '\n')).replaceAll(" ");
        } catch (IllegalArgumentException notEscaped) {
            throw new BadRequest(Problem.of(400, "The form is not well-formed: a % must be followed by two digits of base 16"));
        } catch (CharacterCodingException notUtf8) {
            throw new BadRequest(Problem.of(400, "The form is not UTF-8. Send it in that encoding"));
        }
    }
}
