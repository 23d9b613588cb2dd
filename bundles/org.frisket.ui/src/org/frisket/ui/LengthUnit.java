package org.frisket.ui;

import org.eclipse.core.runtime.preferences.IEclipsePreferences;
import org.eclipse.core.runtime.preferences.IEclipsePreferences.IPreferenceChangeListener;
import org.eclipse.core.runtime.preferences.InstanceScope;

/** The units in which the screen can write lengths. The studio chooses one; inside, every length is in mm. */
public enum LengthUnit {

	MILLIMETRE(1, 2), INCH(25.4, 3);

	/** Where the choice is kept. */
	public static final String NODE = "org.frisket.ui"; //$NON-NLS-1$

	/** The key of the choice; its values are the names of the units. */
	public static final String KEY = "lengthUnit"; //$NON-NLS-1$

	private final double millimetres;
	private final int decimals;

	LengthUnit(double millimetres, int decimals) {
		this.millimetres = millimetres;
		this.decimals = decimals;
	}

	/** The unit chosen now. */
	public static LengthUnit shown() {
		return INCH.name().equals(preferences().get(KEY, "")) ? INCH : MILLIMETRE; //$NON-NLS-1$
	}

	/** From now on, lengths are written in this unit. */
	public static void show(LengthUnit unit) {
		preferences().put(KEY, unit.name());
	}

	/**
	 * Calls the listener on the thread that chooses another unit, until what is returned is run.
	 */
	public static Runnable whenChanged(Runnable listener) {
		IPreferenceChangeListener onChange = event -> {
			if (KEY.equals(event.getKey())) {
				listener.run();
			}
		};
		IEclipsePreferences preferences = preferences();
		preferences.addPreferenceChangeListener(onChange);
		return () -> preferences.removePreferenceChangeListener(onChange);
	}

	private static IEclipsePreferences preferences() {
		return InstanceScope.INSTANCE.getNode(NODE);
	}

	/** A length in mm as a number of this unit. */
	public double fromMillimetres(double mm) {
		return mm / millimetres;
	}

	/** A number of this unit in mm. */
	public double toMillimetres(double value) {
		return value * millimetres;
	}

	/** How many decimals are worth reading: a hundredth of a millimetre, a thousandth of an inch. */
	public int decimals() {
		return decimals;
	}

	/** As it stands behind a number, such as {@code mm}. */
	public String symbol() {
		return this == INCH ? Messages.LengthUnit_inch : Messages.LengthUnit_millimetre;
	}
}
