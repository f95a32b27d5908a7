package housewright.operation;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * In which order a hall is switched on; it is switched off the other way round.
 *
 * @param steps each thing that is touched, once
 * @param kept what the order obeys
 * @param broken what it does not, since it would close a circle with something stronger or earlier in the file
 */
public record PowerOrder(List<Step> steps, List<Must> kept, List<Must> broken) {
    public PowerOrder {
        steps = List.copyOf(steps);
        kept = List.copyOf(kept);
        broken = List.copyOf(broken);
    }

    /**
     * One touch.
     *
     * @param touch what is touched
     * @param wakes what comes on by it and by no later touch, in the order of the file; the thing itself where it is one
     *     that wakes
     */
    public record Step(Touch touch, Set<String> wakes) {
        public String thing() {
            return touch.thing();
        }
    }

    /**
     * One touch that must come before another.
     *
     * @param before the thing that is touched first
     * @param after the thing that is touched later
     * @param why what for
     */
    public record Must(String before, String after, Why why) {}

    /** Why one thing must be up before another, the strongest first. */
    public enum Why {
        /** It gives the other its supply. */
        SUPPLY("gives it its supply"),
        /** The other is a program that runs on it. */
        COMPUTER("runs it"),
        /** It is a switch of the network that the other is on. */
        NETWORK("carries its network"),
        /** The other makes sound loud: what is switched on after it thumps. */
        AMPLIFIER("would thump in it"),
        /** Signal goes from it to the other. */
        SIGNAL("sends to it");

        private final String words;

        Why(String words) {
            this.words = words;
        }

        /** As in "the desk sends to it". */
        public String words() {
            return words;
        }
    }

    /** To shut down: the last first. */
    public List<Step> shutDown() {
        return List.copyOf(new ArrayList<>(steps).reversed());
    }
}
