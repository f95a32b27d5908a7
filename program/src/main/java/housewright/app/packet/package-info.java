/**
 * Working from afar: questions and what the survey lacks as one page that opens on a phone with no server, and the
 * answers file that comes back from it, held against the project before anything is taken.
 */
@NullMarked
package housewright.app.packet;

import org.jspecify.annotations.NullMarked;
