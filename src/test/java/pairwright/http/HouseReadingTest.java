package pairwright.http;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pairwright.advice.KnowledgeStore;

/** What a house wrote can be read like the rest, whatever it wrote. */
class HouseReadingTest {
    private static final String HOSTILE = "<script>alert(1)</script>";

    @TempDir
    private static Path house;
    private static Server server;
    private static Site site;

    @BeforeAll
    static void aHouseWithAnEntryFullOfMarkupIsServed() throws IOException {
        write("catalogue/rooms/shed.yaml", """
                id: shed
                name: "<script>alert(1)</script>"
                says: "A shed & \\"more\\" <b>of it</b>."
                words: ["<img src=x onerror=alert(2)>"]
                widthM: 3
                depthM: 4
                heightM: 2.2
                reverbTimeS: 0.3
                noiseDba: 35
                kind: neutral
                confidence: low
                basis:
                  - of: [widthM, depthM, heightM, reverbTimeS, noiseDba]
                    on: estimate
                    note: "</dd><script>alert(3)</script>"
                """);
        write("catalogue/mics/small-condenser-cardioid.csv", "# Swept at <i>1 m</i>\nHz, dB\n63, 1\n125, 0\n250, 0\n500, 0\n1000, 0\n2000, 1\n4000, 2\n8000, 3\n16000, 1\n");
        write("rules/door.drl", """
                package house;
                import pairwright.model.*;
                import pairwright.rules.*;
                global pairwright.rules.Out out;

                rule "HOUSE-001"
                  @title("Keep clear of the <b>door</b>")
                  @effect("against")
                  @points(-4)
                  @says("{mic} would stand in the way of the <door> at {distanceM}.")
                  @why("The door opens inward.")
                  @on("house")
                  @basis("Our live room")
                when
                  $p : Placed(distanceM > 1.8)
                then
                  out.note(drools.getRule(), $p, "distanceM", $p.distanceM());
                end
                """);
        KnowledgeStore store = KnowledgeStore.withHouse(house);
        assertEquals(List.of(), store.faults());
        server = Server.start(store, "127.0.0.1", 0);
        site = new Site(server.port());
    }

    @AfterAll
    static void stop() {
        server.close();
    }

    @Test
    void anEntryFullOfMarkupIsShownAsItIsWritten() {
        Document page = site.page("/rooms/shed");
        assertEquals(HOSTILE, page.heading());
        for (String address : List.of("/rooms/shed", "/rooms", "/catalogue", "/catalogue?words=shed")) {
            assertFalse(site.get(address).body().contains(HOSTILE), address);
            assertEquals(List.of(), site.page(address).faults());
            assertTrue(site.page(address).page().select("script:not([src]), img[onerror], main b").isEmpty(), address);
        }
    }

    @Test
    void aRuleOfTheHouseHasAPageAndIsMarkedInTheList() {
        Document page = site.page("/rules/HOUSE-001");
        assertEquals("Keep clear of the <b>door</b>", page.heading());
        assertEquals("The microphone would stand in the way of the <door> at distance in m.", page.page().select("blockquote").text());
        assertTrue(page.page().select(".rule-effect").text().contains("house"));
        assertTrue(page.page().text().contains("A rule of the house need not have any"));
        assertTrue(site.page("/rules").page().select("#house .tag").text().contains("house"));
        assertEquals(List.of(), page.faults());
    }

    @Test
    void aResponseThatAHouseMeasuredIsSaidToBeMeasured() {
        Document page = site.page("/mics/small-condenser-cardioid");
        assertTrue(page.page().select("p.note").text().contains("This response was measured: "), page.page().select("p.note").text());
        assertTrue(page.page().select("p.note").text().contains("Swept at <i>1 m</i>"), page.page().select("p.note").text());
        assertTrue(site.page("/mics/long-ribbon").page().select("p.note").isEmpty());
    }

    private static void write(String file, String text) throws IOException {
        Files.createDirectories(house.resolve(file).getParent());
        Files.writeString(house.resolve(file), text);
    }
}
