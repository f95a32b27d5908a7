package housewright.paper;

/**
 * What every sheet of a binder has in common.
 *
 * @param hall as it stands in the foot of each page
 * @param revision as it is printed
 * @param date of the revision, as it is printed; no paper asks a clock
 */
public record PaperOptions(PageSize size, String hall, String revision, String date) {
    /** Stands in a drawing's title block for the revision, which follows from what the sheets say. */
    public static final String REVISION = "\uE000";

    /** Stands in a drawing's title block for the date. */
    public static final String DATE = "\uE001";

    public PaperOptions with(String otherRevision, String otherDate) {
        return new PaperOptions(size, hall, otherRevision, otherDate);
    }
}
