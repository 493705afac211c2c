package pairwright.http;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import org.eclipse.jetty.http.HttpField;
import org.eclipse.jetty.http.HttpHeader;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.server.handler.ErrorHandler;
import org.eclipse.jetty.util.Callback;

/** Faults the server finds before any route sees the request (a broken address, headers too large) are told as all others are. */
final class ProblemErrorHandler extends ErrorHandler {
    private static final HttpField TYPE = new HttpField(HttpHeader.CONTENT_TYPE, Problem.MEDIA_TYPE);
    private static final HttpField PAGE = new HttpField(HttpHeader.CONTENT_TYPE, "text/html; charset=utf-8");
    private final Faults faults;

    ProblemErrorHandler(Faults faults) {
        this.faults = faults;
    }

    @Override
    public boolean handle(Request request, Response response, Callback callback) {
        int status = response.getStatus() < 400 ? 500 : response.getStatus();
        boolean isPage = Faults.wantsPage(request.getHeaders().get(HttpHeader.ACCEPT), String.valueOf(request.getHttpURI().getPath()));
        response.getHeaders().put(isPage ? PAGE : TYPE);
        if (isPage) {
            response.getHeaders().put("Content-Security-Policy", PageHeaders.ONLY_OURS);
        }
        Problem problem = problem(status);
        String body = isPage ? faults.page(problem, Faults.unknown()) : faults.problem(problem);
        response.write(true, ByteBuffer.wrap(body.getBytes(StandardCharsets.UTF_8)), callback);
        return true;
    }

    private static Problem problem(int status) {
        String detail = switch (status) {
            case 431 -> "The headers are too large. Send fewer or shorter ones";
            case 414 -> "The address is too long. Send long questions in the body";
            case 408 -> "The request did not arrive in time. Send it in one go";
            case 503 -> "The server is starting or stopping. Try again in a moment";
            case 500 -> "The program made a mistake; the log of the server says more";
            case 505 -> "Only HTTP/1.0 and HTTP/1.1 are spoken here";
            default -> "The request is not well-formed HTTP for this server. Let a client library write it";
        };
        return Problem.of(status, detail);
    }
}
