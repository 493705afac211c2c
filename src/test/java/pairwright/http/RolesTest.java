package pairwright.http;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static pairwright.http.Serving.assertProblem;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import pairwright.locker.Place;

/** Who may do what at every address there is: the addresses come from the server, so that none can be forgotten. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class RolesTest {
    private static final List<String> READS = List.of("GET", "HEAD");
    /** Pages that are a form and nothing else. */
    private static final String FORMS = "/locker/.*/(new|alter|cancel|remove)|/sessions(/.*)?/(new|remove)";
    private static final String QUESTIONS = "/api/ask(/.*)?|/api/numbers/.*|(/api)?/lab/(exercises/[^/]+/(mark|bench/[^/]+)|practice(/mark)?)|/api/listen/.*|/listen";
    /** What is for those who teach. */
    private static final String MARKS = "(/api)?/lab/exercises/(new|[^/]+/(marks|marks\\.csv|summary|feedback))";

    private final AtomicInteger strangers = new AtomicInteger();
    private LockerServing serving;

    /** Something that can be sent. */
    private record Address(String method, String path) {
        boolean reads() {
            return READS.contains(method) && !path.matches(FORMS) && !path.matches(MARKS) || path.matches(QUESTIONS);
        }

        boolean taught() {
            return path.matches(MARKS) || path.matches("(/api)?/lab(/.*)?") && !READS.contains(method) && !path.matches(QUESTIONS);
        }

        boolean open() {
            return path.equals("/health") || path.startsWith("/assets/");
        }

        String target() {
            return path.replaceAll("\\{[^}]*}|<[^>]*>", "x");
        }

        @Override
        public String toString() {
            return method + " " + path;
        }
    }

    @BeforeAll
    void open(@TempDir Path folder) {
        serving = LockerServing.guarded(Place.in(folder));
    }

    @AfterAll
    void close() {
        serving.close();
    }

    private List<Address> addresses() {
        List<Address> all = serving.addresses().stream().map(one -> one.split(" ", 2)).map(one -> new Address(one[0], one[1])).toList();
        assertTrue(all.stream().anyMatch(one -> one.toString().equals("PATCH /api/locker/units/{id}")) && all.size() > 90, all.toString());
        return all;
    }

    private Reply sent(Address address, String... headers) {
        return serving.send(address.method(), address.target(), READS.contains(address.method()) ? null : "{}", headers);
    }

    @Test
    void aReaderAsksAndReadsEverywhereAndChangesNothingAnywhere() {
        long revision = serving.locker.revision();
        String token = "Authorization: Bearer " + serving.reader;
        int refused = 0;
        for (Address address : addresses()) {
            Reply reply = sent(address, token);
            if (address.reads()) {
                assertFalse(List.of(401, 403, 429).contains(reply.status()), address + ": " + reply.status());
            } else if (address.method().equals("HEAD")) {
                assertEquals(403, reply.status(), address.toString());
            } else {
                assertProblem(403, reply);
                refused++;
            }
        }
        assertTrue(refused >= 14, refused + " addresses that change something");
        assertEquals(revision, serving.locker.revision());
    }

    @Test
    void anEngineerIsStoppedOnlyWhereSomebodyTeachesAndAnInstructorNowhere() {
        for (Address address : addresses()) {
            if (address.taught()) {
                assertEquals(403, sent(address, "Authorization: Bearer " + serving.engineer).status(), address.toString());
            }
            Reply reply = sent(address, "Authorization: Bearer " + (address.taught() ? serving.instructor : serving.engineer));
            assertFalse(List.of(401, 403, 429).contains(reply.status()), address + ": " + reply.status());
            assertTrue(reply.status() < 500, address + ": " + reply.body());
        }
    }

    @Test
    void nobodyComesInWithoutATokenOrWithOneThatIsNone() {
        for (Address address : addresses()) {
            String elsewhere = "X-Forwarded-For: 203.0.113." + strangers.incrementAndGet() % 250;
            for (String[] headers : List.of(new String[0], new String[] {"Authorization: Bearer wrong", elsewhere}, new String[] {"Cookie: token=" + serving.engineer})) {
                Reply reply = sent(address, headers);
                assertEquals(!address.open(), reply.status() == 401, address + ": " + reply.status());
            }
        }
    }

    @Test
    void aPageOfAnotherSiteChangesNothing() {
        String token = "Authorization: Bearer " + serving.engineer;
        for (Address address : addresses()) {
            if (!READS.contains(address.method())) {
                assertProblem(403, sent(address, token, "Origin: http://other.example"));
                assertProblem(403, sent(address, token, "Sec-Fetch-Site: cross-site"));
                assertProblem(403, sent(address, token, "Origin: null"));
            }
        }
    }

    @Test
    void aNameOfAnothersThatPointsHereIsNotAnsweredTo() {
        for (Address address : addresses()) {
            assertEquals(421, sent(address, "Authorization: Bearer " + serving.engineer, "Host: other.example").status(), address.toString());
        }
    }
}
