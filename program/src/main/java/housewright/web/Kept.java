package housewright.web;

import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Values by name, each worked out once; the one that was not asked for longest goes first. */
final class Kept<T> {
    private final Map<String, Slot<T>> slots;

    Kept(int most) {
        slots = new LinkedHashMap<>(16, 0.75f, true) {
            private static final long serialVersionUID = 1;

            @Override
            protected boolean removeEldestEntry(Map.Entry<String, Slot<T>> eldest) {
                return size() > most;
            }
        };
    }

    T get(String key, Work<T> work) {
        Slot<T> slot;
        synchronized (slots) {
            slot = slots.computeIfAbsent(key, each -> new Slot<>());
        }
        return slot.get(work);
    }

    @FunctionalInterface
    interface Work<T> {
        T make();
    }

    /** Others who ask for the same wait for the first. */
    private static final class Slot<T> {
        private @Nullable T value;

        synchronized T get(Work<T> work) {
            T known = value;
            if (known == null) {
                known = work.make();
                value = known;
            }
            return known;
        }
    }
}
