package housewright.operation;

import org.jspecify.annotations.Nullable;

/**
 * One thing that somebody must touch.
 *
 * @param thing the equipment
 * @param place where it is; null where that is not said
 * @param room the room of that place; null where that is not said
 * @param how what is done with it
 * @param from the distributor or outlet its supply comes from; null where none is drawn
 */
public record Touch(
        String thing,
        @Nullable String place,
        @Nullable String room,
        How how,
        @Nullable String from) {

    /** What is done with a thing to start it. */
    public enum How {
        /** Its own power switch. */
        SWITCH("power switch", "power switches"),
        /** One switch for everything behind it. */
        MASTER("switch for a group", "switches for groups"),
        /** Opened on its computer. */
        PROGRAM("program to open", "programs to open"),
        /** Batteries in, and on. */
        BATTERY("thing on batteries", "things on batteries"),
        /** A button that calls the light. */
        BUTTON("button for the light", "buttons for the light");

        private final String one;
        private final String many;

        How(String one, String many) {
            this.one = one;
            this.many = many;
        }

        /** "1 power switch", "3 power switches". */
        public String counted(int count) {
            return count + " " + (count == 1 ? one : many);
        }
    }
}
