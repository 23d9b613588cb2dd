package org.frisket.export.pdf;

import java.awt.Color;
import java.awt.LinearGradientPaint;
import java.awt.MultipleGradientPaint;
import java.awt.MultipleGradientPaint.ColorSpaceType;
import java.awt.MultipleGradientPaint.CycleMethod;
import java.awt.Paint;
import java.awt.RadialGradientPaint;
import java.awt.geom.NoninvertibleTransformException;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A gradient that begins anew, or goes back and forth, written out as far as a shape reaches: PDF knows none that repeat
 * (ISO 32000-1, 8.7.4.5).
 */
final class UnrolledGradient {

	/** Of the whole: between the end of one round and the beginning of the next, where the colour leaps. */
	private static final float LEAP = 1e-5f;
	private static final int MOST_ROUNDS = 400;

	private final MultipleGradientPaint gradient;
	private final List<Float> fractions = new ArrayList<>();
	private final List<Color> colours = new ArrayList<>();

	private UnrolledGradient(MultipleGradientPaint gradient) {
		this.gradient = gradient;
	}

	/** Empty if there are too many rounds. @param box of the shape, before any transformation */
	static Optional<Paint> of(MultipleGradientPaint gradient, Rectangle2D box) {
		try {
			double[] corners = { box.getMinX(), box.getMinY(), box.getMaxX(), box.getMinY(), box.getMinX(), box.getMaxY(),
					box.getMaxX(), box.getMaxY() };
			gradient.getTransform().inverseTransform(corners, 0, corners, 0, 4);
			UnrolledGradient unrolled = new UnrolledGradient(gradient);
			return gradient instanceof LinearGradientPaint linear ? unrolled.linear(linear, corners)
					: gradient instanceof RadialGradientPaint radial ? unrolled.radial(radial, corners) : Optional.empty();
		} catch (NoninvertibleTransformException flat) {
			return Optional.empty();
		}
	}

	private Optional<Paint> linear(LinearGradientPaint paint, double[] corners) {
		Point2D start = paint.getStartPoint();
		double x = paint.getEndPoint().getX() - start.getX();
		double y = paint.getEndPoint().getY() - start.getY();
		double first = Double.POSITIVE_INFINITY;
		double last = Double.NEGATIVE_INFINITY;
		for (int i = 0; i < corners.length; i += 2) {
			double at = ((corners[i] - start.getX()) * x + (corners[i + 1] - start.getY()) * y) / (x * x + y * y);
			first = Math.min(first, Math.floor(at));
			last = Math.max(last, Math.ceil(at));
		}
		last = Math.max(last, first + 1);
		if (!(last - first <= MOST_ROUNDS) || !unroll((int) first, (int) last)) {
			return Optional.empty();
		}
		return Optional.of(new LinearGradientPaint(new Point2D.Double(start.getX() + first * x, start.getY() + first * y),
				new Point2D.Double(start.getX() + last * x, start.getY() + last * y), places(), colours.toArray(Color[]::new),
				CycleMethod.NO_CYCLE, ColorSpaceType.SRGB, paint.getTransform()));
	}

	/** Circle t of the gradient has t times its radius, and its centre so far on the way from the focus. */
	private Optional<Paint> radial(RadialGradientPaint paint, double[] corners) {
		Point2D focus = paint.getFocusPoint();
		double x = paint.getCenterPoint().getX() - focus.getX();
		double y = paint.getCenterPoint().getY() - focus.getY();
		int rounds = 1;
		for (int i = 0; i < corners.length; i += 2) {
			while (rounds <= MOST_ROUNDS && Point2D.distance(corners[i], corners[i + 1], focus.getX() + rounds * x,
					focus.getY() + rounds * y) > rounds * (double) paint.getRadius()) {
				rounds++;
			}
		}
		if (rounds > MOST_ROUNDS || !unroll(0, rounds)) {
			return Optional.empty();
		}
		return Optional.of(new RadialGradientPaint(new Point2D.Double(focus.getX() + rounds * x, focus.getY() + rounds * y),
				rounds * paint.getRadius(), focus, places(), colours.toArray(Color[]::new), CycleMethod.NO_CYCLE,
				ColorSpaceType.SRGB, paint.getTransform()));
	}

	/** Whether all of it can be told apart. @param last the round after the last one */
	private boolean unroll(int first, int last) {
		float[] places = gradient.getFractions();
		Color[] each = gradient.getColors();
		for (int round = first; round < last; round++) {
			boolean backwards = gradient.getCycleMethod() == CycleMethod.REFLECT && Math.floorMod(round, 2) == 1;
			for (int i = 0; i < places.length; i++) {
				int stop = backwards ? places.length - 1 - i : i;
				double within = backwards ? 1 - places[stop] : places[stop];
				float place = (float) ((round - first + within) / (last - first));
				if (!add(place, each[stop])) {
					return false;
				}
			}
		}
		return true;
	}

	private boolean add(float place, Color colour) {
		int before = fractions.size() - 1;
		float at = place;
		if (before >= 0 && place <= fractions.get(before) + LEAP / 2) {
			if (colour.equals(colours.get(before))) {
				return true;
			}
			at = fractions.get(before) + LEAP;
		}
		if (at > 1) {
			return false;
		}
		fractions.add(at);
		colours.add(colour);
		return true;
	}

	private float[] places() {
		float[] places = new float[fractions.size()];
		for (int i = 0; i < places.length; i++) {
			places[i] = fractions.get(i);
		}
		return places;
	}
}
