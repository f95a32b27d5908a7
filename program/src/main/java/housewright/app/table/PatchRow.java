package housewright.app.table;

import housewright.model.Doc;
import housewright.model.Life;
import housewright.model.LocalRef;
import housewright.model.PatchEntry;
import housewright.model.Tap;
import housewright.unit.Delay;
import housewright.unit.Gain;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** An entry of a device's patch, with its device. */
public record PatchRow(
        String id,
        @Doc("The device it is set in") @Nullable String device,

        @Doc("Where it arrives: a port or point of the device") @Nullable
        LocalRef from,

        @Doc("Where it goes in the device") List<LocalRef> to,

        @Doc("Where on the channel it is taken from") @Nullable
        Tap tap,

        @Nullable Gain gain,
        @Nullable Delay delay,

        @Doc("When it is set: keep, new or strike; both today and after when left out") @Nullable
        Life life,

        @Nullable String note) {
    public PatchRow {
        to = List.copyOf(to);
    }

    static PatchRow of(String device, PatchEntry entry) {
        return new PatchRow(
                id(device, entry),
                device,
                entry.from(),
                entry.to(),
                entry.tap(),
                entry.gain(),
                entry.delay(),
                entry.life(),
                entry.note());
    }

    static String id(String device, PatchEntry entry) {
        return device + ": " + entry.join().text();
    }

    /** Null where it lacks its source, its destination or its device. */
    @Nullable
    PatchEntry entry() {
        return from == null || to.isEmpty() || device == null
                ? null
                : new PatchEntry(from, to, tap, gain, delay, life, note);
    }
}
