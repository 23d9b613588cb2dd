package org.frisket.imports.dxf;

import java.util.Arrays;

/** Units of DXF's {@code $INSUNITS}, from the table of its reference; those above 6 from memory. */
enum LengthUnit {

	INCH(1, "in", 25.4), FOOT(2, "ft", 304.8), MILE(3, "mi", 1_609_344), MILLIMETRE(4, "mm", 1), CENTIMETRE(5, "cm", 10),
	METRE(6, "m", 1_000), KILOMETRE(7, "km", 1_000_000), MICROINCH(8, "uin", 25.4e-6), MIL(9, "mil", 0.0254),
	YARD(10, "yd", 914.4), MICROMETRE(13, "um", 1e-3), DECIMETRE(14, "dm", 100);

	private final int number;
	private final String word;
	private final double mm;

	LengthUnit(int number, String word, double mm) {
		this.number = number;
		this.word = word;
		this.mm = mm;
	}

	double mm() {
		return mm;
	}

	/** Null if there is none. */
	static LengthUnit of(int number) {
		return Arrays.stream(values()).filter(unit -> unit.number == number).findFirst().orElse(null);
	}

	/** Null if there is none. */
	static LengthUnit of(String word) {
		return Arrays.stream(values()).filter(unit -> unit.word.equals(word)).findFirst().orElse(null);
	}
}
