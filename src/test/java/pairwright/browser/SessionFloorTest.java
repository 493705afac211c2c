package pairwright.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;

/** The floor of a line-up in a browser: by mouse, by touch, by keys, and without script. */
@InBrowser
class SessionFloorTest {
    private static final String DUO = "/sessions/" + Barn.SESSION;
    private static final String TENOR = "svg [data-name^='Nora']";

    /** Where the middle of a player is on the screen, and how long a metre is there. */
    private record Spot(double x, double y, double pxPerM) {
    }

    private static Spot spot(Browser browser, String css) {
        List<?> at = (List<?>) browser.js("""
                (group => {
                  group.scrollIntoView({block: 'center'});
                  const at = group.getScreenCTM();
                  return [at.e, at.f, Math.hypot(at.a, at.b) * Number(document.querySelector('.wall').getAttribute('data-px-per-m'))];
                })(document.querySelector(arguments[0]))""", css);
        return new Spot(number(at.get(0)), number(at.get(1)), number(at.get(2)));
    }

    private static double number(Object value) {
        return ((Number) value).doubleValue();
    }

    private static double field(Browser browser, String name) {
        return Double.parseDouble(browser.find("[name='" + name + "']").getDomProperty("value"));
    }

    private static void drag(Browser browser, double fromX, double fromY, double toX, double toY) {
        mouse(browser, "mouseMoved", fromX, fromY);
        mouse(browser, "mousePressed", fromX, fromY);
        for (int step = 1; step <= 4; step++) {
            mouse(browser, "mouseMoved", fromX + (toX - fromX) * step / 4, fromY + (toY - fromY) * step / 4);
        }
        mouse(browser, "mouseReleased", toX, toY);
    }

    private static void mouse(Browser browser, String type, double x, double y) {
        browser.cdp("Input.dispatchMouseEvent", Map.of("type", type, "x", x, "y", y, "button", type.equals("mouseMoved") ? "none" : "left", "buttons", type.equals("mouseReleased") ? 0 : 1,
                "clickCount", 1));
    }

    private static void touch(Browser browser, String type, double x, double y) {
        browser.cdp("Input.dispatchTouchEvent", Map.of("type", type, "touchPoints", type.equals("touchEnd") ? List.of() : List.of(Map.of("x", x, "y", y))));
    }

    @Test
    void aPlayerIsDraggedByMouseAndTheFieldsFollowAndAreWhatIsKept(Browser browser) {
        browser.open("/sessions").find("#demo button").click();
        browser.until("there is a session", () -> browser.at().contains("?done=demo"));
        Spot at = spot(browser, "svg [data-who='0']");
        double xM = field(browser, "seat.0.xM");
        double yM = field(browser, "seat.0.yM");
        drag(browser, at.x, at.y, at.x + 1.2 * at.pxPerM, at.y - 0.7 * at.pxPerM);
        assertEquals(xM + 1.2, field(browser, "seat.0.xM"), 0.03);
        assertEquals(yM + 0.7, field(browser, "seat.0.yM"), 0.03);
        Spot then = spot(browser, "svg [data-who='0']");
        assertEquals(1.2 * at.pxPerM, then.x - at.x, 1.5, "it is drawn where it was put");
        assertTrue(browser.find(".floor-said").getText().matches(".+: \\d+(\\.\\d+)? m from the left wall, \\d+(\\.\\d+)? m from the front, facing \\d+ degrees"), browser.find(".floor-said").getText());
        double kept = field(browser, "seat.0.xM");
        browser.find("form#session button[value='save']").click();
        browser.until("it is saved", () -> browser.at().contains("?done=saved"));
        assertEquals(kept, field(browser, "seat.0.xM"), 1e-9);
        Axe.assertNoViolations(browser);
    }

    @Test
    void itIsTurnedByItsHandleAndEveryStepIsTakenBack(Browser browser) {
        browser.open(DUO);
        Spot at = spot(browser, TENOR);
        drag(browser, at.x, at.y, at.x + 0.5 * at.pxPerM, at.y);
        at = spot(browser, TENOR);
        List<?> knob = (List<?>) browser.js("(box => [box.left + box.width / 2, box.top + box.height / 2])(document.querySelector('.handle circle').getBoundingClientRect())");
        assertTrue(number(knob.get(1)) < at.y, "it looks up the plan, and so the handle is above it");
        drag(browser, number(knob.get(0)), number(knob.get(1)), at.x + 70, at.y);
        assertEquals(90, field(browser, "seat.0.facingDegrees"), 1.5);
        assertEquals(2.5, field(browser, "seat.0.xM"), 0.03, "it turned where it was");
        browser.find("[data-undo]").click();
        assertEquals(0, field(browser, "seat.0.facingDegrees"));
        browser.find(TENOR).sendKeys(Keys.chord(Keys.CONTROL, "z"));
        assertEquals(2, field(browser, "seat.0.xM"));
        assertEquals("true", browser.find("[data-undo]").getDomAttribute("disabled"));
    }

