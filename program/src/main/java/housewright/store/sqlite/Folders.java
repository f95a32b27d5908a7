package housewright.store.sqlite;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/** A file's name is kept in its folder, which is written to the disk by itself. */
final class Folders {

    private Folders() {}

    /** Does what it can: not every system lets a folder be opened. */
    static void force(Path folder) {
        try (FileChannel names = FileChannel.open(folder, StandardOpenOption.READ)) {
            names.force(true);
        } catch (IOException e) {
            // Where a folder cannot be forced, its system writes it soon.
        }
    }
}
