/**
 * Rules about power, racks and weight. What hangs overhead and what is on the mains can hurt: where a figure is missing
 * these rules stop the job at that point rather than guess, and they leave the decision to licensed people and local code.
 */
@NullMarked
package housewright.check.power;

import org.jspecify.annotations.NullMarked;
