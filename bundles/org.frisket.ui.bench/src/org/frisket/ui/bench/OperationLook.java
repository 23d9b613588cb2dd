package org.frisket.ui.bench;

import org.frisket.model.OperationKind;
import org.frisket.ui.ThemeColour;
import org.frisket.ui.bench.internal.figures.OperationStroke;

/**
 * How the line of an operation is told apart: by its pattern first and its hue second.
 *
 * @param hue      the colour
 * @param widthPx  its width in pixels
 * @param dash     lengths of its dashes and gaps in pixels, in turn; null for a solid line
 * @param isDouble whether it is two thin lines side by side, together as wide as said
 */
public record OperationLook(ThemeColour hue, int widthPx, int[] dash, boolean isDouble) {

	public static OperationLook of(OperationKind kind) {
		return OperationStroke.of(kind).look();
	}
}
