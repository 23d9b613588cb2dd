package org.frisket.print.marks;

import java.util.ArrayList;
import java.util.List;

import org.frisket.geometry.Monitor;
import org.frisket.geometry.Point;

/**
 * Connected dark spots of a picture. Dark is what is clearly darker than the mean of its neighbourhood, so that uneven light
 * does not matter. The picture is read row by row, and only the runs of the row before are remembered, with the moments of
 * what they belong to.
 */
final class SpotFinder {

	/** Of the neighbourhood's mean, and a few shades below it besides, for noise. */
	private static final double DARK = 0.88;
	private static final double NOISE = 6;

	private final Reduced picture;
	private final int reach;
	private final List<Spot> spots = new ArrayList<>();

	/** Sums of a spot that is still growing; one that met another hands over to it. */
	private static final class Growing {
		private Growing into;
		private int area;
		private double x;
		private double y;
		private double xx;
		private double xy;
		private double yy;
		/** The last row that it was seen in. */
		private int row;

		Growing whole() {
			Growing whole = this;
			while (whole.into != null) {
				whole = whole.into;
			}
			return whole;
		}

		void add(int from, int to, int atRow) {
			for (int column = from; column < to; column++) {
				area++;
				x += column;
				y += atRow;
				xx += (double) column * column;
				xy += (double) column * atRow;
				yy += (double) atRow * atRow;
			}
			row = atRow;
		}

		void take(Growing other) {
			other.into = this;
			area += other.area;
			x += other.x;
			y += other.y;
			xx += other.xx;
			xy += other.xy;
			yy += other.yy;
			row = Math.max(row, other.row);
		}
	}

	private record Stretch(int from, int to, Growing spot) {
	}

	private SpotFinder(Reduced picture, int reach) {
		this.picture = picture;
		this.reach = reach;
	}

	/**
	 * All spots, in pixels of the whole picture.
	 *
	 * @param reach of the neighbourhood on every side, in coarse pixels @param least area in coarse pixels
	 */
	static List<Spot> find(Reduced picture, int reach, int least, Monitor monitor) {
		SpotFinder finder = new SpotFinder(picture, reach);
		finder.find(least, monitor);
		return finder.spots;
	}

	private void find(int least, Monitor monitor) {
		int[] columns = new int[picture.width];
		int above = 0;
		int below = 0;
		List<Stretch> before = List.of();
		for (int y = 0; y < picture.height; y++) {
			monitor.check();
			for (; below < Math.min(picture.height, y + reach + 1); below++) {
				add(columns, below, 1);
			}
			for (; above < y - reach; above++) {
				add(columns, above, -1);
			}
			List<Stretch> row = stretches(columns, y, below - above);
			join(before, row);
			finish(before, y, least);
			before = row;
		}
		finish(before, picture.height, least);
	}

	private void add(int[] columns, int row, int sign) {
		for (int x = 0; x < columns.length; x++) {
			columns[x] += sign * picture.at(x, row);
		}
	}

	private List<Stretch> stretches(int[] columns, int y, int rows) {
		List<Stretch> row = new ArrayList<>();
		long sum = 0;
		int left = 0;
		int right = 0;
		int start = -1;
		for (int x = 0; x <= picture.width; x++) {
			for (; right < Math.min(picture.width, x + reach + 1); right++) {
				sum += columns[right];
			}
			for (; left < x - reach; left++) {
				sum -= columns[left];
			}
			boolean dark = x < picture.width
					&& picture.at(x, y) < DARK * sum / ((double) rows * (right - left)) - NOISE;
			if (dark && start < 0) {
				start = x;
			} else if (!dark && start >= 0) {
				Growing spot = new Growing();
				spot.add(start, x, y);
				row.add(new Stretch(start, x, spot));
				start = -1;
			}
		}
		return row;
	}

	/** Pixels that touch at a corner belong together too. */
	private static void join(List<Stretch> before, List<Stretch> row) {
		int first = 0;
		for (Stretch each : row) {
			while (first < before.size() && before.get(first).to() < each.from()) {
				first++;
			}
			for (int i = first; i < before.size() && before.get(i).from() <= each.to(); i++) {
				Growing one = before.get(i).spot().whole();
				Growing other = each.spot().whole();
				if (one != other) {
					one.take(other);
				}
			}
		}
	}

	/** Spots of the row before that did not go on. */
	private void finish(List<Stretch> before, int row, int least) {
		for (Stretch each : before) {
			Growing spot = each.spot().whole();
			if (spot.row < row && spot.area > 0) {
				if (spot.area >= least) {
					spots.add(spot(spot));
				}
				spot.area = 0;
			}
		}
	}

	private Spot spot(Growing grown) {
		double factor = picture.factor;
		double x = grown.x / grown.area;
		double y = grown.y / grown.area;
		// a pixel is a square, whose own moment is a twelfth
		double own = 1.0 / 12;
		return new Spot(new Point((x + 0.5) * factor, (y + 0.5) * factor), grown.area * factor * factor,
				(grown.xx / grown.area - x * x + own) * factor * factor, (grown.xy / grown.area - x * y) * factor * factor,
				(grown.yy / grown.area - y * y + own) * factor * factor);
	}
}
