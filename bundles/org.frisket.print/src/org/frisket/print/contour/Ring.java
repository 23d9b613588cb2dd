package org.frisket.print.contour;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

import org.frisket.geometry.Point;

/** A closed way of points about a pixel apart, in pixels, and how far along it each of them is. */
final class Ring {

	private final double[] x;
	private final double[] y;
	/** One longer than the points: the last is the length of the whole way. */
	private final double[] travelled;

	private Ring(double[] x, double[] y) {
		this.x = x;
		this.y = y;
		travelled = new double[x.length + 1];
		for (int i = 0; i < x.length; i++) {
			int next = (i + 1) % x.length;
			travelled[i + 1] = travelled[i] + Math.sqrt(square(x[next] - x[i]) + square(y[next] - y[i]));
		}
	}

	private static double square(double value) {
		return value * value;
	}

	int size() {
		return x.length;
	}

	/** Of a point whose number may be below zero, or go beyond the last, by one round. */
	double x(int index) {
		return x[Math.floorMod(index, x.length)];
	}

	double y(int index) {
		return y[Math.floorMod(index, y.length)];
	}

	Point point(int index) {
		return new Point(x(index), y(index));
	}

	double length() {
		return travelled[x.length];
	}

	/** Length of the way forwards from one point to another; numbers may go round. */
	double way(int from, int to) {
		return along(to) - along(from);
	}

	private double along(int index) {
		return travelled[Math.floorMod(index, x.length)] + Math.floorDiv(index, x.length) * length();
	}

	List<Point> points() {
		List<Point> points = new ArrayList<>(x.length);
		for (int i = 0; i < x.length; i++) {
			points.add(new Point(x[i], y[i]));
		}
		return points;
	}

	/** Negative if it runs counter-clockwise to the viewer, with art inside. */
	double signedArea() {
		double sum = 0;
		for (int i = 0; i < x.length; i++) {
			int next = (i + 1) % x.length;
			sum += x[i] * y[next] - x[next] * y[i];
		}
		return sum / 2;
	}

	/** The longer side of its box. */
	double extent() {
		return Math.max(Arrays.stream(x).max().orElse(0) - Arrays.stream(x).min().orElse(0),
				Arrays.stream(y).max().orElse(0) - Arrays.stream(y).min().orElse(0));
	}

	/** Takes points until it is closed. */
	static final class Builder {

		private static final double LEAST_STEP = 0.3;

		private double[] x = new double[64];
		private double[] y = new double[64];
		private int size;

		void add(double newX, double newY) {
			if (size == x.length) {
				x = Arrays.copyOf(x, 2 * size);
				y = Arrays.copyOf(y, 2 * size);
			}
			x[size] = newX;
			y[size++] = newY;
		}

		int size() {
			return size;
		}

		void clear() {
			size = 0;
		}

		/** Without points so near to the one before that the way between them has no direction to speak of. */
		Ring build() {
			double[] keptX = new double[size];
			double[] keptY = new double[size];
			int kept = 0;
			for (int i = 0; i < size; i++) {
				if (kept == 0 || isApart(x[i] - keptX[kept - 1], y[i] - keptY[kept - 1])) {
					keptX[kept] = x[i];
					keptY[kept++] = y[i];
				}
			}
			if (kept > 1 && !isApart(keptX[0] - keptX[kept - 1], keptY[0] - keptY[kept - 1])) {
				kept--;
			}
			return new Ring(Arrays.copyOf(keptX, kept), Arrays.copyOf(keptY, kept));
		}

		private static boolean isApart(double dx, double dy) {
			return Math.abs(dx) + Math.abs(dy) > LEAST_STEP;
		}
	}
}
