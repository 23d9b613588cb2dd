package org.frisket.typography;

import java.util.List;

import org.frisket.geometry.Monitor;

/** Where fonts come from. Listing is to be cheap: names only, no glyphs. Safe for use by several threads. */
public interface FontSource {

	/** Short and unique, such as {@code system}. */
	String id();

	/** In a fixed order. Fonts that cannot be read are left out here and found in {@link #broken}. */
	List<FontEntry> fonts(Monitor monitor);

	/** What looked like a font and is none, with the reason. */
	default List<UnreadableFontException> broken(Monitor monitor) {
		return List.of();
	}
}
