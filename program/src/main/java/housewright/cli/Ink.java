package housewright.cli;

/** Colours and weight, where the screen has them. State is always a word and a shape first. */
enum Ink {
    STRONG("1"),
    FAINT("2"),
    STOP("1;31"),
    FIX("33"),
    GOOD("32");

    private final String code;

    Ink(String code) {
        this.code = code;
    }

    String on(boolean colour, String text) {
        return colour && !text.isEmpty() ? "\u001B[" + code + "m" + text + "\u001B[0m" : text;
    }
}
