package housewright.signal;

/** How much speaks for a way being led on wrongly at a place, from most to least. */
enum Likely {
    /** Set in a device: what serves no feed could be patched to what has no other source. */
    PATCH_DUE,
    /** A way that serves nothing else would be whole but for what is not there. */
    MISSING_ON_AN_IDLE_WAY,
    /** Set in a device: others like it are patched there. */
    PATCH_LIKE_OTHERS,
    /** Ports: a way that serves nothing else ends at one, and the other has nothing in it. */
    BOTH_WAIT,
    /** A way would be whole but for what is not there. */
    MISSING,
    /** One side waits, or the other destinations of the feed are led on from beside it. */
    ONE_WAITS,
    /** Nothing forbids it. */
    POSSIBLE
}
