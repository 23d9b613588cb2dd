package org.frisket.toolpath.internal.start;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

import org.frisket.toolpath.track.MeasuredTrack;
import org.frisket.toolpath.track.Move;
import org.frisket.toolpath.track.Straight;

/**
 * Where a closed track may be begun: in the middle of straight edges, at smooth places in the middle of curves, and all
 * round where there is no corner. Edges that have no room for what is cut before and after the start are left out if
 * others have.
 */
public final class StartPlaces {

	/** Of a track at most. */
	private static final int MOST = 24;
	/** Round a track without corners. */
	private static final int ROUND = 16;
	/** In radians: straight moves that turn by less are one. */
	private static final double STRAIGHT = 1e-6;

	private StartPlaces() {
	}

	/**
	 * @param room in mm that a start wants on either side
	 * @return in mm along the track, at least one
	 */
	public static double[] of(MeasuredTrack track, double room) {
		List<SmoothRuns.Run> runs = SmoothRuns.of(track);
		if (SmoothRuns.isRound(track, runs)) {
			double[] places = new double[ROUND];
			for (int i = 0; i < ROUND; i++) {
				places[i] = insideMove(track, (i + 0.5) * track.length() / ROUND);
			}
			return places;
		}
		List<SmoothRuns.Run> wide = runs.stream().filter(run -> run.length() >= 2 * room).toList();
		List<SmoothRuns.Run> longest = new ArrayList<>(wide.isEmpty() ? runs : wide);
		longest.sort(Comparator.comparingDouble(SmoothRuns.Run::length).reversed());
		int many = wide.isEmpty() ? 1 : Math.min(MOST, longest.size());
		return longest.subList(0, many).stream().mapToDouble(run -> middle(track, run)).sorted().toArray();
	}

	/** Of the longest straight edge in a run if it is most of it; else of the run. */
	private static double middle(MeasuredTrack track, SmoothRuns.Run run) {
		List<Move> moves = track.track().moves();
		int first = track.moveAt(run.from());
		double at = run.from();
		double from = at;
		SmoothRuns.Run best = new SmoothRuns.Run(at, at);
		double heading = Double.NaN;
		for (int k = 0; k < moves.size() && at < run.to() - STRAIGHT * run.length(); k++) {
			Move move = moves.get((first + k) % moves.size());
			if (move instanceof Straight) {
				double turn = Math.abs(Math.IEEEremainder(move.startHeading() - heading, 2 * Math.PI));
				from = turn <= STRAIGHT ? from : at;
				heading = move.endHeading();
			} else {
				heading = Double.NaN;
			}
			at += move.length();
			if (move instanceof Straight && at - from > best.length()) {
				best = new SmoothRuns.Run(from, at);
			}
		}
		return best.length() >= run.length() / 2 ? best.middle() : insideMove(track, run.middle());
	}

	/** Joints of straight moves turn a little: the middle of the move is better. Arcs are as good anywhere. */
	private static double insideMove(MeasuredTrack track, double way) {
		double own = way - Math.floor(way / track.length()) * track.length();
		int number = track.moveAt(own);
		return track.track().moves().get(number) instanceof Straight ? (track.start(number) + track.start(number + 1)) / 2
				: own;
	}
}
