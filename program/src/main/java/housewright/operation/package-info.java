/**
 * What a volunteer must touch to start, run and stop a service, worked out from the power and control paths.
 *
 * <p>Method: a thing that has a power switch of its own and takes mains is touched, unless what switches its supply is
 * touched instead (a sequencer or a switched distributor, once for all behind it), or a control path reaches it. A thing
 * on batteries that sends or receives by radio is touched. Looks are called by one button where there is one. Which
 * kinds have a switch that people use is common practice: desks, amplifiers, powered loudspeakers, computers, screens,
 * projectors, recorders; network, converters, stage boxes and lamps are taken to stay on. A program is opened on its
 * computer.
 *
 * <p>The order: supply before what it feeds, computers before programs, network switches before what is on the network,
 * amplifiers and powered loudspeakers after all else, and what sends before what it sends to, through all that stays on.
 * Which way signal goes is read from the feeds, and from cables that can go but one way. Circles are broken at what is
 * weakest, in the order of the file, and said. Shutting down is the same backwards (common practice).
 *
 * <p>Limits: nobody knows here which of the switches people leave on all week, nor in which order a sequencer is set to
 * switch its outlets.
 */
@NullMarked
package housewright.operation;

import org.jspecify.annotations.NullMarked;
