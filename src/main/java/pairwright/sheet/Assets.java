package pairwright.sheet;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The style sheet and the scripts of the pages. Each is joined from a few files and has the mark of its content in its address, so that a
 * browser may keep it for good.
 */
public final class Assets {
    private static final List<String> STYLES = List.of("base.css", "ask.css", "read.css", "numbers.css", "locker.css", "locker-time.css", "locker-desk.css", "session.css", "plan.css", "lab.css", "suggest.css", "print.css");
    private static final List<String> FIRST = List.of("first.js");
    private static final List<String> SCRIPTS = List.of("base.js", "ask.js", "suggest.js", "numbers.js", "locker.js", "session.js", "plan.js", "lab.js", "listen.js");

    private final Map<String, Asset> byPath = new LinkedHashMap<>();
    private final String style;
    private final String first;
    private final String script;
    private final String mark;

    /** What is sent. */
    public record Asset(String type, byte[] content) {
    }

    /** Reads the files. */
    public Assets() {
        style = add("page", "css", "text/css; charset=utf-8", joined(STYLES));
        first = add("first", "js", "text/javascript; charset=utf-8", joined(FIRST));
        script = add("page", "js", "text/javascript; charset=utf-8", joined(SCRIPTS));
        mark = add("mark", "svg", "image/svg+xml", joined(List.of("mark.svg")));
    }

    /** The address of the style sheet. */
    public String style() {
        return style;
    }

    /** The address of the script that runs before anything is shown: it holds only what would be seen to jump otherwise. */
    public String first() {
        return first;
    }

    /** The address of the script. */
    public String script() {
        return script;
    }

    /** The address of the mark. */
    public String mark() {
        return mark;
    }

    /** What there is at an address; null for nothing. */
    public Asset at(String path) {
        return byPath.get(path);
    }

    private String add(String name, String ending, String type, byte[] content) {
        String path = "/assets/" + name + "." + mark(content) + "." + ending;
        byPath.put(path, new Asset(type, content));
        return path;
    }

    /** A short mark by which a content is told from any other. */
    public static String mark(byte[] content) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(content), 0, 8);
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    private static byte[] joined(List<String> names) {
        StringBuilder all = new StringBuilder();
        for (String name : names) {
            try (InputStream in = Assets.class.getResourceAsStream("/pairwright/assets/" + name)) {
                all.append(new String(in.readAllBytes(), StandardCharsets.UTF_8)).append('\n');
            } catch (IOException broken) {
                throw new UncheckedIOException(broken);
            }
        }
        return all.toString().getBytes(StandardCharsets.UTF_8);
    }
}
