package org.frisket.typography.internal.sfnt;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.util.BitSet;

import org.frisket.typography.UnreadableFontException;
import org.frisket.typography.face.CodePoints;

/**
 * Which characters a face has glyphs for, and which: table {@code cmap} in its Unicode forms (formats 0, 4, 6, 12 and
 * 13 of ISO/IEC 14496-22). Of several the fullest is taken. Damaged parts count as empty.
 */
public final class CharacterMap {

	private static final int LAST = Character.MAX_CODE_POINT;
	private static final int MOST_GLYPHS = 0xFFFF;

	/** Told of every character and its glyph, which is never 0. */
	public interface Visitor {
		void pair(int codePoint, int glyph);
	}

	private final ByteBuffer table;
	private final int start;
	private final int format;
	private final boolean symbols;

	private CharacterMap(ByteBuffer table, int start, int format, boolean symbols) {
		this.table = table;
		this.start = start;
		this.format = format;
		this.symbols = symbols;
	}

	/** An empty map if the font has none that is read. */
	public static CharacterMap read(TableDirectory tables) throws UnreadableFontException, IOException {
		ByteBuffer table = tables.table("cmap", 4);
		CharacterMap best = new CharacterMap(table, 0, -1, false);
		int bestRank = 0;
		int count = Short.toUnsignedInt(table.getShort(2));
		for (int at = 4; count > 0 && at + 8 <= table.limit(); at += 8, count--) {
			int platform = Short.toUnsignedInt(table.getShort(at));
			int encoding = Short.toUnsignedInt(table.getShort(at + 2));
			long offset = Integer.toUnsignedLong(table.getInt(at + 4));
			int rank = rank(platform, encoding);
			if (rank > bestRank && offset + 6 <= table.limit() && isRead(table.getShort((int) offset))) {
				bestRank = rank;
				best = new CharacterMap(table, (int) offset, table.getShort((int) offset),
						platform == 3 && encoding == 0);
			}
		}
		return best;
	}

	private static boolean isRead(int format) {
		return format == 0 || format == 4 || format == 6 || format == 12 || format == 13;
	}

	private static int rank(int platform, int encoding) {
		if (platform == 3) {
			return encoding == 10 ? 6 : encoding == 1 ? 4 : encoding == 0 ? 2 : 0;
		}
		if (platform == 0) {
			// encoding 5 is for variation sequences and holds no characters by themselves
			return encoding == 4 || encoding == 6 ? 5 : encoding == 5 ? 0 : 3;
		}
		return platform == 1 && encoding == 0 ? 1 : 0;
	}

	/** All pairs in ascending order of the characters. */
	public void visit(Visitor visitor) {
		try {
			switch (format) {
			case 0 -> visitBytes(visitor);
			case 4 -> visitSegments(visitor);
			case 6 -> visitTrimmed(visitor);
			case 12, 13 -> visitGroups(visitor, format == 12);
			default -> {
				// no map at all
			}
			}
		} catch (IndexOutOfBoundsException cutOff) {
			// what came before it counts
			return;
		}
	}

	public CodePoints codePoints() {
		BitSet found = new BitSet();
		visit((codePoint, glyph) -> found.set(codePoint));
		return CodePoints.of(found);
	}

	private int u16(int at) {
		return Short.toUnsignedInt(table.getShort(start + at));
	}

	private void hand(Visitor visitor, int codePoint, int glyph) {
		if (glyph > 0 && glyph <= MOST_GLYPHS && codePoint <= LAST) {
			// symbol fonts keep their glyphs in the private use area, and are asked for by plain characters as well
			visitor.pair(symbols && codePoint >= 0xF000 && codePoint <= 0xF0FF ? codePoint - 0xF000 : codePoint, glyph);
		}
	}

	private void visitBytes(Visitor visitor) {
		// Macintosh Roman is the same as ASCII up to here, beyond it characters would be others
		for (int c = 0; c < 0x80; c++) {
			hand(visitor, c, Byte.toUnsignedInt(table.get(start + 6 + c)));
		}
	}

	private void visitTrimmed(Visitor visitor) {
		int first = u16(6);
		int count = u16(8);
		for (int i = 0; i < count; i++) {
			hand(visitor, first + i, u16(10 + 2 * i));
		}
	}

	private void visitSegments(Visitor visitor) {
		int doubled = u16(6) & ~1;
		int ends = 14;
		int starts = ends + doubled + 2;
		int deltas = starts + doubled;
		int offsets = deltas + doubled;
		int next = 0;
		for (int i = 0; i < doubled; i += 2) {
			int to = u16(ends + i);
			int offset = u16(offsets + i);
			// segments ascend; one that does not is damaged, and must not make the loop long
			for (int c = Math.max(next, u16(starts + i)); c <= to && c < 0xFFFF; c++) {
				int glyph = offset == 0 ? c : u16(offsets + i + offset + 2 * (c - u16(starts + i)));
				if (glyph != 0) {
					hand(visitor, c, glyph + u16(deltas + i) & 0xFFFF);
				}
			}
			next = Math.max(next, to + 1);
		}
	}

	private void visitGroups(Visitor visitor, boolean ascending) {
		long groups = Integer.toUnsignedLong(table.getInt(start + 12));
		long next = 0;
		for (long i = 0, at = start + 16; i < groups && at + 12 <= table.limit(); i++, at += 12) {
			long from = Integer.toUnsignedLong(table.getInt((int) at));
			long to = Math.min(LAST, Integer.toUnsignedLong(table.getInt((int) at + 4)));
			long glyph = Integer.toUnsignedLong(table.getInt((int) at + 8));
			for (long c = Math.max(next, from); c <= to; c++) {
				hand(visitor, (int) c, (int) Math.min(Integer.MAX_VALUE, ascending ? glyph + c - from : glyph));
			}
			next = Math.max(next, to + 1);
		}
	}
}
