package pairwright.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pairwright.listen.Sounds;

/** Recordings are chosen and measured in a browser. */
@InBrowser
class ListenTest {
    @TempDir
    Path folder;

    private String file(String name, double[]... channels) throws IOException {
        return Sounds.wav(folder.resolve(name), 24, Sounds.RATE_HZ, channels).toString();
    }

    @Test
    void aSourceIsChosenAndMeasured(Browser browser) throws IOException {
        String rehearsal = file("rehearsal.wav", Sounds.noise(1 << 18, 1));
        browser.open("/listen");
        browser.find("#in-file").sendKeys(rehearsal);
        browser.find("#in-source option[value='violin']").click();
        browser.find("main form button").click();
        browser.until("the answer", () -> browser.find("h1").getText().equals("rehearsal.wav"));
        assertTrue(browser.find("pre").getText().contains("toneDb: ["));
        holds(browser);
    }

    @Test
    void tracksAreChosenAtOnceAndComparedEvenWithoutScript(Browser browser) throws IOException {
        double[] sound = Sounds.noise(1 << 17, 1);
        String near = file("near.wav", sound);
        String far = file("far-with-a-long-name-that-goes-on-and-on-and-on.wav", Sounds.filtered(sound, 30, hz -> 0.7));
        browser.withoutScript();
        browser.open("/listen?what=pair");
        browser.find("#in-file").sendKeys(near + "\n" + far);
        browser.find("main form button").click();
        browser.until("the answer", () -> browser.find("h1").getText().equals("Tracks that belong together"));
        assertTrue(browser.find("main").getText().contains("30 samples"), browser.find("main").getText());
        browser.asNew();
    }

    /** What holds of pages with an address holds of this one without. */
    private static void holds(Browser browser) {
        Axe.assertNoViolations(browser);
        for (int width : new int[] {320, 640}) {
            browser.size(width, 740);
            assertEquals(true, browser.js("document.documentElement.scrollWidth <= innerWidth"), "at " + width);
        }
    }
}
