package org.frisket.typography.index;

import java.text.Normalizer;
import java.util.Locale;

import org.frisket.typography.face.FontNames;
import org.frisket.typography.source.FontEntry;

/** A font that can be opened, with what is known of it. */
public final class IndexedFont {

	private final FontEntry entry;
	private final FaceRecord face;
	private final String source;
	private final String key;

	/** @param source id of the source it comes from */
	IndexedFont(FontEntry entry, FaceRecord face, String source) {
		this.entry = entry;
		this.face = face;
		this.source = source;
		key = folded(names(face.names()) + (face.names().equals(entry.names()) ? "" : " " + names(entry.names())));
	}

	private static String names(FontNames names) {
		return names.family() + " " + names.style() + " " + names.fullName() + " " + names.postScriptName();
	}

	public FontEntry entry() {
		return entry;
	}

	public FaceRecord face() {
		return face;
	}

	public String source() {
		return source;
	}

	/** All its names for the search, those that its source gives it too. */
	String key() {
		return key;
	}

	/** Small letters without accents. */
	static String folded(String text) {
		return Normalizer.normalize(text, Normalizer.Form.NFD).replaceAll("\\p{Mn}+", "").toLowerCase(Locale.ROOT);
	}

	@Override
	public String toString() {
		return entry.toString();
	}
}
