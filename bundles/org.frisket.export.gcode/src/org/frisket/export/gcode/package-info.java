/** The run of a sheet or job as G-code: the words of RS274/NGC that machines of that kind have in common. */
package org.frisket.export.gcode;
