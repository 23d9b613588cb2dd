package org.frisket.toolpath.internal.start;

import java.util.ArrayList;
import java.util.List;

import org.frisket.toolpath.track.MeasuredTrack;
import org.frisket.toolpath.track.Move;
import org.frisket.toolpath.track.Track;

/** The stretches of a track between its corners. */
public final class SmoothRuns {

	/** In radians, 5 degrees: what turns by less is no corner. */
	private static final double CORNER = Math.PI / 36;

	/** @param from in mm along the track; a run of a closed one may lead over its start, to beyond its length */
	public record Run(double from, double to) {

		double length() {
			return to - from;
		}

		double middle() {
			return (from + to) / 2;
		}
	}

	private SmoothRuns() {
	}

	/** In their order; a closed track without corners is one run, from its start. */
	public static List<Run> of(MeasuredTrack measured) {
		Track track = measured.track();
		List<Move> moves = track.moves();
		List<Double> corners = new ArrayList<>();
		for (int i = track.closed() ? 0 : 1; i < moves.size(); i++) {
			if (isCorner(moves.get(Math.floorMod(i - 1, moves.size())), moves.get(i))) {
				corners.add(measured.start(i));
			}
		}
		List<Run> runs = new ArrayList<>();
		if (!track.closed()) {
			corners.add(0, 0.0);
			corners.add(measured.length());
		} else if (corners.isEmpty()) {
			return List.of(new Run(0, measured.length()));
		} else {
			corners.add(corners.get(0) + measured.length());
		}
		for (int i = 1; i < corners.size(); i++) {
			runs.add(new Run(corners.get(i - 1), corners.get(i)));
		}
		return runs;
	}

	/** Whether a closed track has no corner at all. */
	static boolean isRound(MeasuredTrack measured, List<Run> runs) {
		List<Move> moves = measured.track().moves();
		return measured.track().closed() && runs.size() == 1 && !isCorner(moves.get(moves.size() - 1), moves.get(0));
	}

	private static boolean isCorner(Move before, Move after) {
		return Math.abs(Track.turn(before, after)) > CORNER;
	}
}
