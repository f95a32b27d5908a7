package housewright.operation;

/**
 * A thing that must be shut down first, and whose supply is switched for a group.
 *
 * @param thing such as a computer or a projector
 * @param master the sequencer or switched distributor its supply comes from
 */
public record Cut(String thing, String master) {}
