package housewright.plan;

import java.util.List;

/**
 * Why something cannot be done as wished.
 *
 * @param what that is missed, in a sentence
 * @param tasks that are missed for this reason, by id
 * @param wishes the smallest set found that cannot hold together, in sentences; without any one of them the reason is gone
 * @param proved whether the wishes are shown to exclude each other, or only no plan was found
 * @param ways what would help, the least of its kind each, in sentences
 */
public record Clash(String what, List<String> tasks, List<String> wishes, boolean proved, List<String> ways) {
    public Clash {
        tasks = List.copyOf(tasks);
        wishes = List.copyOf(wishes);
        ways = List.copyOf(ways);
    }
}
