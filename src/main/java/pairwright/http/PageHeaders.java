package pairwright.http;

import io.javalin.http.Context;
import java.nio.charset.StandardCharsets;
import pairwright.sheet.Assets;

/** What a browser is told about a page beside the page itself: what it may load, and whether it still has it. */
final class PageHeaders {
    /** What a page may load. */
    static final String ONLY_OURS = "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self'; connect-src 'self'; "
            + "form-action 'self'; base-uri 'none'; frame-ancestors 'none'";

    private PageHeaders() {
    }

    /** Sends a page, or only that nothing changed, to a browser that has this very page from the last time. */
    static void send(Context context, String page) {
        context.header("Content-Security-Policy", ONLY_OURS);
        context.header("Referrer-Policy", "same-origin"); // with less, a browser would not say that a form comes from here
        context.header("Cross-Origin-Opener-Policy", "same-origin");
        context.res().addHeader("Vary", "Accept-Language"); // a number is written with the sign of the reader's language
        byte[] content = page.getBytes(StandardCharsets.UTF_8);
        if (context.statusCode() == 200) {
            // weak, since the bytes on the line differ with the compression
            String tag = "W/\"" + Assets.mark(content) + "\"";
            context.header("ETag", tag);
            if (hasIt(context.header("If-None-Match"), tag)) {
                context.status(304);
                return;
            }
        }
        context.contentType("text/html; charset=utf-8").result(content);
    }

    private static boolean hasIt(String ifNoneMatch, String tag) {
        return ifNoneMatch != null && (ifNoneMatch.contains(tag) || ifNoneMatch.contains(tag.substring(2)) || ifNoneMatch.strip().equals("*"));
    }
}
