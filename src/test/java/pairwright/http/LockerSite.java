package pairwright.http;

import java.io.IOException;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jsoup.nodes.Element;
import pairwright.locker.Locker;
import pairwright.locker.Place;
import pairwright.locker.Role;

/** A server with a real locker in a folder, and its pages as somebody with a browser and no script uses them. */
final class LockerSite implements AutoCloseable {
    final Locker locker;
    private final Server server;
    private final Map<String, String> tokens = new HashMap<>();
    private final HttpClient client = HttpClient.newHttpClient();

    LockerSite(Path data) {
        this(data, Map.of());
    }

    /** The same where everybody needs a token; who comes in as somebody has one. */
    LockerSite(Path data, Map<String, Role> people) {
        locker = Locker.open(Place.in(data), () -> Serving.KNOWLEDGE.current().catalogue(), Clock.systemDefaultZone());
        people.forEach((name, role) -> tokens.put(name, locker.tokens().add(name, role)));
        server = Server.start(Serving.KNOWLEDGE, locker, new Listen("127.0.0.1", 0, List.of(), !people.isEmpty()));
    }

    /** What came of a request. */
    record Got(int status, String location, Document page) {
        String text() {
            return page.page().select("main").text();
        }
    }

    /** What somebody with a token gets. */
    Got get(String address, String who) {
        return sent(HttpRequest.newBuilder(uri(address)).header("Authorization", "Bearer " + tokens.get(who)));
    }

    /** Sends a form as somebody with a token. */
    Got post(String address, Map<String, String> fields, String who) {
        return sent(HttpRequest.newBuilder(uri(address)).header("Content-Type", "application/x-www-form-urlencoded").header("Origin", "http://127.0.0.1:" + server.port())
                .header("Authorization", "Bearer " + tokens.get(who)).POST(HttpRequest.BodyPublishers.ofString(joined(fields))));
    }

    /** What a program sends and gets. */
    HttpResponse<String> api(String method, String address, String body) {
        return exchange(HttpRequest.newBuilder(uri(address)).header("Content-Type", "application/json").method(method,
                body.isEmpty() ? HttpRequest.BodyPublishers.noBody() : HttpRequest.BodyPublishers.ofString(body)));
    }

    /** What a page's script sends of a form, and gets. */
    HttpResponse<String> phone(String address, String body) {
        return exchange(HttpRequest.newBuilder(uri(address)).header("Content-Type", "application/x-www-form-urlencoded").header("Origin", "http://127.0.0.1:" + server.port())
                .header("Accept", "application/json").POST(HttpRequest.BodyPublishers.ofString(body)));
    }

    /** A page with its headers, as a browser asks for it that has seen it before. */
    HttpResponse<String> again(String address, String mark) {
        return exchange(HttpRequest.newBuilder(uri(address)).header("If-None-Match", mark));
    }

    private HttpResponse<String> exchange(HttpRequest.Builder request) {
        try {
            return client.send(request.build(), HttpResponse.BodyHandlers.ofString());
        } catch (IOException | InterruptedException broken) {
            throw new AssertionError(broken);
        }
    }

    Got get(String address) {
        return sent(HttpRequest.newBuilder(uri(address)));
    }

    String raw(String address) {
        return exchange(HttpRequest.newBuilder(uri(address))).body();
    }

    /** Sends a form as a browser does that has no script: as it stands on the page, but for what is filled in. */
    Got send(Got page, String form, Map<String, String> filled) {
        Element shown = page.page().page().selectFirst("form#" + form);
        if (shown == null) {
            throw new AssertionError("no form " + form + " in " + page.text());
        }
        return post(shown.attr("action"), fields(shown, filled));
    }

    /** The same with just these boxes of one name ticked, and whatever of that name is sent along unseen. */
    Got send(Got page, String form, Map<String, String> filled, String name, List<String> ticked) {
        Element shown = page.page().page().selectFirst("form#" + form);
        return posted(shown.attr("action"), query(shown, filled, name, ticked));
    }

    /** Asks with what stands in a form, by the button that only asks. */
    Got look(Got page, String form, Map<String, String> filled, String name, List<String> ticked) {
        Element shown = page.page().page().selectFirst("form#" + form);
        return get(shown.selectFirst("button[formmethod=get]").attr("formaction") + "?" + query(shown, filled, name, ticked));
    }

    private static String query(Element form, Map<String, String> filled, String name, List<String> ticked) {
        Map<String, String> fields = fields(form, filled);
        fields.remove(name);
        List<String> values = new ArrayList<>(form.select("input[type=hidden][name=" + name + "]").eachAttr("value"));
        ticked.forEach(value -> {
            if (form.select("input[type=checkbox][name=" + name + "][value=" + value + "]").isEmpty()) {
                throw new AssertionError("no box " + name + " " + value + " in " + form.text());
            }
            values.add(value);
        });
        return joined(fields) + values.stream().map(value -> "&" + name + "=" + encoded(value)).collect(Collectors.joining());
    }

    private static String joined(Map<String, String> fields) {
        return fields.entrySet().stream().map(field -> encoded(field.getKey()) + "=" + encoded(field.getValue())).collect(Collectors.joining("&"));
    }

    Got post(String address, Map<String, String> fields) {
        return posted(address, joined(fields));
    }

    private Got posted(String address, String body) {
        return sent(HttpRequest.newBuilder(uri(address)).header("Content-Type", "application/x-www-form-urlencoded").header("Origin", "http://127.0.0.1:" + server.port())
                .POST(HttpRequest.BodyPublishers.ofString(body)));
    }

    static Map<String, String> fields(Element form, Map<String, String> filled) {
        Map<String, String> fields = new LinkedHashMap<>();
        List<String> unknown = new ArrayList<>(filled.keySet());
        for (Element control : form.select("input, select, textarea")) {
            String name = control.attr("name");
            unknown.remove(name);
            if (filled.containsKey(name)) {
                fields.put(name, filled.get(name));
            } else if (control.tagName().equals("select")) {
                Element chosen = control.selectFirst("option[selected]");
                fields.put(name, (chosen == null ? control.selectFirst("option") : chosen).attr("value"));
            } else if (!List.of("checkbox", "radio").contains(control.attr("type")) || control.hasAttr("checked")) {
                fields.put(name, control.tagName().equals("textarea") ? control.wholeText() : control.attr("value"));
            }
        }
        if (!unknown.isEmpty()) {
            throw new AssertionError("the form has no " + unknown);
        }
        return fields;
    }

    private Got sent(HttpRequest.Builder request) {
        HttpResponse<String> got = exchange(request.header("Accept", "text/html,application/xhtml+xml,*/*;q=0.8"));
        return new Got(got.statusCode(), got.headers().firstValue("Location").map(to -> to.replaceFirst("^https?://[^/]*", "")).orElse(""), new Document(got.body()));
    }

    private URI uri(String address) {
        return URI.create("http://127.0.0.1:" + server.port() + address);
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }

    @Override
    public void close() {
        server.close();
        locker.close();
    }
}
