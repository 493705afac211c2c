package pairwright.http;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.util.HashMap;
import java.util.Map;

/** The pages of a server as somebody with a browser gets them; each is fetched once. */
final class Site {
    private final HttpClient client = HttpClient.newHttpClient();
    private final String server;
    private final Map<String, HttpResponse<String>> fetched = new HashMap<>();

    Site(int port) {
        this.server = "http://127.0.0.1:" + port;
    }

    /** What is at an address; what follows a hash is no part of it. */
    HttpResponse<String> get(String address) {
        int hash = address.indexOf('#');
        return fetched.computeIfAbsent(hash < 0 ? address : address.substring(0, hash), this::fetch);
    }

    Document page(String address) {
        return new Document(get(address).body());
    }

    private HttpResponse<String> fetch(String address) {
        try {
            return client.send(HttpRequest.newBuilder(URI.create(server + address)).header("Accept", "text/html,application/xhtml+xml,*/*;q=0.8").build(),
                    HttpResponse.BodyHandlers.ofString());
        } catch (IOException broken) {
            throw new AssertionError(address, broken);
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new AssertionError(address, stopped);
        }
    }
}
