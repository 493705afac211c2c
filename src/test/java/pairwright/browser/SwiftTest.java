package pairwright.browser;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** How much comes over the line, and how long an edited part takes until its answer stands on the page. */
@InBrowser
class SwiftTest {
    private static final int MOST_BYTES = 200_000;
    private static final double MOST_MS = 1000;
    private static final String EDITS = """
            const done = arguments[arguments.length - 1];
            const sources = ['trumpet', 'cello', 'snare-drum', 'grand-piano', 'tenor-saxophone', 'kick-drum'];
            const taken = [];
            const waited = () => performance.getEntriesByType('resource').filter(one => one.name.includes('part=answer')).map(one => one.duration);
            (async () => {
              for (let at = 0; at < 30; at++) { // the server has answered before, as it has in a session
                await (await fetch('/?words=' + sources[at % sources.length].replace('-', '+') + '&part=answer')).text();
              }
              performance.clearResourceTimings();
              for (let at = 0; at < 24; at++) {
                const select = document.getElementById('source');
                const old = document.getElementById('answer');
                select.value = sources[at % sources.length];
                const began = performance.now();
                await new Promise(shown => {
                  const watch = new MutationObserver(() => {
                    if (document.getElementById('answer') !== old) { watch.disconnect(); shown(); }
                  });
                  watch.observe(document.body, {childList: true, subtree: true});
                  select.dispatchEvent(new Event('change', {bubbles: true}));
                });
                document.body.getBoundingClientRect();
                taken.push(performance.now() - began);
              }
              done([taken, waited()]);
            })();""";

    @Test
    void aFirstVisitIsLight(Browser browser) {
        for (String address : List.of("/", EveryKind.PAIRS)) {
            browser.cdp("Network.clearBrowserCache", Map.of());
            browser.open(address);
            long bytes = ((Number) browser.js("performance.getEntriesByType('navigation').concat(performance.getEntriesByType('resource'))"
                    + ".reduce((sum, one) => sum + one.transferSize, 0)")).longValue();
            System.out.println("first load of " + address + ": " + bytes + " bytes on the line");
            assertTrue(bytes > 2000, address + " was not loaded anew");
            assertTrue(bytes < MOST_BYTES, address + ": " + bytes + " bytes");
        }
    }

    @Test
    void anEditedPartIsAnsweredAtOnce(Browser browser) {
        browser.open(EveryKind.PAIRS);
        List<?> both = (List<?>) browser.driver().executeAsyncScript(EDITS);
        List<Double> taken = sorted(both.get(0));
        List<Double> waited = sorted(both.get(1));
        double medianMs = taken.get(taken.size() / 2);
        System.out.printf("edited part: median %.0f ms, slowest %.0f ms of %d; of these until the answer had come: median %.0f ms%n", medianMs,
                taken.get(taken.size() - 1), taken.size(), waited.get(waited.size() / 2));
        assertTrue(taken.size() >= 20 && medianMs < MOST_MS, taken.toString());
    }

    private static List<Double> sorted(Object numbers) {
        return ((List<?>) numbers).stream().map(one -> ((Number) one).doubleValue()).sorted().toList();
    }
}
