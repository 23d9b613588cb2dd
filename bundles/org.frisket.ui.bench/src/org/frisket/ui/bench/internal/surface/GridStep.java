package org.frisket.ui.bench.internal.surface;

import org.eclipse.core.runtime.Platform;
import org.frisket.ui.LengthUnit;
import org.frisket.ui.bench.internal.files.BenchPreferences;

/** The distance of the grid's lines: one for each unit, so that both are round. */
public enum GridStep {

	MILLIMETRES("gridStepMillimetres", "5", 10, LengthUnit.MILLIMETRE), INCHES("gridStepInches", "0.25", 4, LengthUnit.INCH);

	/** Finer ones would be finer than any cut. */
	private static final double LEAST_MM = 0.1;
	private static final double MOST_MM = 1000;

	private final String key;
	private final String usual;
	private final int majorEvery;
	private final LengthUnit unit;

	GridStep(String key, String usual, int majorEvery, LengthUnit unit) {
		this.key = key;
		this.usual = usual;
		this.majorEvery = majorEvery;
		this.unit = unit;
	}

	/** That of the unit that is shown. */
	public static GridStep shown() {
		return LengthUnit.shown() == LengthUnit.INCH ? INCHES : MILLIMETRES;
	}

	/** The key of the preference; its value is a number of the unit. */
	public String key() {
		return key;
	}

	/** The value when the user has chosen nothing. */
	public String usual() {
		return usual;
	}

	/** How many steps there are from one stronger line to the next. */
	public int majorEvery() {
		return majorEvery;
	}

	/** The step in mm. */
	public double millimetres() {
		String text = Platform.getPreferencesService().getString(BenchPreferences.NODE, key, usual, null);
		return isValid(text) ? parsed(text) : parsed(usual);
	}

	/** Whether a text is a number of the unit that makes a grid from a tenth of a millimetre to a metre. */
	public boolean isValid(String text) {
		try {
			return parsed(text) >= LEAST_MM && parsed(text) <= MOST_MM;
		} catch (NumberFormatException e) {
			return false;
		}
	}

	private double parsed(String text) {
		return unit.toMillimetres(Double.parseDouble(text.strip().replace(',', '.')));
	}
}
