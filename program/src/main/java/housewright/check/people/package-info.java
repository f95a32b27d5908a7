/** The rules about people in the room: what they see, reach and hear, what shines at them, and what nobody may do. */
@NullMarked
package housewright.check.people;

import org.jspecify.annotations.NullMarked;
