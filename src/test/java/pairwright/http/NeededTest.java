package pairwright.http;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import pairwright.locker.Role;

class NeededTest {
    @ParameterizedTest
    @CsvSource({"GET,/", "GET,/api/locker/units", "HEAD,/locker", "GET,/metrics", "OPTIONS,/api/ask", "POST,/api/ask", "POST,/api/ask/why-not", "POST,/api/numbers/proximity", "POST,/api/listen/pair", "POST,/listen"})
    void readersAskAndRead(String method, String path) {
        assertEquals(Role.READER, Needed.role(method, path));
    }

    @ParameterizedTest
    @CsvSource({"POST,/api/locker/bookings", "PATCH,/api/locker/units/a", "DELETE,/api/locker/units/a", "POST,/locker/units", "PUT,/api/ask", "DELETE,/api/ask",
            "POST,/api/asking", "POST,/health", "DELETE,/assets/a.css", "POST,/api/numbers", "BREW,/whatever-comes", "POST,/api/locker/../ask",
            "POST,/api/sessions/plan", "POST,/api/sessions/replan", "PUT,/api/listen/pair", "POST,/api/listen", "POST,/listen/pair"})
    void whateverChangesSomethingIsForEngineers(String method, String path) {
        assertEquals(Role.ENGINEER, Needed.role(method, path));
    }

    @ParameterizedTest
    @ValueSource(strings = {"/health", "/assets/page-123.css"})
    void healthAndStyleAreForEverybody(String path) {
        assertNull(Needed.role("GET", path));
        assertNull(Needed.role("HEAD", path));
    }

    @Test
    void nothingElseIsForEverybody() {
        for (String path : new String[] {"/healthy", "/assets", "/assets/", "/assets/a/b", "/assets/../locker", "/api/health", "/health/x", "/assets/a\n/locker"}) {
            assertEquals(Role.READER, Needed.role("GET", path), path);
        }
    }
}
