package org.frisket.typography.internal.sfnt;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.TreeSet;

import org.frisket.typography.UnreadableFontException;

/** The tags in the feature lists of tables GSUB and GPOS (ISO/IEC 14496-22), whatever their script and language. */
public final class LayoutFeatures {

	private LayoutFeatures() {
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
