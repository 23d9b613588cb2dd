package org.frisket.prepare;

import java.util.Optional;
import java.util.OptionalDouble;

import org.frisket.geometry.Monitor;
import org.frisket.geometry.Point;
import org.frisket.geometry.Tolerance;
import org.frisket.prepare.checks.Limits;
import org.frisket.prepare.internal.FitnessMeasures;
import org.frisket.typography.SetText;

/**
 * Whether a set text can be cut, in figures. All lengths grow with the height of the text, as long as nothing in its
 * setting is given in mm of its own (tracking, word spacing, a measure, heights of spans).
 *
 * @param height          of a capital H in mm, at which it was measured
 * @param thinnestStroke  by local thickness, in mm; empty if there is nothing
 * @param narrowestGap    between pieces of different letters, in mm; empty if all letters hang together
 * @param smallestCounter the diameter in mm of the largest disc that fits into the smallest hole; empty without holes
 * @param sharpestPoint   the least angle of a corner of the letters, in degrees; empty if no corner is below 180
 * @param smallestPiece   the length of the shortest piece in mm
 * @param pieces          how many there are
 */
public record Fitness(double height, Optional<Measure> thinnestStroke, Optional<Measure> narrowestGap,
		Optional<Measure> smallestCounter, Optional<Measure> sharpestPoint, Optional<Measure> smallestPiece,
		int pieces) {

	/** A value and where it was measured, in the frame of the text. */
	public record Measure(double value, Point place) {
	}

	/**
	 * Measures a text as it stands.
	 *
	 * @throws java.util.concurrent.CancellationException if the monitor cancels
	 */
	public static Fitness of(SetText text, Tolerance tolerance, Monitor monitor) {
		return FitnessMeasures.of(text, tolerance, monitor);
	}

	/**
	 * The height of a capital H in mm from which on no stroke is too thin and no piece too small; empty if there is
	 * nothing to cut. It is worked out of what was measured, without setting the text again.
	 */
	public OptionalDouble smallestHeight(Limits limits) {
		if (thinnestStroke.isEmpty() || smallestPiece.isEmpty()) {
			return OptionalDouble.empty();
		}
		double stroke = limits.thinnestStroke() / thinnestStroke.get().value();
		double piece = limits.smallestPiece() / smallestPiece.get().value();
		return OptionalDouble.of(height * Math.max(stroke, piece));
	}
}
