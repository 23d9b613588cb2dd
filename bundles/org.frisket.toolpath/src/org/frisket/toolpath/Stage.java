package org.frisket.toolpath;

/** What is done along a line, in the order in which a sheet is worked: what shifts the sheet least comes first. */
public enum Stage {
	DRAW, CREASE, PERFORATE, KISS_CUT, CUT;

	/** Whether a blade goes into the sheet. */
	public boolean cuts() {
		return this != DRAW && this != CREASE;
	}
}
