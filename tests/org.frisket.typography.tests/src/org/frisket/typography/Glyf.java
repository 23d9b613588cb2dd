package org.frisket.typography;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.util.Arrays;
import java.util.Map;

/** Puts glyphs of other data into a TrueType font (tables glyf and loca of ISO/IEC 14496-22). */
final class Glyf {

	private static final int WORDS = 1;
	private static final int OFFSETS = 2;
	private static final int TWO_BY_TWO = 0x80;
	private static final int MORE = 0x20;
	private static final int REPEAT = 8;
	private static final int ON_CURVE = 1;

	private Glyf() {
	}

	static byte[] font(byte[] font, Map<Integer, byte[]> glyphs) {
		FontSurgery surgery = new FontSurgery(font);
		byte[] head = surgery.table("head").clone();
		boolean wide = head[51] != 0;
		ByteBuffer loca = ByteBuffer.wrap(surgery.table("loca"));
		byte[] glyf = surgery.table("glyf");
		int count = loca.capacity() / (wide ? 4 : 2) - 1;
		ByteArrayOutputStream data = new ByteArrayOutputStream();
		ByteBuffer places = ByteBuffer.allocate(4 * (count + 1));
		for (int i = 0; i < count; i++) {
			places.putInt(data.size());
			int from = wide ? loca.getInt(4 * i) : 2 * Short.toUnsignedInt(loca.getShort(2 * i));
			int to = wide ? loca.getInt(4 * i + 4) : 2 * Short.toUnsignedInt(loca.getShort(2 * i + 2));
			byte[] glyph = glyphs.getOrDefault(i, Arrays.copyOfRange(glyf, from, to));
			data.writeBytes(Arrays.copyOf(glyph, glyph.length + 3 & ~3));
		}
		places.putInt(data.size());
		head[51] = 1;
		return surgery.with("head", head).with("glyf", data.toByteArray()).with("loca", places.array()).font();
	}

	/** @param scale of both axes, from -2 to just below 2 */
	static byte[] composite(double scale, int dx, int... parts) {
		ByteBuffer glyph = ByteBuffer.allocate(10 + 16 * parts.length);
		glyph.putShort((short) -1).putLong(0);
		for (int i = 0; i < parts.length; i++) {
			glyph.putShort((short) (WORDS | OFFSETS | TWO_BY_TWO | (i + 1 < parts.length ? MORE : 0)))
					.putShort((short) parts[i]).putShort((short) dx).putShort((short) dx);
			short factor = (short) Math.max(Short.MIN_VALUE, Math.min(Short.MAX_VALUE, Math.round(scale * 16384)));
			glyph.putShort(factor).putShort((short) 0).putShort((short) 0).putShort(factor);
		}
		return glyph.array();
	}

	/** One contour of many points that go to and fro by as much as there is. */
	static byte[] points(int count) {
		ByteArrayOutputStream flags = new ByteArrayOutputStream();
		for (int left = count; left > 0; left -= 256) {
			flags.write(ON_CURVE | REPEAT);
			flags.write(Math.min(256, left) - 1);
		}
		ByteBuffer glyph = ByteBuffer.allocate(14 + flags.size() + 4 * count);
		glyph.putShort((short) 1).putLong(0).putShort((short) (count - 1)).putShort((short) 0).put(flags.toByteArray());
		for (int axis = 0; axis < 2; axis++) {
			for (int i = 0; i < count; i++) {
				glyph.putShort((i + axis) % 3 == 0 ? Short.MAX_VALUE : Short.MIN_VALUE);
			}
		}
		return glyph.array();
	}
}
