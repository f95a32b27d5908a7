package housewright.paper;

/**
 * What every sheet of a binder has in common.
 *
 * @param hall as it stands in the foot of each page
 * @param revision as it is printed
 * @param date of the revision, as it is printed; no paper asks a clock
 * @param labels how labels are printed
 */
public record PaperOptions(PageSize size, String hall, String revision, String date, Labelling labels) {
    /** Stands in a drawing's title block for the revision, which follows from what the sheets say. */
    public static final String REVISION = "\uE000";

    /** Stands in a drawing's title block for the date. */
    public static final String DATE = "\uE001";

    /** With labels on what is usual for the size. */
    public PaperOptions(PageSize size, String hall, String revision, String date) {
        this(size, hall, revision, date, Labelling.usual(size));
    }

    public PaperOptions with(String otherRevision, String otherDate) {
        return new PaperOptions(size, hall, otherRevision, otherDate, labels);
    }
}
