package housewright.network;

import housewright.model.NetworkSend;
import java.util.List;

/**
 * What one network-send carries from one thing to another.
 *
 * @param send the entry of the project
 * @param from the thing it leaves
 * @param to the thing it comes to
 * @param over cables, panels and switches on the way, in order
 * @param bitsPerSecond its own rate, else what a standard stream of its kind takes; NaN where neither says
 * @param channels how many channels of it go this way
 */
public record Sent(NetworkSend send, String from, String to, List<String> over, double bitsPerSecond, int channels) {
    public Sent {
        over = List.copyOf(over);
    }

    public boolean rateKnown() {
        return !Double.isNaN(bitsPerSecond);
    }
}
