package pairwright.locker;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.security.SecureRandom;
import java.util.HexFormat;
import java.util.Locale;
import java.util.Optional;

/**
 * The text of a token: 160 random bits in 32 characters. No two of them look alike, and what is easily mistaken when copied by hand (case, o for
 * 0, i or l for 1, hyphens and spaces between) is read as it was meant.
 */
final class Secret {
    /** Five bits each: digits and letters without i, l, o and u. */
    private static final String ALPHABET = "0123456789abcdefghjkmnpqrstvwxyz";
    private static final int LENGTH = 32;
    /** As long that nobody finds one by trying; it opens nothing by itself. */
    private static final int ID_LENGTH = 16;

    private Secret() {
    }

    /** A new one. */
    static String random(SecureRandom random) {
        return random(random, LENGTH);
    }

    /** An id that tells nothing of what it names, with a letter in front so that it is never taken for the number of a booking. */
    static String id(SecureRandom random) {
        return "x" + random(random, ID_LENGTH);
    }

    private static String random(SecureRandom random, int length) {
        StringBuilder text = new StringBuilder(length);
        for (int i = 0; i < length; i++) {
            text.append(ALPHABET.charAt(random.nextInt(ALPHABET.length())));
        }
        return text.toString();
    }

    /**
     * What is kept of it. A plain hash is enough: with 160 random bits there is nothing to guess, so salt and slowness, which protect what people
     * think up themselves, would protect nothing here. It is looked up by its hash, so no comparison takes a time that tells something of the secret.
     *
     * @param text as it was sent
     * @return hexadecimal SHA-256; empty where the text cannot be a token
     */
    static Optional<String> hash(String text) {
        String plain = plain(text);
        if (plain.length() != LENGTH || plain.chars().anyMatch(c -> ALPHABET.indexOf(c) < 0)) {
            return Optional.empty();
        }
        try {
            return Optional.of(HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(plain.getBytes(StandardCharsets.US_ASCII))));
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("every Java has SHA-256", impossible);
        }
    }

    private static String plain(String text) {
        return text.strip().toLowerCase(Locale.ROOT).replaceAll("[ -]", "").replace('o', '0').replaceAll("[il]", "1");
    }
}