    @Test
    void byKeysItMovesAndTurnsAndEachIsTold(Browser browser) {
        browser.open(DUO);
        WebElement tenor = browser.find(TENOR);
        tenor.sendKeys(Keys.ARROW_RIGHT, Keys.ARROW_RIGHT, Keys.ARROW_RIGHT);
        assertEquals(2.3, field(browser, "seat.0.xM"), 1e-9);
        tenor.sendKeys(Keys.chord(Keys.SHIFT, Keys.ARROW_UP));
        assertEquals(2.5, field(browser, "seat.0.yM"), 1e-9);
        tenor.sendKeys(".");
        assertEquals(5, field(browser, "seat.0.facingDegrees"));
        tenor.sendKeys(",", ",");
        assertEquals(355, field(browser, "seat.0.facingDegrees"));
        assertEquals("Nora, tenor saxophone: 2.3 m from the left wall, 2.5 m from the front, facing 355 degrees", browser.find(".floor-said").getText());
        assertEquals(browser.find(".floor-said").getText(), tenor.getDomAttribute("aria-label"));
        tenor.sendKeys(Keys.chord(Keys.SHIFT, Keys.ARROW_LEFT.toString().repeat(9)));
        assertEquals(0, field(browser, "seat.0.xM"), "nobody walks through a wall");
        tenor.sendKeys(Keys.TAB);
        assertTrue(browser.driver().switchTo().activeElement().getDomAttribute("aria-label").startsWith("Double bass: "), "on to the next");
    }

    @Test
    void onAPhoneAFingerMovesItAndThePageStaysWhereItIs(Browser browser) {
        browser.size(320, 740);
        browser.open(DUO);
        Spot at = spot(browser, TENOR);
        List<?> grip = (List<?>) browser.js("(box => [box.width, box.height])(document.querySelector(arguments[0] + ' .grip').getBoundingClientRect())", TENOR);
        assertTrue(number(grip.get(0)) >= 43.9 && number(grip.get(1)) >= 43.9, "a thumb hits it: " + grip);
        double scrolled = number(browser.js("window.scrollY"));
        touch(browser, "touchStart", at.x + 15, at.y + 10);
        for (int step = 1; step <= 5; step++) {
            touch(browser, "touchMove", at.x + 15 + step * 0.3 * at.pxPerM, at.y + 10 - step * 0.2 * at.pxPerM);
        }
        touch(browser, "touchEnd", 0, 0);
        browser.until("it was moved", () -> field(browser, "seat.0.xM") > 3);
        assertEquals(3.5, field(browser, "seat.0.xM"), 0.08);
        assertEquals(3, field(browser, "seat.0.yM"), 0.08);
        assertEquals(scrolled, number(browser.js("window.scrollY")), "the page did not scroll along");
        browser.find("[data-turn='5']").click();
        assertEquals(5, field(browser, "seat.0.facingDegrees"), "what was touched last is turned");
    }

    @Test
    void whatIsTypedMovesThePlayer(Browser browser) {
        browser.open(DUO);
        Spot before = spot(browser, TENOR);
        WebElement xM = browser.find("[name='seat.0.xM']");
        xM.clear();
        xM.sendKeys("4");
        assertEquals(before.pxPerM * 2, spot(browser, TENOR).x - before.x, 1);
        xM.clear();
        xM.sendKeys("where the rug is");
        assertEquals(before.pxPerM * 2, spot(browser, TENOR).x - before.x, 1, "what only a person understands moves nothing");
    }

    @Test
    void aGoboIsMovedAndTurnedAsAWhole(Browser browser) {
        browser.open(DUO).find("#add-gobo").click();
        browser.until("it is there", () -> !browser.all("svg [data-screen='0']").isEmpty());
        WebElement gobo = browser.find("svg [data-screen='0']");
        double lengthM = field(browser, "gobo.0.x2M") - field(browser, "gobo.0.x1M");
        gobo.sendKeys(Keys.ARROW_DOWN, ".".repeat(18));
        assertEquals(lengthM, Math.abs(field(browser, "gobo.0.y2M") - field(browser, "gobo.0.y1M")), 0.02, "a quarter turned");
        assertEquals(field(browser, "gobo.0.x1M"), field(browser, "gobo.0.x2M"), 0.02);
        assertTrue(gobo.getDomAttribute("aria-label").startsWith("Gobo 1: 4 m from the left wall, 2.9 m from the front"), gobo.getDomAttribute("aria-label"));
    }

    @Test
    void withoutScriptTheFieldsDoAllOfIt(Browser browser) {
        browser.withoutScript();
        browser.open("/sessions/new");
        assertFalse(browser.find(".floor-tools").isDisplayed(), "a button that does nothing is not shown");
        browser.find("#name").sendKeys("By fields alone");
        browser.find("#seat-0-what").sendKeys("trumpet");
        browser.find("#seat-0-xM").sendKeys("1.5");
        browser.find("#seat-0-yM").sendKeys("2");
        browser.find("#add-seat").click();
        browser.until("there is another", () -> !browser.all("#seat-2-what").isEmpty());
        assertEquals("seat-2-what", browser.driver().switchTo().activeElement().getDomAttribute("id"));
        browser.find("#seat-2-what").sendKeys("double bass", Keys.ENTER);
        browser.until("it is saved", () -> browser.at().startsWith("/sessions/by-fields-alone"));
        assertEquals(2, browser.all("svg [data-who]").size());
        assertEquals("1.5", browser.find("#seat-0-xM").getDomProperty("value"));
    }
}
