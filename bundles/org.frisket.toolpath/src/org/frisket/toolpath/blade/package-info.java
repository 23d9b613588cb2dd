/** A blade whose tip trails behind the axis it swivels about. Lengths in mm, angles in radians. */
package org.frisket.toolpath.blade;
