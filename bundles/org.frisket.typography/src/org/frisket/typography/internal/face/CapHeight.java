package org.frisket.typography.internal.face;

import org.frisket.geometry.Bounds;
import org.frisket.typography.FontFace;
import org.frisket.typography.face.CapHeightOrigin;

/** Height of the capitals of a face in font units. */
public record CapHeight(double height, CapHeightOrigin origin) {

	private static final String OTHER_CAPITALS = "EITZNM";
	private static final double USUAL_SHARE_OF_EM = 0.7;

	/** @param claimed what the font's header says, 0 for nothing */
	public static CapHeight of(FontFace face, int claimed) {
		double measured = measure(face, 'H');
		if (measured > 0) {
			return new CapHeight(measured, CapHeightOrigin.LETTER_H);
		}
		for (char capital : OTHER_CAPITALS.toCharArray()) {
			measured = measure(face, capital);
			if (measured > 0) {
				return new CapHeight(measured, CapHeightOrigin.OTHER_CAPITAL);
			}
		}
		if (claimed > 0) {
			return new CapHeight(claimed, CapHeightOrigin.HEADER);
		}
		return new CapHeight(USUAL_SHARE_OF_EM * face.unitsPerEm(), CapHeightOrigin.GUESS);
	}

	private static double measure(FontFace face, char capital) {
		int glyph = face.glyph(capital);
		Bounds bounds = glyph == 0 ? Bounds.EMPTY : face.outline(glyph).bounds();
		return bounds.height();
	}
}
