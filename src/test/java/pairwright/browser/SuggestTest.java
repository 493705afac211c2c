package pairwright.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;

/** Suggestions under a field that wants them, whatever page it stands on: here one that is put into a page before its script runs. */
@InBrowser
class SuggestTest {
    private static final String FIELD = """
            document.addEventListener('readystatechange', function () {
              if (document.readyState === 'interactive' && !document.getElementById('typed')) {
                document.getElementById('content').insertAdjacentHTML('afterbegin', '<form action="/guide"><div class="field"><label for="typed">Words</label>'
                  + '<input type="text" id="typed" name="typed" data-suggest></div><button type="submit">Ask</button></form>');
              }
            });""";

    private static WebElement field(Browser browser) {
        Object script = browser.cdp("Page.addScriptToEvaluateOnNewDocument", Map.of("source", FIELD)).get("identifier");
        browser.open("/guide");
        browser.cdp("Page.removeScriptToEvaluateOnNewDocument", Map.of("identifier", script));
        return browser.find("#typed");
    }

    private static void untilOpen(Browser browser) {
        browser.until("the list is open", () -> "true".equals(browser.find("#typed").getDomAttribute("aria-expanded")));
    }

    private static String chosen(Browser browser) {
        String id = browser.find("#typed").getDomAttribute("aria-activedescendant");
        return id == null ? null : browser.find("#" + id).getText().lines().findFirst().orElse("");
    }

    @Test
    void theKeysChooseAndTakeAndNothingIsSent(Browser browser) {
        WebElement field = field(browser);
        assertEquals("combobox", field.getDomAttribute("role"));
        assertEquals("false", field.getDomAttribute("aria-expanded"));
        field.sendKeys("brushed sn");
        untilOpen(browser);
        WebElement list = browser.find("#" + field.getDomAttribute("aria-controls"));
        assertEquals("listbox", list.getDomAttribute("role"));
        browser.until("it is said how many there are", () -> {
            int count = browser.all(".suggest [role=option]").size();
            String said = String.valueOf(browser.find(".suggest [role=status]").getDomProperty("textContent"));
            return count > 0 && said.equals(count == 1 ? "1 suggestion" : count + " suggestions")
                    && browser.all(".suggest [role=option]").get(0).getText().startsWith("brushed snare drum");
        });
        assertNull(chosen(browser), "nothing is chosen unasked");
        field.sendKeys(Keys.ARROW_DOWN);
        assertTrue(chosen(browser).startsWith("brushed snare drum"), chosen(browser));
        field.sendKeys(Keys.ARROW_UP);
        assertNull(chosen(browser), "back in the field");
        field.sendKeys(Keys.ARROW_DOWN, Keys.ENTER);
        assertEquals("brushed snare drum", field.getDomProperty("value"));
        assertEquals("false", field.getDomAttribute("aria-expanded"));
        assertEquals("/guide", browser.at(), "taking is not asking");
        field.sendKeys(Keys.ENTER);
        browser.until("the next one asks", () -> browser.at().equals("/guide?typed=brushed+snare+drum"));
    }

    @Test
    void escapeAndTabCloseIt(Browser browser) {
        WebElement field = field(browser);
        field.sendKeys("tenor sax, da");
        untilOpen(browser);
        field.sendKeys(Keys.ESCAPE);
        assertEquals("false", field.getDomAttribute("aria-expanded"));
        assertEquals("tenor sax, da", field.getDomProperty("value"));
        field.sendKeys(Keys.ARROW_DOWN);
        untilOpen(browser);
        field.sendKeys(Keys.TAB);
        assertEquals("false", field.getDomAttribute("aria-expanded"));
        assertEquals("button", browser.driver().switchTo().activeElement().getTagName());
    }

    @Test
    void aFingerTakesOneToo(Browser browser) {
        browser.size(360, 700);
        WebElement field = field(browser);
        field.sendKeys("cello in a sm");
        untilOpen(browser);
        WebElement option = browser.find(".suggest [role=option]");
        assertTrue(option.getSize().getHeight() >= 44, "a thumb hits it");
        option.click();
        assertEquals("cello in a small treated room", field.getDomProperty("value"));
        assertEquals("typed", browser.driver().switchTo().activeElement().getDomAttribute("id"));
        assertEquals("/guide", browser.at());
    }

    @Test
    void anAnswerThatComesLateIsDropped(Browser browser) {
        WebElement field = field(browser);
        browser.driver().executeScript("""
                var real = window.fetch;
                window.late = 0;
                window.fetch = function (address, more) {
                  return address.indexOf('words=tromb') < 0 ? real(address, more) : new Promise(function (done) {
                    setTimeout(function () { window.late += 1; real(address).then(done); }, 700);
                  });
                };""");
        field.sendKeys("tromb");
        sleepAWhile(browser);
        field.sendKeys(Keys.chord(Keys.CONTROL, "a"), "cello in a ch");
        untilOpen(browser);
        browser.until("the first answer came", () -> ((Number) browser.js("window.late")).intValue() > 0);
        sleepAWhile(browser);
        List<String> options = browser.all(".suggest [role=option]").stream().map(WebElement::getText).toList();
        assertFalse(options.isEmpty());
        assertTrue(options.stream().allMatch(option -> option.startsWith("cello")), options::toString);
    }

    @Test
    void whereTheServerFailsAPlainFieldIsLeft(Browser browser) {
        browser.cdp("Network.setBlockedURLs", Map.of("urls", List.of("*/api/suggest*")));
        WebElement field = field(browser);
        field.sendKeys("snare");
        sleepAWhile(browser);
        assertEquals("false", field.getDomAttribute("aria-expanded"));
        browser.cdp("Network.setBlockedURLs", Map.of("urls", List.of()));
        field.sendKeys(Keys.ENTER);
        browser.until("it is asked all the same", () -> browser.at().equals("/guide?typed=snare"));
    }

    @Test
    void theFieldWhereOneAsksTakesSuggestions(Browser browser) {
        WebElement field = browser.open("/").find("#words");
        field.sendKeys("brushed sn");
        browser.until("the list is open", () -> "true".equals(field.getDomAttribute("aria-expanded")));
        field.sendKeys(Keys.ARROW_DOWN, Keys.ENTER);
        assertEquals("brushed snare drum", field.getDomProperty("value"));
        assertEquals("/", browser.at());
        field.sendKeys(Keys.ENTER);
        browser.until("it is asked", () -> browser.at().contains("words=brushed+snare+drum"));
        browser.until("it is answered", () -> !browser.all("article.option").isEmpty());
    }

    @Test
    void nobodyIsKeptOutWhileItIsOpen(Browser browser) {
        WebElement field = field(browser);
        field.sendKeys("snare");
        untilOpen(browser);
        field.sendKeys(Keys.ARROW_DOWN);
        Axe.assertNoViolations(browser);
        browser.dark();
        Axe.assertNoViolations(browser);
    }

    private static void sleepAWhile(Browser browser) {
        browser.driver().executeAsyncScript("setTimeout(arguments[arguments.length - 1], 500)");
    }
}
