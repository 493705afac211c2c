package pairwright.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Looks at a page for what keeps people out, with axe-core. */
final class Axe {
    private static final String SCRIPT = script();
    private static final String RUN = """
            const done = arguments[arguments.length - 1];
            axe.run(document, {resultTypes: ['violations']}).then(found => done({
              passes: found.passes.length,
              violations: found.violations.map(one => one.id + ' (' + one.impact + '): ' + one.help + one.nodes.map(node =>
                '\\n    ' + node.target.join(' ') + '\\n      ' + node.html.slice(0, 160) + '\\n      ' + node.failureSummary.replace(/\\n/g, ' ').slice(0, 300)).join(''))
            }), broken => done({passes: 0, violations: ['axe did not run: ' + broken]}));
            """;

    private Axe() {
    }

    /** Fails with each violation and the places it is at. */
    static void assertNoViolations(Browser browser) {
        assertEquals("", violations(browser).stream().collect(Collectors.joining("\n")), "at " + browser.driver().getCurrentUrl());
    }

    static List<String> violations(Browser browser) {
        browser.driver().executeScript(SCRIPT);
        Map<?, ?> found = (Map<?, ?>) browser.driver().executeAsyncScript(RUN);
        List<String> violations = ((List<?>) found.get("violations")).stream().map(String::valueOf).toList();
        assertTrue(!violations.isEmpty() || ((Number) found.get("passes")).intValue() > 10, "axe found nothing to look at");
        return violations;
    }

    private static String script() {
        try (InputStream in = Axe.class.getResourceAsStream("/axe/axe.min.js")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }
}
