package pairwright.http;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import pairwright.session.LineUp;

/** The guide to sessions shows the line-up of the demo and every field there is. */
class SessionGuideTest {
    private static final Path GUIDE = Path.of("docs/session.md");

    @Test
    void theLineUpOfTheGuideIsTheOneOfTheDemo() throws IOException {
        Matcher region = Pattern.compile("<!-- region: example .*?-->\n```yaml\n(.*?)```\n", Pattern.DOTALL).matcher(Files.readString(GUIDE));
        assertTrue(region.find());
        assertEquals(SessionExample.yaml(), region.group(1));
    }

    @Test
    void theLineUpOfTheDemoCanBePlannedAsItIs() {
        SessionBody.Read read = SessionBody.plan(SessionExample.tree(), Serving.KNOWLEDGE.current());
        assertEquals(List.of(), read.faults());
        LineUp lineUp = read.request().lineUp();
        assertEquals(6, lineUp.seats().size());
        assertEquals(List.of(), read.request().assumed(), "an example leaves nothing open");
        assertEquals(List.of(), Serving.OPEN_API.faultsAs("SessionRequest", SessionExample.tree()));
    }

    @Test
    void everyFieldIsInTheGuide() throws IOException {
        String guide = Files.readString(GUIDE);
        Set<String> missing = new TreeSet<>();
        for (String schema : List.of("SessionRequest", "SessionAgain", "SessionFloor", "Seat", "HeardBefore", "GoboGiven", "AskLimits", "SessionGear", "GearUnit", "GearChannel", "GearStand", "GearBooster",
                "GearPad")) {
            Serving.OPEN_API.tree().at("/components/schemas/" + schema + "/properties").fieldNames().forEachRemaining(field -> {
                if (!guide.contains("`" + field + "`") && !(schema.equals("AskLimits") && field.equals("mics"))) {
                    missing.add(schema + "." + field);
                }
            });
        }
        assertEquals(Set.of(), missing);
    }
}
