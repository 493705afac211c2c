package pairwright.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.support.ui.Select;

/** Asking for another time at the barn, as somebody does who plans there. */
@InBrowser
class AskLockerTest {
    /** Where a ribbon comes first when it can be had, so that it is missed when it cannot. */
    private static final String RIBBONS_FIRST = "/?words=trumpet%2C+dark&locker=free";

    @Test
    void theAnswerFollowsTheTimeAndWhatMayBeUsed(Browser browser) {
        browser.open(RIBBONS_FIRST);
        String first = browser.at();
        List<String> now = takes(browser);
        assertTrue(now.stream().anyMatch(take -> take.contains("Barn ribbon")), now.toString());
        // both ribbons are booked from twenty hours from now on, for six
        type(browser, "#until", 22);
        browser.until("the time is in the address", () -> browser.at().contains("until="));
        type(browser, "#from", 21);
        browser.until("the start is as well", () -> browser.at().contains("from="));
        browser.until("what is booked then is not offered", () -> takes(browser).stream().noneMatch(take -> take.contains("Barn ribbon")));
        assertTrue(browser.find(".needed-when").getText().startsWith("Needed "), browser.find(".needed-when").getText());
        browser.until("it is said who has it", () -> text(browser, ".missed").contains("is out for Folk-jazz sextet, second day with Ben of the barn, free again"));
        String then = browser.at();
        new Select(browser.find("#locker")).selectByValue("owned");
        browser.until("all that is owned is ranked", () -> browser.at().contains("locker=owned") && takes(browser).stream().anyMatch(take -> take.contains("Barn ribbon")));
        assertTrue(takes(browser).stream().anyMatch(take -> take.contains("; free again ")), takes(browser).toString());
        browser.driver().navigate().back();
        browser.until("back to what is free then", () -> browser.at().equals(then) && takes(browser).stream().noneMatch(take -> take.contains("Barn ribbon")));
        browser.open(then + "&locker=free");
        assertFalse(browser.find("#from").getDomProperty("value").isEmpty(), "the address alone brings it back");
        browser.open(first);
        assertEquals(now, takes(browser));
    }

    @Test
    void aTimeThatCannotBeIsToldWhereTheAnswerWasAndTheFieldIsNotLost(Browser browser) {
        browser.open(EveryKind.FROM_LOCKER);
        type(browser, "#from", 30);
        browser.until("the start is in the address", () -> browser.at().contains("from="));
        type(browser, "#until", 29);
        browser.until("it is told", () -> browser.find("#answer").getText().contains("is not after from"));
        assertTrue(browser.find("#answer").getText().contains("Needed until:"), browser.find("#answer").getText());
        type(browser, "#until", 31);
        browser.until("and mended", () -> !takes(browser).isEmpty() && browser.at().contains("until="));
    }

    private static void type(Browser browser, String field, int hoursFromNow) {
        String local = Instant.now().plus(hoursFromNow, ChronoUnit.HOURS).atZone(ZoneId.systemDefault()).toLocalDateTime().truncatedTo(ChronoUnit.MINUTES).toString();
        browser.driver().executeScript("const field = document.querySelector(arguments[0]); field.focus(); field.value = arguments[1]; "
                + "field.dispatchEvent(new Event('change', {bubbles: true}));", field, local);
    }

    private static String text(Browser browser, String where) {
        return String.valueOf(browser.driver().executeScript("const found = document.querySelector(arguments[0]); return found ? found.innerText : '';", where));
    }

    private static List<String> takes(Browser browser) {
        // in one step, since the answer may be replaced between two
        List<?> texts = (List<?>) browser.driver().executeScript("return [...document.querySelectorAll('.option .take')].map(take => take.innerText);");
        return texts.stream().map(String::valueOf).toList();
    }
}
