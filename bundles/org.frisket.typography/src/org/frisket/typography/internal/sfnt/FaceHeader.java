package org.frisket.typography.internal.sfnt;

import java.io.IOException;
import java.nio.ByteBuffer;

import org.frisket.typography.UnreadableFontException;

/**
 * The figures of a face that everything else relies on, checked against each other and against the lengths of the
 * tables.
 *
 * @param capHeight the font's own claim in font units, 0 if it makes none
 * @param embedding {@code fsType} of table OS/2, 0 (no restriction) if absent
 */
public record FaceHeader(int unitsPerEm, int glyphCount, int capHeight, int embedding) {

	private static final int MAGIC = 0x5F0F3CF5;

	public static FaceHeader read(TableDirectory tables, String font) throws UnreadableFontException, IOException {
		ByteBuffer head = tables.table("head", 54);
		if (head.getInt(12) != MAGIC) {
			throw new UnreadableFontException(font, "table 'head' is damaged");
		}
		int unitsPerEm = Short.toUnsignedInt(head.getShort(18));
		if (unitsPerEm < 16 || unitsPerEm > 16384) {
			throw new UnreadableFontException(font, "it has " + unitsPerEm
					+ " units per em, where 16 to 16384 are allowed");
		}
		int glyphCount = Short.toUnsignedInt(tables.table("maxp", 6).getShort(4));
		if (glyphCount == 0) {
			throw new UnreadableFontException(font, "it holds no glyphs");
		}
		checkAdvances(tables, font);
		if (tables.has("glyf")) {
			checkLocations(tables, glyphCount, head.getShort(50) != 0, font);
		} else if (tables.has("CFF ") && tables.table("CFF ", 4).get(0) != 1) {
			throw new UnreadableFontException(font, "table 'CFF ' is damaged");
		}
		return new FaceHeader(unitsPerEm, glyphCount, capHeight(tables), embedding(tables));
	}

	private static void checkAdvances(TableDirectory tables, String font)
			throws UnreadableFontException, IOException {
		int advances = Short.toUnsignedInt(tables.table("hhea", 36).getShort(34));
		if (advances == 0 || tables.length("hmtx") < 4L * advances) {
			throw new UnreadableFontException(font, "table 'hmtx' has " + tables.length("hmtx")
					+ " bytes for the advances of " + advances + " glyphs");
		}
	}

	private static void checkLocations(TableDirectory tables, int glyphCount, boolean wide, String font)
			throws UnreadableFontException, IOException {
		ByteBuffer loca = tables.table("loca", (glyphCount + 1) * (wide ? 4 : 2));
		long size = tables.length("glyf");
		long before = 0;
		for (int i = 0; i <= glyphCount; i++) {
			long offset = wide ? Integer.toUnsignedLong(loca.getInt(4 * i))
					: 2L * Short.toUnsignedInt(loca.getShort(2 * i));
			if (offset < before || offset > size) {
				throw new UnreadableFontException(font, "the outline of glyph " + Math.max(0, i - 1)
						+ " lies outside table 'glyf'");
			}
			before = offset;
		}
	}

	private static int capHeight(TableDirectory tables) throws UnreadableFontException, IOException {
		if (tables.length("OS/2") < 90) {
			return 0;
		}
		ByteBuffer table = tables.table("OS/2", 90);
		return table.getShort(0) >= 2 ? Math.max(0, table.getShort(88)) : 0;
	}

	private static int embedding(TableDirectory tables) throws UnreadableFontException, IOException {
		return tables.length("OS/2") < 10 ? 0 : Short.toUnsignedInt(tables.table("OS/2", 10).getShort(8));
	}
}
