/** The command line: what is asked for and how the answer is put into lines. It reckons nothing itself. */
@NullMarked
package housewright.cli;

import org.jspecify.annotations.NullMarked;
