package org.frisket.geometry;

import java.util.List;

/**
 * SVG path data: reads all commands of SVG 1.1 section 8.3, writes absolute {@code M L C Z} only. Coordinates are taken
 * as millimetres.
 */
public final class PathData {

	private PathData() {
	}

	/**
	 * Arcs and quadratics become cubics. Segments without extent, and subpaths that only move, are passed over; an
	 * empty string is an empty outline.
	 *
	 * @throws PathDataException if the text breaks the grammar or a number is too large
	 */
	public static Outline parse(String text) {
		return new PathDataParser(text, new OutlineBuilder()).parse();
	}

	/**
	 * As {@link #parse(String)}, for path data in other units than millimetres.
	 *
	 * @param arcDeviation how far the cubics of an arc may lie from it, in the unit of the path data; positive
	 */
	public static Outline parse(String text, double arcDeviation) {
		return new PathDataParser(text, new OutlineBuilder(arcDeviation)).parse();
	}

	/**
	 * Where path data draws something without extent and nothing else before the next move, in its order: a pen leaves
	 * a dot there, an outline has nothing.
	 *
	 * @throws PathDataException if the text breaks the grammar or a number is too large
	 */
	public static List<Point> dots(String text) {
		return new PathDataParser(text, new OutlineBuilder()).dots();
	}

	/** The contours one after the other; see {@link #format(Contour, int)}. */
	public static String format(Outline outline, int decimals) {
		return format(outline.contours(), decimals);
	}

	/**
	 * The contours one after the other, in numbers that are read back as the same coordinates to the last bit; the same
	 * outline always gives the same text. A contour of which nothing has extent is left out.
	 *
	 * @throws IllegalArgumentException if a coordinate is not finite
	 */
	public static String format(Outline outline) {
		PathDataWriter writer = new PathDataWriter();
		outline.contours().forEach(writer::write);
		return writer.toString();
	}

	/** Each piece's outer contour followed by its holes; see {@link #format(Contour, int)}. */
	public static String format(Region region, int decimals) {
		return format(region.contours(), decimals);
	}

	/**
	 * The same contour always gives the same text. Segments that rounding leaves without extent are not written; a
	 * contour of which nothing is left is an empty string.
	 *
	 * @param decimals digits after the point, from 0 to 12; trailing zeros are not written
	 * @throws IllegalArgumentException if a coordinate is not finite
	 */
	public static String format(Contour contour, int decimals) {
		return format(List.of(contour), decimals);
	}

	private static String format(List<Contour> contours, int decimals) {
		PathDataWriter writer = new PathDataWriter(decimals);
		contours.forEach(writer::write);
		return writer.toString();
	}
}
