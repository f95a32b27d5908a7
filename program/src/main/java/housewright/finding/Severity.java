package housewright.finding;

import java.util.Locale;

/** How bad a finding is, worst first. */
public enum Severity {
    /** Somebody could be hurt, something would be damaged, or the job fails on the day. */
    STOP,
    /** Settle it before the visit. */
    FIX,
    /** Worth knowing; the job goes on without. */
    NOTE;

    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
