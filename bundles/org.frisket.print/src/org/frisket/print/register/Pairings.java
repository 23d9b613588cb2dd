package org.frisket.print.register;

import java.util.ArrayList;
import java.util.List;

import org.frisket.geometry.Point;
import org.frisket.geometry.Transform;

/** Which measured mark belongs to which designed one, if they were measured in another order. */
final class Pairings {

	/** Of so many all orders are tried, 5040 of them; of more only those that begin elsewhere or run the other way. */
	private static final int ALL_ORDERS = 7;
	/** Orders that fit so nearly the same are told apart by how far the sheet would be turned. */
	private static final double AS_GOOD = 2;
	/** In mm; what rounding leaves. */
	private static final double EXACT = 1e-6;

	private final List<Point> designed;
	private final List<Point> measured;
	private int[] best;
	private double least = Double.POSITIVE_INFINITY;
	private double turn;

	private Pairings(List<Point> designed, List<Point> measured) {
		this.designed = designed;
		this.measured = measured;
	}

	/** For each designed mark the index of its measured one. */
	static int[] best(List<Point> designed, List<Point> measured) {
		Pairings search = new Pairings(designed, measured);
		int n = designed.size();
		int[] order = new int[n];
		if (n <= ALL_ORDERS) {
			search.all(order, 0, 0);
		} else {
			for (int from = 0; from < n; from++) {
				for (int way = -1; way <= 1; way += 2) {
					for (int i = 0; i < n; i++) {
						order[i] = Math.floorMod(from + way * i, n);
					}
					search.weigh(order);
				}
			}
		}
		return search.best;
	}

	static List<Point> apply(int[] order, List<Point> measured) {
		List<Point> paired = new ArrayList<>(order.length);
		for (int index : order) {
			paired.add(measured.get(index));
		}
		return paired;
	}

	private void all(int[] order, int length, int used) {
		if (length == order.length) {
			weigh(order);
			return;
		}
		for (int i = 0; i < order.length; i++) {
			if ((used & 1 << i) == 0) {
				order[length] = i;
				all(order, length + 1, used | 1 << i);
			}
		}
	}

	private void weigh(int[] order) {
		List<Point> paired = apply(order, measured);
		Transform map = MarkFit.turn(designed, paired, true);
		double sum = 0;
		for (int i = 0; i < order.length; i++) {
			Point error = paired.get(i).minus(map.apply(designed.get(i)));
			sum += error.dot(error);
		}
		double rms = Math.sqrt(sum / order.length) + EXACT;
		double angle = Math.abs(Math.atan2(map.b(), map.a()));
		boolean clear = rms * AS_GOOD < least;
		boolean asGood = rms < least * AS_GOOD && angle < turn;
		if (best == null || clear || asGood) {
			best = order.clone();
			turn = angle;
			least = Math.min(least, rms);
		}
	}
}
