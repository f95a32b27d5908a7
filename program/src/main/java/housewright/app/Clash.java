package housewright.app;

import org.jspecify.annotations.Nullable;

/**
 * Two edits of the same thing, one of which has been kept. Of a thing with cells only those are told that are not the
 * same in all three; a text is empty where none of them is filled in.
 *
 * @param subject what both edited, such as {@code cables.C014} or {@code patch.desk.ch-3}
 * @param was what it was before both; null where it was not there
 * @param kept what it is as somebody else has left it; null where they took it away
 * @param yours what it would be as the refused edit would have left it; null where it would have taken it away
 */
public record Clash(
        String subject,
        @Nullable String was,
        @Nullable String kept,
        @Nullable String yours) {}
