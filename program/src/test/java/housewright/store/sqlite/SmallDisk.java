package housewright.store.sqlite;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

/** A file system of its own in memory, of a given size. Only Linux and root make one: elsewhere its tests are skipped. */
public final class SmallDisk implements AutoCloseable {
    private final Path folder;

    private SmallDisk(Path folder) {
        this.folder = folder;
    }

    public static SmallDisk mounted(Path folder, int kilobytes) {
        assumeTrue(
                succeeds("mount", "-t", "tmpfs", "-o", "size=" + kilobytes + "k", "tmpfs", folder.toString()),
                "a small file system can be mounted here (needs Linux and root)");
        return new SmallDisk(folder);
    }

    public void makeReadOnly() {
        assumeTrue(succeeds("mount", "-o", "remount,ro", folder.toString()), "it can be made read-only");
    }

    public void makeWritable() {
        assumeTrue(succeeds("mount", "-o", "remount,rw", folder.toString()), "it can be made writable");
    }

    @Override
    public void close() {
        succeeds("umount", "-l", folder.toString());
    }

    private static boolean succeeds(String... command) {
        try {
            Process process = new ProcessBuilder(List.of(command))
                    .redirectErrorStream(true)
                    .start();
            process.getInputStream().readAllBytes();
            return process.waitFor() == 0;
        } catch (IOException e) {
            return false;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return false;
        }
    }
}
