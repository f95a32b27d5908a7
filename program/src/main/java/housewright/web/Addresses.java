package housewright.web;

import java.net.Inet4Address;
import java.net.InetAddress;
import java.net.NetworkInterface;
import java.net.SocketException;
import java.net.UnknownHostException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Supplier;

/**
 * Where the server is found, on the network that the machine is in now: a laptop goes from one to another, or is given
 * another address, while it serves.
 */
final class Addresses {
    /** Asking the machine for its addresses takes some milliseconds, and each request wants to know them. */
    private static final Duration KNOWN_FOR = Duration.ofSeconds(5);

    private static final List<String> LOCAL = List.of("127.0.0.1", "localhost", "[::1]");

    private final int port;
    private final boolean share;
    private final Supplier<List<String>> network;
    private final Duration knownFor;
    private final List<String> ownNames;
    private volatile Found found;

    /** @param shared addresses of this machine for others on the network, the likeliest first */
    private record Found(List<String> shared, Hosts hosts, long nanos) {}

    /** @param network gives this machine's addresses */
    Addresses(boolean share, int port, Supplier<List<String>> network, Duration knownFor) {
        this.port = port;
        this.share = share;
        this.network = network;
        this.knownFor = knownFor;
        this.ownNames = share ? ownNames() : List.of();
        this.found = look();
    }

    static Addresses of(boolean share, int port) {
        return new Addresses(share, port, Addresses::onTheNetwork, KNOWN_FOR);
    }

    int port() {
        return port;
    }

    /** For a browser on this machine. */
    String local() {
        return "http://127.0.0.1:" + port;
    }

    /** Beginnings of addresses for others on the network, the likeliest first. */
    List<String> shared() {
        return found().shared().stream()
                .map(address -> "http://" + address + ":" + port)
                .toList();
    }

    /** The names by which it may be asked for. */
    Hosts hosts() {
        return found().hosts();
    }

    private Found found() {
        Found known = found;
        if (!share || System.nanoTime() - known.nanos() < knownFor.toNanos()) {
            return known;
        }
        Found fresh = look();
        found = fresh;
        return fresh;
    }

    private Found look() {
        List<String> shared = share ? network.get() : List.of();
        Set<String> names = new LinkedHashSet<>(LOCAL);
        names.addAll(shared);
        names.addAll(ownNames);
        return new Found(shared, new Hosts(names, port), System.nanoTime());
    }

    private static List<String> onTheNetwork() {
        List<String> addresses = new ArrayList<>();
        try {
            for (NetworkInterface each : NetworkInterface.networkInterfaces().toList()) {
                if (each.isUp() && !each.isLoopback()) {
                    each.inetAddresses()
                            .filter(Inet4Address.class::isInstance)
                            .map(InetAddress::getHostAddress)
                            .forEach(addresses::add);
                }
            }
        } catch (SocketException e) {
            // no network that can be told of
        }
        // A venue's own network rather than one of a virtual machine.
        addresses.sort((one, other) -> Boolean.compare(!one.startsWith("192.168."), !other.startsWith("192.168.")));
        return addresses;
    }

    private static List<String> ownNames() {
        try {
            String name = InetAddress.getLocalHost().getHostName().toLowerCase(Locale.ROOT);
            return List.of(name, name + ".local");
        } catch (UnknownHostException e) {
            return List.of();
        }
    }
}
