package housewright.model;

import java.util.Map;

/** The building: rooms, places where things stand or hang, pathways for cable, circuits. */
public record Venue(
        Map<String, Room> rooms,
        Map<String, Place> places,
        Map<String, Pathway> pathways,
        Map<String, Circuit> circuits) {
    public Venue {
        rooms = Ordered.copy(rooms);
        places = Ordered.copy(places);
        pathways = Ordered.copy(pathways);
        circuits = Ordered.copy(circuits);
    }

    /** Nothing surveyed yet. */
    public static final Venue EMPTY = new Venue(Map.of(), Map.of(), Map.of(), Map.of());
}
