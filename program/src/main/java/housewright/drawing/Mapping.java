package housewright.drawing;

/**
 * From metres to the units of a sheet and back, for a drawing to scale.
 *
 * <p>On a floor plan {@code across} is the venue's x and {@code up} its y; on a side view {@code across} is x or y, as
 * the sheet says, and {@code up} the height.
 *
 * @param unitsPerMetre units of the sheet that stand for a metre
 * @param originX where 0 m is from the sheet's left edge
 * @param originY where 0 m is from the sheet's top edge
 */
public record Mapping(double unitsPerMetre, double originX, double originY) {
    public double x(double acrossMetres) {
        return originX + acrossMetres * unitsPerMetre;
    }

    public double y(double upMetres) {
        return originY - upMetres * unitsPerMetre;
    }

    public double across(double x) {
        return (x - originX) / unitsPerMetre;
    }

    public double up(double y) {
        return (originY - y) / unitsPerMetre;
    }
}
