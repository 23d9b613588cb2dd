package org.frisket.typography.internal.shape;

import java.util.List;

import org.frisket.geometry.Outline;

/** One face opened for use. Safe for use by several threads. All measures are font units, y down. */
public interface FontEngine {

	/** The plain glyph of a character, 0 if the font has none. */
	int glyph(int codePoint);

	/** Empty for a blank glyph and for a number beyond the last glyph. */
	Outline outline(int glyph);

	/** By how much a glyph moves the pen on to the right. */
	double advance(int glyph);

	/**
	 * Shapes one run: a stretch of one script and one direction. The text around it is looked at for the forms of
	 * joined scripts only.
	 *
	 * @return glyphs from left to right, or downwards with advances of 0 across if the shaping is vertical; clusters
	 *         are indices into {@code text}
	 */
	List<PlacedGlyph> shape(char[] text, Run run, Shaping shaping);
}
