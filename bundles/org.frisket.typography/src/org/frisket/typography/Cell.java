package org.frisket.typography;

import java.util.ArrayList;
import java.util.List;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Outline;
import org.frisket.geometry.Transform;
import org.frisket.typography.internal.shape.PlacedGlyph;

/**
 * A stretch of a line that is never parted: the glyphs of one cluster.
 *
 * @param start   index of its first character in the paragraph
 * @param glyphs  those that the font has
 * @param pen     the font's own pen position before the cluster, in font units
 * @param advance in mm
 * @param blank   whether it is a blank of some width
 * @param unseen  whether it is an invisible sign of no width
 */
record Cell(int start, int end, List<PlacedGlyph> glyphs, double pen, double advance, boolean blank, boolean unseen,
		TextStyle style) {

	/** With the pen at the origin. */
	Outline outline() {
		List<Contour> contours = new ArrayList<>();
		for (PlacedGlyph glyph : glyphs) {
			double scale = style.scale();
			Transform place = Transform.translation((glyph.x() - pen) * scale, glyph.y() * scale);
			contours.addAll(style.face().outline(glyph.glyph(), scale).transformed(place).contours());
		}
		return new Outline(contours);
	}

	List<Integer> numbers() {
		return glyphs.stream().map(PlacedGlyph::glyph).toList();
	}
}
