package housewright.main;

/** Starts Housewright. */
public final class Main {

    private Main() {}

    public static void main(String[] args) {
        System.err.println("Usage: housewright COMMAND [FILE]");
        System.exit(2);
    }
}
