package org.frisket.typography;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Takes a font file apart into its tables and puts it together again with others. */
public final class FontSurgery {

	private final int signature;
	private final TreeMap<String, byte[]> tables = new TreeMap<>();

	public FontSurgery(byte[] font) {
		ByteBuffer buffer = ByteBuffer.wrap(font);
		signature = buffer.getInt(0);
		for (int i = 0; i < buffer.getShort(4); i++) {
			String tag = new String(font, 12 + 16 * i, 4, StandardCharsets.ISO_8859_1);
			int offset = buffer.getInt(12 + 16 * i + 8);
			tables.put(tag, Arrays.copyOfRange(font, offset, offset + buffer.getInt(12 + 16 * i + 12)));
		}
	}

	public byte[] table(String tag) {
		return tables.get(tag);
	}

	public FontSurgery with(String tag, byte[] table) {
		tables.put(tag, table);
		return this;
	}

	public FontSurgery without(String... tags) {
		tables.keySet().removeAll(List.of(tags));
		return this;
	}

	/** Windows names in English by their identifiers. */
	public FontSurgery withNames(Map<Integer, String> names) {
		List<Integer> ids = new ArrayList<>(new TreeMap<>(names).keySet());
		ByteArrayOutputStream texts = new ByteArrayOutputStream();
		ByteBuffer head = ByteBuffer.allocate(6 + 12 * ids.size());
		head.putShort((short) 0).putShort((short) ids.size()).putShort((short) head.capacity());
		for (int id : ids) {
			byte[] text = names.get(id).getBytes(StandardCharsets.UTF_16BE);
			head.putShort((short) 3).putShort((short) 1).putShort((short) 0x409).putShort((short) id)
					.putShort((short) text.length).putShort((short) texts.size());
			texts.writeBytes(text);
		}
		ByteArrayOutputStream table = new ByteArrayOutputStream();
		table.writeBytes(head.array());
		table.writeBytes(texts.toByteArray());
		return with("name", table.toByteArray());
	}

	public byte[] font() {
		return faces(List.of(this), false);
	}

	/** A collection of several fonts. */
	public static byte[] collection(List<FontSurgery> fonts) {
		return faces(fonts, true);
	}

	private static byte[] faces(List<FontSurgery> fonts, boolean collection) {
		int at = collection ? 12 + 4 * fonts.size() : 0;
		int[] starts = new int[fonts.size()];
		for (int i = 0; i < starts.length; i++) {
			starts[i] = at;
			at += 12 + 16 * fonts.get(i).tables.size();
		}
		int size = at;
		for (FontSurgery font : fonts) {
			size += font.tables.values().stream().mapToInt(t -> t.length + 3 & ~3).sum();
		}
		ByteBuffer out = ByteBuffer.allocate(size);
		if (collection) {
			out.put("ttcf".getBytes(StandardCharsets.ISO_8859_1)).putInt(0x10000).putInt(starts.length);
			Arrays.stream(starts).forEach(out::putInt);
		}
		for (int i = 0; i < starts.length; i++) {
			FontSurgery font = fonts.get(i);
			out.position(starts[i]);
			out.putInt(font.signature).putShort((short) font.tables.size()).putShort((short) 0).putInt(0);
			for (Map.Entry<String, byte[]> table : font.tables.entrySet()) {
				out.put(table.getKey().getBytes(StandardCharsets.ISO_8859_1)).putInt(0).putInt(at)
						.putInt(table.getValue().length);
				out.put(at, table.getValue());
				at += table.getValue().length + 3 & ~3;
			}
		}
		return out.array();
	}
}
