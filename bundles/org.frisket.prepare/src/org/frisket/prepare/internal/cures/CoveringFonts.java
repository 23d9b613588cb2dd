package org.frisket.prepare.internal.cures;

import java.util.Optional;

import org.frisket.geometry.Monitor;
import org.frisket.typography.FontFace;
import org.frisket.typography.UnreadableFontException;
import org.frisket.typography.source.FontEntry;
import org.frisket.typography.source.FontLibrary;
import org.frisket.typography.source.FontSource;

/** Looks for a font that has all of some characters and can be cut, in the order of the sources. */
record CoveringFonts(FontLibrary fonts, Monitor monitor) {

	/** Each has to be opened; whoever has more chooses by eye. */
	private static final int MOST_OPENED = 60;

	/** Upright ones of normal weight first. */
	Optional<FontFace> first(int[] characters) {
		for (boolean plain : new boolean[] { true, false }) {
			int opened = 0;
			for (FontSource source : fonts.sources()) {
				for (FontEntry entry : source.fonts(monitor)) {
					monitor.check();
					if (entry.names().isPlain() == plain && opened++ < MOST_OPENED) {
						Optional<FontFace> face = open(entry)
								.filter(f -> !f.isStroke() && covers(f, characters));
						if (face.isPresent()) {
							return face;
						}
					}
				}
			}
		}
		return Optional.empty();
	}

	private static Optional<FontFace> open(FontEntry entry) {
		try {
			return Optional.of(entry.open());
		} catch (UnreadableFontException e) {
			return Optional.empty();
		}
	}

	static boolean covers(FontFace face, int[] characters) {
		for (int character : characters) {
			if (!face.covers(character)) {
				return false;
			}
		}
		return true;
	}
}
