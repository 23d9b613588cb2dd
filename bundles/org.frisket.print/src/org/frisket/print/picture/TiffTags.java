package org.frisket.print.picture;

import java.io.IOException;
import java.nio.ByteOrder;

import javax.imageio.stream.ImageInputStream;

/** The first directory of a TIFF file (TIFF 6.0), or of the EXIF part of another file, which has the same form. */
final class TiffTags {

	private static final int WIDTH = 256;
	private static final int HEIGHT = 257;
	private static final int PHOTOMETRIC = 262;
	private static final int ORIENTATION = 274;
	private static final int X_RESOLUTION = 282;
	private static final int Y_RESOLUTION = 283;
	private static final int UNIT = 296;
	private static final int PROFILE = 34675;
	private static final int CENTIMETRE = 3;
	private static final double CM_PER_INCH = 2.54;
	private static final int MOST_BYTES = 16 << 20;
	private static final int[] SIZES = { 0, 1, 1, 2, 4, 8 };

	private final ImageInputStream in;
	private final long base;

	private TiffTags(ImageInputStream in, long base) {
		this.in = in;
		this.base = base;
	}

	/** The EXIF part of another file. Damage there is no reason to refuse the picture. */
	static void exif(ImageInputStream in, long base, Head head) {
		try {
			read(in, base, head, true);
		} catch (IOException | IndexOutOfBoundsException e) {
			head.orientation = 1;
		}
	}

	/** @param base where the byte order stands; offsets count from there */
	static void read(ImageInputStream in, long base, Head head, boolean exif) throws IOException {
		ByteOrder before = in.getByteOrder();
		try {
			in.seek(base);
			in.setByteOrder(in.readUnsignedShort() == 0x4949 ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN);
			in.skipBytes(2);
			new TiffTags(in, base).directory(in.readUnsignedInt(), head, exif);
		} finally {
			in.setByteOrder(before);
		}
	}

	private void directory(long offset, Head head, boolean exif) throws IOException {
		in.seek(base + offset);
		int entries = in.readUnsignedShort();
		double x = 0;
		double y = 0;
		double perInch = 1;
		for (int i = 0; i < entries; i++) {
			in.seek(base + offset + 2 + 12L * i);
			int tag = in.readUnsignedShort();
			int type = in.readUnsignedShort();
			long count = in.readUnsignedInt();
			switch (tag) {
			case ORIENTATION -> head.orientation((int) number(type));
			case X_RESOLUTION -> x = number(type);
			case Y_RESOLUTION -> y = number(type);
			case UNIT -> perInch = unit((int) number(type));
			default -> {
				if (!exif) {
					ofTiff(tag, type, count, head);
				}
			}
			}
		}
		head.dpi(x * perInch, (y > 0 ? y : x) * perInch);
		if (!exif) {
			in.seek(base + offset + 2 + 12L * entries);
			head.frames = in.readUnsignedInt() == 0 ? 1 : 2;
		}
	}

	private static double unit(int code) {
		return code == CENTIMETRE ? CM_PER_INCH : code == 1 ? 0 : 1;
	}

	private void ofTiff(int tag, int type, long count, Head head) throws IOException {
		switch (tag) {
		case WIDTH -> head.width = (int) Math.min(Integer.MAX_VALUE, number(type));
		case HEIGHT -> head.height = (int) Math.min(Integer.MAX_VALUE, number(type));
		case PHOTOMETRIC -> head.inks = inks((int) number(type));
		case PROFILE -> {
			if (count > 4 && count <= MOST_BYTES) {
				in.seek(base + in.readUnsignedInt());
				byte[] profile = new byte[(int) count];
				in.readFully(profile);
				head.profile.write(profile);
			}
		}
		default -> {
			// says nothing that is asked for here
		}
		}
	}

	private static Inks inks(int photometric) {
		return switch (photometric) {
		case 0, 1 -> Inks.GREY;
		case 2 -> Inks.RGB;
		case 5 -> Inks.CMYK;
		default -> Inks.DECODED;
		};
	}

	/** The first value of an entry. */
	private double number(int type) throws IOException {
		if (type < SIZES.length && type > 0 && SIZES[type] > 4) {
			in.seek(base + in.readUnsignedInt());
			double numerator = in.readUnsignedInt();
			long denominator = in.readUnsignedInt();
			return denominator == 0 ? 0 : numerator / denominator;
		}
		return switch (type) {
		case 1 -> in.readUnsignedByte();
		case 3 -> in.readUnsignedShort();
		case 4 -> in.readUnsignedInt();
		default -> 0;
		};
	}
}
