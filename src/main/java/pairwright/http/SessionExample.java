package pairwright.http;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import pairwright.catalogue.FileFault;
import pairwright.catalogue.YamlFile;

/** The line-up of an invented folk-jazz sextet in the barn of the demo: to look at, to plan, and to write one's own after. */
public final class SessionExample {
    /** What the file is called where it is written. */
    public static final String NAME = "barn-sextet.yaml";

    private SessionExample() {
    }

    /** The file as it is. */
    public static String yaml() {
        try (InputStream in = SessionExample.class.getResourceAsStream("/pairwright/session/demo/" + NAME)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    /** What it says. */
    public static JsonNode tree() {
        List<FileFault> faults = new ArrayList<>();
        return YamlFile.of(Path.of(NAME), yaml(), faults).orElseThrow(() -> new IllegalStateException(faults.toString())).root();
    }
}
