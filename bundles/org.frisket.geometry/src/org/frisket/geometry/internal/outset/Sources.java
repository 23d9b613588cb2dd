package org.frisket.geometry.internal.outset;

import java.util.ArrayList;
import java.util.List;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Cubic;
import org.frisket.geometry.Piece;
import org.frisket.geometry.Point;
import org.frisket.geometry.Segment;

/**
 * Tells whether a place lies nearer than a distance to the edges of a piece. Chords in a grid tell nearly always; where
 * they leave it open the curve itself is asked.
 */
final class Sources {

	/** How far in mm chords may stand off the curves. */
	private static final double DEVIATION = 0.002;

	/** In mm; less than this nearer counts as just as far. */
	private static final double NOISE = 1e-9;

	private static final int CHORDS_PER_CELL = 2;

	private final double[] x0;
	private final double[] y0;
	private final double[] x1;
	private final double[] y1;
	private final double[] t0;
	private final double[] t1;
	private final CubicFoot[] foot;

	private final double left;
	private final double top;
	private final double right;
	private final double bottom;
	private final double cell;
	private final int columns;
	private final int rows;
	/** Chords of each cell, one cell after the other, and where each cell starts. */
	private final int[] held;
	private final int[] start;

	private record Chord(Point start, Point end, double from, double to, CubicFoot foot) {
	}

	Sources(Piece piece) {
		List<Chord> chords = new ArrayList<>();
		for (Contour contour : piece.contours()) {
			for (Segment segment : contour.segments()) {
				add(segment, chords);
			}
		}
		int count = chords.size();
		x0 = new double[count];
		y0 = new double[count];
		x1 = new double[count];
		y1 = new double[count];
		t0 = new double[count];
		t1 = new double[count];
		foot = new CubicFoot[count];
		double minX = Double.POSITIVE_INFINITY;
		double minY = Double.POSITIVE_INFINITY;
		double maxX = Double.NEGATIVE_INFINITY;
		double maxY = Double.NEGATIVE_INFINITY;
		for (int i = 0; i < count; i++) {
			Chord chord = chords.get(i);
			x0[i] = chord.start.x();
			y0[i] = chord.start.y();
			x1[i] = chord.end.x();
			y1[i] = chord.end.y();
			t0[i] = chord.from;
			t1[i] = chord.to;
			foot[i] = chord.foot;
			minX = Math.min(minX, Math.min(x0[i], x1[i]));
			minY = Math.min(minY, Math.min(y0[i], y1[i]));
			maxX = Math.max(maxX, Math.max(x0[i], x1[i]));
			maxY = Math.max(maxY, Math.max(y0[i], y1[i]));
		}
		left = minX;
		top = minY;
		right = maxX;
		bottom = maxY;
		double area = Math.max((maxX - minX) * (maxY - minY), 1e-6);
		cell = Math.max(Math.sqrt(area * CHORDS_PER_CELL / count), Math.max(maxX - minX, maxY - minY) / 1000);
		columns = 1 + (int) ((maxX - minX) / cell);
		rows = 1 + (int) ((maxY - minY) / cell);
		start = new int[columns * rows + 1];
		for (int i = 0; i < count; i++) {
			for (int row = row(Math.min(y0[i], y1[i])); row <= row(Math.max(y0[i], y1[i])); row++) {
				for (int column = column(Math.min(x0[i], x1[i])); column <= column(Math.max(x0[i], x1[i])); column++) {
					start[row * columns + column + 1]++;
				}
			}
		}
		for (int i = 1; i < start.length; i++) {
			start[i] += start[i - 1];
		}
		held = new int[start[start.length - 1]];
		int[] next = start.clone();
		for (int i = 0; i < count; i++) {
			for (int row = row(Math.min(y0[i], y1[i])); row <= row(Math.max(y0[i], y1[i])); row++) {
				for (int column = column(Math.min(x0[i], x1[i])); column <= column(Math.max(x0[i], x1[i])); column++) {
					held[next[row * columns + column]++] = i;
				}
			}
		}
	}

	private static void add(Segment segment, List<Chord> chords) {
		CubicFoot foot = segment instanceof Cubic cubic ? new CubicFoot(cubic) : null;
		double[] last = { 0 };
		Point[] place = { segment.start() };
		segment.flatten(DEVIATION, t -> {
			Point next = segment.at(t);
			chords.add(new Chord(place[0], next, last[0], t, foot));
			place[0] = next;
			last[0] = t;
		});
	}

	private int row(double y) {
		return Math.max(0, Math.min(rows - 1, (int) ((y - top) / cell)));
	}

	private int column(double x) {
		return Math.max(0, Math.min(columns - 1, (int) ((x - left) / cell)));
	}

	/** Whether an edge lies nearer to the place than the distance, by more than the noise of computing. */
	boolean reach(double x, double y, double distance) {
		if (x < left - distance || x > right + distance || y < top - distance || y > bottom + distance) {
			return false;
		}
		double surely = Math.max(0, distance - NOISE - DEVIATION);
		double perhaps = distance + DEVIATION;
		double sure = surely * surely;
		double possible = perhaps * perhaps;
		double noisy = Math.max(0, distance - NOISE);
		double least = noisy * noisy;
		int firstColumn = column(x - perhaps);
		int lastColumn = column(x + perhaps);
		int lastRow = row(y + perhaps);
		for (int row = row(y - perhaps); row <= lastRow; row++) {
			for (int i = start[row * columns + firstColumn]; i < start[row * columns + lastColumn + 1]; i++) {
				int chord = held[i];
				double square = square(chord, x, y);
				if (square < possible && (square < sure || isNearer(chord, x, y, square, least))) {
					return true;
				}
			}
		}
		return false;
	}

	private boolean isNearer(int chord, double x, double y, double square, double least) {
		if (foot[chord] == null) {
			return square < least;
		}
		double dx = x1[chord] - x0[chord];
		double dy = y1[chord] - y0[chord];
		double along = ((x - x0[chord]) * dx + (y - y0[chord]) * dy) / (dx * dx + dy * dy + Double.MIN_NORMAL);
		double guess = t0[chord] + Math.max(0, Math.min(1, along)) * (t1[chord] - t0[chord]);
		return foot[chord].squareFrom(x, y, guess, t0[chord], t1[chord]) < least;
	}

	private double square(int chord, double x, double y) {
		double dx = x1[chord] - x0[chord];
		double dy = y1[chord] - y0[chord];
		double wayX = x - x0[chord];
		double wayY = y - y0[chord];
		double along = (wayX * dx + wayY * dy) / (dx * dx + dy * dy + Double.MIN_NORMAL);
		double share = Math.max(0, Math.min(1, along));
		double missX = wayX - share * dx;
		double missY = wayY - share * dy;
		return missX * missX + missY * missY;
	}
}
