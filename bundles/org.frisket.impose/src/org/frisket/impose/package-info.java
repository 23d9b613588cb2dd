/**
 * Parts laid on sheets or a roll by their true shape. Plain Java on regions; lengths in mm, y down.
 * <p>
 * How: {@code shape} takes a part for a few convex pieces; {@code fit} knows how deep two parts are in each other,
 * wherever they lie; {@code search} moves parts until none overlap in less and less room.
 */
package org.frisket.impose;
