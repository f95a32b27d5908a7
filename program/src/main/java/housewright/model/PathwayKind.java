package housewright.model;

/** What carries the cable along a pathway. */
public enum PathwayKind implements Word {
    CONDUIT,
    TRUNKING,
    TRAY,
    SURFACE,
    CEILING_VOID,
    FLOOR_VOID,
    RISER,
    UNDERGROUND,
    LOOSE
}
