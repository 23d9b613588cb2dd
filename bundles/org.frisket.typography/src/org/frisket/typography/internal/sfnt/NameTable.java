package org.frisket.typography.internal.sfnt;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.TreeMap;
import java.util.Map;

import org.frisket.typography.UnreadableFontException;
import org.frisket.typography.face.FontNames;

/** Strings of table {@code name}; English ones where the font has several languages. */
public final class NameTable {

	private static final int FAMILY = 1;
	private static final int STYLE = 2;
	private static final int FULL_NAME = 4;
	private static final int POST_SCRIPT_NAME = 6;
	private static final int LICENCE = 13;
	private static final int LICENCE_ADDRESS = 14;
	private static final int TYPOGRAPHIC_FAMILY = 16;
	private static final int TYPOGRAPHIC_STYLE = 17;

	private static final int MACINTOSH = 1;
	private static final int WINDOWS = 3;
	private static final int ENGLISH_US = 0x409;
	private static final int LONGEST_NAME = 200;

	private record Entry(int rank, String text) {
	}

	private final Map<Integer, Entry> entries = new TreeMap<>();

	private NameTable() {
	}

	/** Damaged entries are left out; a font without the table has no names. */
	public static NameTable read(TableDirectory tables) throws UnreadableFontException, IOException {
		NameTable names = new NameTable();
		if (tables.length("name") >= 6) {
			ByteBuffer table = tables.table("name", 6);
			int count = Short.toUnsignedInt(table.getShort(2));
			int texts = Short.toUnsignedInt(table.getShort(4));
			for (int at = 6; count > 0 && at + 12 <= table.limit(); at += 12, count--) {
				names.add(table, at, texts);
			}
		}
		return names;
	}

	private void add(ByteBuffer table, int at, int texts) {
		int platform = Short.toUnsignedInt(table.getShort(at));
		int encoding = Short.toUnsignedInt(table.getShort(at + 2));
		int language = Short.toUnsignedInt(table.getShort(at + 4));
		int id = Short.toUnsignedInt(table.getShort(at + 6));
		int length = Short.toUnsignedInt(table.getShort(at + 8));
		int offset = texts + Short.toUnsignedInt(table.getShort(at + 10));
		int rank = rank(platform, encoding, language);
		if (rank < 0 || offset + length > table.limit() ) {
			return;
		}
		Entry known = entries.get(id);
		if (known == null || known.rank() < rank) {
			byte[] bytes = new byte[length];
			table.get(offset, bytes);
			String text = new String(bytes, charset(platform)).strip();
			if (!text.isEmpty()) {
				entries.put(id, new Entry(rank, text));
			}
		}
	}

	/** The higher the better; negative for an encoding that is not read. */
	private static int rank(int platform, int encoding, int language) {
		return switch (platform) {
		case WINDOWS -> encoding > 1 && encoding != 10 ? -1 : windowsRank(language);
		case 0 -> 2;
		case MACINTOSH -> encoding == 0 && language == 0 ? 1 : -1;
		default -> -1;
		};
	}

	private static int windowsRank(int language) {
		boolean english = (language & 0xff) == (ENGLISH_US & 0xff);
		return language == ENGLISH_US ? 4 : english ? 3 : 0;
	}

	/** Macintosh names are read as Latin-1: the two differ outside ASCII only, where names seldom go. */
	private static Charset charset(int platform) {
		return platform == MACINTOSH ? StandardCharsets.ISO_8859_1 : StandardCharsets.UTF_16BE;
	}

	/** @param fallback family of a font that does not say, usually its file's name */
	public FontNames fontNames(String fallback) {
		String family = name(TYPOGRAPHIC_FAMILY, name(FAMILY, fallback));
		String style = name(TYPOGRAPHIC_STYLE, name(STYLE, ""));
		String full = name(FULL_NAME, style.isEmpty() ? family : family + " " + style);
		return new FontNames(family, style, full, name(POST_SCRIPT_NAME, ""));
	}

	/** Text of the licence as the font carries it; empty if it does not. */
	public String licence() {
		return text(LICENCE, "");
	}

	/** Web address of the licence; empty if the font has none. */
	public String licenceAddress() {
		return text(LICENCE_ADDRESS, "");
	}

	/** Any string by its identifier, such as the name of an axis; empty if the font has none. */
	public String text(int id) {
		return name(id, "");
	}

	private String name(int id, String otherwise) {
		String text = text(id, otherwise).replaceAll("\\p{Cntrl}", " ").strip();
		return text.length() > LONGEST_NAME ? text.substring(0, LONGEST_NAME) : text;
	}

	private String text(int id, String otherwise) {
		Entry entry = entries.get(id);
		return entry == null ? otherwise : entry.text();
	}
}
