package housewright.signal;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/**
 * What mends of one state of the project are looked for in, worked out once for all its feeds: what could be done, how
 * far each place is from where feeds must arrive, what was tried already.
 */
final class Prospects {
    private final Signals signals;
    final Trials trials;
    private @Nullable Field plain;
    private @Nullable Field boxed;
    private @Nullable Closers closers;
    private @Nullable Closers boxedClosers;
    private @Nullable KeptApart keptApart;

    Prospects(Signals signals) {
        this.signals = signals;
        this.trials = new Trials(signals);
    }

    /** What could be done, and the least it costs to get anywhere by it. */
    record Field(Possible possible, Ahead ahead) {
        static Field of(Signals signals, boolean boxes) {
            Possible possible = new Possible(signals, boxes);
            return new Field(possible, new Ahead(signals.graph(), possible));
        }
    }

    /** Without converters and splitters from the library. */
    Field plain() {
        Field known = plain;
        if (known == null) {
            known = Field.of(signals, false);
            plain = known;
        }
        return known;
    }

    Field boxed() {
        Field known = boxed;
        if (known == null) {
            known = Field.of(signals, true);
            boxed = known;
        }
        return known;
    }

    Closers closers() {
        Closers known = closers;
        if (known == null) {
            known = new Closers(signals, plain().possible());
            closers = known;
        }
        return known;
    }

    Closers boxedClosers() {
        Closers known = boxedClosers;
        if (known == null) {
            known = new Closers(signals, boxed().possible());
            boxedClosers = known;
        }
        return known;
    }

    KeptApart keptApart() {
        KeptApart known = keptApart;
        if (known == null) {
            known = new KeptApart(signals.graph());
            keptApart = known;
        }
        return known;
    }

    /** The price of the cheapest converter or splitter there is; null for none. */
    @Nullable
    BigDecimal cheapestBox() {
        return PossibleBoxes.cheapest(signals.types());
    }
}
