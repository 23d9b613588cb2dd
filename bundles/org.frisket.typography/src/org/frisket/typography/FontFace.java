package org.frisket.typography;

import java.io.IOException;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Collections;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.SortedMap;

import org.frisket.geometry.Outline;
import org.frisket.typography.face.Axis;
import org.frisket.typography.face.AxisSettings;
import org.frisket.typography.face.CapHeightOrigin;
import org.frisket.typography.face.CodePoints;
import org.frisket.typography.face.Embedding;
import org.frisket.typography.face.FontNames;
import org.frisket.typography.face.NamedInstance;
import org.frisket.typography.face.StyleClass;
import org.frisket.typography.internal.GlyphOutlines;
import org.frisket.typography.internal.face.CapHeight;
import org.frisket.typography.internal.face.FaceTables;
import org.frisket.typography.internal.face.FontFileReader;
import org.frisket.typography.internal.face.SfntTables;
import org.frisket.typography.internal.face.StrokeTables;
import org.frisket.typography.internal.shape.FontEngine;
import org.frisket.typography.internal.shape.HarfBuzzEngine;
import org.frisket.typography.internal.shape.RuntimeEngine;
import org.frisket.typography.internal.shape.StrokeEngine;
import org.frisket.typography.stroke.StrokeFiles;
import org.frisket.typography.stroke.StrokeFont;

/**
 * One face of a TrueType or OpenType font (outlines in {@code glyf}, {@code CFF} or {@code CFF2}) or a font of single
 * lines, read from a file or from bytes without being installed. Immutable, and safe for use by several threads.
 * <p>
 * Glyphs are measured in font units; y points down and the baseline lies at y = 0.
 */
public final class FontFace {

	/** Larger files are refused, in bytes. */
	public static final long LARGEST_FILE = 64L << 20;

	private final byte[] bytes;
	private final int index;
	private final Path source;
	private final FaceTables tables;
	private final FontNames names;
	private final AxisSettings settings;
	private final boolean harfBuzz;
	private final boolean stroke;
	private final FontEngine engine;
	private final CapHeight capHeight;
	private final GlyphOutlines outlines = new GlyphOutlines(glyph -> engine().outline(glyph));
	private volatile String digest;

	private FontFace(byte[] bytes, int index, Path source, String font, boolean harfBuzz)
			throws UnreadableFontException, IOException {
		this.bytes = bytes;
		this.index = index;
		this.source = source;
		this.harfBuzz = harfBuzz;
		stroke = false;
		tables = new SfntTables(bytes, index, font);
		names = tables.names();
		settings = AxisSettings.NONE;
		engine = harfBuzz ? HarfBuzzEngine.open(bytes, index, unitsPerEm(), settings)
				: RuntimeEngine.open(bytes, index, unitsPerEm());
		capHeight = CapHeight.of(this, tables.header().capHeight());
	}

	/** A font of single lines. */
	private FontFace(byte[] bytes, Path source, StrokeFont font) {
		this.bytes = bytes;
		this.source = source;
		index = 0;
		harfBuzz = false;
		stroke = true;
		tables = new StrokeTables(font);
		names = tables.names();
		settings = AxisSettings.NONE;
		engine = new StrokeEngine(font);
		capHeight = new CapHeight(font.capHeight(),
				engine.glyph('H') != 0 ? CapHeightOrigin.LETTER_H : CapHeightOrigin.HEADER);
	}

	/** Another point of a variable font. */
	private FontFace(FontFace plain, AxisSettings settings) {
		bytes = plain.bytes;
		index = plain.index;
		source = plain.source;
		harfBuzz = plain.harfBuzz;
		stroke = plain.stroke;
		tables = plain.tables;
		digest = plain.digest;
		this.settings = settings;
		names = tables.namesAt(settings);
		engine = HarfBuzzEngine.open(bytes, index, unitsPerEm(), settings);
		capHeight = CapHeight.of(this, tables.header().capHeight());
	}

	/** The first or only face of a font file. */
	public static FontFace read(Path file) throws UnreadableFontException {
		return read(file, 0);
	}

	/** @param index which face of a collection (.ttc), from 0 */
	public static FontFace read(Path file, int index) throws UnreadableFontException {
		byte[] bytes = FontFileReader.read(file);
		return open(bytes, index, file, file.toString(), HarfBuzzEngine.isAvailable());
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
		FontFileReader.checkSize(bytes.length, font);
		return open(bytes.clone(), index, null, font, harfBuzz);
	}

