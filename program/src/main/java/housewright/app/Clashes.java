package housewright.app;

import housewright.file.EntityText;
import housewright.model.Project;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Set;

/** Puts two edits of the same things side by side. */
final class Clashes {
    private Clashes() {}

    /**
     * @param was before both edits
     * @param kept with the other edit
     * @param yours with this edit made on the other
     * @param subjects that both touch; where both came to the same there is nothing to settle
     */
    static List<Clash> of(Project was, Project kept, Project yours, Set<String> subjects) {
        List<Clash> clashes = new ArrayList<>();
        for (String subject : subjects) {
            Clash clash = new Clash(
                    subject,
                    EntityText.find(was, subject),
                    EntityText.find(kept, subject),
                    EntityText.find(yours, subject));
            if (!Objects.equals(clash.kept(), clash.yours())) {
                clashes.add(clash);
            }
        }
        return clashes;
    }
}
