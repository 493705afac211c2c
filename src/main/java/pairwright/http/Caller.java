package pairwright.http;

import io.javalin.http.Context;
import java.net.Inet6Address;
import java.net.InetAddress;
import java.net.UnknownHostException;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.regex.Pattern;

/** Where a request comes from, as far as whoever tries tokens is told from others. */
final class Caller {
    private static final Pattern ADDRESS = Pattern.compile("\\d{1,3}(\\.\\d{1,3}){3}|[0-9a-fA-F:.]*:[0-9a-fA-F:.]*");
    /** A household has this much of an IPv6 address for itself, and can change the rest at will. */
    private static final int OWN_BYTES = 8;

    private Caller() {
    }

    /** The other end of the line; where that is a proxy on this machine, whom the proxy saw last. */
    static String of(Context context) {
        String peer = own(context.req().getRemoteAddr());
        String passedOn = context.req().getHeader("X-Forwarded-For");
        if (passedOn == null || !isLoopback(context.req().getRemoteAddr())) {
            return peer;
        }
        String[] seen = passedOn.split(",");
        String last = seen.length == 0 ? "" : seen[seen.length - 1].strip(); // what stands before it was told by the caller
        return ADDRESS.matcher(last).matches() ? own(last) : peer;
    }

    private static boolean isLoopback(String address) {
        InetAddress parsed = parsed(address);
        return parsed != null && parsed.isLoopbackAddress();
    }

    static String own(String address) {
        InetAddress parsed = parsed(address);
        return parsed == null ? address : parsed instanceof Inet6Address
                ? HexFormat.of().formatHex(Arrays.copyOf(parsed.getAddress(), OWN_BYTES)) : parsed.getHostAddress();
    }

    private static InetAddress parsed(String address) {
        try {
            return ADDRESS.matcher(address.replaceAll("^\\[|]$", "")).matches() ? InetAddress.getByName(address) : null; // no name is ever looked up
        } catch (UnknownHostException noAddress) {
            return null;
        }
    }
}
