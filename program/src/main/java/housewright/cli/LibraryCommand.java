package housewright.cli;

import housewright.app.FoundType;
import housewright.app.Saving;
import housewright.app.TypesDocument;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Looks types up. */
@Command(
        name = "library",
        header = "Finds a type of equipment, cable or adapter in the built-in library.",
        description = {
            "Searches ids, kinds, names and notes; every word must occur. An id alone, or words that only one type has, print it in full, as it would stand in a project file.",
            "Exit status: 0 found, 2 not found, or FILE cannot be written."
        })
final class LibraryCommand implements Callable<Integer> {
    @Parameters(
            arity = "0..*",
            paramLabel = "WORDS",
            description = "What to look for; nothing lists the kinds there are.")
    List<String> words = List.of();

    @Option(
            names = "--write",
            paramLabel = "FILE",
            description = "Write the one type that is found into a new file, as a start for one of your own.")
    @Nullable
    String write;

    @Option(names = "--json", description = "Print the types found as JSON, for programs.")
    boolean json;

    @Option(names = "--all", description = "Leave nothing out of a long list.")
    boolean all;

    private final Desk desk;

    LibraryCommand(Desk desk) {
        this.desk = desk;
    }

    @Override
    public Integer call() {
        if (words.isEmpty() && !json) {
            if (write != null) {
                return desk.refuse(
                        "Name the type to write, such as: housewright library mic-dynamic --write my-types.yaml");
            }
            desk.print(new LibraryText(desk.page()).kinds(desk.types.kinds()));
            return Status.FINE;
        }
        List<FoundType> found = found();
        if (json) {
            desk.print(TypesDocument.of(desk.types, found));
            return found.isEmpty() ? Status.CANNOT : Status.FINE;
        }
        if (found.isEmpty()) {
            return desk.refuse(nothing());
        }
        if (write != null) {
            return write(write, found);
        }
        if (found.size() == 1) {
            desk.out.print(desk.types.text(found.getFirst()));
            desk.out.flush();
        } else {
            desk.print(new LibraryText(desk.page()).list(found, all));
        }
        return Status.FINE;
    }

    private List<FoundType> found() {
        Optional<FoundType> exact = words.size() == 1 ? desk.types.findById(words.getFirst()) : Optional.empty();
        return exact.map(List::of).orElseGet(() -> desk.types.find(words));
    }

    private String nothing() {
        String asked = String.join(" ", words);
        Optional<String> nearest = words.stream()
                .map(word -> desk.types.findNearest(word.toLowerCase(Locale.ROOT)))
                .flatMap(Optional::stream)
                .filter(word -> !words.contains(word))
                .findFirst();
        return "The library has no type with the words " + asked + ". "
                + nearest.map(word -> "Did you mean " + word + "?")
                        .orElse("Try fewer words, or a kind such as mixer, camera or converter.");
    }

    private int write(String file, List<FoundType> found) {
        if (found.size() > 1) {
            return desk.refuse(found.size() + " types have these words; name the id of one: "
                    + String.join(
                            ", ", found.stream().limit(10).map(FoundType::id).toList())
                    + (found.size() > 10 ? " …" : "") + ".");
        }
        FoundType type = found.getFirst();
        if (desk.files.create(file, desk.types.start(type)) instanceof Saving.NotSaved not) {
            return desk.refuse(not.why());
        }
        desk.print(desk.page()
                .wrapped(file + " holds " + type.id()
                        + ". Give it an id of your own, put in the data sheet's figures, and"
                        + " copy it into your project's " + type.section() + ".")
                .line("Check it: housewright check " + FileCommand.quoted(file)));
        return Status.FINE;
    }
}
