package pairwright.http;

import io.javalin.http.Context;
import java.net.URI;
import java.net.URISyntaxException;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import pairwright.catalogue.Shown;

/**
 * Whether a request means this server and comes from a page of it. A browser can be made to send requests here by any page it shows, and a name of
 * another's can be pointed at this machine; neither can change the name that was asked for, or the origin that is told.
 */
final class Hosts {
    private static final Pattern AUTHORITY = Pattern.compile("(\\[[0-9a-fA-F:.%]+]|[^\\[\\]:/?#@\\s]+)(?::(\\d{0,5}))?");
    private static final Pattern LOOPBACK = Pattern.compile("localhost|127(\\.\\d{1,3}){3}|::1");
    private static final Set<String> WRITES = Set.of("POST", "PUT", "PATCH", "DELETE");

    private final Set<String> names;

    Hosts(Listen listen) {
        names = Stream.concat(Stream.of(listen.host()), listen.names().stream()).map(Hosts::name).collect(Collectors.toUnmodifiableSet());
    }

    /** Ends a request that means another server, or that a page of another server sent to change something. */
    void check(Context context) {
        String host = context.header("Host");
        if (host == null || !AUTHORITY.matcher(host).matches()) {
            throw new BadRequest(Problem.of(400, "The Host header is " + (host == null ? "missing" : "\"" + Shown.of(host) + "\", which is no name")
                    + ". Send the name or address of this server there"));
        }
        String name = name(host);
        if (!LOOPBACK.matcher(name).matches() && !names.contains(name) && !name.equals(name(context.req().getLocalAddr()))) {
            throw new BadRequest(Problem.of(421, "This server does not go by the name \"" + Shown.of(name) + "\". Use its address, or start it with --allow-host "
                    + Shown.of(name)));
        }
        if (WRITES.contains(context.method().name())) {
            sentByOurs(context, host);
        }
    }

    private static void sentByOurs(Context context, String host) {
        String site = context.header("Sec-Fetch-Site"); // a browser sets it, and no script can
        if (site != null && !site.equals("same-origin") && !site.equals("none")) {
            throw stranger("another site");
        }
        String origin = context.header("Origin");
        if (origin != null && !origin.equals("null") && !sameAuthority(origin, host)) {
            throw stranger(Shown.of(origin));
        }
        if ("null".equals(origin) && site == null) {
            throw stranger("nowhere that can be told");
        }
    }

    private static BadRequest stranger(String from) {
        return new BadRequest(Problem.of(403, "This was sent by a page from " + from + ", and only pages of this server may do that. "
                + "Use its own pages; if a proxy stands before it, let the proxy pass the Host header on"));
    }

    /** The scheme is left open: a proxy may speak another one than this server. */
    private static boolean sameAuthority(String origin, String host) {
        try {
            String authority = new URI(origin).getRawAuthority();
            return authority != null && withoutUsualPort(authority).equals(withoutUsualPort(host));
        } catch (URISyntaxException nonsense) {
            return false;
        }
    }

    private static String withoutUsualPort(String authority) {
        return authority.toLowerCase(Locale.ROOT).replaceFirst(":(80|443)?$", "");
    }

    /** A host without its port, as it is compared. */
    static String name(String authority) {
        var parts = AUTHORITY.matcher(authority);
        String host = parts.matches() ? parts.group(1) : authority; // an IPv6 address without brackets is no authority
        return host.toLowerCase(Locale.ROOT).replaceAll("^\\[|]$", "").replaceFirst("(?<=.)\\.$", "");
    }
}
