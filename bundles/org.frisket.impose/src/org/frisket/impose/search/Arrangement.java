package org.frisket.impose.search;

import java.util.Arrays;
import java.util.stream.IntStream;

import org.frisket.impose.shape.Solid;

/** Parts on a rectangle: where the origin of each lies and how it is turned. Some may be fixed. */
final class Arrangement {

	final Shapes shapes;
	/** Of each part its shape. */
	final int[] shape;
	/** Along the sheet. */
	final double[] x;
	/** Across it. */
	final double[] y;
	final int[] turn;
	/** The first parts keep their places. */
	final int fixed;
	double length;
	final double width;

	Arrangement(Shapes shapes, int[] shape, int fixed, double length, double width) {
		this.shapes = shapes;
		this.shape = shape;
		this.fixed = fixed;
		this.length = length;
		this.width = width;
		x = new double[shape.length];
		y = new double[shape.length];
		turn = new int[shape.length];
	}

	int parts() {
		return shape.length;
	}

	Arrangement copy() {
		Arrangement copy = new Arrangement(shapes, shape, fixed, length, width);
		copy.set(this);
		return copy;
	}

	/** With one part more, in its first turn at the corner. */
	Arrangement with(int another) {
		Arrangement more = new Arrangement(shapes, Arrays.copyOf(shape, parts() + 1), fixed, length, width);
		System.arraycopy(x, 0, more.x, 0, parts());
		System.arraycopy(y, 0, more.y, 0, parts());
		System.arraycopy(turn, 0, more.turn, 0, parts());
		more.shape[parts()] = another;
		more.turn[parts()] = shapes.allowed[another][0];
		more.hold(parts());
		return more;
	}

	/** Without one of its parts. */
	Arrangement without(int part) {
		int[] kept = IntStream.range(0, parts()).filter(p -> p != part).toArray();
		Arrangement less = new Arrangement(shapes, IntStream.of(kept).map(p -> shape[p]).toArray(),
				part < fixed ? fixed - 1 : fixed, length, width);
		for (int p = 0; p < kept.length; p++) {
			less.x[p] = x[kept[p]];
			less.y[p] = y[kept[p]];
			less.turn[p] = turn[kept[p]];
		}
		return less;
	}

	/** Takes over the places of the same parts. */
	void set(Arrangement other) {
		System.arraycopy(other.x, 0, x, 0, x.length);
		System.arraycopy(other.y, 0, y, 0, y.length);
		System.arraycopy(other.turn, 0, turn, 0, turn.length);
		length = other.length;
	}

	Solid solid(int part) {
		return shapes.solid(shape[part], turn[part]);
	}

	/** Puts a part back onto the rectangle. */
	void hold(int part) {
		Solid solid = solid(part);
		x[part] = Math.max(-solid.minX(), Math.min(x[part], length - solid.maxX()));
		y[part] = Math.max(-solid.minY(), Math.min(y[part], width - solid.maxY()));
	}

	/** Makes the rectangle as long as that; what reaches beyond comes back. */
	void shorten(double to) {
		length = to;
		for (int p = fixed; p < parts(); p++) {
			hold(p);
		}
	}

	/** How far the parts reach along. */
	double extent() {
		double far = 0;
		for (int p = 0; p < parts(); p++) {
			far = Math.max(far, x[p] + solid(p).maxX());
		}
		return far;
	}

	/** How deep two parts are in each other. */
	double depth(int p, int q) {
		return shapes.depth(shape[p], turn[p], shape[q], turn[q], x[q] - x[p], y[q] - y[p]);
	}
}
