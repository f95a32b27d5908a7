package housewright.library;

import housewright.file.LibraryText;
import housewright.model.Adapter;
import housewright.model.CableType;
import housewright.model.Library;
import housewright.model.Model;
import housewright.model.Practice;
import java.util.Collection;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * The types packed with the program. Their texts are cut into entries when the library is first asked, and an entry is
 * read when it is first wanted: a project uses a few of many. Safe for use by several threads.
 */
public final class BuiltInLibrary implements Library {
    /** The newest version, with which new projects begin. */
    public static final int LATEST = 1;

    private static final BuiltInLibrary FIRST = new BuiltInLibrary(1);

    private final int version;
    private final Map<String, Model> models = new ConcurrentHashMap<>();
    private final Map<String, CableType> cableTypes = new ConcurrentHashMap<>();
    private final Map<String, Adapter> adapters = new ConcurrentHashMap<>();
    private volatile @Nullable LibraryIndex index;
    private volatile @Nullable Practice practice;

    private BuiltInLibrary(int version) {
        this.version = version;
    }

    /** @throws IllegalArgumentException where there is no such version; see {@link #find} */
    public static BuiltInLibrary of(int version) {
        return find(version)
                .orElseThrow(() -> new IllegalArgumentException(
                        "There is no version " + version + " of the built-in library; the newest is " + LATEST));
    }

    public static Optional<BuiltInLibrary> find(int version) {
        return version == FIRST.version ? Optional.of(FIRST) : Optional.empty();
    }

    @Override
    public int version() {
        return version;
    }

    @Override
    public Collection<String> modelIds() {
        return index().models().keySet();
    }

    @Override
    public Optional<Model> findModel(String id) {
        return find(id, index().models(), models, entry -> LibraryText.readModel(entry.file(), id, entry.text()));
    }

    @Override
    public Collection<String> cableTypeIds() {
        return index().cableTypes().keySet();
    }

    @Override
    public Optional<CableType> findCableType(String id) {
        return find(
                id,
                index().cableTypes(),
                cableTypes,
                entry -> LibraryText.readCableType(entry.file(), id, entry.text()));
    }

    @Override
    public Collection<String> adapterIds() {
        return index().adapters().keySet();
    }

    @Override
    public Optional<Adapter> findAdapter(String id) {
        return find(id, index().adapters(), adapters, entry -> LibraryText.readAdapter(entry.file(), id, entry.text()));
    }

    /**
     * An entry as its author wrote it, comments and indentation included, as it may stand in a project file under
     * {@code models}, {@code cable-types} or {@code adapters}.
     */
    public Optional<String> findText(String id) {
        return index().find(id).map(LibraryIndex.Entry::text);
    }

    /**
     * As {@link #findText}.
     *
     * @throws IllegalArgumentException where there is no such id
     */
    public String text(String id) {
        return findText(id).orElseThrow(() -> new IllegalArgumentException("The library has no " + id));
    }

    @Override
    public Practice practice() {
        Practice known = practice;
        if (known == null) {
            known = LibraryText.readPractice(
                    "practice.yaml", LibraryIndex.text("/housewright/practice/" + version + ".yaml"));
            practice = known; // alike, whoever is first
        }
        return known;
    }

    private static <T> Optional<T> find(
            String id,
            Map<String, LibraryIndex.Entry> entries,
            Map<String, T> read,
            Function<LibraryIndex.Entry, T> reading) {
        T known = read.get(id);
        if (known == null) {
            LibraryIndex.Entry entry = entries.get(id);
            if (entry == null) {
                return Optional.empty();
            }
            known = reading.apply(entry);
            T first = read.putIfAbsent(id, known);
            known = first == null ? known : first;
        }
        return Optional.of(known);
    }

    private LibraryIndex index() {
        LibraryIndex known = index;
        if (known == null) {
            known = LibraryIndex.read(version);
            index = known; // alike, whoever is first
        }
        return known;
    }
}
