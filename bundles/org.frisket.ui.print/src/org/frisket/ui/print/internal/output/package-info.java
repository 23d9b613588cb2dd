/** The two files of a sheet, written from the screen; a sheet printed straight onto paper; the picture of both. */
package org.frisket.ui.print.internal.output;
