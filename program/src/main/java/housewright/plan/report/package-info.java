/**
 * What a person wants to know of a schedule: why each task is not earlier and how far it may slip, which events are ready,
 * what clashes where something is missed, what moved and why, and what could be begun now. All of it is read off the
 * schedule; nothing is decided here.
 */
@NullMarked
package housewright.plan.report;

import org.jspecify.annotations.NullMarked;
