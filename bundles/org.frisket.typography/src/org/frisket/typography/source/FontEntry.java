package org.frisket.typography.source;

import java.io.IOException;
import java.nio.file.Files;
import java.util.Objects;
import java.util.Optional;

import org.frisket.typography.FontFace;
import org.frisket.typography.UnreadableFontException;
import org.frisket.typography.face.FontNames;
import org.frisket.typography.face.NamedInstance;

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
	private final Optional<FontFile> file;
	private final int index;
	private final String instance;
	private volatile String digest;

	/**
	 * @param place  file or resource, for the user to see
	 * @param digester gives the SHA-256 of the whole file in lower-case hexadecimal
	 */
	public FontEntry(FontNames names, String place, Opener opener, Digester digester) {
		this(names, place, opener, digester, Optional.empty(), 0, "");
	}

	private FontEntry(FontNames names, String place, Opener opener, Digester digester, Optional<FontFile> file,
			int index, String instance) {
		this.names = Objects.requireNonNull(names);
		this.place = Objects.requireNonNull(place);
		this.opener = Objects.requireNonNull(opener);
		this.digester = Objects.requireNonNull(digester);
		this.file = file;
		this.index = index;
		this.instance = instance;
	}

	/** @param index which face of a collection, from 0 */
	public static FontEntry of(FontFile file, int index, FontNames names) {
		return new FontEntry(names, file.path().toString(), () -> FontFace.read(file.path(), index),
				() -> FontFace.digest(Files.readAllBytes(file.path())), Optional.of(file), index, "");
	}

	/** A style of a variable font. @param names of the plain face */
	public static FontEntry of(FontFile file, int index, FontNames names, NamedInstance instance) {
		return new FontEntry(names.ofInstance(instance), file.path().toString(),
				() -> FontFace.read(file.path(), index).at(instance.settings()),
				() -> FontFace.digest(Files.readAllBytes(file.path())), Optional.of(file), index, instance.name());
	}

	/** The file it is in, as it was when it was listed; absent for a font that lies in a library. */
	public Optional<FontFile> file() {
		return file;
	}

	/** Which face of its file, from 0. */
	public int index() {
		return index;
	}

	/** The named instance of a variable font; empty for the plain face. */
	public String instance() {
		return instance;
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

	/** SHA-256 of the whole file in lower-case hexadecimal; the file is read once. */
	public String digest() throws IOException {
		String known = digest;
		if (known == null) {
			known = digester.digest();
			digest = known;
		}
		return known;
	}

	@Override
	public String toString() {
		return names.label() + " (" + place + ")";
	}
}
