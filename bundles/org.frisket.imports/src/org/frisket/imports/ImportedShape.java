package org.frisket.imports;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Contour;
import org.frisket.geometry.Line;
import org.frisket.geometry.Outline;
import org.frisket.geometry.Point;
import org.frisket.geometry.Segment;
import org.frisket.geometry.Transform;
import org.frisket.geometry.clean.FillRule;

/** One thing on a layer of a file. */
public sealed interface ImportedShape {

	/** Its name or id in the file; may be empty. */
	String name();

	/** Around it, in mm, without the width of lines. */
	Bounds bounds();

	/** How many of it are wanted. */
	default int quantity() {
		return 1;
	}

	/**
	 * An area. Contours that come open are closed by a straight line, as SVG fills them.
	 *
	 * @param colour   as {@code #rrggbb}, or empty
	 * @param quantity how many of it are wanted, 1 at least
	 */
	record Area(String name, Outline outline, FillRule rule, String colour, int quantity) implements ImportedShape {

		/** One of it. */
		public Area(String name, Outline outline, FillRule rule, String colour) {
			this(name, outline, rule, colour, 1);
		}

		public Area {
			if (!outline.contours().stream().allMatch(Area::isFit)) {
				outline = new Outline(outline.contours().stream().filter(c -> !c.isEmpty()).map(Area::closed).toList());
			}
		}

		@Override
		public Bounds bounds() {
			return outline.bounds();
		}

		private static boolean isFit(Contour contour) {
			return contour.isClosed() && !contour.isEmpty();
		}

		private static Contour closed(Contour contour) {
			if (contour.isClosed()) {
				return contour;
			}
			List<Segment> segments = new ArrayList<>(contour.segments());
			if (!contour.end().equals(contour.start())) {
				segments.add(new Line(contour.end(), contour.start()));
			}
			return Contour.closed(segments);
		}
	}

	/**
	 * Lines without an area of their own; closed ones stay lines.
	 *
	 * @param width    of the pen in mm, 0 if the file says none
	 * @param colour   as {@code #rrggbb}, or empty
	 * @param quantity how many of it are wanted, 1 at least
	 */
	record Lines(String name, Outline outline, double width, String colour, int quantity) implements ImportedShape {

		/** One of it. */
		public Lines(String name, Outline outline, double width, String colour) {
			this(name, outline, width, colour, 1);
		}

		@Override
		public Bounds bounds() {
			return outline.bounds();
		}
	}

	/**
	 * A picture of pixels, kept as its own bytes.
	 *
	 * @param mediaType such as {@code image/png}
	 * @param place     takes the unit square, y downwards, to where the picture lies, in mm
	 */
	record Picture(String name, byte[] bytes, String mediaType, Transform place) implements ImportedShape {

		public Picture {
			bytes = bytes.clone();
		}

		@Override
		public Bounds bounds() {
			return Bounds.of(place.apply(new Point(0, 0))).with(place.apply(new Point(1, 0)))
					.with(place.apply(new Point(0, 1))).with(place.apply(new Point(1, 1)));
		}

		@Override
		public byte[] bytes() {
			return bytes.clone();
		}

		@Override
		public boolean equals(Object other) {
			return other instanceof Picture p && name.equals(p.name) && Arrays.equals(bytes, p.bytes)
					&& mediaType.equals(p.mediaType) && place.equals(p.place);
		}

		@Override
		public int hashCode() {
			return Arrays.hashCode(bytes) * 31 + place.hashCode();
		}
	}
}
