package pairwright.http;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Where the guide sends its readers. */
class GuideLinksTest {
    private static final Pattern LINK = Pattern.compile("href=\"(/[^\"]*)\"");

    @Test
    void everyLinkOfTheGuideLeadsToAPageAndEveryExampleToAnAnswer() {
        String guide = Serving.get("/guide").body();
        List<String> links = LINK.matcher(guide.substring(guide.indexOf("<main"), guide.indexOf("</main>"))).results().map(link -> link.group(1).replace("&amp;", "&")).toList();
        List<String> wrong = new ArrayList<>();
        for (String link : links) {
            Reply page = Serving.get(link);
            boolean isAsked = link.startsWith("/?words=");
            if (page.status() != 200 || isAsked && (page.body().contains("Not understood") || !page.body().contains("<article class=\"card option"))) {
                wrong.add(page.status() + " " + link);
            }
        }
        assertEquals(List.of(), wrong);
        assertTrue(links.stream().filter(link -> link.startsWith("/?words=")).count() >= 10, links::toString);
    }
}
