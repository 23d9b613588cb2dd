package org.frisket.page;

import java.io.IOException;

import org.frisket.prepare.fonts.FontLibraries;
import org.frisket.typography.FontFace;
import org.frisket.typography.UnreadableFontException;
import org.frisket.typography.source.UnknownFontException;

/** The font that words on pages are written in: one that the product brings, so that pages are the same everywhere. */
final class Labels {

	private static final String FONT = "Liberation Sans";
	/** As they come, so that a line is what was asked for or visibly not. */
	private static final int UNKNOWN = '?';

	private static volatile FontFace known;

	private Labels() {
	}

	/** @throws IOException if this installation lacks it */
	static FontFace face() throws IOException {
		try {
			FontFace face = known;
			if (face == null) {
				face = FontLibraries.installed().find(FONT);
				known = face;
			}
			return face;
		} catch (UnknownFontException | UnreadableFontException e) {
			throw new IOException("words cannot be written on pages: " + e.getMessage(), e);
		}
	}

	/** The text with what the face lacks replaced. */
	static String writable(String text, FontFace face) {
		StringBuilder writable = new StringBuilder(text.length());
		text.codePoints().map(c -> Character.isISOControl(c) ? ' ' : face.covers(c) ? c : UNKNOWN)
				.forEach(writable::appendCodePoint);
		return writable.toString();
	}
}
