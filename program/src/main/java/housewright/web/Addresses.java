package housewright.web;

import java.net.Inet4Address;
import java.net.InetAddress;
import java.net.NetworkInterface;
import java.net.SocketException;
import java.net.UnknownHostException;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/**
 * Where the server is found.
 *
 * @param shared beginnings of addresses for others on the network, the likeliest first
 */
record Addresses(int port, List<String> shared, Hosts hosts) {
    Addresses {
        shared = List.copyOf(shared);
    }

    static Addresses of(boolean share, int port) {
        Set<String> names = new LinkedHashSet<>(List.of("127.0.0.1", "localhost", "[::1]"));
        List<String> shared = new ArrayList<>();
        if (share) {
            for (String address : onTheNetwork()) {
                names.add(address);
                shared.add("http://" + address + ":" + port);
            }
            names.addAll(ownNames());
        }
        return new Addresses(port, shared, new Hosts(names, port));
    }

    /** For a browser on this machine. */
    String local() {
        return "http://127.0.0.1:" + port;
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
