/** Sheets and jobs as G-code. */
package org.frisket.export.gcode;
