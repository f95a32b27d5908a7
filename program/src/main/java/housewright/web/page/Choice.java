package housewright.web.page;

/** One of several views of a page. */
public record Choice(String label, String href, boolean here) {}
