package pairwright.http;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.jsoup.nodes.Element;
import org.jsoup.parser.ParseError;
import org.jsoup.parser.Parser;

/** A page as a browser reads it, and what is wrong with how it is written. */
final class Document {
    private static final int MOST_ERRORS = 20;

    private final org.jsoup.nodes.Document page;
    private final List<ParseError> errors;

    Document(String html) {
        Parser parser = Parser.htmlParser().setTrackErrors(MOST_ERRORS);
        page = parser.parseInput(html, "");
        errors = parser.getErrors();
    }

    org.jsoup.nodes.Document page() {
        return page;
    }

    String heading() {
        return page.select("h1").text();
    }

    /** Addresses in the program the page links to, with what follows a hash. */
    List<String> links() {
        return page.select("a[href]").eachAttr("href").stream().distinct().toList();
    }

    Set<String> ids() {
        return new HashSet<>(page.select("[id]").eachAttr("id"));
    }

    List<String> faults() {
        List<String> faults = new ArrayList<>();
        errors.forEach(error -> faults.add("not well-formed: " + error));
        Set<String> seen = new HashSet<>();
        page.select("[id]").eachAttr("id").stream().filter(id -> !seen.add(id)).forEach(id -> faults.add("two elements have the id " + id));
        if (page.select("h1").size() != 1) {
            faults.add(page.select("h1").size() + " first headings");
        }
        int before = 0;
        for (Element heading : page.select("h1, h2, h3, h4, h5, h6")) {
            int level = heading.tagName().charAt(1) - '0';
            if (level > before + 1) {
                faults.add("after a heading of level " + before + " comes " + heading);
            }
            before = level;
        }
        named("aria-labelledby", seen, faults);
        named("aria-describedby", seen, faults);
        page.select("label[for]").stream().filter(label -> !seen.contains(label.attr("for"))).forEach(label -> faults.add("a label of nothing: " + label));
        page.select("input:not([type=hidden]), select, textarea").stream()
                .filter(control -> page.select("label[for=" + control.id() + "]").isEmpty()).forEach(control -> faults.add("without a label: " + control));
        page.select("[style], script:not([src]), style, [onclick]").forEach(inline -> faults.add("inline: " + inline));
        page.select("table").stream().filter(table -> table.select("th:not([scope])").size() > 0).forEach(table -> faults.add("a heading without its scope"));
        return faults;
    }

    private void named(String attribute, Set<String> ids, List<String> faults) {
        for (Element element : page.select("[" + attribute + "]")) {
            Stream.of(element.attr(attribute).split(" ")).filter(id -> !ids.contains(id)).forEach(id -> faults.add(attribute + " names nothing: " + id));
        }
    }
}
