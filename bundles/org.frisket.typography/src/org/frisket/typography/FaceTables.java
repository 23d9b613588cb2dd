package org.frisket.typography;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

import org.frisket.typography.internal.sfnt.ByteSource;
import org.frisket.typography.internal.sfnt.CharacterMap;
import org.frisket.typography.internal.sfnt.FaceHeader;
import org.frisket.typography.internal.sfnt.GlyphNames;
import org.frisket.typography.internal.sfnt.LayoutFeatures;
import org.frisket.typography.internal.sfnt.NameTable;
import org.frisket.typography.internal.sfnt.StyleFigures;
import org.frisket.typography.internal.sfnt.TableDirectory;
import org.frisket.typography.internal.sfnt.Variations;

/** What the tables of a face say. The header has been checked; long lists are read when asked for. */
final class FaceTables {

	private final TableDirectory tables;
	private final FaceHeader header;
	private final FontNames names;
	private final String licence;
	private final String licenceAddress;
	private final StyleFigures style;
	private final Variations variations;

	/** @param font name for messages, and family of a font that does not say */
	FaceTables(byte[] bytes, int index, String font) throws UnreadableFontException, IOException {
		tables = TableDirectory.read(ByteSource.of(bytes), index, font);
		NameTable nameTable = NameTable.read(tables);
		header = FaceHeader.read(tables, font);
		names = nameTable.fontNames(stem(font));
		licence = nameTable.licence();
		licenceAddress = nameTable.licenceAddress();
		style = StyleFigures.read(tables);
		variations = Variations.read(tables, nameTable);
	}

	private static String stem(String font) {
		String file = font.substring(Math.max(font.lastIndexOf('/'), font.lastIndexOf('\\')) + 1);
		int dot = file.lastIndexOf('.');
		return dot > 0 ? file.substring(0, dot) : file;
	}

	FaceHeader header() {
		return header;
	}

	FontNames names() {
		return names;
	}

	String licence() {
		return licence;
	}

	String licenceAddress() {
		return licenceAddress;
	}

	StyleClass style() {
		return new StyleClass(style.weight(), style.width(), style.italic());
	}

	Variations variations() {
		return variations;
	}

	/** A value for every axis, those that are not wanted otherwise at their normal value. */
	AxisSettings settingsAt(AxisSettings wanted) {
		TreeMap<String, Double> all = new TreeMap<>();
		for (Axis axis : variations.axes()) {
			all.put(axis.tag(), axis.clamped(wanted.values().getOrDefault(axis.tag(), axis.normal())));
		}
		return new AxisSettings(all);
	}

	/** The names of the named instance that has just these values, if there is one, else those of the plain face. */
	FontNames namesAt(AxisSettings settings) {
		return variations.instances().stream().filter(i -> settingsAt(i.settings()).equals(settings)).findFirst()
				.map(names::ofInstance).orElse(names);
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

	List<String> features() {
		return read(() -> LayoutFeatures.read(tables));
	}

	List<String> glyphNames() {
		return read(() -> GlyphNames.read(tables, header.glyphCount()));
	}

	CodePoints codePoints() {
		return read(() -> CharacterMap.read(tables)).codePoints();
	}

	SortedMap<Integer, List<Integer>> charactersOfGlyphs() {
		SortedMap<Integer, List<Integer>> characters = new TreeMap<>();
		read(() -> CharacterMap.read(tables)).visit((codePoint, glyph) -> {
			if (glyph < header.glyphCount()) {
				characters.computeIfAbsent(glyph, g -> new ArrayList<>()).add(codePoint);
			}
		});
		return characters;
	}
}
