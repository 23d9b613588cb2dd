package org.frisket.typography.internal.sfnt;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;

import org.frisket.typography.UnreadableFontException;

/** The tags and names in the feature lists of tables GSUB and GPOS (ISO/IEC 14496-22), whatever their script and language. */
public final class LayoutFeatures {

	private LayoutFeatures() {
	}

	/**
	 * The names that the font itself gives its stylistic sets and character variants, in English where it has several
	 * languages, by their tags. They are named by the feature parameters of GSUB (OpenType specification 1.9, "ss01 -
	 * ss20" and "cv01 - cv99"): a version or format, and the number of a string of table name. Where the font names a
	 * feature of one tag several times, the first name counts; what leads out of the table is passed over.
	 */
	public static SortedMap<String, String> names(TableDirectory tables) throws UnreadableFontException, IOException {
		SortedMap<String, String> names = new TreeMap<>();
		if (tables.length("GSUB") < 10) {
			return names;
		}
		ByteBuffer table = tables.table("GSUB", 10);
		NameTable texts = NameTable.read(tables);
		int list = unsigned(table, 6);
		int count = unsigned(table, list);
		for (int i = 0; i < count && list + 8 + 6 * i <= table.limit(); i++) {
			int record = list + 2 + 6 * i;
			byte[] tag = new byte[4];
			table.get(record, tag);
			String feature = new String(tag, StandardCharsets.ISO_8859_1);
			int at = list + unsigned(table, record + 4);
			int parameters = unsigned(table, at);
			int id = parameters == 0 || !feature.matches("(ss|cv)\\d\\d") ? 0 : unsigned(table, at + parameters + 2);
			String name = id == 0 ? "" : texts.text(id);
			if (!name.isEmpty()) {
				names.putIfAbsent(feature, name);
			}
		}
		return names;
	}

	/** 0 beyond the end, which stands for nothing wherever it is read here. */
	private static int unsigned(ByteBuffer table, int at) {
		return at + 2 <= table.limit() ? Short.toUnsignedInt(table.getShort(at)) : 0;
	}

	/** In alphabetical order; of a damaged table as far as it goes. */
	public static List<String> read(TableDirectory tables) throws UnreadableFontException, IOException {
		TreeSet<String> tags = new TreeSet<>();
		for (String name : List.of("GSUB", "GPOS")) {
			if (tables.length(name) >= 10) {
				ByteBuffer table = tables.table(name, 10);
				int at = Short.toUnsignedInt(table.getShort(6));
				int count = at + 2 <= table.limit() ? Short.toUnsignedInt(table.getShort(at)) : 0;
				for (int i = 0; i < count && at + 8 + 6 * i <= table.limit(); i++) {
					byte[] tag = new byte[4];
					table.get(at + 2 + 6 * i, tag);
					tags.add(new String(tag, StandardCharsets.ISO_8859_1));
				}
			}
		}
		tags.removeIf(tag -> !tag.matches("[A-Za-z0-9]{4}"));
		return List.copyOf(tags);
	}
}
