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
 */
public record Setting(double capHeight, double lineSpacing, double tracking, Alignment alignment, boolean kerning,
		boolean ligatures, String language) {

	/** Baseline distance at line spacing 1, in cap heights; near what most text faces ask for themselves. */
	public static final double LINE_DISTANCE = 1.6;

	/** @throws IllegalArgumentException naming the value that is out of range */
	public Setting {
		requirePositive("cap height", capHeight);
		requirePositive("line spacing", lineSpacing);
		if (!Double.isFinite(tracking)) {
			throw new IllegalArgumentException("tracking must be a finite length, got " + tracking);
		}
		Objects.requireNonNull(alignment, "alignment");
		Objects.requireNonNull(language, "language");
	}

	private static void requirePositive(String what, double value) {
		if (!(value > 0) || !Double.isFinite(value)) {
			throw new IllegalArgumentException(what + " must be positive and finite, got " + value);
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
		return new Setting(newCapHeight, lineSpacing, tracking, alignment, kerning, ligatures, language);
	}

	public Setting withLineSpacing(double newLineSpacing) {
		return new Setting(capHeight, newLineSpacing, tracking, alignment, kerning, ligatures, language);
	}

	public Setting withTracking(double newTracking) {
		return new Setting(capHeight, lineSpacing, newTracking, alignment, kerning, ligatures, language);
	}

	public Setting withAlignment(Alignment newAlignment) {
		return new Setting(capHeight, lineSpacing, tracking, newAlignment, kerning, ligatures, language);
	}

	public Setting withKerning(boolean newKerning) {
		return new Setting(capHeight, lineSpacing, tracking, alignment, newKerning, ligatures, language);
	}

	public Setting withLigatures(boolean newLigatures) {
		return new Setting(capHeight, lineSpacing, tracking, alignment, kerning, newLigatures, language);
	}

	public Setting withLanguage(String newLanguage) {
		return new Setting(capHeight, lineSpacing, tracking, alignment, kerning, ligatures, newLanguage);
	}
}
