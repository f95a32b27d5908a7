package housewright.app;

import org.jspecify.annotations.Nullable;

/**
 * Two edits of the same thing, one of which has been kept.
 *
 * @param subject what both edited, such as {@code cables.C014} or {@code patch.desk.ch-3}
 * @param was its text before both; null where it was not there
 * @param kept its text as somebody else has left it; null where they took it away
 * @param yours its text as the refused edit would have left it; null where it would have taken it away
 */
public record Clash(
        String subject,
        @Nullable String was,
        @Nullable String kept,
        @Nullable String yours) {}
