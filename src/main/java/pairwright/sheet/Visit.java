package pairwright.sheet;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import pairwright.drawing.Reader;

/**
 * What somebody came for.
 *
 * @param path the address, without its query
 * @param query names and values of the query, in the order they were given
 * @param reader who reads
 */
public record Visit(String path, Map<String, List<String>> query, Reader reader) {
    /** The first value of a name; null for none or an empty one. */
    public String first(String name) {
        return query.getOrDefault(name, List.of()).stream().map(String::strip).filter(value -> !value.isEmpty()).findFirst().orElse(null);
    }

    /** Every value of a name that is not empty. */
    public List<String> all(String name) {
        return query.getOrDefault(name, List.of()).stream().map(String::strip).filter(value -> !value.isEmpty()).toList();
    }

    /** An address of this program that keeps the reader's measures. */
    public String to(String address) {
        return reader.imperial() ? address + (address.contains("?") ? "&" : "?") + "units=imperial" : address;
    }

    /** This very address in the other or the same measures. */
    public String same(boolean imperial) {
        StringBuilder address = new StringBuilder();
        query.forEach((name, values) -> {
            if (!name.equals("units") && !name.equals("part")) {
                values.forEach(value -> address.append(address.isEmpty() ? '?' : '&').append(escaped(name)).append('=').append(escaped(value)));
            }
        });
        if (imperial) {
            address.append(address.isEmpty() ? '?' : '&').append("units=imperial");
        }
        int slashes = 0; // two in front would make a host of what follows
        while (slashes + 1 < path.length() && path.charAt(slashes + 1) == '/') {
            slashes++;
        }
        return path.substring(slashes) + address;
    }

    /** Escaped for use in a query. */
    public static String escaped(String value) {
        return URLEncoder.encode(value, StandardCharsets.UTF_8);
    }
}
