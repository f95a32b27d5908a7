package housewright.store.sqlite;

import java.time.Duration;
import java.util.List;

/**
 * What tests set otherwise.
 *
 * @param patience how long to wait for another program that writes
 * @param mostPages how large the file may grow, in SQLite's pages (4096 bytes where nothing else was set); 0 is
 *     SQLite's own limit
 * @param version of the schema, the last of the migrations
 * @param migrations where their scripts are on the class path
 */
record Settings(Duration patience, long mostPages, int version, List<String> migrations) {
    static final Settings USUAL = new Settings(Duration.ofSeconds(5), 0, 4, List.of("housewright/store"));

    Settings {
        migrations = List.copyOf(migrations);
    }
}
