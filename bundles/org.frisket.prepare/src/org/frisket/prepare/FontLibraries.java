package org.frisket.prepare;

import org.frisket.typography.FontLibrary;

/** The fonts at hand. */
public final class FontLibraries {

	private static final FontLibrary INSTALLED = FontLibrary.standard();

	private FontLibraries() {
	}

	/** The fonts the product brings, then those of the system. Nothing is read before a font is asked for. */
	public static FontLibrary installed() {
		return INSTALLED;
	}
}
