package org.frisket.prepare.fonts;

import java.util.Optional;
import java.util.OptionalDouble;

import org.frisket.geometry.Monitor;
import org.frisket.geometry.Point;
import org.frisket.geometry.Tolerance;
import org.frisket.prepare.checks.Limits;
import org.frisket.prepare.internal.FitnessMeasures;
import org.frisket.typography.SetText;

/**
 * Whether letters can be cut, in figures. All are taken of the final outline, where letters that meet are one piece.
 *
 * @param height          of a capital H in mm, at which it was measured
 * @param thinnestStroke  the least local thickness in mm that is none of a mere corner, as
 *                        {@link org.frisket.geometry.measure.StrokeWidths} defines it; empty if there is nothing
 * @param narrowestGap    the least distance in mm between two pieces of different letters; empty if all letters hang
 *                        together. The dot of an i stands in no gap to its own stem
 * @param smallestCounter the diameter in mm of the largest disc that fits into the smallest hole; empty without holes
 * @param sharpestPoint   the least angle of a corner of the letters, in degrees; empty if no corner is below 180
 * @param smallestPiece   the length in mm of the long side of the smallest box round the shortest piece
 * @param pieces          how many there are
 * @param smallestHeight  the height of a capital H in mm from which on no stroke is too thin, no piece and no hole
 *                        too small, as the checks of makeready measure them (gaps between letters are a matter of how
 *                        they are set),
 *                        worked out of what was measured without setting the text again; empty if there is nothing to
 *                        cut, or a needle's point that is too thin at every size. It takes for granted that everything
 *                        grows with the height: nothing in the setting is given in mm of its own (tracking, word
 *                        spacing, a measure, touch, heights of spans)
 */
public record Fitness(double height, Optional<Measure> thinnestStroke, Optional<Measure> narrowestGap,
		Optional<Measure> smallestCounter, Optional<Measure> sharpestPoint, Optional<Measure> smallestPiece, int pieces,
		OptionalDouble smallestHeight) {

	/** A value and where it was measured, in the frame of the text. */
	public record Measure(double value, Point place) {
	}

	/**
	 * Measures a text as it stands.
	 *
	 * @throws java.util.concurrent.CancellationException if the monitor cancels
	 */
	public static Fitness of(SetText text, Limits limits, Tolerance tolerance, Monitor monitor) {
		return FitnessMeasures.of(text, limits, tolerance, monitor);
	}

	/** Whether it is cut cleanly at the height it was measured at. */
	public boolean cuts() {
		return smallestHeight.isPresent() && smallestHeight.getAsDouble() <= height;
	}
}
