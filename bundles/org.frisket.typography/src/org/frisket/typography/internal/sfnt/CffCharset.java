package org.frisket.typography.internal.sfnt;

import java.nio.ByteBuffer;

/**
 * Glyph names of a CFF table, version 1 (Adobe Technical Note 5176: INDEX in section 5, Top DICT in 9, charsets in
 * 13, standard strings in appendix A).
 */
final class CffCharset {

	private static final int CHARSET = 15;
	private static final int ESCAPE = 12;
	/** The operator ROS, two bytes, tells that glyphs have numbers instead of names. */
	private static final int BY_NUMBER = 30;

	private final ByteBuffer table;
	private int stringsAt;

	private CffCharset(ByteBuffer table) {
		this.table = table;
	}

	/** Fills in the names there are. @throws IndexOutOfBoundsException if the table is cut off */
	static void read(ByteBuffer table, String[] names) {
		new CffCharset(table).read(names);
	}

	private void read(String[] names) {
		int topDicts = end(u8(2));
		int strings = end(topDicts);
		stringsAt = strings;
		int charset = charset(element(topDicts, 0), element(topDicts, 1));
		if (charset < 0 || names.length == 0) {
			return;
		}
		names[0] = ".notdef";
		if (charset <= 2) {
			// the predefined ISOAdobe charset numbers its strings in order; the Expert ones are of no use here
			for (int i = 1; charset == 0 && i < Math.min(names.length, 229); i++) {
				names[i] = StandardNames.cff(i);
			}
			return;
		}
		int format = u8(charset);
		if (format == 0) {
			for (int i = 1; i < names.length; i++) {
				names[i] = string(u16(charset + 1 + 2 * (i - 1)));
			}
			return;
		}
		int step = format == 1 ? 3 : 4;
		for (int i = 1, at = charset + 1; i < names.length; at += step) {
			int first = u16(at);
			int left = format == 1 ? u8(at + 2) : u16(at + 2);
			for (int k = 0; k <= left && i < names.length; k++) {
				names[i++] = string(first + k);
			}
		}
	}

	/** Offset of the charset, -1 if glyphs have no names. */
	private int charset(int from, int to) {
		int charset = 0;
		int operand = 0;
		for (int at = from; at < to;) {
			int b = u8(at++);
			if (b == ESCAPE) {
				if (u8(at++) == BY_NUMBER) {
					return -1;
				}
			} else if (b <= 21) {
				charset = b == CHARSET ? operand : charset;
			} else if (b == 28) {
				operand = table.getShort(at);
				at += 2;
			} else if (b == 29) {
				operand = table.getInt(at);
				at += 4;
			} else if (b == 30) {
				while ((u8(at) & 0xF) != 0xF && u8(at) >> 4 != 0xF) {
					at++;
				}
				at++;
			} else if (b >= 32 && b <= 246) {
				operand = b - 139;
			} else if (b >= 247 && b <= 254) {
				int next = u8(at++);
				operand = b <= 250 ? (b - 247) * 256 + next + 108 : -(b - 251) * 256 - next - 108;
			}
		}
		return charset;
	}

	private String string(int number) {
		if (number < StandardNames.CFF_COUNT) {
			return StandardNames.cff(number);
		}
		int i = number - StandardNames.CFF_COUNT;
		if (i >= u16(stringsAt)) {
			return "";
		}
		int from = element(stringsAt, i);
		int to = element(stringsAt, i + 1);
		return from < 0 || to < from ? "" : GlyphNames.text(table, from, to - from);
	}

	/** Where element {@code i} of the INDEX at {@code at} begins. */
	private int element(int at, int i) {
		int count = u16(at);
		int size = u8(at + 2);
		int offset = 0;
		for (int k = 0; k < size; k++) {
			offset = offset << 8 | u8(at + 3 + i * size + k);
		}
		return at + 2 + (count + 1) * size + offset;
	}

	/** Where the INDEX at {@code at} ends. */
	private int end(int at) {
		int count = u16(at);
		return count == 0 ? at + 2 : element(at, count);
	}

	private int u8(int at) {
		return Byte.toUnsignedInt(table.get(at));
	}

	private int u16(int at) {
		return Short.toUnsignedInt(table.getShort(at));
	}
}
