package org.frisket.toolpath.track;

import java.util.ArrayList;
import java.util.List;

import org.frisket.geometry.Point;

/** Arcs as chords, for what cannot follow arcs. */
public final class Chords {

	/** In radians: fewer chords would not look like an arc. */
	private static final double WIDEST = Math.PI / 2;
	private static final double ROUNDING = 1e-9;

	private Chords() {
	}

	/**
	 * The move itself if it is straight, or chords between places of the arc.
	 *
	 * @param tolerance in mm, positive: how far a chord may be from the arc
	 */
	public static List<Move> of(Move move, double tolerance) {
		if (!(move instanceof Arc arc)) {
			return List.of(move);
		}
		// of a chord over an angle 2a the sagitta is r (1 - cos a)
		double step = Math.min(WIDEST, 2 * Math.acos(Math.max(0, 1 - tolerance / arc.radius())));
		int count = (int) Math.max(1, Math.ceil(Math.abs(arc.sweep()) / step - ROUNDING));
		List<Move> chords = new ArrayList<>(count);
		Point last = arc.start();
		for (int i = 1; i <= count; i++) {
			Point next = i == count ? arc.end() : arc.at(arc.length() * i / count);
			chords.add(new Straight(last, next));
			last = next;
		}
		return chords;
	}

	/** The same of several moves one after the other. */
	public static List<Move> of(List<Move> moves, double tolerance) {
		return moves.stream().flatMap(move -> of(move, tolerance).stream()).toList();
	}
}
