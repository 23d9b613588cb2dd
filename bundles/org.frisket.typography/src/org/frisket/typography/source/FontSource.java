package org.frisket.typography.source;

import java.util.List;

import org.frisket.geometry.Monitor;
import org.frisket.typography.UnreadableFontException;

/** Where fonts come from. Listing is to be cheap: names only, no glyphs. Safe for use by several threads. */
public interface FontSource {

	/** Short and unique, such as {@code system}. */
	String id();

	/** In a fixed order. Fonts that cannot be read are left out here and found in {@link #broken}. */
	List<FontEntry> fonts(Monitor monitor);

	/**
	 * The faces of the font file with the given content, if this source keeps files by their content and so can tell
	 * without reading others. They need not be among its {@link #fonts}.
	 *
	 * @param sha256 of the whole file, in hexadecimal
	 */
	default List<FontEntry> kept(String sha256) {
		return List.of();
	}

	/** What looked like a font and is none, with the reason. */
	default List<UnreadableFontException> broken(Monitor monitor) {
		return List.of();
	}
}
