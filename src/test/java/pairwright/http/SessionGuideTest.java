package pairwright.http;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import pairwright.advice.AtHand;
import pairwright.locker.StandData;
import pairwright.model.HeardBefore;
import pairwright.session.GearOf;
import pairwright.session.LineUp;
import pairwright.session.LineUpCheck;
import pairwright.session.Purchases;
import pairwright.session.StandKind;

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

    private static void thenSays(String sentence, Object... numbers) throws IOException {
        String said = String.format(Locale.ROOT, sentence, numbers);
        assertTrue(Files.readString(GUIDE).replaceAll("\\s+", " ").contains(said), () -> GUIDE + " does not say: " + said);
    }

    private static String inWords(long number) {
        return List.of("none", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve").get((int) number);
    }

    @Test
    void theNumbersOfTheGuideAreThoseOfTheProgram() throws IOException {
        thenSays("how many different plans, 1 to %d; %d unless said", LineUp.MOST_PLANS, LineUp.USUAL_PLANS);
        thenSays("and `heightM` high (%.1f unless said)", SessionBody.USUAL_GOBO_M);
        thenSays("two seats of one id or closer than %.1f m", LineUpCheck.LEAST_APART_M);
        thenSays("a gobo shorter or lower than %.1f m", LineUpCheck.SHORTEST_GOBO_M);
        thenSays("now, for %s hours, unless said", inWords(AtHand.USUAL_LENGTH.toHours()));
        thenSays("%s at once at most, others wait %s seconds", inWords(SessionPlanRoutes.AT_ONCE), inWords(SessionPlanRoutes.PATIENCE.toSeconds()));
        thenSays("the latest %s that fit the catalogue", inWords(SessionStore.MOST_TOGETHER));
        thenSays("the price class of the type in the catalogue, 1 to %d", Purchases.Wish.DEAREST);
    }

    /** Each measure that the guide names decides: as much makes the kind, a little less does not. */
    @Test
    void standsAreOfTheKindThatTheGuideSays() throws IOException {
        Matcher guide = Pattern.compile("goes no higher than ([\\d.]+) m is short.*? go up to ([\\d.]+) m, with ([\\d.]+) kg or more and a boom of ([\\d.]+) m or more")
                .matcher(Files.readString(GUIDE).replaceAll("\\s+", " "));
        assertTrue(guide.find());
        double shortM = Double.parseDouble(guide.group(1));
        double tallM = Double.parseDouble(guide.group(2));
        double heavyKg = Double.parseDouble(guide.group(3));
        double reachM = Double.parseDouble(guide.group(4));
        assertEquals(StandKind.SHORT, kind(heavyKg, reachM, shortM));
        assertEquals(StandKind.BOOM, kind(heavyKg, reachM, shortM + 0.01));
        assertEquals(StandKind.OVERHEAD, kind(heavyKg, reachM, tallM));
        assertEquals(StandKind.BOOM, kind(heavyKg, reachM, tallM - 0.01));
        assertEquals(StandKind.BOOM, kind(heavyKg - 0.01, reachM, tallM));
        assertEquals(StandKind.BOOM, kind(heavyKg, reachM - 0.01, tallM));
        assertEquals(StandKind.STRAIGHT, kind(heavyKg, null, tallM));
    }

    private static StandKind kind(double massKg, Double reachM, double heightM) {
        return GearOf.kind(new StandData(massKg, reachM, null, null, heightM));
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
