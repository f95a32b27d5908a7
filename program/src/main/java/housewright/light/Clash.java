package housewright.light;

/** Two network-sends of different senders that arrive on the same channel of a node. */
public record Clash(String node, String one, String other) {}
