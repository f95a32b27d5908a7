/**
 * Question: does every feed arrive, and does every never-feed stay out; if not, where does it stop and what
 * is the cheapest mend?
 *
 * <p>Method: every channel of every port is a node (two for a port that works both ways: arriving, leaving), every
 * point is one; cables, fixed routes, patch entries, network-sends, radio links and panel ties are edges with gain
 * and delay. A proof is a path of least delay; a mend is a cheapest path over the graph extended with what could be
 * added, or a cheapest cut.
 *
 * <p>Source: FORMAT "Meaning". Limits: faders are taken as open and switches as set; nothing here knows what is
 * heard in the room.
 */
@NullMarked
package housewright.signal;

import org.jspecify.annotations.NullMarked;
