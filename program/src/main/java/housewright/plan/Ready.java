package housewright.plan;

import java.util.List;

/**
 * A task that somebody could begin now.
 *
 * @param waiting tasks that cannot begin before it is done, by id
 * @param minutes their planned minutes together
 * @param with how many others it takes
 * @param says why it is worth beginning, in a sentence
 */
public record Ready(String task, List<String> waiting, int minutes, int with, String says) {
    public Ready {
        waiting = List.copyOf(waiting);
    }
}
