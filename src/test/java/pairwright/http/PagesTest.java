package pairwright.http;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** What a browser is told with each page, and that a page needs nothing from anywhere else. */
class PagesTest {
    private static final HttpClient CLIENT = HttpClient.newHttpClient();
    private static final List<String> STARTS = List.of("/", "/guide", "/catalogue", "/rules", "/numbers",
            "/?words=brushed+snare%2C+dark%2C+small+room%2C+no+phantom", "/?words=acoustic+guitar+and+voice&units=imperial");
    private static final Pattern LINK = Pattern.compile("(?:href|src|action)=\"([^\"]*)\"");
    private static final Pattern ID = Pattern.compile("\\sid=\"([^\"]*)\"");
    private static final Pattern INLINE = Pattern.compile("(?i)\\sstyle\\s*=|<style|<script(?![^>]*\\ssrc=)|\\son[a-z]+\\s*=\\s*[\"']|javascript:|<iframe|<base\\b");
    private static final Pattern HOST = Pattern.compile("(?i)(?:https?:)?//[a-z0-9][a-z0-9.-]*\\.[a-z]{2,}");
    private static final int MOST_OF_A_KIND = 4;

    @Test
    void pagesStylesScriptsAndPicturesAreCompressed() {
        String page = get("/guide", Map.of()).body();
        for (String address : List.of("/guide", asset(page, "css"), asset(page, "js"))) {
            HttpResponse<byte[]> packed = bytes(address, Map.of("Accept-Encoding", "gzip, deflate, br"));
            assertEquals("gzip", packed.headers().firstValue("Content-Encoding").orElse("none"), address);
            assertTrue(String.join(",", packed.headers().allValues("Vary")).contains("Accept-Encoding"), address + " " + packed.headers().map());
            int plain = bytes(address, Map.of()).body().length;
            assertTrue(packed.body().length < plain * 0.6, address);
            System.out.println(address + ": " + packed.body().length + " bytes on the line of " + plain);
        }
    }

    @Test
    void aBrowserThatHasAPageIsToldSoAndNothingMore() {
        HttpResponse<String> first = get("/guide", Map.of());
        String tag = first.headers().firstValue("ETag").orElseThrow();
        assertEquals("no-cache", first.headers().firstValue("Cache-Control").orElse(null));
        for (String had : List.of(tag, "\"other\", " + tag, "*")) {
            HttpResponse<String> again = get("/guide", Map.of("If-None-Match", had));
            assertEquals(304, again.statusCode());
            assertEquals("", again.body());
            assertEquals(tag, again.headers().firstValue("ETag").orElse(null));
        }
        assertEquals(200, get("/guide", Map.of("If-None-Match", "W/\"other\"")).statusCode());
        assertEquals(first.body(), get("/guide", Map.of()).body());
        HttpResponse<String> imperial = get("/guide?units=imperial", Map.of("If-None-Match", tag));
        assertEquals(200, imperial.statusCode(), "another page has another mark");
    }

    @Test
    void askingForTheHeadSaysTheSameAsThePage() {
        HttpResponse<String> head = send(HttpRequest.newBuilder(uri("/guide")).method("HEAD", HttpRequest.BodyPublishers.noBody()).build());
        HttpResponse<String> page = get("/guide", Map.of());
        assertEquals("", head.body());
        for (String name : List.of("ETag", "Content-Type", "Content-Security-Policy", "Cache-Control")) {
            assertEquals(page.headers().firstValue(name), head.headers().firstValue(name), name);
        }
    }

    @Test
    void whatHasTheMarkOfItsContentIsKeptForGood() {
        String page = get("/guide", Map.of()).body();
        for (String ending : List.of("css", "js", "svg")) {
            HttpResponse<String> asset = get(asset(page, ending), Map.of());
            assertEquals(200, asset.statusCode());
            assertEquals("public, max-age=31536000, immutable", asset.headers().firstValue("Cache-Control").orElse(null));
            assertEquals("nosniff", asset.headers().firstValue("X-Content-Type-Options").orElse(null));
        }
        assertEquals(404, get("/assets/page.0000.css", Map.of()).statusCode());
    }

    @Test
    void aPersonIsToldWhatWentWrongOnAPageAndAProgramInItsOwnForm() {
        String odd = "/no/such%3Cscript%3Ealert(1)";
        HttpResponse<String> page = get(odd, Map.of("Accept", "text/html,application/xhtml+xml,*/*;q=0.8"));
        assertEquals(404, page.statusCode());
        assertEquals("text/html;charset=utf-8", page.headers().firstValue("Content-Type").orElse("").replace(" ", "").toLowerCase(Locale.ROOT));
        assertTrue(page.body().contains("There is nothing at"), page.body());
        assertFalse(page.body().contains("<script>alert"), page.body());
        assertTrue(page.headers().firstValue("Content-Security-Policy").isPresent());
        assertNull(page.headers().firstValue("ETag").orElse(null));
        HttpResponse<String> program = get(odd, Map.of("Accept", "application/json"));
        assertEquals(404, program.statusCode());
        assertTrue(program.headers().firstValue("Content-Type").orElse("").startsWith(Problem.MEDIA_TYPE));
        HttpResponse<String> noUtf8 = get("/guide?units=%ff", Map.of("Accept", "text/html"));
        assertTrue(noUtf8.statusCode() < 500, noUtf8.body());
    }

