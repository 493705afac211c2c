package pairwright.http;

import java.nio.charset.StandardCharsets;
import java.util.Base64;

/** The token in an Authorization header. */
final class Credentials {
    private Credentials() {
    }

    /**
     * The token as it was sent: behind {@code Bearer}, or as the password behind {@code Basic}, where a browser or a calendar program asks for a name and
     * a password.
     *
     * @return empty where there is none in it
     */
    static String token(String authorization) {
        String[] parts = authorization.strip().split(" +", 2);
        if (parts.length < 2) {
            return "";
        }
        if (parts[0].equalsIgnoreCase("Bearer")) {
            return parts[1].strip();
        }
        return parts[0].equalsIgnoreCase("Basic") ? password(parts[1].strip()) : "";
    }

    private static String password(String encoded) {
        try {
            String pair = new String(Base64.getDecoder().decode(encoded), StandardCharsets.UTF_8);
            return pair.substring(pair.indexOf(':') + 1).strip();
        } catch (IllegalArgumentException notBase64) {
            return "";
        }
    }
}
