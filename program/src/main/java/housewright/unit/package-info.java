/**
 * Quantities with their units, as people write them: {@code 31 m}, {@code 6 ft 3 in}, {@code 2 h 30 min}, {@code 4
 * dBu}.
 *
 * <p>Each trade quantity is a record of the value as written and its unit, so nothing is rounded by being read and
 * written. What it amounts to in the base unit is worked out on demand. Printing and reading again gives an equal
 * record. A number without a unit, or with the unit of something else, is a {@link housewright.unit.UnitException} that
 * names the units it could have had.
 *
 * <p>Factors are exact by definition (NIST SP 811, appendix B); American wire gauges follow the geometry of ASTM B258.
 */
@NullMarked
package housewright.unit;

import org.jspecify.annotations.NullMarked;
