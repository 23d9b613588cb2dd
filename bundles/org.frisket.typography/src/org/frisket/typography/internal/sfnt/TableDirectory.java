package org.frisket.typography.internal.sfnt;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

import org.frisket.typography.UnreadableFontException;

/** Which tables a face has and where; every one lies within the file. */
public final class TableDirectory {

	private static final int TRUE_TYPE = 0x00010000;
	private static final int CFF_FLAVOUR = tag("OTTO");
	private static final int TRUE_TYPE_OF_OLD = tag("true");
	private static final int COLLECTION = tag("ttcf");
	private static final int MOST_FACES = 1024;
	private static final List<String> REQUIRED = List.of("cmap", "head", "hhea", "hmtx", "maxp");

	private record Place(long offset, long length) {
	}

	private final ByteSource source;
	private final String font;
	private final Map<String, Place> places;

	private TableDirectory(ByteSource source, String font, Map<String, Place> places) {
		this.source = source;
		this.font = font;
		this.places = places;
	}

	/** How many faces the file holds: 1, or more in a collection. */
	public static int faces(ByteSource source, String font) throws UnreadableFontException, IOException {
		if (signature(source, font) != COLLECTION) {
			return 1;
		}
		int faces = source.read(8, 4).getInt();
		if (faces < 1 || faces > MOST_FACES) {
			throw new UnreadableFontException(font, "it claims to be a collection of "
					+ Integer.toUnsignedString(faces) + " fonts");
		}
		if (12 + 4L * faces > source.size()) {
			throw new UnreadableFontException(font, "it is cut off in the list of its " + faces + " fonts");
		}
		return faces;
	}

	/**
	 * @param index which face of a collection, from 0; must be 0 for a plain font file
	 * @param font  name for messages
	 */
	public static TableDirectory read(ByteSource source, int index, String font)
			throws UnreadableFontException, IOException {
		int faces = faces(source, font);
		if (index < 0 || index >= faces) {
			throw new UnreadableFontException(font, "it holds no face number " + index + ", only " + faces);
		}
		long start = signature(source, font) == COLLECTION
				? Integer.toUnsignedLong(source.read(12 + 4L * index, 4).getInt()) : 0;
		TableDirectory directory = new TableDirectory(source, font, readPlaces(source, start, font));
		directory.requireTables();
		return directory;
	}

	private static int signature(ByteSource source, String font) throws UnreadableFontException, IOException {
		if (source.size() == 0) {
			throw new UnreadableFontException(font, "it is empty");
		}
		if (source.size() < 12) {
			throw new UnreadableFontException(font, "it is not a font (" + source.size() + " bytes only)");
		}
		int signature = source.read(0, 4).getInt();
		if (signature == tag("wOFF") || signature == tag("wOF2")) {
			throw new UnreadableFontException(font, "it is a packed web font (WOFF); use its .ttf or .otf file");
		}
		if (signature == tag("%!PS") || signature >>> 16 == 0x8001) {
			throw new UnreadableFontException(font, "it is a Type 1 font; use a .ttf or .otf file");
		}
		if (signature != COLLECTION && !isFace(signature)) {
			throw new UnreadableFontException(font, "it is not a TrueType or OpenType font");
		}
		return signature;
	}

	private static boolean isFace(int signature) {
		return signature == TRUE_TYPE || signature == CFF_FLAVOUR || signature == TRUE_TYPE_OF_OLD;
	}

	private static Map<String, Place> readPlaces(ByteSource source, long start, String font)
			throws UnreadableFontException, IOException {
		if (start + 12 > source.size()) {
			throw new UnreadableFontException(font, "it is cut off before its table directory");
		}
		ByteBuffer header = source.read(start, 12);
		if (!isFace(header.getInt(0))) {
			throw new UnreadableFontException(font, "a face of the collection is not a font");
		}
		int count = Short.toUnsignedInt(header.getShort(4));
		if (start + 12 + 16L * count > source.size()) {
			throw new UnreadableFontException(font, "it is cut off in its directory of " + count + " tables");
		}
		ByteBuffer entries = source.read(start + 12, 16 * count);
		Map<String, Place> places = new TreeMap<>();
		for (int i = 0; i < count; i++) {
			byte[] tag = new byte[4];
			entries.get(16 * i, tag);
			String name = new String(tag, StandardCharsets.ISO_8859_1);
			long offset = Integer.toUnsignedLong(entries.getInt(16 * i + 8));
			long length = Integer.toUnsignedLong(entries.getInt(16 * i + 12));
			if (offset + length > source.size()) {
				throw new UnreadableFontException(font, "it is cut off or damaged: table " + printable(name)
						+ " should end at byte " + (offset + length) + ", but there are " + source.size());
			}
			places.putIfAbsent(name, new Place(offset, length));
		}
		return places;
	}

	private static String printable(String tag) {
		return "'" + tag.replaceAll("[^ -~]", "?") + "'";
	}

	private void requireTables() throws UnreadableFontException {
		for (String tag : REQUIRED) {
			if (!has(tag)) {
				throw new UnreadableFontException(font, "table '" + tag + "' is missing");
			}
		}
		if (!has("CFF ") && !has("CFF2") && !has("glyf")) {
			throw new UnreadableFontException(font, "it holds no outlines (pictures of letters only)");
		}
	}

	public boolean has(String tag) {
		return places.containsKey(tag);
	}

	/** Length of a table in bytes, 0 if there is none. */
	public long length(String tag) {
		return has(tag) ? places.get(tag).length() : 0;
	}

	/**
	 * A table's bytes, big endian.
	 *
	 * @throws UnreadableFontException if it is missing or shorter than {@code least}
	 */
	public ByteBuffer table(String tag, int least) throws UnreadableFontException, IOException {
		Place place = places.get(tag);
		if (place == null) {
			throw new UnreadableFontException(font, "table '" + tag + "' is missing");
		}
		if (place.length() < least) {
			throw new UnreadableFontException(font, "table '" + tag + "' has " + place.length()
					+ " bytes where at least " + least + " are needed");
		}
		return source.read(place.offset(), Math.toIntExact(place.length()));
	}

	private static int tag(String four) {
		return ByteBuffer.wrap(four.getBytes(StandardCharsets.ISO_8859_1)).getInt();
	}
}
