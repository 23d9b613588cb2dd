package org.frisket.print.output.direct;

import org.frisket.geometry.Bounds;

/**
 * A strip of a page, as it is sent to a printer.
 *
 * @param x      left edge, in whole units of the printer, as {@code y}, {@code width} and {@code height}
 * @param piece  the same in mm of the sheet
 * @param pixels across, of the image that fills it @param rows of that image
 */
public record Strip(int x, int y, int width, int height, Bounds piece, int pixels, int rows) {
}
