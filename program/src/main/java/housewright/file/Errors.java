package housewright.file;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Collects everything that is wrong with one file. */
final class Errors {
    /** How many are listed; a file with more has one cause for many of them. */
    static final int MOST_LISTED = 200;

    /** How many are kept to be sorted before the first are listed; further ones are only counted. */
    private static final int MOST_KEPT = 1_000;

    private final int mostKept;
    private final int mostListed;

    Errors() {
        this(MOST_KEPT, MOST_LISTED);
    }

    /** @param mostListed more than usual, for whoever has to tell each of many rows what is wrong with it */
    Errors(int mostKept, int mostListed) {
        this.mostKept = mostKept;
        this.mostListed = mostListed;
    }

    /** The nearest word is looked for only where the error is listed. */
    private record Draft(
            Span span,
            String path,
            String found,
            String expected,
            @Nullable String word,
            Collection<String> candidates) {}

    private final List<Draft> drafts = new ArrayList<>();
    private int count;

    boolean isEmpty() {
        return count == 0;
    }

    /** Whether a further one need not be worded, only {@linkplain #count counted}. */
    boolean isFull() {
        return drafts.size() >= mostKept;
    }

    void count() {
        count++;
    }

    void add(Span span, String path, String found, String expected) {
        add(span, path, found, expected, null, List.of());
    }

    /** @param word what is to be compared with the candidates for the nearest */
    void add(
            Span span,
            String path,
            String found,
            String expected,
            @Nullable String word,
            Collection<String> candidates) {
        count++;
        if (!isFull()) {
            drafts.add(new Draft(span, path, found, expected, word, candidates));
        }
    }

    List<FileError> list(String file) {
        drafts.sort(Comparator.<Draft>comparingInt(draft -> draft.span().line())
                .thenComparingInt(draft -> draft.span().column()));
        List<FileError> errors = new ArrayList<>();
        for (Draft draft : drafts.subList(0, Math.min(drafts.size(), mostListed))) {
            String word = draft.word();
            boolean sought = word != null && errors.size() < MOST_LISTED; // looking for the nearest takes long
            String nearest = word == null || !sought ? null : Nearest.find(word, draft.candidates());
            errors.add(new FileError(
                    file,
                    draft.span().line(),
                    draft.span().column(),
                    draft.path(),
                    draft.found(),
                    draft.expected(),
                    nearest == null ? null : Shown.cut(nearest)));
        }
        if (count > errors.size()) {
            errors.add(new FileError(file, 0, 0, "", (count - errors.size()) + " more errors", "", null));
        }
        return errors;
    }
}
