/** What a machine can follow: straight moves and arcs, and curves as such. Lengths in mm, y down, angles in radians. */
package org.frisket.toolpath.track;
