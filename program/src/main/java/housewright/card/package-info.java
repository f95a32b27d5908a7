/**
 * The cards that hang beside the gear for whoever runs a service and is no technician: start up, run, shut down, no
 * sound in a room, no picture in a room. One page each, in short words.
 *
 * <p>Question: what does a volunteer do next, where, and what is seen when it is right? Method: the order of {@link
 * housewright.operation.PowerOrder}; for a room that is silent or dark the ways of the feeds that end in it, from the
 * desk that hands are on to the room, with the things on them that show a light and the plugs that people handle. What
 * is cheapest and most often the cause comes first: faders and inputs, batteries and switches, plugs, boxes, then
 * somebody who knows (common practice).
 *
 * <p>Limits: nobody has said where a power switch sits, what a button is called or what a number is to ring: the card
 * leaves a line to write it on and lists what is to be filled in. What a thing shows when it is right is what things of
 * its kind mostly show. Nothing is opened, nobody climbs, mains and breakers are left to people.
 */
@NullMarked
package housewright.card;

import org.jspecify.annotations.NullMarked;
