package housewright.work;

/**
 * A part of a task's length: so many of a labour unit.
 *
 * @param unit id of the labour unit
 * @param count of what the unit is counted by
 * @param per what that is, such as metre
 */
public record Portion(String unit, double count, String per) {}
