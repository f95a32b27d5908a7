package housewright.app;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** Serves projects to browsers. */
public interface Server {
    int USUAL_PORT = 7878;

    /**
     * What to serve, and how.
     *
     * @param file a project file or a file of projects; null for the user's own projects
     * @param demo a fresh copy of the demo, gone when the program ends
     * @param port null for the usual one, or the next that is free
     * @param share let others on the local network in, by link
     */
    record Wish(
            @Nullable String file, boolean demo, @Nullable Integer port, boolean share) {}

    /** What came of starting. */
    sealed interface Start {
        /**
         * @param link lets this machine's browser in, once
         * @param shared for others on the network; null where it is not shared
         * @param keptIn where changes are kept; null where they are gone in the end
         */
        record Running(
                String link,
                @Nullable Shared shared,
                @Nullable String keptIn,
                Runnable stop) implements Start {}

        /** @param why sentences, or errors of the file */
        record NotStarted(List<String> why) implements Start {
            public NotStarted {
                why = List.copyOf(why);
            }
        }
    }

    /**
     * @param links the same link by each address of this machine, the likeliest first; empty where there is no network
     * @param code the first as a QR code, in lines of block characters
     */
    record Shared(List<String> links, List<String> code) {
        public Shared {
            links = List.copyOf(links);
            code = List.copyOf(code);
        }
    }

    Start start(Wish wish);
}
