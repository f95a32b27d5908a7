package housewright.main;

import java.nio.file.Path;
import java.util.Locale;

/** Where a user's own projects lie. */
final class DataFolder {
    private DataFolder() {}

    static Path find() {
        String home = System.getProperty("user.home", ".");
        String own = environment("HOUSEWRIGHT_HOME");
        if (!own.isEmpty()) {
            return Path.of(own).toAbsolutePath();
        }
        String system = System.getProperty("os.name", "").toLowerCase(Locale.ROOT);
        if (system.contains("mac")) {
            return Path.of(home, "Library", "Application Support", "Housewright");
        }
        String windows = environment("LOCALAPPDATA");
        if (system.contains("win") && !windows.isEmpty()) {
            return Path.of(windows, "Housewright");
        }
        String data = environment("XDG_DATA_HOME");
        return data.startsWith("/") // the standard says to pass over any other
                ? Path.of(data, "housewright")
                : Path.of(home, ".local", "share", "housewright");
    }

    private static String environment(String variable) {
        String value = System.getenv(variable);
        return value == null ? "" : value;
    }
}
