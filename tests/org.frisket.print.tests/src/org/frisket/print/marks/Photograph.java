package org.frisket.print.marks;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Point;
import org.frisket.print.picture.Grey;
import org.frisket.print.register.Projection;

/**
 * A simulated photograph of a sheet with marks and art. Every pixel at an edge of ink is the mean of 4 x 4 places, each of which is asked
 * by the plain measures of a mark whether it is ink; outlines and edges, by which the finder works, are not used.
 */
final class Photograph {

	private static final int FINE = 4;
	private static final double PAPER = 225;
	private static final double INK = 35;
	private static final double TABLE = 150;

	final MarkPlan plan;
	final Projection toPixels;
	final int width;
	final int height;
	private double blur;
	private double noise;
	private double shadow;
	private double gain;
	private final List<Integer> left = new ArrayList<>();
	private final List<Bounds> art = new ArrayList<>();

	Photograph(MarkPlan plan, Projection toPixels, int width, int height) {
		this.plan = plan;
		this.toPixels = toPixels;
		this.width = width;
		this.height = height;
	}

	/** @param pixels standard deviation */
	Photograph blur(double pixels) {
		blur = pixels;
		return this;
	}

	/** @param shades standard deviation */
	Photograph noise(double shades) {
		noise = shades;
		return this;
	}

	/** @param share of the light that is lost from one corner to the other */
	Photograph shadow(double share) {
		shadow = share;
		return this;
	}

	/** @param mm by which ink runs outwards */
	Photograph gain(double mm) {
		gain = mm;
		return this;
	}

	Photograph without(int mark) {
		left.add(mark);
		return this;
	}

	Photograph art(Bounds box) {
		art.add(box);
		return this;
	}

	Point place(int mark) {
		return toPixels.apply(plan.marks().get(mark).place());
	}

	Grey take(long seed) {
		float[] shades = new float[width * height];
		Projection toSheet = toPixels.inverse();
		for (int y = 0; y < height; y++) {
			for (int x = 0; x < width; x++) {
				shades[y * width + x] = (float) pixel(toSheet, x, y);
			}
		}
		shades = blurred(blurred(shades, true), false);
		Random random = new Random(seed);
		byte[] bytes = new byte[shades.length];
		for (int y = 0; y < height; y++) {
			for (int x = 0; x < width; x++) {
				double light = 1 - shadow * (x / (double) width + y / (double) height) / 2;
				double shade = shades[y * width + x] * light + (noise == 0 ? 0 : noise * random.nextGaussian());
				bytes[y * width + x] = (byte) Math.round(Math.max(0, Math.min(255, shade)));
			}
		}
		return new Grey(width, height, bytes);
	}

	private double pixel(Projection toSheet, int x, int y) {
		Point middle = toSheet.apply(new Point(x + 0.5, y + 0.5));
		boolean inside = middle.x() > -1 && middle.y() > -1 && middle.x() < plan.width() + 1 && middle.y() < plan.height() + 1;
		if (!inside) {
			return TABLE;
		}
		boolean near = false;
		for (Mark mark : plan.marks()) {
			near |= Math.abs(mark.place().x() - middle.x()) < mark.design().size() + 1
					&& Math.abs(mark.place().y() - middle.y()) < mark.design().size() + 1;
		}
		for (Bounds box : art) {
			near |= box.grown(1).contains(middle);
		}
		if (!near) {
			return middle.x() > 0 && middle.y() > 0 && middle.x() < plan.width() && middle.y() < plan.height() ? PAPER : TABLE;
		}
		double corner = shade(toSheet.apply(new Point(x, y)));
		if (corner == shade(toSheet.apply(new Point(x + 1, y))) && corner == shade(toSheet.apply(new Point(x, y + 1)))
				&& corner == shade(toSheet.apply(new Point(x + 1, y + 1))) && corner == shade(middle)) {
			return corner;
		}
		double sum = 0;
		for (int v = 0; v < FINE; v++) {
			for (int u = 0; u < FINE; u++) {
				sum += shade(toSheet.apply(new Point(x + (u + 0.5) / FINE, y + (v + 0.5) / FINE)));
			}
		}
		return sum / FINE / FINE;
	}

	private double shade(Point p) {
		if (p.x() < 0 || p.y() < 0 || p.x() > plan.width() || p.y() > plan.height()) {
			return TABLE;
		}
		for (int i = 0; i < plan.marks().size(); i++) {
			if (!left.contains(i) && isInk(plan.marks().get(i), p)) {
				return INK;
			}
		}
		return art.stream().anyMatch(box -> box.contains(p)) ? INK * 2 : PAPER;
	}

	private boolean isInk(Mark mark, Point p) {
		Point d = p.minus(mark.place());
		double x = d.x() * Math.cos(mark.turn()) + d.y() * Math.sin(mark.turn());
		double y = d.y() * Math.cos(mark.turn()) - d.x() * Math.sin(mark.turn());
		double size = mark.design().size();
		double half = size / 2 + gain;
		double stroke = mark.design().weight() / 2 + gain;
		return switch (mark.design().kind()) {
		case DISC -> x * x + y * y <= half * half;
		case CROSS -> Math.abs(x) <= stroke && Math.abs(y) <= half || Math.abs(y) <= stroke && Math.abs(x) <= half;
		case CORNER -> x >= -stroke && y >= -stroke && (x <= stroke || y <= stroke)
				&& Math.max(x, y) <= size - mark.design().weight() / 2 + gain;
		case PENNANT -> x >= -size / 2 && y >= -size / 2 && y <= size / 2
				&& (x <= mark.design().weight() - size / 2 || isPennant(x, y, size, mark.design().weight()));
		};
	}

	/** Below the upper edge, which falls from the top of the pole to the tip, and above the lower one, which rises to it. */
	private static boolean isPennant(double x, double y, double size, double weight) {
		double upper = -size / 2 + (x + size / 2) / size * size / 4;
		double along = (x - (weight - size / 2)) / (size - weight);
		double lower = size / 8 + along * (-size / 4 - size / 8);
		return along <= 1 && y >= upper && y <= lower;
	}

	private float[] blurred(float[] from, boolean across) {
		if (blur == 0) {
			return from;
		}
		int reach = (int) Math.ceil(3 * blur);
		double[] kernel = new double[2 * reach + 1];
		double total = 0;
		for (int i = -reach; i <= reach; i++) {
			kernel[i + reach] = Math.exp(-i * i / (2 * blur * blur));
			total += kernel[i + reach];
		}
		float[] to = new float[from.length];
		for (int y = 0; y < height; y++) {
			for (int x = 0; x < width; x++) {
				double sum = 0;
				for (int i = -reach; i <= reach; i++) {
					int u = across ? Math.max(0, Math.min(width - 1, x + i)) : x;
					int v = across ? y : Math.max(0, Math.min(height - 1, y + i));
					sum += kernel[i + reach] * from[v * width + u];
				}
				to[y * width + x] = (float) (sum / total);
			}
		}
		return to;
	}
}
