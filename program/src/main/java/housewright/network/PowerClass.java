package housewright.network;

/**
 * Power over the network by classes: what the device may take at its end, and what the port must hold ready for it
 * (IEEE 802.3af, at and bt).
 *
 * @param number of the class
 * @param atDevice most the device may take, in W
 * @param atPort what the port must give, in W
 */
public record PowerClass(int number, double atDevice, double atPort) {
    private static final PowerClass[] CLASSES = {
        new PowerClass(1, 3.84, 4),
        new PowerClass(2, 6.49, 7),
        new PowerClass(3, 12.95, 15.4),
        new PowerClass(4, 25.5, 30),
        new PowerClass(5, 40, 45),
        new PowerClass(6, 51, 60),
        new PowerClass(7, 62, 75),
        new PowerClass(8, 71.3, 90)
    };

    /** The lowest class that is enough; the highest where none is. */
    public static PowerClass of(double watts) {
        for (PowerClass each : CLASSES) {
            if (watts <= each.atDevice()) {
                return each;
            }
        }
        return CLASSES[CLASSES.length - 1];
    }
}
