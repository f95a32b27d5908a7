package housewright.plan;

/**
 * Something of which there are only so many: ladders, testers, radios.
 *
 * @param units how many; 0 or more
 */
public record Tool(String id, String name, int units) {
    public Tool {
        if (units < 0) {
            throw new IllegalArgumentException("Of tool " + id + " there cannot be " + units);
        }
    }
}
