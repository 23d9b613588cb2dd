package org.frisket.material.tools;

import java.util.Locale;

/** Where a machine's zero is, as seen by whoever stands in front of it. */
public enum Corner {
	LOWER_LEFT, LOWER_RIGHT, UPPER_LEFT, UPPER_RIGHT, CENTRE;

	public String word() {
		return name().toLowerCase(Locale.ROOT).replace('_', '-');
	}
}
