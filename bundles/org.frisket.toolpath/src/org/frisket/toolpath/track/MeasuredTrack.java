package org.frisket.toolpath.track;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

import org.frisket.geometry.Point;

/** A track by the way along it. Ways are in mm from its start; those of a closed one are taken round. */
public final class MeasuredTrack {

	/** In mm: shorter moves would be noise. */
	private static final double NOTHING = 1e-9;

	/** @param heading of travel, in radians */
	public record Place(Point point, double heading) {
	}

	private final Track track;
	/** Where each move starts, and at last where the track ends. */
	private final double[] starts;

	public MeasuredTrack(Track track) {
		this.track = track;
		starts = new double[track.moves().size() + 1];
		for (int i = 0; i < track.moves().size(); i++) {
			starts[i + 1] = starts[i] + track.moves().get(i).length();
		}
	}

	public Track track() {
		return track;
	}

	public double length() {
		return starts[starts.length - 1];
	}

	/** Where a move starts; for their number where the last one ends. */
	public double start(int move) {
		return starts[move];
	}

	/** The number of the move in which a place lies; at a joint of the one that begins there. */
	public int moveAt(double way) {
		double own = round(way);
		int found = Arrays.binarySearch(starts, own);
		return Math.max(0, Math.min(track.moves().size() - 1, found >= 0 ? found : -found - 2));
	}

	public Place at(double way) {
		double own = round(way);
		int number = moveAt(own);
		Move move = track.moves().get(number);
		double within = Math.max(0, Math.min(move.length(), own - starts[number]));
		double heading = move.startHeading() + within * move.curvature();
		return new Place(move.at(within), heading);
	}

	/** On an open track places beyond its ends are its ends. */
	private double round(double way) {
		if (!track.closed()) {
			return Math.max(0, Math.min(length(), way));
		}
		double own = way - Math.floor(way / length()) * length();
		return own < length() ? own : 0;
	}

	/**
	 * The moves from one place to another further on; on a closed track over its start and several times round, if need
	 * be.
	 */
	public List<Move> stretch(double from, double to) {
		List<Move> found = new ArrayList<>();
		double left = to - from;
		double own = round(from);
		int number = moveAt(own);
		double within = own - starts[number];
		while (left > NOTHING) {
			Move move = track.moves().get(number);
			double length = starts[number + 1] - starts[number];
			double until = Math.min(length, within + left);
			if (until - within > NOTHING) {
				found.add(within <= 0 && until >= length ? move : move.between(within, until));
			}
			left -= until - within;
			within = 0;
			number++;
			if (number == track.moves().size()) {
				if (!track.closed()) {
					break;
				}
				number = 0;
			}
		}
		return found;
	}
}
