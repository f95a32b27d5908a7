/** The rules about sound: levels, noise, delays, stereo, clocks, and what is left over for later. */
@NullMarked
package housewright.check.sound;

import org.jspecify.annotations.NullMarked;
