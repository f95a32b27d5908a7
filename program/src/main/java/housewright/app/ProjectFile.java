package housewright.app;

import housewright.model.Project;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;

/**
 * A project as it was read.
 *
 * @param name as the user gave it
 * @param path where it is written back; null where it came through standard input
 * @param text without the byte order mark
 * @param marked the file begins with a byte order mark
 */
public record ProjectFile(String name, @Nullable Path path, Project project, String text, boolean marked) {
    private static final String BYTE_ORDER_MARK = "\uFEFF";

    /** What stood in the file, byte for byte. */
    byte[] bytes() {
        return bytes(text);
    }

    /** Another text, encoded like the file's own. */
    byte[] bytes(String other) {
        return (marked ? BYTE_ORDER_MARK + other : other).getBytes(StandardCharsets.UTF_8);
    }
}
