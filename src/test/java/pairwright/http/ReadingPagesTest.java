package pairwright.http;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.zip.GZIPOutputStream;
import org.jsoup.select.Elements;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import pairwright.advice.Knowledge;
import pairwright.model.Catalogue;
import pairwright.numbers.Numbers;
import pairwright.rules.RuleInfo;

/** Every entry and every rule can be read, and everything they name can be followed. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class ReadingPagesTest {
    private static final List<String> PARTS = List.of("/catalogue", "/sources", "/mics", "/characters", "/rooms", "/techniques", "/complaints", "/rules");
    private static final int MOST_BYTES = 60 * 1024;

    private final Site site = new Site(Serving.port());
    private final Map<String, Document> read = new LinkedHashMap<>();
    private final List<String> broken = new ArrayList<>();

    @BeforeAll
    void everyPageThatLinksLeadToIsRead() {
        Map<String, Set<String>> places = new HashMap<>();
        Deque<String> open = new ArrayDeque<>(List.of("/catalogue", "/rules", "/sources?units=imperial"));
        while (!open.isEmpty()) {
            String address = open.poll();
            if (read.containsKey(address)) {
                continue;
            }
            HttpResponse<String> got = site.get(address);
            if (got.statusCode() != 200) {
                broken.add(address + " is " + got.statusCode());
                continue;
            }
            Document page = new Document(got.body());
            read.put(address, page);
            places.put(address, page.ids());
            for (String link : page.links()) {
                String target = link.startsWith("#") ? address + link : link;
                String there = target.contains("#") ? target.substring(0, target.indexOf('#')) : target;
                if (isOurs(there) && !there.contains("units=imperial")) {
                    open.add(there);
                } else if (!isThere(URI.create(there).getPath())) {
                    broken.add(address + " leads to " + there + ", where there is nothing");
                }
            }
        }
        for (Map.Entry<String, Document> one : read.entrySet()) {
            for (String link : one.getValue().links()) {
                int hash = link.indexOf('#');
                String there = hash < 0 ? null : hash == 0 ? one.getKey() : link.substring(0, hash);
                if (hash >= 0 && places.containsKey(there) && !places.get(there).contains(link.substring(hash + 1))) {
                    broken.add(one.getKey() + " leads to " + link + ", which is not there");
                }
            }
        }
    }

    @Test
    void noLinkLeadsNowhere() {
        assertEquals(List.of(), broken);
    }

    @Test
    void askingAboutASourceByItsNameIsUnderstood() {
        List<String> otherwise = new ArrayList<>();
        known().catalogue().sources().values().forEach(source -> {
            String understood = known().reader().read(source.name()).question().source();
            if (!source.id().equals(understood)) {
                otherwise.add(source.name() + " is taken for " + understood);
            }
            assertTrue(read.get("/sources/" + source.id()).links().contains("/?words=" + URLEncoder.encode(source.name(), StandardCharsets.UTF_8)), source.id());
        });
        assertEquals(List.of(), otherwise);
    }

    @Test
    void everyWorkedNumberThatIsNamedExists() {
        Numbers numbers = new Numbers();
        read.values().stream().flatMap(page -> page.links().stream()).filter(link -> link.startsWith("/numbers/")).distinct()
                .forEach(link -> assertTrue(numbers.info(URI.create(link).getPath().substring("/numbers/".length())).isPresent(), link));
    }

    @Test
    void everyEntryAndEveryRuleIsReachedAndHasItsNameAsHeading() {
        Map<String, String> expected = new LinkedHashMap<>();
        Catalogue catalogue = known().catalogue();
        catalogue.sources().values().forEach(one -> expected.put("/sources/" + one.id(), one.name()));
        catalogue.mics().values().forEach(one -> expected.put("/mics/" + one.id(), one.name()));
        catalogue.characters().values().forEach(one -> expected.put("/characters/" + one.id(), one.name()));
        catalogue.rooms().values().forEach(one -> expected.put("/rooms/" + one.id(), one.name()));
        catalogue.techniques().values().forEach(one -> expected.put("/techniques/" + one.id(), one.name()));
        catalogue.complaints().values().forEach(one -> expected.put("/complaints/" + one.id(), one.name()));
        known().rules().rules().forEach(one -> expected.put("/rules/" + one.id(), one.title()));
        Map<String, String> found = new LinkedHashMap<>();
        expected.keySet().forEach(address -> found.put(address, read.containsKey(address) ? read.get(address).heading() : "not reached"));
        assertEquals(expected, found);
    }

    @Test
    void everyPageIsWrittenAsItShouldBe() {
        List<String> faults = new ArrayList<>();
        read.forEach((address, page) -> page.faults().forEach(fault -> faults.add(address + ": " + fault)));
        assertEquals(List.of(), faults);
    }

    @Test
    void whoeverNamesAnotherIsNamedThere() {
        List<String> oneWay = new ArrayList<>();
        for (String address : read.keySet()) {
            for (Map.Entry<String, String> pair : Map.of("/mics/", "/sources/", "/techniques/", "/sources/", "/characters/", "/characters/",
                    "/sources/", "/complaints/").entrySet()) {
                if (address.startsWith(pair.getKey())) {
                    for (String named : named(address, pair.getValue())) {
                        if (!leadsBack(named, address)) {
                            oneWay.add(address + " names " + named + ", which does not name it");
                        }
                    }
                }
                if (address.startsWith(pair.getValue())) {
                    for (String named : named(address, pair.getKey())) {
                        if (!leadsBack(named, address)) {
                            oneWay.add(address + " names " + named + ", which does not name it");
                        }
                    }
                }
            }
        }
        assertEquals(List.of(), oneWay);
        assertTrue(named("/mics/long-ribbon", "/sources/").size() > 5, "the ribbon is named by sources");
    }

    /** A complaint names a family of sources where a move is for all of it. */
    private boolean leadsBack(String from, String to) {
        if (named(from, to).contains(to)) {
            return true;
        }
        String id = to.substring(to.lastIndexOf('/') + 1);
        return from.startsWith("/complaints/") && to.startsWith("/sources/")
                && read.get(from).links().contains("/sources#" + known().catalogue().sources().get(id).family().id());
    }

    private Set<String> named(String address, String start) {
        Set<String> named = new TreeSet<>();
        read.get(address).page().select("main a[href]").eachAttr("href").stream().map(link -> link.contains("#") ? link.substring(0, link.indexOf('#')) : link)
                .filter(link -> link.startsWith(start) && !link.equals(address)).forEach(named::add);
        return named;
    }

    @Test
    void aRuleSaysItsSentenceItsReasonAndAllItsCases() {
        for (RuleInfo rule : known().rules().rules()) {
            String text = read.get("/rules/" + rule.id()).page().select("main").text();
            assertTrue(text.contains(spaced(rule.why())), rule.id() + " says why");
            assertTrue(text.contains(spaced(rule.basis())), rule.id() + " says its basis");
            assertFalse(text.contains("{"), rule.id() + " has a name in braces: " + text);
            rule.cases().forEach(one -> assertTrue(text.contains(spaced(one.says())), rule.id() + " has its case: " + one.says()));
            rule.practice().forEach(one -> assertTrue(text.contains(spaced(one.says())), rule.id() + " has its statement: " + one.says()));
        }
    }

    @Test
    void cautionsStandBeforeWhatElseAnEntrySays() {
        known().catalogue().mics().values().stream().filter(mic -> !mic.handling().isEmpty()).forEach(mic -> {
            Elements order = read.get("/mics/" + mic.id()).page().select("main section");
            assertTrue(order.get(0).hasClass("care"), mic.id() + " begins with how to handle it");
            mic.handling().forEach(sentence -> assertTrue(order.get(0).text().contains(spaced(sentence)), mic.id() + ": " + sentence));
        });
        known().catalogue().sources().values().stream().filter(source -> !source.care().isEmpty()).forEach(source -> {
            Elements order = read.get("/sources/" + source.id()).page().select("main section");
            assertTrue(order.get(0).hasClass("care"), source.id() + " begins with care");
            source.care().forEach(sentence -> assertTrue(order.get(0).text().contains(spaced(sentence)), source.id() + ": " + sentence));
            source.positions().forEach(position -> position.dangers().forEach(danger -> {
                String place = read.get("/sources/" + source.id()).page().select("#place-" + position.id() + " .care").text();
                assertTrue(place.contains(spaced(danger.says())), source.id() + " " + position.id() + ": " + danger.says());
            }));
        });
        assertTrue(read.values().stream().allMatch(page -> page.page().select("details .care, details .danger").isEmpty()), "no caution is folded away");
    }

    @Test
    void noPageIsLargerThanAPhoneLikes() throws IOException {
        String largest = "";
        int most = 0;
        for (String address : read.keySet()) {
            ByteArrayOutputStream packed = new ByteArrayOutputStream();
            try (GZIPOutputStream gzip = new GZIPOutputStream(packed)) {
                gzip.write(site.get(address).body().getBytes(StandardCharsets.UTF_8));
            }
            if (packed.size() > most) {
                most = packed.size();
                largest = address;
            }
        }
        assertTrue(most < MOST_BYTES, largest + " takes " + most + " bytes");
    }

    @Test
    void theReaderHasFeetAndInchesAndKeepsThem() {
        Document page = site.page("/sources/snare-drum?units=imperial");
        assertTrue(page.page().select(".places").text().contains(" in"), page.page().select(".places").text());
        assertFalse(page.page().select(".places").text().contains(" cm"));
        page.page().select("main a[href^=/]").eachAttr("href").forEach(link -> assertTrue(link.contains("units=imperial"), link));
    }

    /** A part of the site that this test does not read through: asked for once, whatever the question. */
    private boolean isThere(String path) {
        return site.get(path).statusCode() == 200;
    }

    private static boolean isOurs(String address) {
        String path = URI.create(address).getPath();
        return PARTS.stream().anyMatch(part -> path.equals(part) || path.startsWith(part + "/"));
    }

    private static String spaced(String text) {
        return text.replaceAll("\\s+", " ").strip();
    }

    private static Knowledge known() {
        return Serving.KNOWLEDGE.current();
    }
}
