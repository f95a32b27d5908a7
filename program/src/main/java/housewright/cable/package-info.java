/**
 * What each cable joins and how long it is: which sockets its ends are in, along which pathways it runs, and which
 * cables make one run where they meet in panels that pass straight through. Lengths are as stated in the project, else
 * the sum of the pathways with slack at both ends; never guessed.
 */
@NullMarked
package housewright.cable;

import org.jspecify.annotations.NullMarked;
