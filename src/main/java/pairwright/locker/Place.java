package pairwright.locker;

import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Where a locker is kept.
 *
 * @param file of an embedded database; null for a server
 * @param address of a server, {@code jdbc:postgresql://host/name?user=...&password=...}; null for a file. It may hold a secret and is never shown
 */
public record Place(Path file, String address) {
    /** The name of the file within a data folder. */
    public static final String FILE = "locker.db";
    private static final Pattern SECRET = Pattern.compile("(?i)[?&](?:ssl)?password=([^&]+)");

    /** The locker of a data folder. */
    public static Place in(Path data) {
        return new Place(data.resolve(FILE), null);
    }

    /** A locker that several programs share. */
    public static Place at(String address) {
        return new Place(null, address);
    }

    /** A text that others wrote, such as a driver of what it could not read, without the address and what is secret in it. */
    String hidden(String text) {
        if (address == null) {
            return text;
        }
        String hidden = text.replace(address, toString());
        Matcher secrets = SECRET.matcher(address);
        while (secrets.find()) {
            hidden = hidden.replace(secrets.group(1), "...").replace(URLDecoder.decode(secrets.group(1).replaceAll("%(?![0-9A-Fa-f]{2})", "%25"), StandardCharsets.UTF_8), "...");
        }
        return hidden;
    }

    /** Where it is, without any secret. */
    @Override
    public String toString() {
        return file != null ? file.toString() : "PostgreSQL at " + address.replaceFirst("^jdbc:postgresql://", "").replaceFirst("(?s)\\?.*", "").replaceFirst("(?s)^.*@", "");
    }
}
