package org.frisket.page;

import java.awt.image.BufferedImage;
import java.io.IOException;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Outline;
import org.frisket.geometry.Transform;

/** Paints one page. Lengths are mm from its upper left corner, y down; greys run from 0, black, to 1, white. */
public interface PagePainter {

	/** Fills an outline by the nonzero rule. */
	void fill(Outline outline, double grey) throws IOException;

	/** The same in a colour. @param colour as {@code #rrggbb} */
	void fill(Outline outline, String colour) throws IOException;

	/**
	 * A picture of pixels.
	 *
	 * @param place takes the unit square, y downwards, to where the picture lies on the page
	 */
	void picture(BufferedImage image, Transform place) throws IOException;

	/** Lines along contours; open ones stay open. */
	void stroke(Outline outline, Ink ink) throws IOException;

	/** A thin line around a box. */
	void frame(Bounds box, double grey) throws IOException;

	/**
	 * One line of words in the font of the pages. What it lacks is written as a question mark; a line that is too long
	 * is set narrower.
	 *
	 * @param x         left end
	 * @param baseline  y of it
	 * @param capHeight of its capitals
	 * @param room      how wide it may be
	 */
	void words(String text, double x, double baseline, double capHeight, double room, double grey)
			throws IOException;
}
