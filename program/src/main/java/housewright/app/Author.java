package housewright.app;

/**
 * Who edits.
 *
 * @param person as others are told
 */
public record Author(String person, Role role) {}
