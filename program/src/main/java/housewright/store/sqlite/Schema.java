package housewright.store.sqlite;

import java.nio.file.Path;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.FlywayException;

/** Brings a file's schema up to date, in one transaction. */
final class Schema {
    /** In the file's header: "HWRT". */
    static final int APPLICATION_ID = 0x48575254;

    private Schema() {}

    /** @throws FlywayException where the file is as it was */
    static void bringUpToDate(Path file, Settings settings) {
        Flyway.configure()
                .dataSource(Connections.source(file, Connections.Mode.READ_WRITE, settings))
                .locations(settings.migrations().stream()
                        .map(folder -> "classpath:" + folder)
                        .toArray(String[]::new))
                .target(String.valueOf(settings.version()))
                .group(true)
                .placeholderReplacement(false)
                .load()
                .migrate();
    }
}
