/**
 * What becomes of sound on its way: how loud a microphone arrives at each place and what is left before it clips, where
 * the loudest one output can give is more than the next input takes, what loudspeakers further back must wait for, and
 * which devices share a clock.
 *
 * <p>Level: the output of a microphone is its sensitivity at 1 Pa (94 dB SPL) and the sound pressure over that; along
 * the way the gains of the path are added, and at a converter the clipping level of its port is 0 dBFS. Sound in air:
 * c = 331.3 m/s times the square root of 1 + T/273.15. Limits: one microphone at a time, no filters, no faders.
 */
@NullMarked
package housewright.sound;

import org.jspecify.annotations.NullMarked;
