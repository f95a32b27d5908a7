/**
 * Which tasks does the change from TODAY to TARGET imply?
 *
 * <p>Method: what is there today and what will be there are compared, thing by thing and cable by cable; every difference
 * gives tasks of known kinds, each under an id made of its kind and what it is about, so that it keeps its id whatever
 * else changes. Order follows from the trade: the old is copied before it goes, what goes makes room, cable is pulled
 * and made off before it is tested, tested before it is plugged in, a device is set once it has power, and a feed is
 * proven after everything on its path. The project's own tasks stand beside these, change them, cover or skip them.
 *
 * <p>Source: lengths come from labour units, which are data ({@link housewright.model.Practice}) and common practice
 * where a company has none of its own. Limits: what is hired for the job alone is in neither state, and is only
 * fetched and taken back; drilling, building work and whatever else no drawing shows is the project's own to enter.
 */
@NullMarked
package housewright.work;

import org.jspecify.annotations.NullMarked;
