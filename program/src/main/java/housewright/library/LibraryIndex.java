package housewright.library;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The library's texts, cut into entries by id, in the order of the files. */
record LibraryIndex(Map<String, Entry> models, Map<String, Entry> cableTypes, Map<String, Entry> adapters) {

    /** One type: the file it is from, and its lines, the comment before it included. */
    record Entry(String file, String text) {}

    LibraryIndex {
        models = Collections.unmodifiableMap(models);
        cableTypes = Collections.unmodifiableMap(cableTypes);
        adapters = Collections.unmodifiableMap(adapters);
    }

    static LibraryIndex read(int version) {
        LibraryCutter cutter = new LibraryCutter();
        for (String file : files(version)) {
            cutter.cut(file, resource(version, file));
        }
        return cutter.index();
    }

    /** Their names, in the order of the list packed beside them: what is packed cannot be asked what it holds. */
    static List<String> files(int version) {
        return resource(version, "files")
                .lines()
                .filter(name -> !name.isBlank())
                .toList();
    }

    static String resource(int version, String file) {
        return text("/housewright/library/" + version + "/" + file);
    }

    static String text(String path) {
        try (InputStream in = LibraryIndex.class.getResourceAsStream(path)) {
            if (in == null) {
                throw new IllegalStateException("The program was packed without " + path);
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(path, e);
        }
    }

    Optional<Entry> find(String id) {
        return Optional.ofNullable(models.get(id))
                .or(() -> Optional.ofNullable(cableTypes.get(id)))
                .or(() -> Optional.ofNullable(adapters.get(id)));
    }
}
