/**
 * A sheet straight onto the paper of a printer, in its true size: where it lies there ({@link
 * org.frisket.print.output.direct.PaperPlace}), in which strips it is sent ({@link
 * org.frisket.print.output.direct.Strip}), and what stands in the way. Lengths are in mm, but for those that are
 * called units: these are the printer's own.
 */
package org.frisket.print.output.direct;
