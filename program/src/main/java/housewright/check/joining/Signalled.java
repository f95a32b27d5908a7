package housewright.check.joining;

import housewright.cable.Plug;
import housewright.model.Port;
import housewright.model.Signal;
import org.jspecify.annotations.Nullable;

/** What the socket says that a plug is in. */
final class Signalled {
    private Signalled() {}

    static @Nullable Signal of(@Nullable Plug plug) {
        Port port = plug == null ? null : plug.port();
        return port == null ? null : port.signal();
    }
}
