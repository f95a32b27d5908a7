package housewright.unit;

/** A force, such as the pull that a cable stands, in N, 0 or more. */
public record Force(double value, Unit unit) implements Quantity, Comparable<Force> {

    public Force {
        value = Dimension.FORCE.checked(value, unit);
    }

    public static Force ofNewtons(double newtons) {
        return new Force(newtons, Unit.NEWTON);
    }

    /** Reads text such as {@code 110 N}; throws a {@link UnitException} that says what is wrong with any other. */
    public static Force parse(String text) {
        return Quantities.parse(Force.class, text);
    }

    public double newtons() {
        return base();
    }

    @Override
    public int compareTo(Force other) {
        return Double.compare(base(), other.base());
    }

    @Override
    public String toString() {
        return text();
    }
}
