package housewright.web.page;

import housewright.finding.Subject;
import org.jspecify.annotations.Nullable;

/** Where things of a project are shown. */
@FunctionalInterface
public interface Links {
    /** The page and row of a thing; null where it has no page yet. */
    @Nullable
    String of(Subject subject);
}
