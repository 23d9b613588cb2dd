package org.frisket.print.picture;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.zip.InflaterInputStream;

import javax.imageio.stream.ImageInputStream;

/** The heads of PNG (ISO/IEC 15948), GIF (version 89a) and BMP files; the last from memory. */
final class OtherHeads {

	private static final double INCH_PER_METRE = 0.0254;
	private static final int MOST_PROFILE = 16 << 20;
	private static final int[] CHANNELS = { 1, 0, 3, 0, 1, 0, 3 };

	private OtherHeads() {
	}

	/** Up to the end of the file: what breaks off is told by that. */
	static void png(ImageInputStream in, Head head) throws IOException {
		long at = 8;
		while (true) {
			in.seek(at);
			long length = in.readUnsignedInt();
			byte[] name = new byte[4];
			in.readFully(name);
			switch (new String(name, StandardCharsets.ISO_8859_1)) {
			case "IHDR" -> {
				head.width = (int) Math.min(Integer.MAX_VALUE, in.readUnsignedInt());
				head.height = (int) Math.min(Integer.MAX_VALUE, in.readUnsignedInt());
				in.readUnsignedByte();
				int kind = in.readUnsignedByte();
				head.inks = kind >= CHANNELS.length || kind == 3 ? Inks.DECODED : CHANNELS[kind] == 3 ? Inks.RGB : Inks.GREY;
			}
			case "pHYs" -> {
				double x = in.readUnsignedInt() * INCH_PER_METRE;
				double y = in.readUnsignedInt() * INCH_PER_METRE;
				if (in.readUnsignedByte() == 1) {
					head.dpi(x, y);
				}
			}
			case "acTL" -> head.frames = (int) Math.min(Integer.MAX_VALUE, in.readUnsignedInt());
			case "iCCP" -> profile(in, (int) Math.min(MOST_PROFILE, length), head);
			case "eXIf" -> TiffTags.exif(in, in.getStreamPosition(), head);
			case "IEND" -> {
				return;
			}
			default -> {
				// says nothing that is asked for here
			}
			}
			at += length + 12;
		}
	}

	private static void profile(ImageInputStream in, int length, Head head) throws IOException {
		byte[] chunk = new byte[length];
		in.readFully(chunk);
		int end = 0;
		while (end < length && chunk[end] != 0) {
			end++;
		}
		try (InputStream packed = new InflaterInputStream(new ByteArrayInputStream(chunk, end + 2, length - end - 2))) {
			head.profile.write(packed.readNBytes(MOST_PROFILE));
		} catch (IOException | IndexOutOfBoundsException e) {
			// a byte that is no profile: told when the pixels are converted
			head.profile.write(0);
		}
	}

	static void gif(ImageInputStream in, Head head) throws IOException {
		in.setByteOrder(ByteOrder.LITTLE_ENDIAN);
		in.seek(6);
		head.width = in.readUnsignedShort();
		head.height = in.readUnsignedShort();
		int flags = in.readUnsignedByte();
		in.skipBytes(2);
		skipTable(in, flags);
		head.frames = 0;
		while (head.frames < 2) {
			int block = in.read();
			if (block == 0x2c) {
				if (head.frames++ == 0) {
					head.left = in.readUnsignedShort();
					head.top = in.readUnsignedShort();
				} else {
					break;
				}
				in.skipBytes(4);
				skipTable(in, in.readUnsignedByte());
				in.readUnsignedByte();
				skipBlocks(in);
			} else if (block == 0x21) {
				in.readUnsignedByte();
				skipBlocks(in);
			} else {
				break;
			}
		}
	}

	private static void skipTable(ImageInputStream in, int flags) throws IOException {
		if ((flags & 0x80) != 0) {
			in.skipBytes(3 << (flags & 7) + 1);
		}
	}

	private static void skipBlocks(ImageInputStream in) throws IOException {
		for (int length = in.readUnsignedByte(); length > 0; length = in.readUnsignedByte()) {
			in.skipBytes(length);
		}
	}

	static void bmp(ImageInputStream in, Head head) throws IOException {
		in.setByteOrder(ByteOrder.LITTLE_ENDIAN);
		in.seek(14);
		if (in.readInt() == 12) {
			head.width = in.readUnsignedShort();
			head.height = in.readUnsignedShort();
			return;
		}
		head.width = in.readInt();
		head.height = Math.abs(in.readInt());
		in.skipBytes(12);
		head.dpi(in.readInt() * INCH_PER_METRE, in.readInt() * INCH_PER_METRE);
	}
}
