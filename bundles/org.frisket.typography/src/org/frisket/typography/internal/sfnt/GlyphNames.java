package org.frisket.typography.internal.sfnt;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

import org.frisket.typography.UnreadableFontException;

/**
 * The names of a face's glyphs, from table {@code post} (formats 1 and 2) or, for CFF outlines, from its charset.
 * Many fonts have none.
 */
public final class GlyphNames {

	private static final int OF_MACINTOSH = 258;
	private static final int LONGEST = 63;

	private GlyphNames() {
	}

	/** One for every glyph; a missing name is empty. */
	public static List<String> read(TableDirectory tables, int glyphs) throws UnreadableFontException, IOException {
		String[] names = new String[glyphs];
		Arrays.fill(names, "");
		try {
			if (tables.length("post") >= 34 && tables.table("post", 34).getInt(0) == 0x20000) {
				readPost(tables.table("post", 34), names);
			} else if (tables.length("post") >= 4 && tables.table("post", 4).getInt(0) == 0x10000) {
				for (int i = 0; i < Math.min(glyphs, OF_MACINTOSH); i++) {
					names[i] = StandardNames.macintosh(i);
				}
			} else if (tables.has("CFF ")) {
				CffCharset.read(tables.table("CFF ", 4), names);
			}
		} catch (IndexOutOfBoundsException cutOff) {
			// the names before it are as good as they are
			return List.of(names);
		}
		return List.of(names);
	}

	private static void readPost(ByteBuffer table, String[] names) {
		int count = Short.toUnsignedInt(table.getShort(32));
		int at = 34 + 2 * count;
		List<String> own = new ArrayList<>();
		while (at < table.limit()) {
			int length = Byte.toUnsignedInt(table.get(at));
			if (at + 1 + length > table.limit()) {
				break;
			}
			own.add(text(table, at + 1, length));
			at += 1 + length;
		}
		for (int i = 0; i < Math.min(count, names.length); i++) {
			int number = Short.toUnsignedInt(table.getShort(34 + 2 * i));
			if (number < OF_MACINTOSH) {
				names[i] = StandardNames.macintosh(number);
			} else if (number - OF_MACINTOSH < own.size()) {
				names[i] = own.get(number - OF_MACINTOSH);
			}
		}
	}

	/** Names are printable ASCII; anything else in them is damage. */
	static String text(ByteBuffer table, int at, int length) {
		byte[] bytes = new byte[Math.min(LONGEST, length)];
		table.get(at, bytes);
		return new String(bytes, StandardCharsets.ISO_8859_1).replaceAll("[^!-~]", "?");
	}
}
