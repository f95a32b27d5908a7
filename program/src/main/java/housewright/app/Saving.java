package housewright.app;

/** What came of writing a file. */
public sealed interface Saving {

    record Saved() implements Saving {}

    /** @param why nothing was written and nothing is lost, as a sentence */
    record NotSaved(String why) implements Saving {}
}
