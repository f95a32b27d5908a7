package housewright.web;

import java.nio.file.Path;
import org.jspecify.annotations.Nullable;

/**
 * How to serve.
 *
 * @param port asked for
 * @param exact this port or none; otherwise the next free one
 * @param share listen on the local network, too
 * @param owner whoever starts it, as history names them
 * @param start the project to open first; null for the list
 * @param keptIn where the store lies, as people are told; null where it is gone when the program ends
 */
public record Serving(
        int port,
        boolean exact,
        boolean share,
        String owner,
        @Nullable String start,
        @Nullable Path keptIn) {}
