package org.frisket.typography;

import java.io.IOException;
import java.util.Objects;

/** A font that can be opened, known by its names so far. */
public final class FontEntry {

	/** How the font is got at. */
	public interface Opener {
		FontFace open() throws UnreadableFontException;
	}

	/** How the digest of the font's file is got at without opening it. */
	public interface Digester {
		String digest() throws IOException;
	}

	private final FontNames names;
	private final String place;
	private final Opener opener;
	private final Digester digester;

	/**
	 * @param place  file or resource, for the user to see
	 * @param digester gives the SHA-256 of the whole file in lower-case hexadecimal
	 */
	public FontEntry(FontNames names, String place, Opener opener, Digester digester) {
		this.names = Objects.requireNonNull(names);
		this.place = Objects.requireNonNull(place);
		this.opener = Objects.requireNonNull(opener);
		this.digester = Objects.requireNonNull(digester);
	}

	public FontNames names() {
		return names;
	}

	public String family() {
		return names.family();
	}

	public String style() {
		return names.style();
	}

	public String place() {
		return place;
	}

	public FontFace open() throws UnreadableFontException {
		return opener.open();
	}

	/** SHA-256 of the whole file in lower-case hexadecimal. */
	public String digest() throws IOException {
		return digester.digest();
	}

	@Override
	public String toString() {
		return names.label() + " (" + place + ")";
	}
}
