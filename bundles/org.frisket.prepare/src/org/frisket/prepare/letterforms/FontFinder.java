package org.frisket.prepare.letterforms;

import java.util.Optional;

import org.frisket.model.FontRef;
import org.frisket.prepare.internal.RememberedFonts;
import org.frisket.typography.FontFace;
import org.frisket.typography.source.FontLibrary;

/** Finds the font that a job names, as a wording in it is set: by its content, its file, or its name. */
public final class FontFinder {

	private final RememberedFonts fonts;

	public FontFinder(FontLibrary library) {
		fonts = new RememberedFonts(library);
	}

	/** May read many files; not for the UI thread. The reference may be null. */
	public Optional<FontFace> find(FontRef font) {
		return fonts.find(font);
	}
}
