package org.frisket.toolpath.internal.start;

import java.util.ArrayList;
import java.util.List;

import org.frisket.toolpath.track.MeasuredTrack;
import org.frisket.toolpath.track.Move;

/**
 * Where a track is left standing: evenly spread, each moved to the nearest place whose surroundings, half the width of
 * a tab more on either side, hold no corner. Of several ways to spread them the one that moves them least is taken.
 * Where there is no room, there are fewer.
 */
public final class TabPlaces {

	/** Ways to spread them that are tried. */
	private static final int PHASES = 32;

	private final MeasuredTrack track;
	private final double width;
	/** Whether there is no corner at all. */
	private final boolean whole;
	/** Where the middle of a tab may be. */
	private final List<SmoothRuns.Run> free = new ArrayList<>();

	private TabPlaces(MeasuredTrack track, double width) {
		this.track = track;
		this.width = width;
		List<SmoothRuns.Run> runs = SmoothRuns.of(track);
		whole = SmoothRuns.isRound(track, runs);
		for (SmoothRuns.Run run : runs) {
			if (whole) {
				free.add(run);
			} else if (run.length() > 2 * width) {
				free.add(new SmoothRuns.Run(run.from() + width, run.to() - width));
			}
		}
	}

	/**
	 * What is worked of a track: the pieces between tabs, along it. A closed track begins behind the first tab.
	 *
	 * @param count of tabs
	 * @param width of each in mm, positive
	 * @return empty if there is no room for any
	 */
	public static List<List<Move>> pieces(MeasuredTrack track, int count, double width) {
		return new TabPlaces(track, width).pieces(count);
	}

	private List<List<Move>> pieces(int count) {
		List<Double> middles = count == 0 || free.isEmpty() ? List.of() : middles(count);
		List<List<Move>> pieces = new ArrayList<>();
		if (middles.isEmpty()) {
			return pieces;
		}
		boolean closed = track.track().closed();
		if (!closed) {
			pieces.add(track.stretch(0, middles.get(0) - width / 2));
		}
		for (int i = 0; i < middles.size(); i++) {
			boolean last = i == middles.size() - 1;
			double end = !last ? middles.get(i + 1) - width / 2
					: closed ? middles.get(0) + track.length() - width / 2 : track.length();
			pieces.add(track.stretch(middles.get(i) + width / 2, end));
		}
		return pieces;
	}

	private List<Double> middles(int count) {
		double step = track.length() / count;
		List<Double> best = List.of();
		double least = Double.POSITIVE_INFINITY;
		for (int phase = 0; phase < PHASES; phase++) {
			List<Double> middles = new ArrayList<>();
			double most = 0;
			for (int i = 0; i < count; i++) {
				double wanted = (i + (phase + 0.5) / PHASES) * step;
				double middle = nearest(wanted);
				if (isApart(middle, middles)) {
					middles.add(middle);
					most = Math.max(most, Math.abs(Math.IEEEremainder(middle - wanted, track.length())));
				}
			}
			if (middles.size() > best.size() || middles.size() == best.size() && most < least) {
				best = middles;
				least = most;
			}
		}
		return best.stream().sorted().toList();
	}

	/** Between any two something has to be left to cut. */
	private boolean isApart(double middle, List<Double> others) {
		for (double other : others) {
			double way = Math.abs(middle - other);
			if (Math.min(way, track.track().closed() ? track.length() - way : way) < 2 * width) {
				return false;
			}
		}
		return track.length() > 2 * width;
	}

	private double nearest(double wanted) {
		if (whole) {
			return wanted;
		}
		double length = track.length();
		boolean closed = track.track().closed();
		double best = 0;
		double least = Double.POSITIVE_INFINITY;
		for (SmoothRuns.Run run : free) {
			for (int round = closed ? -1 : 0; round <= (closed ? 1 : 0); round++) {
				double own = wanted + round * length;
				double middle = Math.max(run.from(), Math.min(run.to(), own));
				if (Math.abs(middle - own) < least) {
					least = Math.abs(middle - own);
					best = middle;
				}
			}
		}
		return closed && best >= length ? best - length : best;
	}
}
