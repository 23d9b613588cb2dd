package org.frisket.typography.internal.shape;

import org.frisket.typography.FeatureList;

/**
 * @param language BCP 47 tag, or empty for none in particular
 * @param features prevail over the switches before them
 * @param vertical whether the forms are those for lines that run down
 */
public record Shaping(boolean kerning, boolean ligatures, String language, FeatureList features, boolean vertical) {

	/** Across, and no features but the usual ones. */
	public Shaping(boolean kerning, boolean ligatures, String language) {
		this(kerning, ligatures, language, FeatureList.NONE, false);
	}
}
