package pairwright.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.logging.LogType;

/** What holds on every kind of page. */
@InBrowser
class EveryPageTest {
    private static final String CONTROLS = """
            (() => {
              window.focused = [];
              window.unseen = [];
              document.addEventListener('focusin', event => {
                const style = getComputedStyle(event.target);
                window.focused.push(event.target);
                if (style.outlineStyle === 'none' || parseFloat(style.outlineWidth) < 2) { window.unseen.push(event.target.outerHTML.slice(0, 120)); }
              });
              const controls = Array.from(document.querySelectorAll('a[href], button, input:not([type=hidden]), select, textarea, summary, [tabindex="0"]'))
                .filter(one => !one.disabled && one.checkVisibility({visibilityProperty: true}) && !(one.closest('details:not([open])') && !one.matches('details > summary'))
                  && !(one.matches('summary') && one.parentNode.parentNode.closest('details:not([open])')));
              controls.forEach((one, at) => one.setAttribute('data-order', at));
              return controls.map(one => one.outerHTML.slice(0, 120));
            })()""";
    private static final String TOO_WIDE = """
            Array.from(document.body.querySelectorAll('*')).filter(one => one.getBoundingClientRect().right > innerWidth + 1)
              .slice(0, 3).map(one => one.tagName + '.' + one.getAttribute('class') + ' ' + Math.round(one.getBoundingClientRect().right)).join(', ')""";

    @Test
    void nobodyIsKeptOutInTheLightOrInTheDark(Browser browser) {
        List<String> found = new ArrayList<>();
        for (String address : EveryKind.addresses(browser)) {
            browser.light();
            browser.open(address);
            Axe.violations(browser).forEach(one -> found.add(address + ": " + one));
            browser.dark();
            Axe.violations(browser).forEach(one -> found.add(address + " in the dark: " + one));
        }
        assertEquals("", String.join("\n", found));
    }

    /** 320 is the smallest phone and a page of 640 at twice its size; 360 the usual phone; 640 a desk of 1280 at twice its size. */
    @Test
    void noPageIsWiderThanItsWindow(Browser browser) {
        List<String> wide = new ArrayList<>();
        for (String address : EveryKind.addresses(browser)) {
            browser.size(320, 740);
            browser.open(address);
            opened(browser);
            for (int width : new int[] {320, 360, 640}) {
                browser.size(width, 740);
                if (!(Boolean) browser.js("document.documentElement.scrollWidth <= innerWidth")) {
                    wide.add(address + " at " + width + ": " + browser.js("document.documentElement.scrollWidth") + ", " + browser.js(TOO_WIDE));
                }
            }
        }
        assertEquals("", String.join("\n", wide));
    }

    @Test
    void nothingIsAskedOfAnotherHostAndTheConsoleIsQuiet(Browser browser) {
        List<String> addresses = EveryKind.addresses(browser);
        browser.logs(LogType.BROWSER);
        browser.logs(LogType.PERFORMANCE);
        List<String> faults = new ArrayList<>();
        int requests = 0;
        for (String address : addresses) {
            browser.open(address);
            browser.logs(LogType.BROWSER).stream().filter(said -> !isTheStatusOf(said)).forEach(said -> faults.add(address + ": " + said));
            for (String event : browser.logs(LogType.PERFORMANCE)) {
                if (event.contains("\"Network.requestWillBeSent\"")) {
                    requests++;
                    String to = event.replaceAll("(?s).*\"request\":\\{.*?\"url\":\"([^\"]*)\".*", "$1");
                    if (browser.servers().stream().noneMatch(server -> to.startsWith(server + "/")) && !to.startsWith("data:")) {
                        faults.add(address + " asks " + to);
                    }
                }
            }
        }
        assertEquals("", String.join("\n", faults));
        assertTrue(requests >= addresses.size(), requests + " requests were seen");
    }

    /** A browser writes into its log that a page came with 400 or 404; nothing else is allowed there. */
    private static boolean isTheStatusOf(String said) {
        return said.contains("Failed to load resource: the server responded with a status of 40") && !said.contains("/assets/");
    }

    @Test
    void everyControlIsReachedByTheKeyInTheOrderOfThePageAndSeen(Browser browser) {
        List<String> faults = new ArrayList<>();
        for (String address : List.of("/", EveryKind.DANGERS, EveryKind.WHY_NOT, "/catalogue", "/numbers/comb", "/mics/active-ribbon", "/guide")) {
            browser.open(address);
            List<?> controls = (List<?>) browser.js(CONTROLS);
            browser.find("body").sendKeys(Keys.TAB.toString().repeat(controls.size()));
            List<?> focused = (List<?>) browser.js("window.focused.map(one => one.getAttribute('data-order'))");
            for (int at = 0; at < controls.size(); at++) {
                if (at >= focused.size() || !String.valueOf(at).equals(focused.get(at))) {
                    faults.add(address + ": after " + at + " of " + controls.size() + " keys not on " + controls.get(at));
                    break;
                }
            }
            ((List<?>) browser.js("window.unseen")).forEach(one -> faults.add(address + ": the focus is not seen on " + one));
        }
        assertEquals("", String.join("\n", faults));
    }

    @Test
    void onPaperNothingIsToBePressedAndEveryCautionIsThere(Browser browser) {
        List<String> faults = new ArrayList<>();
        for (String address : List.of(EveryKind.DANGERS, EveryKind.setUp(browser), "/mics/active-ribbon", "/numbers/comb", "/rules/SAF-005", "/guide")) {
            browser.open(address);
            int cautions = shown(browser, ".danger, .care, .note");
            browser.print();
            for (String gone : List.of("form", "button", "nav", "select", ".measures")) {
                if (shown(browser, gone) > 0) {
                    faults.add(address + " prints " + gone);
                }
            }
            if (shown(browser, ".danger, .care, .note") != cautions || shown(browser, "h1") != 1) {
                faults.add(address + " prints " + shown(browser, ".danger, .care, .note") + " of " + cautions + " cautions");
            }
            for (boolean letter : new boolean[] {false, true}) {
                byte[] pdf = browser.pdf(letter);
                if (pdf.length < 8000) {
                    faults.add(address + " prints next to nothing: " + pdf.length + " bytes");
                }
            }
            browser.light();
        }
        assertEquals("", String.join("\n", faults));
        browser.open(EveryKind.DANGERS);
        assertTrue(shown(browser, ".danger") > 0 && shown(browser, ".care") > 0, "an answer with dangers was to be printed");
        browser.print();
        assertEquals("auto auto", browser.js("(style => style.breakInside + ' ' + style.breakBefore)(getComputedStyle(document.querySelector('.option')))"),
                "the first option begins on the first leaf");
    }

    /** Everything folded away is opened: what is inside must fit as well. */
    private static void opened(Browser browser) {
        browser.driver().executeScript("document.querySelectorAll('details').forEach(one => { one.open = true; })");
    }

    private static int shown(Browser browser, String css) {
        return (int) Stream.of(browser.all(css).toArray(WebElement[]::new)).filter(WebElement::isDisplayed).count();
    }
}
