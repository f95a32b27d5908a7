package housewright.model;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** What may stand on any entity. */
public record Remarks(
        @Doc("Made by the program and kept when the id is renamed") @Nullable
        String key,

        @Doc("A remark in free words") @Nullable String note,
        @Doc("File names of photographs") List<String> photo,
        @Doc("How this came to be known") @Nullable Known known,
        @Doc("Who measured, saw or told it") @Nullable String by) {
    public Remarks {
        photo = List.copyOf(photo);
    }

    /** Nothing said. */
    public static final Remarks NONE = new Remarks(null, null, List.of(), null, null);
}
