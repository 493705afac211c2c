package pairwright.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import pairwright.advice.Advisor;
import pairwright.advice.KnowledgeStore;
import pairwright.drawing.Reader;
import pairwright.model.Meaning;
import pairwright.model.Request;
import pairwright.numbers.Numbers;

class GuidePageTest {
    private static final KnowledgeStore KNOWLEDGE = KnowledgeStore.builtIn();
    private static final Pattern LINK = Pattern.compile("href=\"(/[^\"]*)\"");
    private static final String PAGE = new GuidePage(new Html(new Assets())).page(new Visit("/guide", Map.of(), Reader.METRIC));

    @Test
    void everyExampleIsUnderstoodToItsLastWordAndAnswered() {
        List<String> wrong = new ArrayList<>();
        for (GuidePage.Example example : GuidePage.EXAMPLES) {
            Meaning meaning = KNOWLEDGE.current().reader().read(example.words());
            if (!meaning.notUnderstood().isEmpty() || meaning.question().source() == null
                    || new Advisor(KNOWLEDGE::current).ask(Request.of(example.words())).options().isEmpty()) {
                wrong.add(example.words() + ": " + meaning);
            }
            assertTrue(PAGE.contains("href=\"" + example.address().replace("&", "&amp;") + "\""), example.address());
        }
        assertEquals(List.of(), wrong);
    }

    @Test
    void theExamplesSayTogetherWhatASentenceMaySay() {
        assertEquals(List.of("character", "circumstance", "dynamic", "limit", "neighbour", "room", "source", "way"), GuidePage.EXAMPLES.stream()
                .flatMap(example -> KNOWLEDGE.current().reader().read(example.words()).understood().stream()).map(reading -> reading.as()).distinct().sorted().toList());
    }

    @Test
    void everyCalculationItNamesIsThere() {
        Matcher links = LINK.matcher(PAGE);
        int found = 0;
        while (links.find()) {
            if (links.group(1).startsWith("/numbers/")) {
                String id = links.group(1).substring("/numbers/".length());
                assertTrue(new Numbers().info(id).isPresent(), id);
                found++;
            }
        }
        assertEquals(9, found);
    }

    @Test
    void everyGradeOfCautionAndEveryFigureIsExplained() {
        for (String word : List.of("Danger", "Care", "note", "Headroom", "Noise", "Proximity", "Direct over room", "First null", "Keep clear", "Scale bar", "Polar plot", "Octave plot", "Basis")) {
            assertTrue(PAGE.contains(word), word);
        }
    }

    @Test
    void safetyComesFirstAndDefersToLocalCodesAndCompetentPeople() {
        assertTrue(PAGE.indexOf("id=\"safety\"") < PAGE.indexOf("id=\"ask\""));
        String safety = PAGE.substring(PAGE.indexOf("id=\"safety\""), PAGE.indexOf("id=\"ask\""));
        for (String word : List.of("Local codes", "competent", "qualified technician", "licensed electrician", "earth", "Ears", "ribbon")) {
            assertTrue(safety.contains(word), word);
        }
    }

    @Test
    void everyLinkKeepsTheMeasures() {
        String imperial = new GuidePage(new Html(new Assets())).page(new Visit("/guide", Map.of("units", List.of("imperial")), new Reader(true, Reader.METRIC.locale())));
        String content = imperial.substring(imperial.indexOf("<main"), imperial.indexOf("</main>"));
        List<String> without = LINK.matcher(content).results().map(link -> link.group(1)).filter(link -> !link.contains("units=imperial")).toList();
        assertEquals(List.of(), without);
    }
}
