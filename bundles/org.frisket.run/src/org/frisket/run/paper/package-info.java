/**
 * The run sheet: a page or more that goes with a sheet to the machine. {@link org.frisket.run.paper.RunSheet} writes it as
 * PDF; the rest lays it out. Lengths are mm from the upper left corner of a page, y down, unless they are of the sheet that
 * is worked.
 */
package org.frisket.run.paper;
