package org.frisket.toolpath.blade;

import java.util.ArrayList;
import java.util.List;

import org.frisket.geometry.Point;
import org.frisket.toolpath.track.Arc;
import org.frisket.toolpath.track.Move;
import org.frisket.toolpath.track.Straight;
import org.frisket.toolpath.track.Track;

/**
 * Leads the axis so that the tip, which trails at a fixed distance, follows the drawing: a distance ahead of the tip along
 * the tip's heading, P = T + d u. Straight moves shift forward, arcs widen to √(R² + d²), and at a corner the axis swings
 * round the tip.
 *
 * @param offset    d, from the axis to the tip, in mm, 0 or more
 * @param threshold corners that turn by less are not swung round, in radians; the cut is off by d sin φ there at most
 */
public record TrailingBlade(double offset, double threshold) {

	/** @throws IllegalArgumentException for less than nothing */
	public TrailingBlade {
		if (!(offset >= 0) || !(threshold >= 0)) {
			throw new IllegalArgumentException("offset " + offset + " mm, threshold " + threshold);
		}
	}

	/**
	 * A move of the axis.
	 *
	 * @param of the number of the tip's move that it leads; -1 for a swing between two, in which the tip stays
	 */
	public record Led(Move move, int of) {
	}

	/** The way of the axis for a track of the tip. A closed one ends after the swing back to the first heading. */
	public List<Move> lead(Track track) {
		return offset == 0 ? track.moves() : leading(track).stream().map(Led::move).toList();
	}

	/** The same, with what each move is for. */
	public List<Led> leading(Track track) {
		List<Led> led = new ArrayList<>();
		List<Move> moves = track.moves();
		for (int i = 0; i < moves.size(); i++) {
			if (i > 0) {
				swing(moves.get(i - 1), moves.get(i), led);
			}
			led.add(new Led(offset == 0 ? moves.get(i) : lead(moves.get(i)), i));
		}
		if (track.closed()) {
			swing(moves.get(moves.size() - 1), moves.get(0), led);
		}
		return led;
	}

	/** Where the axis stands with the tip at the start of a move, in line with it. */
	public Point ahead(Move move) {
		return ahead(move.start(), move.startHeading());
	}

	/** Where the axis stands with the tip at a place. @param heading of the tip, in radians */
	public Point ahead(Point tip, double heading) {
		return new Point(tip.x() + offset * Math.cos(heading), tip.y() + offset * Math.sin(heading));
	}

	private Move lead(Move move) {
		if (move instanceof Arc arc) {
			return new Arc(arc.centre(), Math.hypot(arc.radius(), offset),
					arc.from() + Math.copySign(Math.atan(offset / arc.radius()), arc.sweep()), arc.sweep());
		}
		return new Straight(ahead(move.start(), move.startHeading()), ahead(move.end(), move.endHeading()));
	}

	private void swing(Move before, Move after, List<Led> led) {
		if (offset == 0) {
			return;
		}
		double turn = Track.turn(before, after);
		if (Math.abs(turn) > Math.max(threshold, 1e-9)) {
			led.add(new Led(new Arc(before.end(), offset, before.endHeading(), turn), -1));
			return;
		}
		Point from = ahead(before.end(), before.endHeading());
		Point to = ahead(after.start(), after.startHeading());
		if (Math.hypot(to.x() - from.x(), to.y() - from.y()) > 1e-9) {
			led.add(new Led(new Straight(from, to), -1));
		}
	}
}
