package housewright.model;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/** Immutable maps that keep the order of the file. */
final class Ordered {
    private Ordered() {}

    static <K, V> Map<K, V> copy(Map<K, V> map) {
        return map.isEmpty() ? Map.of() : Collections.unmodifiableMap(new LinkedHashMap<>(map));
    }
}
