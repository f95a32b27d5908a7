package housewright.app;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;

/** The demo project: an invented hall, packed with the program. */
public final class Demo {
    public static final String FILE_NAME = "carrowfenn-hall.yaml";

    /** A feed of it to begin with. */
    public static final String FEED = "lectern-to-hall";

    private Demo() {}

    /** The file as it was written. */
    public static byte[] bytes() {
        try (InputStream in = Demo.class.getResourceAsStream("/housewright/demo/" + FILE_NAME)) {
            if (in == null) {
                throw new IllegalStateException("The program was packed without its demo project");
            }
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
