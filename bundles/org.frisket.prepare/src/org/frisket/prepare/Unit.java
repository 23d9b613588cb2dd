package org.frisket.prepare;

/** What a measured value counts. */
public enum Unit {

	/** Millimetres. */
	MM("mm"),
	/** Degrees of an angle. */
	DEGREES("°"),
	/** So many on each millimetre. */
	PER_MM("/mm"),
	/** Dots to the inch. */
	DPI("dpi");

	private final String symbol;

	Unit(String symbol) {
		this.symbol = symbol;
	}

	/** What is written after a number. */
	public String symbol() {
		return symbol;
	}
}