    @Test
    void everyPageOneCanReachLoadsNothingFromElsewhereAndHasNoScriptOrStyleInIt() {
        List<String> faults = new ArrayList<>();
        Map<String, String> pages = crawled();
        pages.forEach((address, page) -> {
            Matcher inline = INLINE.matcher(page);
            if (inline.find()) {
                faults.add(address + ": " + around(page, inline.start()));
            }
            Matcher loaded = Pattern.compile("<(?:script|link|img|source|use|image|object|embed)\\b[^>]*(?:src|href|data)=\"([^\"]*)\"").matcher(page);
            while (loaded.find()) {
                if (!loaded.group(1).startsWith("/") || loaded.group(1).startsWith("//")) {
                    faults.add(address + " loads " + loaded.group(1));
                }
            }
            Matcher host = HOST.matcher(page.replace("http://www.w3.org/2000/svg", "").replace("http://www.w3.org/1999/xlink", ""));
            if (host.find()) {
                faults.add(address + ": " + around(page, page.indexOf(host.group())));
            }
        });
        assertEquals(List.of(), faults);
        assertTrue(pages.size() >= 1);
        String guide = pages.get("/guide");
        for (String ending : List.of("css", "js", "svg")) {
            String asset = get(asset(guide, ending), Map.of()).body().replace("http://www.w3.org/2000/svg", "");
            assertFalse(HOST.matcher(asset).find(), asset(guide, ending));
            assertFalse(asset.contains("@import"), asset(guide, ending));
        }
    }

    @Test
    void everyPageOneCanReachHasOneHeadingOfItsOwnATitleAndNoTwoOfOneId() {
        List<String> faults = new ArrayList<>();
        crawled().forEach((address, page) -> {
            if (page.split("<h1", -1).length != 2) {
                faults.add(address + " has " + (page.split("<h1", -1).length - 1) + " headings of the first level");
            }
            if (!page.contains("<html lang=\"en\">") || !page.contains("· Pairwright</title>")) {
                faults.add(address + " has no title or no language");
            }
            Set<String> ids = new HashSet<>();
            Matcher id = ID.matcher(page);
            while (id.find()) {
                if (!ids.add(id.group(1))) {
                    faults.add(address + " has two of " + id.group(1));
                }
            }
        });
        assertEquals(List.of(), faults);
    }

    /** Pages reached by links, a few of each kind. */
    private static Map<String, String> crawled() {
        Map<String, String> pages = new LinkedHashMap<>();
        Map<String, Integer> ofKind = new TreeMap<>();
        Deque<String> open = new ArrayDeque<>(STARTS);
        while (!open.isEmpty()) {
            String address = open.poll();
            String kind = address.replaceAll("\\?.*", "").replaceAll("^(/[^/]+/).+", "$1");
            if (pages.containsKey(address) || ofKind.merge(kind, 1, Integer::sum) > MOST_OF_A_KIND + STARTS.size()) {
                continue;
            }
            HttpResponse<String> page = get(address, Map.of("Accept", "text/html"));
            if (!page.headers().firstValue("Content-Type").orElse("").startsWith("text/html")) {
                continue;
            }
            assertTrue(page.headers().firstValue("Content-Security-Policy").orElse("").contains("script-src 'self'"), address);
            assertTrue(page.statusCode() < 500, address);
            pages.put(address, page.body());
            Matcher links = LINK.matcher(page.body());
            while (links.find()) {
                String to = links.group(1).replace("&amp;", "&").replaceAll("#.*", "");
                if (to.startsWith("/") && !to.startsWith("//") && !to.startsWith("/assets/")) {
                    open.add(to);
                }
            }
        }
        return pages;
    }

    private static String asset(String page, String ending) {
        Matcher found = Pattern.compile("\"(/assets/(?:page|mark)\\.[0-9a-f]+\\." + ending + ")\"").matcher(page);
        assertTrue(found.find(), ending);
        return found.group(1);
    }

    private static String around(String page, int at) {
        return page.substring(Math.max(0, at - 60), Math.min(page.length(), at + 100)).replace('\n', ' ');
    }

    private static URI uri(String address) {
        return URI.create("http://127.0.0.1:" + Serving.port() + address);
    }

    private static HttpResponse<String> get(String address, Map<String, String> headers) {
        HttpRequest.Builder request = HttpRequest.newBuilder(uri(address));
        headers.forEach(request::header);
        return send(request.build());
    }

    private static HttpResponse<String> send(HttpRequest request) {
        try {
            return CLIENT.send(request, HttpResponse.BodyHandlers.ofString());
        } catch (IOException | InterruptedException broken) {
            throw new AssertionError(request.uri().toString(), broken);
        }
    }

    private static HttpResponse<byte[]> bytes(String address, Map<String, String> headers) {
        HttpRequest.Builder request = HttpRequest.newBuilder(uri(address));
        headers.forEach(request::header);
        try {
            return CLIENT.send(request.build(), HttpResponse.BodyHandlers.ofByteArray());
        } catch (IOException | InterruptedException broken) {
            throw new AssertionError(address, broken);
        }
    }
}
