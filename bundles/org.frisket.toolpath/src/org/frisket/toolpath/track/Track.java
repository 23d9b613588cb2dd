package org.frisket.toolpath.track;

import java.util.ArrayList;
import java.util.List;

import org.frisket.geometry.Point;

/**
 * Moves one after the other without lifting.
 *
 * @param moves  each begins where the one before ends; none without length
 * @param closed whether the last one leads back to the first, and no corner counts as an end
 */
public record Track(List<Move> moves, boolean closed) {

	public Track {
		moves = List.copyOf(moves);
		if (moves.isEmpty()) {
			throw new IllegalArgumentException("a track without moves");
		}
	}

	public Point start() {
		return moves.get(0).start();
	}

	public Point end() {
		return moves.get(moves.size() - 1).end();
	}

	/** In mm. */
	public double length() {
		return moves.stream().mapToDouble(Move::length).sum();
	}

	public Track reversed() {
		List<Move> back = new ArrayList<>();
		for (int i = moves.size() - 1; i >= 0; i--) {
			back.add(moves.get(i).reversed());
		}
		return new Track(back, closed);
	}

	/** A closed one that begins elsewhere. @param way from its start, in mm, taken round */
	public Track startingAt(double way) {
		if (!closed) {
			throw new IllegalStateException("an open track begins where it begins");
		}
		double length = length();
		double left = way - Math.floor(way / length) * length;
		for (int i = 0; i < moves.size(); i++) {
			double own = moves.get(i).length();
			if (left < own) {
				List<Move> turned = new ArrayList<>();
				turned.add(left == 0 ? moves.get(i) : moves.get(i).between(left, own));
				turned.addAll(moves.subList(i + 1, moves.size()));
				turned.addAll(moves.subList(0, i));
				if (left > 0) {
					turned.add(moves.get(i).between(0, left));
				}
				return new Track(turned, true);
			}
			left -= own;
		}
		return this;
	}

	/** The first part of it, of that length at most. */
	public List<Move> first(double way) {
		List<Move> part = new ArrayList<>();
		double left = way;
		for (Move move : moves) {
			if (left <= 0) {
				break;
			}
			part.add(move.length() <= left ? move : move.between(0, left));
			left -= move.length();
		}
		return part;
	}

	/** By how much the heading turns from one move to the next, from -π to π; half a turn counts as positive. */
	public static double turn(Move before, Move after) {
		double turn = Math.IEEEremainder(after.startHeading() - before.endHeading(), 2 * Math.PI);
		return turn <= -Math.PI ? turn + 2 * Math.PI : turn;
	}
}
