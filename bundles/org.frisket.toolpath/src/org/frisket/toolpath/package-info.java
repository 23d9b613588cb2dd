/**
 * From the lines of a sheet to the run that works them: {@link org.frisket.toolpath.RunPlanner} orders
 * {@link org.frisket.toolpath.Line}s into a {@link org.frisket.toolpath.Run}, {@link org.frisket.toolpath.Timeline} says
 * when what happens. Plain Java; lengths in mm, y down, times in seconds, angles in radians.
 */
package org.frisket.toolpath;
