package housewright.picture;

import housewright.model.Kind;
import housewright.model.Model;
import housewright.model.Signal;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * A picture goes through one device.
 *
 * @param thing the device
 * @param model its type; null where that is not known
 * @param in where it comes in; null where it begins here
 * @param out where it goes out; null where it ends here
 * @param by id of the cable, send or radio link it goes on by; null where it ends here
 */
public record Pass(
        String thing,
        @Nullable Model model,
        @Nullable Jack in,
        @Nullable Jack out,
        @Nullable String by) {
    private static final Set<Kind> MAKES_ITS_OWN = Set.of(Kind.COMPUTER, Kind.PROGRAM, Kind.VISION_MIXER);
    private static final Set<Signal> WITHOUT_FORMAT =
            Set.of(Signal.ETHERNET, Signal.USB, Signal.USB_AUDIO, Signal.RADIO);

    public boolean is(Kind kind) {
        return model != null && model.kind() == kind;
    }

    /** Straight through a panel. */
    public boolean isPassive() {
        return (in != null && in.port().passive()) || (out != null && out.port().passive());
    }

    /** It does not hand on the format it is given, or it is not known whether it does. */
    boolean breaksFormat() {
        return !isPassive()
                && (in == null
                        || out == null
                        || model == null
                        || MAKES_ITS_OWN.contains(model.kind())
                        || model.scales()
                        || isOpen(in)
                        || isOpen(out));
    }

    private static boolean isOpen(Jack jack) {
        Signal signal = jack.port().signal();
        return signal == null
                || WITHOUT_FORMAT.contains(signal)
                || jack.port().formats().isEmpty();
    }
}
