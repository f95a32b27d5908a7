package housewright.model;

/**
 * A value the file shows as one scalar. Such a type has {@code static T parse(String)} that throws
 * {@link WordingException}, and {@code parse(text())} equals the value.
 */
public interface Written {
    String text();
}
