package pairwright.http;

import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import pairwright.catalogue.Shown;
import pairwright.locker.LockerFault;

/**
 * Which versions of a thing a write may meet, as the header If-Match says (RFC 9110). The tag of a thing is its version in quotes.
 *
 * @param versions that it may have, as tags; null for any
 */
record IfMatch(List<String> versions) {
    private static final Pattern TAGS = Pattern.compile("\\s*(?:W/)?\"[^\"]*\"\\s*(?:,\\s*(?:W/)?\"[^\"]*\"\\s*)*");
    private static final Pattern TAG = Pattern.compile("(?:W/)?\"[^\"]*\"");

    /**
     * What a request says.
     *
     * @throws BadRequest with status 400 where that is no tag
     */
    static IfMatch of(Context context) {
        String said = said(context, "If-Match");
        if (said == null || said.strip().equals("*")) {
            return new IfMatch(null);
        }
        if (!TAGS.matcher(said).matches()) {
            throw new BadRequest(Problem.of(400, "If-Match \"" + Shown.of(said) + "\" is no tag. Send the ETag that came with it, quotes and all, such as \"3\""));
        }
        return new IfMatch(tags(said));
    }

    /** The tag of a version. */
    static String tag(long version) {
        return "\"" + version + "\"";
    }

    /**
     * Ends a write that means another version.
     *
     * @param what is altered, as in "unit ribbon-1"
     * @throws LockerFault.Changed where it has another version
     */
    void check(String what, long version) {
        if (versions != null && !versions.contains(tag(version))) {
            throw changed(what, version);
        }
    }

    static LockerFault.Changed changed(String what, long version) {
        return new LockerFault.Changed("The " + what + " was changed meanwhile: it has version " + version + " now. Read it again, then decide", version);
    }

    /** Whether whoever asks has this very version, as If-None-Match says. */
    static boolean has(Context context, String tag) {
        String said = said(context, "If-None-Match");
        return said != null && (said.strip().equals("*") || tags(said).stream().anyMatch(one -> bare(one).equals(bare(tag))));
    }

    private static String bare(String tag) {
        return tag.startsWith("W/") ? tag.substring(2) : tag;
    }

    private static List<String> tags(String said) {
        List<String> tags = new ArrayList<>();
        for (Matcher tag = TAG.matcher(said); tag.find();) {
            tags.add(tag.group());
        }
        return tags;
    }

    /** A header that may be sent in parts. */
    private static String said(Context context, String header) {
        List<String> parts = Collections.list(context.req().getHeaders(header));
        return parts.isEmpty() ? null : String.join(", ", parts);
    }
}
