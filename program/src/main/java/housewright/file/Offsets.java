package housewright.file;

import org.jspecify.annotations.Nullable;

/** Where the code points of a text are among its chars: the parser counts the former. */
final class Offsets {
    private final int @Nullable [] offsets;

    Offsets(String text) {
        int count = text.codePointCount(0, text.length());
        if (count == text.length()) {
            offsets = null; // each is one char
            return;
        }
        int[] found = new int[count + 1];
        int at = 0;
        for (int i = 0; i < count; i++) {
            found[i] = at;
            at += Character.charCount(text.codePointAt(at));
        }
        found[count] = at;
        offsets = found;
    }

    int of(int codePoint) {
        return offsets == null ? codePoint : offsets[codePoint];
    }
}
