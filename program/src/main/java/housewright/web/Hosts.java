package housewright.web;

import java.util.Locale;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * The names under which this server may be asked for. A web page that gives its own name the address of this machine
 * would otherwise read what stands here (DNS rebinding).
 */
record Hosts(Set<String> names, int port) {
    Hosts {
        names = Set.copyOf(names);
    }

    boolean allow(@Nullable String host) {
        if (host == null) {
            return false;
        }
        int colon = host.lastIndexOf(':');
        boolean hasPort = colon > host.lastIndexOf(']');
        String name = (hasPort ? host.substring(0, colon) : host).toLowerCase(Locale.ROOT);
        String asked = hasPort ? host.substring(colon + 1) : "80";
        return names.contains(name) && asked.equals(Integer.toString(port));
    }

    /** Whether a page of this origin, as the browser names it, is one of ours. */
    boolean allowOrigin(String origin) {
        return origin.startsWith("http://") && allow(origin.substring("http://".length()));
    }
}
