package pairwright.http;

import java.net.InetAddress;
import java.net.UnknownHostException;
import java.util.List;

/**
 * Where a server listens, and what it asks of those who come.
 *
 * @param host the address to listen on
 * @param port the port; 0 for a free one
 * @param names what it is called beside its address, such as the name a proxy goes by
 * @param requireTokens whether even this machine needs a token, as behind a proxy that lets others in
 */
public record Listen(String host, int port, List<String> names, boolean requireTokens) {
    public Listen {
        names = List.copyOf(names);
    }

    /** By its address alone; a token is needed where others can reach it. */
    public Listen(String host, int port) {
        this(host, port, List.of(), false);
    }

    /** The address as it will be bound, so that what was found safe and what is opened are one. */
    InetAddress address() {
        try {
            return InetAddress.getByName(host);
        } catch (UnknownHostException unknown) {
            throw new IllegalArgumentException("there is no address " + host, unknown);
        }
    }

    /** Whether only this machine can reach it, and may do so without a token. */
    boolean open() {
        return !requireTokens && address().isLoopbackAddress();
    }
}
