package pairwright.catalogue;

import com.fasterxml.jackson.core.JsonProcessingException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import pairwright.model.Catalogue;

/** Tells one state of the catalogue from another. */
final class CatalogueVersion {
    private static final int LENGTH = 12;

    private CatalogueVersion() {
    }

    /** The same catalogue with the first 12 hexadecimal digits of the SHA-256 of its JSON as its version. */
    static Catalogue stamped(Catalogue catalogue) {
        return with(catalogue, digest(canonical(with(catalogue, ""))));
    }

    /** The catalogue as JSON: entries by id, fields in the order of the records. */
    static String canonical(Catalogue catalogue) {
        try {
            return Json.mapper().writeValueAsString(catalogue);
        } catch (JsonProcessingException impossible) {
            throw new IllegalStateException("the catalogue cannot be written as JSON: " + impossible.getOriginalMessage(),
                    impossible);
        }
    }

    private static Catalogue with(Catalogue of, String version) {
        return new Catalogue(of.mics(), of.sources(), of.rooms(), of.characters(), of.techniques(), of.complaints(), of.grades(), of.tasks(), of.customs(), of.leads(), of.lessons(), of.words(), version);
    }

    private static String digest(String text) {
        try {
            byte[] hash = MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(hash).substring(0, LENGTH);
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException(impossible);
        }
    }
}
