package housewright.web.page;

import housewright.file.ChangeText;
import housewright.finding.Finding;
import housewright.model.change.Change;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.UUID;

/** Short names by which a form says which finding or mend it means, the same while it stays the same. */
public final class Keys {
    private Keys() {}

    public static String of(Finding finding) {
        return of(finding.rule() + finding.subjects() + finding.message());
    }

    /** Of a batch of changes. */
    public static String of(List<Change> changes) {
        return of(ChangeText.write(changes));
    }

    private static String of(String text) {
        UUID hash = UUID.nameUUIDFromBytes(text.getBytes(StandardCharsets.UTF_8));
        return hash.toString().substring(0, 13);
    }
}
