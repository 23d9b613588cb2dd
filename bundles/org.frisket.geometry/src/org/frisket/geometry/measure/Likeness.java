package org.frisket.geometry.measure;

import java.util.Arrays;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Cubic;
import org.frisket.geometry.Piece;
import org.frisket.geometry.Point;
import org.frisket.geometry.Segment;

/** What two pieces have in common that are the same but for their place, as two equal letters of a line are. */
final class Likeness {

	/** In mm; far below any tolerance, far above what moving a piece rounds off. */
	private static final double GRAIN = 1e-6;

	private final long[] shape;

	private Likeness(long[] shape) {
		this.shape = shape;
	}

	static Likeness of(Piece piece) {
		Point origin = piece.outer().start();
		long[] shape = new long[6 * piece.contours().stream().mapToInt(Contour::nodeCount).sum()
				+ piece.contours().size()];
		int size = 0;
		for (Contour contour : piece.contours()) {
			shape[size++] = contour.nodeCount();
			for (Segment segment : contour.segments()) {
				if (segment instanceof Cubic cubic) {
					size = add(cubic.control1(), origin, shape, size);
					size = add(cubic.control2(), origin, shape, size);
				}
				size = add(segment.end(), origin, shape, size);
			}
		}
		return new Likeness(Arrays.copyOf(shape, size));
	}

	private static int add(Point point, Point origin, long[] shape, int size) {
		shape[size] = Math.round((point.x() - origin.x()) / GRAIN);
		shape[size + 1] = Math.round((point.y() - origin.y()) / GRAIN);
		return size + 2;
	}

	@Override
	public boolean equals(Object other) {
		return other instanceof Likeness likeness && Arrays.equals(shape, likeness.shape);
	}

	@Override
	public int hashCode() {
		return Arrays.hashCode(shape);
	}
}
