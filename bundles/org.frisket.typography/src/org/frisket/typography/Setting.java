package org.frisket.typography;

import java.util.Objects;

/**
 * How a text is set.
 *
 * @param capHeight   height of a capital H in mm, as measured on the outline
 * @param lineSpacing distance of baselines, in units of {@value #LINE_DISTANCE} cap heights
 * @param tracking    mm added after every letter but the last of a line; may be negative
 * @param alignment   of the lines to each other
 * @param kerning     whether the font's own kerning is applied
 * @param ligatures   whether the font's usual ligatures are made; those without which a joined script falls apart
 *                    are made anyway
 * @param language    BCP 47 tag for fonts that have forms of their own for it, or empty
 * @param wordSpacing mm added to every blank; may be negative
 * @param measure     width in mm at which lines are broken between words and to which they are aligned; 0 for lines
 *                    that end only where the text says
 * @param features    OpenType features, which prevail over {@code kerning} and {@code ligatures}
 */
public record Setting(double capHeight, double lineSpacing, double tracking, Alignment alignment, boolean kerning,
		boolean ligatures, String language, double wordSpacing, double measure, FeatureList features) {

	/** Baseline distance at line spacing 1, in cap heights; near what most text faces ask for themselves. */
	public static final double LINE_DISTANCE = 1.6;

	/** @throws IllegalArgumentException naming the value that is out of range */
	public Setting {
		requirePositive("cap height", capHeight);
		requirePositive("line spacing", lineSpacing);
		requireFinite("tracking", tracking);
		requireFinite("word spacing", wordSpacing);
		if (!(measure >= 0) || !Double.isFinite(measure)) {
			throw new IllegalArgumentException("measure must be 0 or a finite length, got " + measure);
		}
		Objects.requireNonNull(alignment, "alignment");
		Objects.requireNonNull(language, "language");
		Objects.requireNonNull(features, "features");
	}

	/** Without word spacing, measure and features. */
	public Setting(double capHeight, double lineSpacing, double tracking, Alignment alignment, boolean kerning,
			boolean ligatures, String language) {
		this(capHeight, lineSpacing, tracking, alignment, kerning, ligatures, language, 0, 0, FeatureList.NONE);
	}

	private static void requirePositive(String what, double value) {
		if (!(value > 0) || !Double.isFinite(value)) {
			throw new IllegalArgumentException(what + " must be positive and finite, got " + value);
		}
	}

	private static void requireFinite(String what, double value) {
		if (!Double.isFinite(value)) {
			throw new IllegalArgumentException(what + " must be a finite length, got " + value);
		}
	}

	/** Plain setting: left, kerned, with ligatures, untracked. */
	public static Setting ofCapHeight(double capHeight) {
		return new Setting(capHeight, 1, 0, Alignment.LEFT, true, true, "");
	}

	/** Distance from one baseline to the next in mm. */
	public double lineDistance() {
		return LINE_DISTANCE * lineSpacing * capHeight;
	}

	public Setting withCapHeight(double newCapHeight) {
		return new Setting(newCapHeight, lineSpacing, tracking, alignment, kerning, ligatures, language, wordSpacing,
				measure, features);
	}

	public Setting withLineSpacing(double newLineSpacing) {
		return new Setting(capHeight, newLineSpacing, tracking, alignment, kerning, ligatures, language, wordSpacing,
				measure, features);
	}

	public Setting withTracking(double newTracking) {
		return new Setting(capHeight, lineSpacing, newTracking, alignment, kerning, ligatures, language, wordSpacing,
				measure, features);
	}

	public Setting withAlignment(Alignment newAlignment) {
		return new Setting(capHeight, lineSpacing, tracking, newAlignment, kerning, ligatures, language, wordSpacing,
				measure, features);
	}

	public Setting withKerning(boolean newKerning) {
		return new Setting(capHeight, lineSpacing, tracking, alignment, newKerning, ligatures, language, wordSpacing,
				measure, features);
	}

	public Setting withLigatures(boolean newLigatures) {
		return new Setting(capHeight, lineSpacing, tracking, alignment, kerning, newLigatures, language, wordSpacing,
				measure, features);
	}

	public Setting withLanguage(String newLanguage) {
		return new Setting(capHeight, lineSpacing, tracking, alignment, kerning, ligatures, newLanguage, wordSpacing,
				measure, features);
	}

	public Setting withWordSpacing(double newWordSpacing) {
		return new Setting(capHeight, lineSpacing, tracking, alignment, kerning, ligatures, language, newWordSpacing,
				measure, features);
	}

	public Setting withMeasure(double newMeasure) {
		return new Setting(capHeight, lineSpacing, tracking, alignment, kerning, ligatures, language, wordSpacing,
				newMeasure, features);
	}

	public Setting withFeatures(FeatureList newFeatures) {
		return new Setting(capHeight, lineSpacing, tracking, alignment, kerning, ligatures, language, wordSpacing,
				measure, newFeatures);
	}
}
