package pairwright.http;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static pairwright.http.Serving.assertProblem;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The server on this machine alone: what a page of another site cannot make a browser do. */
class HostsTest {
    @ParameterizedTest
    @ValueSource(strings = {"localhost", "LocalHost:7070", "127.0.0.1", "127.0.0.1:80", "127.1.2.3", "[::1]:7070", "localhost."})
    void thisMachineIsMeant(String host) {
        assertEquals(200, get(host).status(), host);
    }

    /** A name of another's may be pointed at this machine by whoever owns it. */
    @ParameterizedTest
    @ValueSource(strings = {"barn.example", "localhost.barn.example:7070", "127.0.0.1.barn.example", "192.0.2.1", "[2001:db8::1]", "0.0.0.0", "127.0.0.1x"})
    void anotherNameIsNotTaken(String host) {
        Reply reply = get(host);
        assertProblem(421, reply);
        assertTrue(reply.body().contains("--allow-host " + Hosts.name(host)), reply.body());
    }

    @Test
    void aNameInTheAddressLineCountsLikeOneInTheHeader() {
        Reply reply = Serving.send(Serving.port(), "GET http://barn.example/api/rooms HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n\r\n");
        assertTrue(reply.status() == 400 || reply.status() == 421, reply.toString());
    }

    @Test
    void aPageIsToldAsAPage() {
        Reply reply = Serving.send(Serving.port(), "GET / HTTP/1.1\r\nHost: barn.example\r\nAccept: text/html\r\nConnection: close\r\n\r\n");
        assertEquals(421, reply.status());
        assertTrue(reply.body().contains("does not go by the name"), reply.body());
    }

    @ParameterizedTest
    @ValueSource(strings = {"Origin: http://barn.example", "Origin: http://localhost:3000", "Origin: null", "Origin: http://localhost.barn.example", "Origin: nonsense",
            "Origin: http://", "Origin: http://localhost@barn.example", "Sec-Fetch-Site: cross-site", "Sec-Fetch-Site: same-site",
            "Origin: http://localhost\r\nSec-Fetch-Site: cross-site", "Origin: null\r\nSec-Fetch-Site: cross-site"})
    void aPageOfAnotherSiteSendsNothing(String headers) {
        assertProblem(403, ask(headers));
    }

    @ParameterizedTest
    @ValueSource(strings = {"Origin: http://localhost", "Origin: https://LOCALHOST", "Origin: http://localhost:80", "Sec-Fetch-Site: same-origin", "Sec-Fetch-Site: none",
            "Origin: null\r\nSec-Fetch-Site: same-origin", "X-Nothing: said"})
    void aPageOfThisServerOrAProgramSends(String headers) {
        assertEquals(200, ask(headers).status());
    }

    /** Whoever follows a link from elsewhere changes nothing. */
    @Test
    void aLinkFromElsewhereIsFollowed() {
        assertEquals(200, Serving.send(Serving.port(), "GET /api/rooms HTTP/1.1\r\nHost: localhost\r\nSec-Fetch-Site: cross-site\r\nConnection: close\r\n\r\n").status());
    }

    private static Reply get(String host) {
        return Serving.send(Serving.port(), "GET /api/rooms HTTP/1.1\r\nHost: " + host + "\r\nConnection: close\r\n\r\n");
    }

    private static Reply ask(String headers) {
        String body = "{\"words\": \"qwzx\"}";
        return Serving.send(Serving.port(), "POST /api/ask HTTP/1.1\r\nHost: localhost\r\n" + headers + "\r\nConnection: close\r\nContent-Type: application/json\r\nContent-Length: "
                + body.length() + "\r\n\r\n" + body);
    }
}
