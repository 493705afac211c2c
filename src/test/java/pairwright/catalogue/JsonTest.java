package pairwright.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.time.OffsetDateTime;
import java.util.List;
import org.junit.jupiter.api.Test;
import pairwright.acoustics.OctaveCurve;
import pairwright.model.Danger;
import pairwright.model.DangerKind;
import pairwright.model.Habit;
import pairwright.model.HabitRank;
import pairwright.model.Neighbour;
import pairwright.model.Pattern;
import pairwright.model.PatternData;
import pairwright.model.Range;
import pairwright.model.Request;
import pairwright.model.Value;

class JsonTest {
    private final JsonMapper json = Json.mapper();

    private String refused(String text, Class<?> type) {
        return assertThrows(JsonProcessingException.class, () -> json.readValue(text, type)).getOriginalMessage();
    }

    @Test
    void constantsGoByTheirWordsBothWays() throws IOException {
        Danger danger = new Danger(DangerKind.AIR_BLAST, 0.3, "A jet.");
        assertEquals("{\"kind\":\"air-blast\",\"withinM\":0.3,\"says\":\"A jet.\"}", json.writeValueAsString(danger));
        assertEquals(danger, json.readValue(json.writeValueAsString(danger), Danger.class));
        assertTrue(refused("{\"kind\":\"AIR_BLAST\"}", Danger.class).contains("not one of air-blast, sticks"));
        assertTrue(refused("{\"kind\":0}", Danger.class).startsWith("Cannot deserialize"));
    }

    @Test
    void numbersAreWrittenShortAndPlain() throws IOException {
        assertEquals("{\"low\":0,\"typical\":0.3333,\"high\":12000000}", json.writeValueAsString(new Range(-0.0, 1 / 3.0,
                1.2e7)));
        assertEquals("{\"low\":0,\"typical\":-2.5,\"high\":35}", json.writeValueAsString(new Range(-0.00001, -2.5, 35.00001)));
        assertEquals("{\"name\":\"n\",\"value\":0.0001,\"unit\":\"m\"}", json.writeValueAsString(new Value("n", 1e-4, "m")));
    }

    @Test
    void aNumberThatIsNoneIsNeitherWrittenNorRead() {
        assertThrows(IOException.class, () -> json.writeValueAsString(new Range(0, Double.NaN, 1)));
        assertTrue(refused("{\"low\":1e999,\"typical\":1,\"high\":1}", Range.class).contains("too large for a number"));
        refused("{\"low\":\"1\",\"typical\":1,\"high\":1}", Range.class);
        refused("{\"low\":NaN,\"typical\":1,\"high\":1}", Range.class);
    }

    @Test
    void anOctaveCurveIsNineNumbers() throws IOException {
        PatternData data = new PatternData(Pattern.FIGURE_8, OctaveCurve.of(0.05, 0, 0, 0, 0, 0, 0, 0.03, 0.1), null);
        String written = "{\"pattern\":\"figure-8\",\"coefficient\":[0.05,0,0,0,0,0,0,0.03,0.1]}";
        assertEquals(written, json.writeValueAsString(data));
        assertEquals(data, json.readValue(written, PatternData.class));
        assertEquals("8 values, but it needs nine: one an octave from 63 Hz to 16 kHz", refused("[1,2,3,4,5,6,7,8]",
                OctaveCurve.class));
        refused("[1,2,3,4,5,6,7,8,\"9\"]", OctaveCurve.class);
        refused("[1,2,3,4,5,6,7,8,1e999]", OctaveCurve.class);
        refused("[1,2,3,4,5,6,7,8,null]", OctaveCurve.class);
        refused("9", OctaveCurve.class);
    }

    @Test
    void timesAreTextWithAnOffset() throws IOException {
        Request request = new Request("kick", null, null, null, null, null, null, null, null, null, null,
                OffsetDateTime.parse("2027-03-01T10:00:00+01:00"), null, null);
        assertEquals("{\"words\":\"kick\",\"from\":\"2027-03-01T10:00:00+01:00\",\"lifted\":[]}", json.writeValueAsString(request));
        assertEquals(request, json.readValue(json.writeValueAsString(request), Request.class));
        assertTrue(refused("{\"from\":\"tomorrow\"}", Request.class).contains("not a time with an offset"));
        refused("{\"from\":5}", Request.class);
    }

    @Test
    void missingListsAreEmptyInEntriesButSayNothingInARequest() throws IOException {
        Habit habit = json.readValue("{\"rank\":\"first\",\"micType\":\"lo-fi\",\"why\":\"Grit.\"}", Habit.class);
        assertEquals(new Habit(HabitRank.FIRST, "lo-fi", List.of(), List.of(), List.of(), null, null, false, "Grit."), habit);
        Request request = json.readValue("{\"words\":\"kick\",\"character\":[\"dark\"]}", Request.class);
        assertNull(request.ways());
        assertEquals(List.of("dark"), request.character());
    }

    @Test
    void unknownAndRepeatedFieldsAndTrailingTextAreRefused() {
        refused("{\"source\":\"drum-kit\",\"distance\":3}", Neighbour.class);
        assertTrue(refused("{\"source\":\"drum-kit\",\"source\":\"viola\"}", Neighbour.class).startsWith("Duplicate field"));
        refused("{\"source\":\"drum-kit\"} {}", Neighbour.class);
    }
}
