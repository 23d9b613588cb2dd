package org.frisket.material;

/** Which way the fibres lie; a fold along them lies flatter, and a sheet gives more across them. */
public enum Grain {
	UNKNOWN,
	/** Along the longer side of the sheet, or along the roll. */
	LONG,
	/** Along the shorter side. */
	SHORT,
	/** Films and the like. */
	NONE
}
