package housewright.testing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Texts that are held to a file. Rewriting always fails, so that nobody can leave it on. */
public final class Golden {
    private Golden() {}

    public static void hold(Path golden, String actual) {
        try {
            if (Boolean.getBoolean("golden.update")) {
                Files.createDirectories(golden.getParent());
                Files.writeString(golden, actual);
                fail("Rewrote " + golden + ". Read the diff, then run again without -Dgolden.update=true.");
            }
            assertThat(golden).as("run once with -Dgolden.update=true").exists();
            assertThat(actual)
                    .as("%s: where the change is right, run once with -Dgolden.update=true", golden)
                    .isEqualTo(Files.readString(golden));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
