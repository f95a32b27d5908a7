package housewright.web.page;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * An address of a page with what it is asked for.
 *
 * @param asked by name, in order
 */
public record Query(String path, Map<String, String> asked) {

    public static Query of(String path) {
        return new Query(path, Map.of());
    }

    /** The same with something asked otherwise; null or empty for not at all. */
    public Query with(String name, @Nullable String value) {
        Map<String, String> other = new LinkedHashMap<>(asked);
        if (value == null || value.isEmpty()) {
            other.remove(name);
        } else {
            other.put(name, value);
        }
        return new Query(path, other);
    }

    public Query at(String otherPath) {
        return new Query(otherPath, asked);
    }

    public String href() {
        return asked.isEmpty()
                ? path
                : asked.entrySet().stream()
                        .map(each -> TablePage.encoded(each.getKey()) + "=" + TablePage.encoded(each.getValue()))
                        .collect(Collectors.joining("&", path + "?", ""));
    }
}
