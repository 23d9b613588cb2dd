package org.frisket.typography;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

import org.frisket.geometry.Outline;
import org.frisket.typography.internal.sfnt.ByteSource;
import org.frisket.typography.internal.sfnt.FaceHeader;
import org.frisket.typography.internal.sfnt.NameTable;
import org.frisket.typography.internal.sfnt.TableDirectory;
import org.frisket.typography.internal.shape.FontEngine;
import org.frisket.typography.internal.shape.HarfBuzzEngine;
import org.frisket.typography.internal.shape.RuntimeEngine;

/**
 * One face of a TrueType or OpenType font (outlines in {@code glyf}, {@code CFF} or {@code CFF2}), read from a file
 * or from bytes without being installed. Immutable, and safe for use by several threads.
 * <p>
 * Glyphs are measured in font units; y points down and the baseline lies at y = 0.
 */
public final class FontFace {

	/** Larger files are refused, in bytes. */
	public static final long LARGEST_FILE = 64L << 20;

	private final byte[] bytes;
	private final int index;
	private final Path source;
	private final FaceHeader header;
	private final FontNames names;
	private final String licence;
	private final String licenceAddress;
	private final FontEngine engine;
	private final CapHeight capHeight;
	private final Map<Integer, Outline> outlines = new ConcurrentHashMap<>();
	private volatile String digest;

	private FontFace(byte[] bytes, int index, Path source, String font, boolean harfBuzz)
			throws UnreadableFontException, IOException {
		TableDirectory tables = TableDirectory.read(ByteSource.of(bytes), index, font);
		NameTable nameTable = NameTable.read(tables);
		this.bytes = bytes;
		this.index = index;
		this.source = source;
		header = FaceHeader.read(tables, font);
		names = nameTable.fontNames(stem(font));
		licence = nameTable.licence();
		licenceAddress = nameTable.licenceAddress();
		engine = harfBuzz ? HarfBuzzEngine.open(bytes, index, header.unitsPerEm())
				: RuntimeEngine.open(bytes, index, header.unitsPerEm());
		capHeight = CapHeight.of(this, header.capHeight());
	}

	private static String stem(String font) {
		String file = font.substring(Math.max(font.lastIndexOf('/'), font.lastIndexOf('\\')) + 1);
		int dot = file.lastIndexOf('.');
		return dot > 0 ? file.substring(0, dot) : file;
	}

	/** The first or only face of a font file. */
	public static FontFace read(Path file) throws UnreadableFontException {
		return read(file, 0);
	}

	/** @param index which face of a collection (.ttc), from 0 */
	public static FontFace read(Path file, int index) throws UnreadableFontException {
		String font = file.toString();
		try {
			if (!Files.exists(file)) {
				throw new UnreadableFontException(font, "there is no such file");
			}
			if (Files.isDirectory(file)) {
				throw new UnreadableFontException(font, "it is a folder");
			}
			if (!Files.isRegularFile(file)) {
				throw new UnreadableFontException(font, "it is not a regular file");
			}
			checkSize(Files.size(file), font);
			return open(Files.readAllBytes(file), index, file, font, HarfBuzzEngine.isAvailable());
		} catch (NoSuchFileException gone) {
			throw new UnreadableFontException(font, "there is no such file");
		} catch (AccessDeniedException denied) {
			throw new UnreadableFontException(font, "reading it is not permitted");
		} catch (IOException broken) {
			throw new UnreadableFontException(font, "reading failed (" + broken.getMessage() + ")");
		}
	}

	/** The first or only face of a font given as bytes; {@code nameForMessages} is what errors call it. */
	public static FontFace read(byte[] bytes, String nameForMessages) throws UnreadableFontException {
		return read(bytes, 0, nameForMessages);
	}

	/** @param index which face of a collection, from 0 */
	public static FontFace read(byte[] bytes, int index, String nameForMessages) throws UnreadableFontException {
		return read(bytes, index, nameForMessages, HarfBuzzEngine.isAvailable());
	}

	static FontFace read(byte[] bytes, int index, String font, boolean harfBuzz) throws UnreadableFontException {
		Objects.requireNonNull(font);
		checkSize(bytes.length, font);
		return open(bytes.clone(), index, null, font, harfBuzz);
	}

	private static void checkSize(long size, String font) throws UnreadableFontException {
		if (size > LARGEST_FILE) {
			throw new UnreadableFontException(font, "it is too big (" + (size >> 20) + " MB; at most "
					+ (LARGEST_FILE >> 20) + " MB are read)");
		}
	}

	private static FontFace open(byte[] bytes, int index, Path source, String font, boolean harfBuzz)
			throws UnreadableFontException {
		try {
			return new FontFace(bytes, index, source, font, harfBuzz);
		} catch (IOException broken) {
			throw new UnreadableFontException(font, broken.getMessage() == null ? "it is cut off"
					: broken.getMessage());
		}
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

	public String fullName() {
		return names.fullName();
	}

	/** May be empty. */
	public String postScriptName() {
		return names.postScriptName();
	}

	/** Licence text as the font carries it; often only a sentence or empty. */
	public String licence() {
		return licence;
	}

	/** Web address of the licence; may be empty. */
	public String licenceAddress() {
		return licenceAddress;
	}

	/**
	 * {@code fsType} of table OS/2, as far as the font has one: bits 0 to 3 are 0 installable, 2 restricted, 4 preview
	 * and print, 8 editable. It speaks of embedding in documents, not of cut outlines.
	 */
	public int embedding() {
		return header.embedding();
	}

	public int unitsPerEm() {
		return header.unitsPerEm();
	}

	public int glyphCount() {
		return header.glyphCount();
	}

	/** Which face of a collection, from 0. */
	public int index() {
		return index;
	}

	/** SHA-256 of the whole file, in lower-case hexadecimal. */
	public String digest() {
		String known = digest;
		if (known == null) {
			known = digest(bytes);
			digest = known;
		}
		return known;
	}

	static String digest(byte[] bytes) {
		try {
			return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
		} catch (NoSuchAlgorithmException never) {
			throw new AssertionError(never);
		}
	}

	/** The file it was read from; absent for a font given as bytes. */
	public Optional<Path> source() {
		return Optional.ofNullable(source);
	}

	/** A copy of the whole font file. */
	public byte[] bytes() {
		return bytes.clone();
	}

	/** Number of the plain glyph of a character, 0 if the font has none. */
	public int glyph(int codePoint) {
		return engine.glyph(codePoint);
	}

	public boolean covers(int codePoint) {
		return glyph(codePoint) != 0;
	}

	/**
	 * A glyph's outline in font units, quadratic curves as their exact cubic; all contours closed. Empty for blank
	 * glyphs and for numbers beyond the last glyph.
	 */
	public Outline outline(int glyph) {
		return glyph < 0 || glyph >= glyphCount() ? Outline.EMPTY
				: outlines.computeIfAbsent(glyph, engine::outline);
	}

	/**
	 * Height of a capital H in font units, measured over its whole outline; {@link #capHeightOrigin()} tells what it
	 * was taken from when the font has no H.
	 */
	public double capHeight() {
		return capHeight.height();
	}

	public CapHeightOrigin capHeightOrigin() {
		return capHeight.origin();
	}

	FontEngine engine() {
		return engine;
	}

	@Override
	public String toString() {
		return names.label() + (source == null ? "" : " (" + source + ")");
	}
}
