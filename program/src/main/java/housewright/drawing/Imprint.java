package housewright.drawing;

/**
 * What a title block says of the issue of a drawing.
 *
 * @param revision of the project, such as "12"; may be empty
 * @param date of issue, as it is to be printed; may be empty
 */
public record Imprint(String revision, String date) {
    /** Not issued. */
    public static final Imprint NONE = new Imprint("", "");
}
