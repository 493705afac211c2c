package pairwright.http;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** A page as a tree. Stricter than a browser: what is not closed where it was opened is a fault. */
final class Markup {
    private static final Set<String> VOID = Set.of("input", "meta", "link", "img", "br", "hr", "wbr");
    private static final Set<String> RAW = Set.of("script", "style");
    private static final Pattern TAG = Pattern.compile("<(/?)([a-zA-Z][a-zA-Z0-9-]*)((?:\\s+[^\\s=/>\"']+(?:=(?:\"[^\"]*\"|'[^']*'|[^\\s>\"']+))?)*)\\s*(/?)>|<!doctype html>|<[^>]*>?");
    private static final Pattern ATTRIBUTE = Pattern.compile("([^\\s=/>\"']+)(?:=(?:\"([^\"]*)\"|'([^']*)'|([^\\s>\"']+)))?");

    private final String name;
    private final Map<String, String> attributes;
    private final Markup parent;
    private final List<Object> content = new ArrayList<>();

    private Markup(String name, Map<String, String> attributes, Markup parent) {
        this.name = name;
        this.attributes = attributes;
        this.parent = parent;
    }

    static Markup of(String html) {
        Markup root = new Markup("", Map.of(), null);
        Deque<Markup> open = new ArrayDeque<>();
        open.push(root);
        Matcher tag = TAG.matcher(html);
        int at = 0;
        while (tag.find(at)) {
            open.peek().content.add(plain(html.substring(at, tag.start())));
            at = tag.end();
            if (tag.group().equalsIgnoreCase("<!doctype html>")) {
                continue;
            }
            assertFalse(tag.group(2) == null, () -> "no tag: " + tag.group());
            String name = tag.group(2);
            if (!tag.group(1).isEmpty()) {
                assertEquals(open.pop().name, name, () -> "closed out of order near " + html.substring(Math.max(0, tag.start() - 200), tag.end()));
                continue;
            }
            Markup element = new Markup(name, attributes(tag.group(3)), open.peek());
            open.peek().content.add(element);
            if (RAW.contains(name)) {
                at = html.indexOf("</" + name + ">", at);
            }
            if (!VOID.contains(name) && tag.group(4).isEmpty()) {
                open.push(element);
            }
        }
        root.content.add(plain(html.substring(at)));
        assertEquals(List.of(root), List.copyOf(open), "not closed");
        return root;
    }

    private static Map<String, String> attributes(String text) {
        Map<String, String> attributes = new LinkedHashMap<>();
        Matcher attribute = ATTRIBUTE.matcher(text);
        while (attribute.find()) {
            String value = Stream.of(2, 3, 4).map(attribute::group).filter(one -> one != null).findFirst().orElse("");
            assertEquals(null, attributes.put(attribute.group(1), plain(value)), () -> attribute.group(1) + " twice in " + text);
        }
        return attributes;
    }

    private static String plain(String text) {
        return text.replace("&lt;", "<").replace("&gt;", ">").replace("&quot;", "\"").replace("&#34;", "\"").replace("&#39;", "'").replace("&amp;", "&");
    }

    String name() {
        return name;
    }

    /** An attribute; empty for none. */
    String at(String attribute) {
        return attributes.getOrDefault(attribute, "");
    }

    boolean has(String attribute) {
        return attributes.containsKey(attribute);
    }

    boolean is(String cssClass) {
        return List.of(at("class").split(" ")).contains(cssClass);
    }

    Stream<Markup> all() {
        return content.stream().filter(Markup.class::isInstance).map(Markup.class::cast).flatMap(child -> Stream.concat(Stream.of(child), child.all()));
    }

    List<Markup> all(String element) {
        return all().filter(one -> one.name.equals(element)).toList();
    }

    List<Markup> all(Predicate<Markup> wanted) {
        return all().filter(wanted).toList();
    }

    Markup one(String element) {
        List<Markup> found = all(element);
        assertEquals(1, found.size(), () -> element + " in " + text());
        return found.get(0);
    }

    Markup id(String id) {
        List<Markup> found = all(one -> one.at("id").equals(id));
        assertEquals(1, found.size(), () -> "id " + id);
        return found.get(0);
    }

    boolean within(String element) {
        return parent != null && (parent.name.equals(element) || parent.within(element));
    }

    /** What one reads, blanks made one. */
    String text() {
        return raw().replaceAll("\\s+", " ").strip();
    }

    private String raw() {
        return content.stream().map(one -> one instanceof Markup child ? child.raw() : one.toString()).collect(Collectors.joining());
    }

    /** What a browser sends of a form as it stands, name and value in turn. */
    List<String[]> fields() {
        List<String[]> fields = new ArrayList<>();
        all().forEach(control -> {
            boolean unticked = control.at("type").equals("checkbox") && !control.has("checked");
            if (control.name.equals("input") && !unticked) {
                fields.add(new String[] {control.at("name"), control.at("value")});
            } else if (control.name.equals("select")) {
                List<Markup> options = control.all("option");
                fields.add(new String[] {control.at("name"), options.stream().filter(one -> one.has("selected")).findFirst().orElse(options.get(0)).at("value")});
            }
        });
        return fields;
    }

    /** The address a form leads to with these fields. */
    String sent(List<String[]> fields) {
        return at("action") + "?" + fields.stream().map(field -> field[0] + "=" + URLEncoder.encode(field[1], StandardCharsets.UTF_8)).collect(Collectors.joining("&"));
    }
}
