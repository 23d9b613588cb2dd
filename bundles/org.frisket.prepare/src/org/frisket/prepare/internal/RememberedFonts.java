package org.frisket.prepare.internal;

import java.util.Optional;

import org.frisket.model.FontRef;
import org.frisket.typography.FontFace;
import org.frisket.typography.source.FontLibrary;

/** The fonts that were asked for last, found as wordings find theirs. */
public final class RememberedFonts {

	private static final int KEPT = 64;

	private final FontResolver resolver;

	public RememberedFonts(FontLibrary library) {
		resolver = new FontResolver(library, new ContentCache(KEPT));
	}

	public Optional<FontFace> find(FontRef font) {
		return resolver.resolve(font).face();
	}
}
