package org.frisket.typography.stroke;

import org.frisket.geometry.Outline;

/**
 * One letter of lines, in font units with the pen before it at the origin, on the baseline, y down.
 *
 * @param strokes open contours; none for a blank
 * @param advance by how much the pen moves on
 */
public record StrokeGlyph(Outline strokes, double advance) {

	public static final StrokeGlyph NOTHING = new StrokeGlyph(Outline.EMPTY, 0);
}
