package housewright.finding;

import housewright.model.RuleSet;

/** What says that something is a fault. */
public sealed interface Source {

    /** Read in a document that anybody can get. */
    record Published(String document, String clause) implements Source {}

    /** Well known in the trade; no document is quoted. */
    record CommonPractice() implements Source {}

    /** A document that was not at hand: its value is quoted from memory and is to be checked before it is relied on. */
    record FromMemory(String document) implements Source {}

    /** One where metric rules apply, another where those of the US do. A finding prints the one that applies. */
    record ByRuleSet(Source metric, Source us) implements Source {}

    /** The one that applies. */
    default Source in(RuleSet set) {
        return this instanceof ByRuleSet(Source metric, Source us) ? (set == RuleSet.US ? us : metric) : this;
    }

    /** Follows from what the project itself says: a feed that it asks for, two entries that contradict each other. */
    record TheProject() implements Source {}

    /** As a report prints it. */
    default String text() {
        return switch (this) {
            case Published published ->
                published.clause().isEmpty() ? published.document() : published.document() + ", " + published.clause();
            case CommonPractice practice -> "common practice";
            case FromMemory memory -> memory.document() + " (from memory)";
            case ByRuleSet both ->
                both.metric().text() + "; in the US " + both.us().text();
            case TheProject project -> "the project itself";
        };
    }
}
