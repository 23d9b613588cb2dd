package org.frisket.material.tools;

import java.util.Locale;

/** How a machine works. Stored by name. */
public enum Process {
	/** A tool touches the sheet, cold. */
	BLADE,
	/** Foil is pressed on with heat. */
	FOIL,
	/** A beam burns. */
	LASER;

	/** Whether plastics give off fumes in it. */
	public boolean isHot() {
		return this != BLADE;
	}

	public String word() {
		return name().toLowerCase(Locale.ROOT);
	}
}
