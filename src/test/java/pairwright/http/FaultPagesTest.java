package pairwright.http;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What goes wrong is told to a browser by a page and to a program by a problem. */
class FaultPagesTest {
    private static final String BROWSER = "text/html,application/xhtml+xml,application/xml;q=0.9,*/*;q=0.8";

    @Test
    void aBrowserThatAsksForNothingThereGetsAPageThatSaysSo() {
        Document page = assertPage(404, ask("GET", "/nothing/here", BROWSER));
        assertTrue(page.page().text().contains("There is nothing at /nothing/here"), page.page().text());
        assertTrue(page.links().contains("/catalogue"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "Accept: */*\r\n", "Accept: application/json\r\n"})
    void aProgramGetsAProblem(String accept) {
        Serving.assertProblem(404, Serving.send(Serving.port(), "GET /nothing/here HTTP/1.1\r\nHost: localhost\r\n" + accept + "Connection: close\r\n\r\n"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"/api/nothing", "/api/mics/nothing", "/api"})
    void whatIsForProgramsAnswersThemWhateverTheyTake(String path) {
        Serving.assertProblem(404, ask("GET", path, BROWSER));
    }

    @Test
    void aMethodThatIsNotTakenIsToldByAPageWithTheOnesThatAre() {
        Reply reply = ask("DELETE", "/rules/PWR-002", BROWSER);
        assertPage(405, reply);
        assertTrue(reply.headers().get("allow").contains("GET"), reply.headers().toString());
    }

    /** The server reads what it can of a query that is not well-formed. */
    @ParameterizedTest
    @ValueSource(strings = {"/catalogue?words=%ff%fe", "/rules?words=%zz", "/catalogue?%=1", "/rules?words=%00%01", "/rules?concern=%00"})
    void aQueryThatIsBrokenIsNoMistakeOfTheProgram(String address) {
        Reply reply = ask("GET", address, BROWSER);
        assertTrue(reply.status() < 500, address + " is " + reply.status());
        assertPage(reply.status(), reply);
    }

    /** Such a request ends before its headers are read, so that nobody knows who asks. */
    @Test
    void aPathThatIsBrokenIsRefusedAsAProblem() {
        Serving.assertProblem(400, ask("GET", "/mics/%00", BROWSER));
    }

    @Test
    void whatCannotBeFoundNamesWhatComesNear() {
        assertTrue(assertPage(404, ask("GET", "/mics/lng-ribon", BROWSER)).links().contains("/mics/long-ribbon"));
        assertTrue(assertPage(404, ask("GET", "/sources/snare", BROWSER)).links().contains("/sources/snare-drum"));
        assertTrue(assertPage(404, ask("GET", "/complaints/boomi", BROWSER)).links().contains("/complaints/boomy"));
        assertTrue(assertPage(404, ask("GET", "/rules/PWR-0O2", BROWSER)).links().contains("/rules/PWR-002"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"/sources", "/mics", "/characters", "/rooms", "/techniques", "/complaints", "/mics/long-ribbon", "/sources/snare-drum?units=imperial"})
    void anEntryLookedForBelowTheCatalogueIsFoundBesideIt(String address) {
        Reply reply = ask("GET", "/catalogue" + address, BROWSER);
        assertEquals(308, reply.status(), reply.body());
        assertEquals(address, reply.headers().get("location"));
    }

    @Test
    void aRuleIsFoundHoweverItsIdIsWritten() {
        assertEquals("Phantom off for a passive ribbon", assertPage(200, ask("GET", "/rules/pwr-002", BROWSER)).heading());
    }

    @ParameterizedTest
    @ValueSource(strings = {"/catalogue?words=%3Cscript%3Ealert(1)%3C/script%3E", "/rules?words=%3Cscript%3Ealert(1)%3C/script%3E",
            "/rules?concern=%22%3E%3Cscript%3Ealert(1)%3C/script%3E", "/mics/%3Cscript%3Ealert(1)%3C%2Fscript%3E", "/rules/%3Cscript%3Ealert(1)%3C%2Fscript%3E",
            "/%3Cscript%3Ealert(1)%3C%2Fscript%3E", "/sources/snare-drum?units=%22%3E%3Cscript%3Ealert(1)%3C/script%3E"})
    void nothingOfAnAddressGetsIntoAPageAsMarkup(String address) {
        Reply reply = ask("GET", address, BROWSER);
        assertTrue(reply.status() < 500, address + " is " + reply.status());
        Document page = assertPage(reply.status(), reply);
        assertFalse(reply.body().contains("<script>alert"), reply.body());
        assertTrue(page.page().select("script:not([src])").isEmpty());
    }

    @Test
    void aChoiceThereIsNotIsAFaultOfTheFormThatNamesTheOnesThereAre() {
        Document page = assertPage(400, ask("GET", "/rules?concern=safty&effect=boom", BROWSER));
        assertEquals(2, page.page().select(".faults li").size());
        assertTrue(page.page().select(".faults").text().contains("Did you mean safety?"), page.page().select(".faults").text());
    }

    @Test
    void tooManyWordsAreRefusedByTheFieldAndNotSearchedFor() {
        String words = "x".repeat(201);
        assertTrue(assertPage(400, ask("GET", "/catalogue?words=" + words, BROWSER)).page().select("#words-fault").text().contains("201 characters"));
        assertTrue(assertPage(400, ask("GET", "/rules?words=" + words, BROWSER)).page().select(".faults").text().contains("201 characters"));
    }

    @Test
    void rulesAreChosenByWordsConcernAndEffectTogether() {
        Document page = assertPage(200, ask("GET", "/rules?words=ribbon+phantom&concern=power&effect=care", BROWSER));
        assertTrue(page.links().contains("/rules/PWR-002"));
        assertFalse(page.links().contains("/rules/PWR-001"));
        assertTrue(page.page().select(".listed").stream().allMatch(shelf -> shelf.id().equals("power")));
        assertEquals("care", page.page().select("#effect option[selected]").attr("value"));
        assertTrue(assertPage(200, ask("GET", "/rules?words=zzzz", BROWSER)).page().text().contains("0 of"));
    }

    @Test
    void theCatalogueIsSearchedByNamesInAnyLanguageAndRulesByTheirId() {
        assertTrue(found("caisse+claire").contains("/sources/snare-drum"));
        assertTrue(found("B%C3%A4ndchen").contains("/mics/long-ribbon"));
        assertEquals(List.of(), found("zzzzzzzzzz"));
        assertTrue(found("pwr-002").contains("/rules/PWR-002"));
        assertTrue(found("boomy").contains("/complaints/boomy"));
        assertTrue(found("mid+and+side").contains("/techniques/mid-side"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"/catalogue", "/sources", "/mics/long-ribbon", "/rules", "/rules/PWR-002", "/rules/XXX-999", "/nothing"})
    void headSaysWhatGetSaysWithoutTheBody(String address) {
        Reply head = ask("HEAD", address, BROWSER);
        Reply get = ask("GET", address, BROWSER);
        assertEquals(get.status(), head.status());
        assertEquals(get.headers().get("content-type"), head.headers().get("content-type"));
        assertEquals("", head.body());
    }

    @Test
    void headersTooLargeAreToldByAPageAsWell() {
        Reply reply = Serving.send(Serving.port(), "GET /catalogue HTTP/1.1\r\nHost: localhost\r\nAccept: " + BROWSER + "\r\nX-Long: " + "x".repeat(20_000) + "\r\n\r\n");
        assertEquals(431, reply.status());
    }

    private static List<String> found(String words) {
        return assertPage(200, ask("GET", "/catalogue?words=" + words, BROWSER)).page().select("section[aria-labelledby=found] a").eachAttr("href");
    }

    private static Reply ask(String method, String target, String accept) {
        return Serving.send(Serving.port(), method + " " + target + " HTTP/1.1\r\nHost: localhost\r\nAccept: " + accept + "\r\nConnection: close\r\n\r\n");
    }

    private static Document assertPage(int status, Reply reply) {
        assertEquals(status, reply.status(), reply.body());
        assertEquals("text/html", reply.mediaType(), reply.body());
        assertTrue(reply.headers().get("content-security-policy").contains("default-src 'none'"), reply.headers().toString());
        Document page = new Document(reply.body());
        assertEquals(List.of(), page.faults());
        return page;
    }
}
