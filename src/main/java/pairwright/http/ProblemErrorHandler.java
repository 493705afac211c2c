package pairwright.http;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import org.eclipse.jetty.http.HttpField;
import org.eclipse.jetty.http.HttpHeader;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.server.handler.ErrorHandler;
import org.eclipse.jetty.util.Callback;

/** Faults the server finds before any route sees the request (a broken address, headers too large) are problems as well. */
final class ProblemErrorHandler extends ErrorHandler {
    private static final HttpField TYPE = new HttpField(HttpHeader.CONTENT_TYPE, Problem.MEDIA_TYPE);
    private final ObjectMapper json;

    ProblemErrorHandler(ObjectMapper json) {
        this.json = json;
    }

    @Override
    public boolean handle(Request request, Response response, Callback callback) {
        int status = response.getStatus() < 400 ? 500 : response.getStatus();
        response.getHeaders().put(TYPE);
        response.write(true, ByteBuffer.wrap(body(status)), callback);
        return true;
    }

    private byte[] body(int status) {
        String detail = switch (status) {
            case 431 -> "The headers are too large. Send fewer or shorter ones";
            case 414 -> "The address is too long. Send long questions in the body";
            case 503 -> "The server is starting or stopping. Try again in a moment";
            default -> "The request is not well-formed HTTP for this server";
        };
        return Routes.write(json, Problem.of(status, detail)).getBytes(StandardCharsets.UTF_8);
    }
}
