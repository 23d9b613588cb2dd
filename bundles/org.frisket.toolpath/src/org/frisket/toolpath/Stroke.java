package org.frisket.toolpath;

import java.util.List;

import org.frisket.geometry.Point;
import org.frisket.toolpath.track.Move;

/**
 * What is done between setting a tool down and lifting it; but between passes it may {@linkplain #continues stay down}.
 *
 * @param line   that is worked; between tabs the whole of it, but of shared edges the part that is left to it
 * @param pass   from 1
 * @param tip    the way of the tool's tip, in mm on the sheet: what is seen of it
 * @param axis   the way of what the machine leads: the axis a trailing blade swivels on; else the tip itself
 * @param speeds in mm/s, one for each move of the axis: no faster than this
 */
public record Stroke(Line line, int pass, List<Move> tip, List<Move> axis, List<Double> speeds) {

	/** In mm: places that differ by no more than rounding. */
	private static final double SAME = 1e-6;

	/** @throws IllegalArgumentException for a stroke without moves, or without their speeds */
	public Stroke {
		tip = List.copyOf(tip);
		axis = List.copyOf(axis);
		speeds = List.copyOf(speeds);
		if (tip.isEmpty() || axis.isEmpty() || axis.size() != speeds.size()) {
			throw new IllegalArgumentException("a stroke of " + axis.size() + " moves and " + speeds.size() + " speeds");
		}
	}

	/** Where the axis is set down. */
	public Point start() {
		return axis.get(0).start();
	}

	/** Where it is lifted. */
	public Point end() {
		return axis.get(axis.size() - 1).end();
	}

	/** Whether it goes on where another ends, over the same line once more: the tool is not lifted between them. */
	public boolean continues(Stroke before) {
		return pass == before.pass + 1 && line.equals(before.line) && start().distance(before.end()) <= SAME;
	}

	/** Of the way of the tip, in mm. */
	public double length() {
		return tip.stream().mapToDouble(Move::length).sum();
	}
}
