package pairwright.http;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.net.InetAddress;
import java.net.Socket;
import java.net.SocketException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import pairwright.advice.KnowledgeStore;

/** The real server with the real catalogue on a free port, one for all tests, and requests written byte by byte. */
final class Serving {
    static final KnowledgeStore KNOWLEDGE = KnowledgeStore.builtIn();
    static final OpenApi OPEN_API = new OpenApi();
    private static final Server SERVER = Server.start(KNOWLEDGE, "127.0.0.1", 0);
    private static final int PATIENCE_MS = 120_000;

    private Serving() {
    }

    static int port() {
        return SERVER.port();
    }

    static Reply get(String target) {
        return send(port(), "GET " + target + " HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n\r\n");
    }

    static Reply ask(String body) {
        return post(port(), "application/json", body.getBytes(StandardCharsets.UTF_8));
    }

    static Reply post(int port, String type, byte[] body) {
        return post(port, "/api/ask", type, body);
    }

    static Reply post(int port, String target, String type, byte[] body) {
        return send(port, joined("POST " + target + " HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n" + (type == null ? "" : "Content-Type: " + type + "\r\n")
                + "Content-Length: " + body.length + "\r\n\r\n", body));
    }

    static Reply send(int port, String request) {
        return send(port, request.getBytes(StandardCharsets.ISO_8859_1));
    }

    /** Writes a request as it is and reads until the other side closes; null where nothing comes back. */
    static Reply send(int port, byte[] request) {
        try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), port)) {
            socket.setSoTimeout(PATIENCE_MS);
            try {
                socket.getOutputStream().write(request);
                socket.getOutputStream().flush();
                socket.shutdownOutput();
            } catch (SocketException refused) {
                // the server may answer and close before it has read all of a large body; what it said is still there
            }
            return read(socket.getInputStream());
        } catch (IOException broken) {
            throw new AssertionError("no answer to " + new String(request, 0, Math.min(300, request.length), StandardCharsets.ISO_8859_1), broken);
        }
    }

    static Reply read(InputStream in) throws IOException {
        ByteArrayOutputStream all = new ByteArrayOutputStream();
        byte[] part = new byte[16 * 1024];
        try {
            for (int count = in.read(part); count >= 0; count = in.read(part)) {
                all.write(part, 0, count);
            }
        } catch (SocketException reset) {
            // bytes the server left unread turn its close into a reset
        }
        return all.size() == 0 ? null : reply(all.toByteArray());
    }

    private static Reply reply(byte[] bytes) throws IOException {
        String text = new String(bytes, StandardCharsets.ISO_8859_1);
        int end = text.indexOf("\r\n\r\n");
        List<String> head = text.substring(0, end).lines().toList();
        int status = Integer.parseInt(head.get(0).split(" ")[1]);
        if (status == 100) {
            return reply(text.substring(end + 4).getBytes(StandardCharsets.ISO_8859_1));
        }
        Map<String, String> headers = new LinkedHashMap<>();
        head.stream().skip(1).forEach(line -> headers.put(line.substring(0, line.indexOf(':')).toLowerCase(Locale.ROOT),
                line.substring(line.indexOf(':') + 1).strip()));
        byte[] body = text.substring(end + 4).getBytes(StandardCharsets.ISO_8859_1);
        int length = headers.containsKey("content-length") ? Integer.parseInt(headers.get("content-length")) : body.length;
        return new Reply(status, headers, new String(body, 0, Math.min(length, body.length), StandardCharsets.UTF_8));
    }

    static byte[] joined(String head, byte[] body) {
        ByteArrayOutputStream all = new ByteArrayOutputStream();
        all.writeBytes(head.getBytes(StandardCharsets.ISO_8859_1));
        all.writeBytes(body);
        return all.toByteArray();
    }

    /** A problem is what the description says of it, and says its own status. */
    static void assertProblem(int status, Reply reply) {
        assertEquals(status, reply.status(), reply.body());
        assertEquals(Problem.MEDIA_TYPE, reply.mediaType(), reply.body());
        assertEquals(List.of(), OPEN_API.faultsAs("Problem", reply.json()), reply.body());
        assertEquals(status, reply.json().path("status").asInt());
    }
}
