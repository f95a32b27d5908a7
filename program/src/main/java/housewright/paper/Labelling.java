package housewright.paper;

/**
 * How labels are printed.
 *
 * @param stock what they are printed on
 * @param first where the first goes on a sheet that is begun, from 1, along the rows
 * @param site address under which the project's pages are found, such as {@code http://192.168.1.20:8080/p/hall}; empty
 *     for none, and then a code says the id alone
 */
public record Labelling(LabelStock stock, int first, String site) {
    public Labelling {
        if (first < 1 || first > stock.perPage()) {
            throw new IllegalArgumentException(
                    "The first label of " + stock.name() + " is one of 1 to " + stock.perPage());
        }
        while (site.endsWith("/")) {
            site = site.substring(0, site.length() - 1);
        }
    }

    public static Labelling usual(PageSize size) {
        return new Labelling(LabelStock.usualFor(size), 1, "");
    }

    /** What a code says of a thing, such as {@code cables.C101}: where its page is, or the thing alone. */
    String code(String thing) {
        return site.isEmpty() ? thing : site + "/label/" + thing;
    }
}
