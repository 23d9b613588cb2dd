package org.frisket.material.advice;

import java.util.Locale;

/** How far a piece of advice can be trusted; the surest last. */
public enum Confidence {
	/** Nothing comparable was ever tried. */
	RULE_OF_THUMB,
	/** Something comparable was tried, but not in this range, or no pressure went well. */
	LOW,
	/** Tried in this range, and there is a pressure that goes well. */
	FAIR,
	/** The trials rule out, each way with a certainty of 95 %, that this pressure fails more often than not. */
	GOOD;

	public String word() {
		return name().toLowerCase(Locale.ROOT).replace('_', '-');
	}

	/** In the user's language. */
	public String text() {
		return switch (this) {
		case RULE_OF_THUMB -> Messages.Confidence_ruleOfThumb;
		case LOW -> Messages.Confidence_low;
		case FAIR -> Messages.Confidence_fair;
		case GOOD -> Messages.Confidence_good;
		};
	}
}
