package housewright.app;

import housewright.file.Nearest;
import housewright.library.BuiltInLibrary;
import housewright.model.Adapter;
import housewright.model.CableType;
import housewright.model.Model;
import housewright.model.Remarks;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Finds types of the built-in library by words, and gives one as its author wrote it. */
public final class TypeSearch {
    private final BuiltInLibrary library;

    public TypeSearch(BuiltInLibrary library) {
        this.library = library;
    }

    /** Every type: models, then cables, then adapters, in the order of the library. */
    public List<FoundType> all() {
        List<FoundType> all = new ArrayList<>();
        for (String id : library.modelIds()) {
            library.findModel(id).ifPresent(model -> all.add(type(model)));
        }
        for (String id : library.cableTypeIds()) {
            library.findCableType(id).ifPresent(cable -> all.add(type(cable)));
        }
        for (String id : library.adapterIds()) {
            library.findAdapter(id).ifPresent(adapter -> all.add(type(adapter)));
        }
        return all;
    }

    private static FoundType type(Model model) {
        String figures = model.figures() == null ? "" : model.figures().word();
        return new FoundType(
                model.id(), "models", model.kind().word(), or(model.name(), ""), note(model.remarks()), figures);
    }

    private static FoundType type(CableType cable) {
        String figures = cable.figures() == null ? "" : cable.figures().word();
        return new FoundType(cable.id(), "cable-types", "cable", or(cable.name(), ""), note(cable.remarks()), figures);
    }

    private static FoundType type(Adapter adapter) {
        String figures = adapter.figures() == null ? "" : adapter.figures().word();
        return new FoundType(
                adapter.id(), "adapters", "adapter", or(adapter.name(), ""), note(adapter.remarks()), figures);
    }

    private static String note(Remarks remarks) {
        return or(remarks.note(), "");
    }

    private static String or(@org.jspecify.annotations.Nullable String text, String other) {
        return text == null ? other : text;
    }

    /** How many types there are of each kind, in the order of the library. */
    public Map<String, Integer> kinds() {
        Map<String, Integer> kinds = new LinkedHashMap<>();
        for (FoundType type : all()) {
            kinds.merge(type.kind(), 1, Integer::sum);
        }
        return kinds;
    }

    /**
     * The types in which every word occurs: in the id, the kind, the name or the note, capitals or not. Those of a kind
     * that is asked for, if only by its first three letters, come first, then those with the words in their ids, then in
     * their names, then in their notes.
     */
    public List<FoundType> find(List<String> words) {
        List<String> wanted =
                words.stream().map(word -> word.toLowerCase(Locale.ROOT)).toList();
        return all().stream()
                .filter(type -> has(allWords(type), wanted))
                .sorted(Comparator.comparingInt(type -> rank(type, wanted)))
                .toList();
    }

    private static String allWords(FoundType type) {
        return (type.id() + " " + type.kind() + " " + type.name() + " " + type.note()).toLowerCase(Locale.ROOT);
    }

    private static int rank(FoundType type, List<String> wanted) {
        String spoken = (type.id() + " " + type.kind() + " " + type.name()).toLowerCase(Locale.ROOT);
        if (!has(spoken, wanted)) {
            return 3;
        }
        if (wanted.stream().anyMatch(word -> word.length() >= 3 && type.kind().startsWith(word))) {
            return 0;
        }
        return has(type.id().toLowerCase(Locale.ROOT), wanted) ? 1 : 2;
    }

    private static boolean has(String text, List<String> wanted) {
        return wanted.stream().allMatch(text::contains);
    }

    public Optional<FoundType> findById(String id) {
        return library.findModel(id)
                .map(TypeSearch::type)
                .or(() -> library.findCableType(id).map(TypeSearch::type))
                .or(() -> library.findAdapter(id).map(TypeSearch::type));
    }

    /** The id or word of the library that was probably meant. */
    public Optional<String> findNearest(String word) {
        Set<String> known = new LinkedHashSet<>();
        for (FoundType type : all()) {
            known.add(type.id());
            known.add(type.kind());
            known.addAll(List.of(type.name().toLowerCase(Locale.ROOT).split("[^\\p{L}\\p{N}]+")));
        }
        known.remove("");
        return Optional.ofNullable(Nearest.find(word, known));
    }

    /** The type's entry as its author wrote it, comments and all, indented as in a project file. */
    public String text(FoundType type) {
        return library.text(type.id());
    }

    /** A project file that holds the type and nothing else: a start for one's own types, which {@code check} reads. */
    public String start(FoundType type) {
        return "# " + (type.name().isEmpty() ? type.id() : type.name())
                + ", from the built-in library: a start for a type"
                + " of your own.\n"
                + "# Give it an id of its own, put in the figures of the data sheet, and copy it into the project's "
                + type.section() + ".\n"
                + "housewright: 1\n"
                + "project: {name: A type of our own, library: " + library.version() + "}\n"
                + "\n"
                + type.section() + ":\n"
                + text(type);
    }
}
