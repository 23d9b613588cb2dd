package org.frisket.toolpath.internal.plan;

import java.util.ArrayList;
import java.util.List;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Point;
import org.frisket.toolpath.Carriage;
import org.frisket.toolpath.Line;
import org.frisket.toolpath.RunChoices;
import org.frisket.toolpath.Stroke;
import org.frisket.toolpath.ToolMotion;
import org.frisket.toolpath.blade.TrailingBlade;
import org.frisket.toolpath.track.Arc;
import org.frisket.toolpath.track.Chords;
import org.frisket.toolpath.track.Move;
import org.frisket.toolpath.track.Track;
import org.frisket.toolpath.track.Tracks;

/**
 * Makes strokes of one tool: leads its axis, slows down in tight curves, makes chords of arcs if the carriage needs
 * them.
 */
final class StrokeMaker {

	/** Of the tolerance, for arcs that become chords: the fewer arcs the fewer chords, but chords need more of it. */
	private static final double SHARE_OF_ARCS = 0.25;
	/** In radians: what turns by more between straight moves is a corner and no curve made of chords. */
	private static final double CORNER = Math.PI / 4;

	private final ToolMotion motion;
	private final Carriage carriage;
	private final RunChoices choices;

	StrokeMaker(ToolMotion motion, Carriage carriage, RunChoices choices) {
		this.motion = motion;
		this.carriage = carriage;
		this.choices = choices;
	}

	/** The way of the tip along a contour. */
	Track track(Contour contour) {
		return Tracks.arcs(contour, carriage.tolerance() * (carriage.arcs() ? 1 : SHARE_OF_ARCS));
	}

	/** Where the axis stands with the tip at a place and in line. */
	Point ahead(Point tip, double heading) {
		return motion.blade().offset() == 0 ? tip : motion.blade().ahead(tip, heading);
	}

	Point ahead(Move move) {
		return ahead(move.start(), move.startHeading());
	}

	/** Where the axis stands at the end of a move. */
	Point aheadOfEnd(Move move) {
		return ahead(move.end(), move.endHeading());
	}

	/** Whether the tip trails. */
	boolean trails() {
		return motion.blade().offset() > 0;
	}

	/** What a closed line is cut before its start, in mm. */
	double leadIn(Line line) {
		return line.stage().cuts() && trails() ? choices.leadIn() : 0;
	}

	/** What it is cut beyond its end. */
	double overcut(Line line) {
		return line.stage().cuts() ? choices.overcut() : 0;
	}

	double offset() {
		return motion.blade().offset();
	}

	/** The axis comes down ahead of the tip's start, in the line's direction: the tip need not swing there first. */
	Stroke stroke(Line line, int pass, List<Move> tip) {
		boolean[] tight = tight(tip);
		List<Move> axis = new ArrayList<>();
		List<Double> speeds = new ArrayList<>();
		for (TrailingBlade.Led led : motion.blade().leading(new Track(tip, false))) {
			// the tip turns on the spot at a swing: nothing is tighter
			boolean slow = led.of() < 0 ? choices.tight() > 0 && led.move() instanceof Arc : tight[led.of()];
			double speed = motion.drive().speed() * (slow ? choices.tightSpeed() : 1);
			for (Move move : followed(led.move())) {
				axis.add(move);
				speeds.add(speed);
			}
		}
		return new Stroke(line, pass, tip.stream().flatMap(move -> followed(move).stream()).toList(), axis, speeds);
	}

	private List<Move> followed(Move move) {
		return carriage.arcs() ? List.of(move) : Chords.of(move, carriage.tolerance() * (1 - SHARE_OF_ARCS));
	}

	/** Which moves belong to a curve of a radius below the limit: arcs, and straight moves that are chords of one. */
	private boolean[] tight(List<Move> tip) {
		boolean[] tight = new boolean[tip.size()];
		for (int i = 0; i < tip.size() && choices.tight() > 0; i++) {
			Move move = tip.get(i);
			if (move instanceof Arc arc) {
				tight[i] = arc.radius() < choices.tight();
				continue;
			}
			if (i > 0 && tip.get(i - 1).curvature() == 0) {
				double turn = Math.abs(Track.turn(tip.get(i - 1), move));
				double radius = (tip.get(i - 1).length() + move.length()) / 2 / turn;
				if (turn > 0 && turn <= CORNER && radius < choices.tight()) {
					tight[i - 1] = true;
					tight[i] = true;
				}
			}
		}
		return tight;
	}
}
