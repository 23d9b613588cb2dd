package org.frisket.print.marks;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Piece;
import org.frisket.geometry.Point;
import org.frisket.geometry.Segment;
import org.frisket.model.MarkKind;
import org.frisket.print.picture.Grey;
import org.frisket.print.register.Projection;

/**
 * Where exactly a mark is in a picture. At many places of its outline, as a map says they lie in the picture, the picture is
 * read across the edge; where it turns from dark to light, weighed by how steeply, is the edge. The displacement of the whole
 * mark that brings all edges nearest, in the sum of squares, is looked for, together with how much wider the ink ran.
 */
final class EdgeFit {

	/** In pixels, to either side of the edge: further in than blur reaches. */
	private static final double WIDEST = 5;
	private static final double NARROWEST = 1.5;
	/** A stroke is read no further than to its middle. */
	private static final double OF_STROKE = 0.48;
	private static final double STEP = 0.5;
	/** In pixels along the outline. */
	private static final double SPACING = 0.8;
	private static final int MOST_SAMPLES = 160;
	/** Shades between paper and ink, below which there is no mark. */
	private static final double LEAST_CONTRAST = 18;
	private static final double CLEAR = 0.4;
	private static final int ROUNDS = 6;
	private static final double SETTLED = 1e-3;
	private static final double OUTLIER = 3;

	/** A place of the outline, the way along it, both in mm on the sheet. */
	private record Sample(Point place, Point along) {
	}

	/** An edge as it was read: the way out of the ink, and how far out it was found, in pixels. */
	private record Reading(Point out, double offset, double step) {
	}

	/** @param shift of the mark in pixels @param share of its outline that is an edge, 0 to 1 */
	record Result(Point shift, double share) {
	}

	private final Grey picture;
	private final Mark mark;
	private final List<Sample> samples = new ArrayList<>();

	/** @param scale pixels to a mm, roughly */
	EdgeFit(Grey picture, Mark mark, double scale) {
		this.picture = picture;
		this.mark = mark;
		for (Piece piece : mark.region().pieces()) {
			for (Contour contour : piece.contours()) {
				double spacing = Math.max(SPACING / scale, contour.length() / MOST_SAMPLES);
				contour.segments().forEach(segment -> sample(segment, spacing, NARROWEST / scale));
			}
		}
	}

	/** Corners are left out, for blur rounds them. */
	private void sample(Segment segment, double spacing, double corner) {
		double length = segment.length();
		double left = mark.design().kind() == MarkKind.DISC ? 0 : Math.min(corner, 0.3 * length);
		int count = Math.max(1, (int) ((length - 2 * left) / spacing));
		for (int i = 0; i < count; i++) {
			double t = (left + (length - 2 * left) * (i + 0.5) / count) / length;
			samples.add(new Sample(segment.at(t), segment.derivative(t)));
		}
	}

	/** How much of the outline is an edge where a map puts it. @param shift of the mark, in pixels */
	double share(Projection map, Point shift) {
		List<Reading> readings = read(map, shift);
		return share(readings);
	}

	private double share(List<Reading> readings) {
		double[] steps = readings.stream().mapToDouble(Reading::step).sorted().toArray();
		double contrast = steps.length == 0 ? 0 : steps[steps.length * 3 / 4];
		if (contrast < LEAST_CONTRAST) {
			return 0;
		}
		return Arrays.stream(steps).filter(step -> step > CLEAR * contrast).count() / (double) samples.size();
	}

	/** The mark's displacement from where a map puts it. @param from where to begin, in pixels */
	Result fit(Projection map, Point from) {
		Point shift = from;
		for (int round = 0; round < ROUNDS; round++) {
			Point step = step(read(map, shift));
			shift = shift.plus(step);
			if (step.length() < SETTLED) {
				break;
			}
		}
		return new Result(shift, share(map, shift));
	}