	private static FontFace open(byte[] bytes, int index, Path source, String font, boolean harfBuzz)
			throws UnreadableFontException {
		if (StrokeFiles.isStroke(bytes, font)) {
			if (index != 0) {
				throw new UnreadableFontException(font, "it holds one face only");
			}
			return new FontFace(bytes, source, StrokeTables.named(StrokeFiles.read(bytes, font), font));
		}
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

	/** Licence text as the font carries it, or the acknowledgement it asks for; often only a sentence or empty. */
	public String licence() {
		return tables.licence();
	}

	/** Web address of the licence; may be empty. */
	public String licenceAddress() {
		return tables.licenceAddress();
	}

	/**
	 * {@code fsType} of table OS/2, as far as the font has one: bits 0 to 3 are 0 installable, 2 restricted, 4 preview
	 * and print, 8 editable. It speaks of embedding in documents, not of cut outlines.
	 */
	public int embedding() {
		return tables.header().embedding();
	}

	/** What {@link #embedding()} means. */
	public Embedding embeddingTerms() {
		return Embedding.of(tables.header().embedding());
	}

	/** Tags of the OpenType features it has, in alphabetical order. */
	public List<String> features() {
		return tables.features();
	}

	/** What the font itself calls its stylistic sets and character variants, by their tags; few fonts name them. */
	public Map<String, String> featureNames() {
		return Collections.unmodifiableMap(tables.featureNames());
	}

	/** By what it can be varied; empty unless it is a variable font. */
	public List<Axis> axes() {
		return tables.variations().axes();
	}

	/** The styles its maker has set up; empty unless it is a variable font. */
	public List<NamedInstance> instances() {
		return tables.variations().instances();
	}

	/** A value for every axis; empty for the plain face. */
	public AxisSettings settings() {
		return settings;
	}

	/** Whether this face has axes and can be varied on this platform. */
	public boolean canVary() {
		return harfBuzz && !tables.variations().axes().isEmpty();
	}

	/**
	 * The same font at other values of its axes; values beyond an axis's range are taken to its end, and what is said
	 * of axes that it lacks has no effect. A face that {@linkplain #canVary() cannot vary} stays as it is. Its style is
	 * that of the named instance that has just these values, if there is one.
	 */
	public FontFace at(AxisSettings wanted) {
		AxisSettings all = tables.settingsAt(wanted);
		boolean same = all.equals(settings) || settings.isEmpty() && all.equals(tables.settingsAt(AxisSettings.NONE));
		return !canVary() || same ? this : new FontFace(this, all);
	}

	/** Weight, width and slant as the font gives them; of a varied face, as its axes have them. */
	public StyleClass styleClass() {
		return settings.isEmpty() ? tables.style() : tables.style().at(settings);
	}

	/** The characters it has glyphs for. */
	public CodePoints codePoints() {
		return tables.codePoints();
	}

	/** The characters that each glyph stands for by itself, ascending; glyphs without any are not among the keys. */
	public SortedMap<Integer, List<Integer>> charactersOfGlyphs() {
		return tables.charactersOfGlyphs();
	}

	/** The name of every glyph in the order of their numbers; a missing one is empty. */
	public List<String> glyphNames() {
		return tables.glyphNames();
	}

	public int unitsPerEm() {
		return tables.header().unitsPerEm();
	}

	public int glyphCount() {
		return tables.header().glyphCount();
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

	public static String digest(byte[] bytes) {
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

	/** Whether its letters are lines for a pen: contours that may be open and are never to be cut. */
	public boolean isStroke() {
		return stroke;
	}

	/**
	 * A glyph's outline in font units, quadratic curves as their exact cubic; all contours closed, unless it is a
	 * {@linkplain #isStroke() stroke font}. Empty for blank glyphs and for numbers beyond the last glyph.
	 */
	public Outline outline(int glyph) {
		return glyph < 0 || glyph >= glyphCount() ? Outline.EMPTY
				: outlines.of(glyph);
	}

	/**
	 * The same in mm; equal calls give the same object as long as it is kept.
	 *
	 * @param scale mm for a font unit
	 */
	Outline outline(int glyph, double scale) {
		return glyph < 0 || glyph >= glyphCount() ? Outline.EMPTY : outlines.of(glyph, scale);
	}

	/** By how much a glyph moves the pen on in a line across, in font units; 0 for numbers beyond the last glyph. */
	public double advance(int glyph) {
		return glyph < 0 || glyph >= glyphCount() ? 0 : engine.advance(glyph);
	}

	/**
	 * Height of a capital H in font units, measured over its whole outline; {@link #capHeightOrigin()} tells what it
	 * was taken from when the font has no H.
	 */
	public double capHeight() {
		return capHeight.height();
	}

	/** Height of a small x in font units, measured over its whole outline; 0 if the font has none. */
	public double xHeight() {
		return covers('x') ? outline(glyph('x')).bounds().height() : 0;
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
