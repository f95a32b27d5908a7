package housewright.unit;

/** Light that a lamp or a projector gives in all, in lm, 0 or more. */
public record LuminousFlux(double value, Unit unit) implements Quantity, Comparable<LuminousFlux> {

    public LuminousFlux {
        value = Dimension.LUMINOUS_FLUX.checked(value, unit);
    }

    public static LuminousFlux ofLumens(double lumens) {
        return new LuminousFlux(lumens, Unit.LUMEN);
    }

    /** Reads text such as {@code 5000 lm}; throws a {@link UnitException} that says what is wrong with any other. */
    public static LuminousFlux parse(String text) {
        return Quantities.parse(LuminousFlux.class, text);
    }

    public double lumens() {
        return base();
    }

    @Override
    public int compareTo(LuminousFlux other) {
        return Double.compare(base(), other.base());
    }

    @Override
    public String toString() {
        return text();
    }
}
