/** The rules about who runs a service: how much must be touched to start and stop, and what fails in their hands. */
@NullMarked
package housewright.check.volunteers;

import org.jspecify.annotations.NullMarked;
