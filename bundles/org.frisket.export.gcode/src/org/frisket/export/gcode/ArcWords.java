package org.frisket.export.gcode;

import org.frisket.export.machine.Digits;
import org.frisket.geometry.Point;
import org.frisket.toolpath.track.Arc;

/** G2 and G3 between places that are rounded already. */
final class ArcWords {

	/** In mm: controllers that count in floats lose the centre of a flatter arc. */
	private static final double LARGEST_RADIUS = 10_000;
	/** A radius says less about its arc the nearer that comes to a half or a whole turn. */
	private static final double WIDEST = 2 * Math.PI / 3;

	private final int decimals;
	private final boolean byRadius;

	ArcWords(int decimals, boolean byRadius) {
		this.decimals = decimals;
		this.byRadius = byRadius;
	}

	/** How many arcs are made of one. */
	static int pieces(Arc arc) {
		return (int) Math.max(1, Math.ceil(Math.abs(arc.sweep()) / WIDEST - 1e-9));
	}

	/** Whether a piece of an arc differs from a straight move by less than what is written, or is all but straight. */
	boolean isFlat(Arc piece, Point start, Point end) {
		double sagitta = piece.radius() * (1 - Math.cos(piece.sweep() / 2));
		return sagitta < resolution() || piece.radius() > LARGEST_RADIUS || start.distance(end) < 2 * resolution();
	}

	private double resolution() {
		return Math.pow(10, -decimals);
	}

	/** The words for the centre, as seen from the start. */
	void append(StringBuilder line, Arc piece, Point start, Point end) {
		if (byRadius) {
			// never less than half the way, which rounding may make it
			Digits.append(line.append(" R"), Math.max(piece.radius(), start.distance(end) / 2 + resolution()), decimals);
			return;
		}
		// as far from both rounded ends: the centre is moved onto their bisector
		Point chord = end.minus(start);
		Point middle = start.towards(end, 0.5);
		Point toCentre = piece.centre().minus(middle);
		Point along = chord.times(toCentre.dot(chord) / chord.dot(chord));
		Point centre = middle.plus(toCentre).minus(along).minus(start);
		Digits.append(line.append(" I"), centre.x(), decimals);
		Digits.append(line.append(" J"), centre.y(), decimals);
	}
}
