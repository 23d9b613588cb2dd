/** The marks of a sheet: placing, measuring, what the measures say. */
package org.frisket.ui.print.internal.marks;