	private static Point step(List<Reading> readings) {
		double contrast = readings.stream().mapToDouble(Reading::step).max().orElse(0);
		List<Reading> clear = readings.stream().filter(reading -> reading.step() > CLEAR * contrast / 2).toList();
		double[] first = solve(clear);
		double[] errors = clear.stream().mapToDouble(reading -> Math.abs(error(reading, first))).sorted().toArray();
		if (errors.length == 0) {
			return Point.ORIGIN;
		}
		double most = Math.max(0.05, OUTLIER * errors[errors.length / 2]);
		double[] second = solve(clear.stream().filter(reading -> Math.abs(error(reading, first)) <= most).toList());
		Point step = new Point(second[0], second[1]);
		return step.length() > WIDEST ? step.unit().times(WIDEST) : step;
	}

	private static double error(Reading reading, double[] by) {
		return reading.offset() - reading.out().x() * by[0] - reading.out().y() * by[1] - by[2];
	}

	/** The displacement and the widening that explain the offsets best, by Cramer's rule; nothing if they do not tell. */
	private static double[] solve(List<Reading> readings) {
		double xx = 0;
		double xy = 0;
		double yy = 0;
		double x = 0;
		double y = 0;
		double bx = 0;
		double by = 0;
		double b = 0;
		for (Reading reading : readings) {
			Point out = reading.out();
			xx += out.x() * out.x();
			xy += out.x() * out.y();
			yy += out.y() * out.y();
			x += out.x();
			y += out.y();
			bx += out.x() * reading.offset();
			by += out.y() * reading.offset();
			b += reading.offset();
		}
		double n = readings.size();
		double det = determinant(xx, xy, x, xy, yy, y, x, y, n);
		if (!(det > 1e-6 * n * n * n)) {
			return new double[3];
		}
		return new double[] { determinant(bx, xy, x, by, yy, y, b, y, n) / det,
				determinant(xx, bx, x, xy, by, y, x, b, n) / det, determinant(xx, xy, bx, xy, yy, by, x, y, b) / det };
	}

	private static double determinant(double a, double b, double c, double d, double e, double f, double g, double h,
			double i) {
		return a * (e * i - f * h) - b * (d * i - f * g) + c * (d * h - e * g);
	}

	private List<Reading> read(Projection map, Point shift) {
		List<Reading> readings = new ArrayList<>();
		double scale = Math.sqrt(Math.abs(map.linear(mark.place()).determinant()));
		double thin = mark.design().kind() == MarkKind.DISC ? mark.design().size() : mark.design().weight();
		double reach = Math.max(NARROWEST, Math.min(WIDEST, OF_STROKE * thin * scale));
		double side = Math.signum(map.linear(mark.place()).determinant());
		for (Sample sample : samples) {
			Point at = map.apply(sample.place()).plus(shift);
			Point along = map.linear(sample.place()).apply(sample.along()).unit();
			// ink lies to the left of its outline as one sees it, unless the map mirrors
			Point out = along.quarterTurn().times(side);
			if (picture.contains(at.x() - out.x() * reach, at.y() - out.y() * reach)
					&& picture.contains(at.x() + out.x() * reach, at.y() + out.y() * reach)) {
				readings.add(read(at, out, reach));
			}
		}
		return readings;
	}

	private Reading read(Point at, Point out, double reach) {
		int steps = (int) Math.round(2 * reach / STEP);
		double width = 2 * reach / steps;
		double before = shade(at, out, -reach);
		double dark = before;
		double sum = 0;
		double weighed = 0;
		for (int i = 1; i <= steps; i++) {
			double next = shade(at, out, -reach + i * width);
			double rise = Math.max(0, next - before);
			sum += rise;
			weighed += rise * (-reach + (i - 0.5) * width);
			before = next;
		}
		return new Reading(out, sum == 0 ? 0 : weighed / sum, before - dark);
	}

	private double shade(Point at, Point out, double distance) {
		return picture.sample(at.x() + out.x() * distance, at.y() + out.y() * distance);
	}
}
