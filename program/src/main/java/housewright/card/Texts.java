package housewright.card;

/** What several cards say alike. */
final class Texts {
    static final String MAINS =
            "Power can kill. Open no box. Touch no bare wire and no wet plug. If you smell smoke or get a"
                    + " shock, get back and call for help. If a fuse or breaker is off, leave it off and call.";
    static final String EARS =
            "Loud sound hurts ears for good. Turn it down before you plug or switch on. Go up slowly.";
    static final String HIGH = "Do not climb on chairs or ladders. Look from the floor.";

    private Texts() {}
}
