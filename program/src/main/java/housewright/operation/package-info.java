/**
 * What a volunteer must touch to start, run and stop a service, worked out from the power and control paths.
 *
 * <p>Method: a thing that has a power switch of its own and takes mains is touched, unless what switches its supply is
 * touched instead (a sequencer or a switched distributor, once for all behind it), or a control path reaches it. A thing
 * on batteries that sends or receives by radio is touched. Looks are called by one button where there is one. Which
 * kinds have a switch that people use is common practice: desks, amplifiers, powered loudspeakers, computers, screens,
 * projectors, recorders; network, converters, stage boxes and lamps are taken to stay on. Limits: nobody knows here
 * which of the switches people leave on all week.
 */
@NullMarked
package housewright.operation;

import org.jspecify.annotations.NullMarked;
