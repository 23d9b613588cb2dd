package org.frisket.typography.internal.face;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

import org.frisket.typography.UnreadableFontException;
import org.frisket.typography.face.CodePoints;
import org.frisket.typography.face.FontNames;
import org.frisket.typography.face.StyleClass;
import org.frisket.typography.internal.sfnt.ByteSource;
import org.frisket.typography.internal.sfnt.CharacterMap;
import org.frisket.typography.internal.sfnt.FaceHeader;
import org.frisket.typography.internal.sfnt.GlyphNames;
import org.frisket.typography.internal.sfnt.LayoutFeatures;
import org.frisket.typography.internal.sfnt.NameTable;
import org.frisket.typography.internal.sfnt.StyleFigures;
import org.frisket.typography.internal.sfnt.TableDirectory;
import org.frisket.typography.internal.sfnt.Variations;

/** The tables of a TrueType or OpenType face. The header has been checked; long lists are read when asked for. */
public final class SfntTables implements FaceTables {

	private final TableDirectory tables;
	private final FaceHeader header;
	private final FontNames names;
	private final String licence;
	private final String licenceAddress;
	private final StyleFigures style;
	private final Variations variations;

	/** @param font name for messages, and family of a font that does not say */
	public SfntTables(byte[] bytes, int index, String font) throws UnreadableFontException, IOException {
		tables = TableDirectory.read(ByteSource.of(bytes), index, font);
		NameTable nameTable = NameTable.read(tables);
		header = FaceHeader.read(tables, font);
		names = nameTable.fontNames(FaceTables.stem(font));
		licence = nameTable.licence();
		licenceAddress = nameTable.licenceAddress();
		style = StyleFigures.read(tables);
		variations = Variations.read(tables, nameTable);
	}

	@Override
	public FaceHeader header() {
		return header;
	}

	@Override
	public FontNames names() {
		return names;
	}

	@Override
	public String licence() {
		return licence;
	}

	@Override
	public String licenceAddress() {
		return licenceAddress;
	}

	@Override
	public StyleClass style() {
		return new StyleClass(style.weight(), style.width(), style.italic());
	}

	@Override
	public Variations variations() {
		return variations;
	}

	/** Something long that is read from the tables. */
	private interface Reading<T> {
		T read() throws UnreadableFontException, IOException;
	}

	private static <T> T read(Reading<T> reading) {
		try {
			return reading.read();
		} catch (UnreadableFontException | IOException never) {
			throw new IllegalStateException("tables were there when the face was read", never);
		}
	}

	@Override
	public List<String> features() {
		return read(() -> LayoutFeatures.read(tables));
	}

	@Override
	public SortedMap<String, String> featureNames() {
		return read(() -> LayoutFeatures.names(tables));
	}

	@Override
	public List<String> glyphNames() {
		return read(() -> GlyphNames.read(tables, header.glyphCount()));
	}

	@Override
	public CodePoints codePoints() {
		return read(() -> CharacterMap.read(tables)).codePoints();
	}

	@Override
	public SortedMap<Integer, List<Integer>> charactersOfGlyphs() {
		SortedMap<Integer, List<Integer>> characters = new TreeMap<>();
		read(() -> CharacterMap.read(tables)).visit((codePoint, glyph) -> {
			if (glyph < header.glyphCount()) {
				characters.computeIfAbsent(glyph, g -> new ArrayList<>()).add(codePoint);
			}
		});
		return characters;
	}
}
