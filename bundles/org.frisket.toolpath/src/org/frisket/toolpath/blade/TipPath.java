package org.frisket.toolpath.blade;

import java.util.ArrayList;
import java.util.List;

import org.frisket.geometry.Point;
import org.frisket.toolpath.track.Move;
import org.frisket.toolpath.track.Straight;

/**
 * What a trailing tip cuts while its axis is led along moves. The tip moves along its own heading only, so that on a
 * straight way the angle ψ between heading and travel falls as tan(ψ/2) = tan(ψ₀/2) e^(-s/d); arcs are followed in short
 * chords.
 */
public final class TipPath {

	private final double offset;
	/** In mm, of chords on arcs and places on straights. */
	private final double step;
	private double heading;
	private final List<Point> tip = new ArrayList<>();

	private TipPath(double offset, double heading, double step) {
		this.offset = offset;
		this.heading = heading;
		this.step = step;
	}

	/**
	 * The places of the tip.
	 *
	 * @param offset  of the blade in mm, positive
	 * @param heading of the tip at the start, in radians
	 * @param step    in mm, positive: how far apart places are
	 */
	public static List<Point> of(List<? extends Move> moves, double offset, double heading, double step) {
		TipPath path = new TipPath(offset, heading, step);
		path.add(moves.get(0).start());
		moves.forEach(path::follow);
		return path.tip;
	}

	private void follow(Move move) {
		double length = move.length();
		int steps = Math.max(1, (int) Math.ceil(length / step));
		Point last = move.start();
		for (int i = 1; i <= steps; i++) {
			Point next = i == steps ? move.end() : move.at(length * i / steps);
			straight(new Straight(last, next));
			last = next;
		}
	}

	private void straight(Straight move) {
		double length = move.length();
		if (length == 0) {
			return;
		}
		double travel = move.startHeading();
		double psi = Math.IEEEremainder(heading - travel, 2 * Math.PI);
		// a tip that points straight back stays so
		double after = Math.abs(psi) == Math.PI ? psi : 2 * Math.atan(Math.tan(psi / 2) * Math.exp(-length / offset));
		heading = travel + after;
		add(move.end());
	}

	private void add(Point axis) {
		tip.add(new Point(axis.x() - offset * Math.cos(heading), axis.y() - offset * Math.sin(heading)));
	}
}
