package housewright.signal;

import housewright.model.Project;
import java.util.HashSet;
import java.util.Set;

/** Ids for what a mend adds: the next number after those in use. */
final class NewIds {
    private final Set<String> used = new HashSet<>();
    private final int width;
    private int lastCable;

    NewIds(Project project) {
        used.addAll(project.cables().keySet());
        used.addAll(project.equipment().keySet());
        used.addAll(project.networkSends().keySet());
        used.addAll(project.radio().keySet());
        int widest = 3;
        for (String id : project.cables().keySet()) {
            if (id.length() > 1
                    && id.length() < 8
                    && id.charAt(0) == 'C'
                    && id.chars().skip(1).allMatch(c -> c >= '0' && c <= '9')) {
                lastCable = Math.max(lastCable, Integer.parseInt(id.substring(1)));
                widest = Math.max(widest, id.length() - 1);
            }
        }
        this.width = widest;
    }

    String cable() {
        String id;
        do {
            String number = Integer.toString(++lastCable);
            id = "C" + "0".repeat(Math.max(0, width - number.length())) + number;
        } while (!used.add(id));
        return id;
    }

    /** The word itself, or with the first free number from 2. */
    String named(String word) {
        String id = word;
        for (int n = 2; !used.add(id); n++) {
            id = word + "-" + n;
        }
        return id;
    }
}
