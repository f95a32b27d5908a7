package housewright.study;

import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** A result that is worked out when first asked for, by one thread, and kept. */
final class Once<T> {
    private @Nullable Supplier<T> work;
    private volatile @Nullable T result;

    Once(Supplier<T> work) {
        this.work = work;
    }

    /** Whether it need not be worked out any more. */
    boolean isKnown() {
        return result != null;
    }

    synchronized T get() {
        T known = result;
        if (known == null && work != null) {
            known = work.get();
            result = known;
            work = null; // and what it holds on to
        }
        if (known == null) {
            throw new IllegalStateException("a result that is nothing");
        }
        return known;
    }
}
