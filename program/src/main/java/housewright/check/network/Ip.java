package housewright.check.network;

import org.jspecify.annotations.Nullable;

/**
 * An IPv4 address.
 *
 * @param bits the address
 * @param prefix bits of the network part: as written behind a stroke, else 24, a mask of 255.255.255.0
 * @param written whether the prefix is written
 */
record Ip(int bits, int prefix, boolean written) {
    static final int ASSUMED = 24;

    /** Null for what is no IPv4 address, or has no prefix from 8 to 30. */
    static @Nullable Ip find(String text) {
        int stroke = text.indexOf('/');
        int prefix = stroke < 0 ? ASSUMED : number(text.substring(stroke + 1), 30);
        String[] parts = (stroke < 0 ? text : text.substring(0, stroke)).split("\\.", -1);
        if (prefix < 8 || parts.length != 4) {
            return null;
        }
        int bits = 0;
        for (String part : parts) {
            int value = number(part, 255);
            if (value < 0) {
                return null;
            }
            bits = bits << 8 | value;
        }
        return new Ip(bits, prefix, stroke >= 0);
    }

    /** Another kind of address, which is not judged here. */
    static boolean isOther(String text) {
        return text.indexOf(':') >= 0;
    }

    private static int number(String digits, int most) {
        boolean good = !digits.isEmpty()
                && digits.length() <= 3
                && digits.chars().allMatch(c -> c >= '0' && c <= '9')
                && (digits.length() == 1 || digits.charAt(0) != '0');
        int value = good ? Integer.parseInt(digits) : -1;
        return value <= most ? value : -1;
    }

    int network() {
        return bits & mask();
    }

    private int mask() {
        return -1 << (32 - prefix);
    }

    int first() {
        return bits >>> 24;
    }

    boolean isMulticast() {
        return first() >= 224 && first() < 240;
    }

    /** The address of the network itself, or the one that reaches all in it. */
    boolean isNetworkOrBroadcast() {
        return bits == network() || bits == (network() | ~mask());
    }

    /** One thing may have it. */
    boolean isHost() {
        return first() > 0 && first() != 127 && first() < 224 && !isNetworkOrBroadcast();
    }

    /** The universe of lighting data that is sent to this address (ANSI E1.31: 239.255, then its number); 0 for none. */
    int universe() {
        int universe = bits & 0xFFFF;
        return bits >>> 16 == (239 << 8 | 255) && universe >= 1 && universe <= 63999 ? universe : 0;
    }

    Ip with(int host) {
        return new Ip(network() | host, prefix, written);
    }

    int hosts() {
        return ~mask();
    }

    /** Network and prefix: "192.168.10.0/24". */
    String networkText() {
        return dotted(network()) + "/" + prefix;
    }

    String text() {
        return dotted(bits) + (written ? "/" + prefix : "");
    }

    private static String dotted(int bits) {
        return (bits >>> 24) + "." + (bits >>> 16 & 255) + "." + (bits >>> 8 & 255) + "." + (bits & 255);
    }
}
