package org.frisket.print.picture;

import java.io.IOException;
import java.nio.charset.StandardCharsets;

import javax.imageio.stream.ImageInputStream;

/**
 * The segments before the picture of a JPEG file (ITU-T T.81): its size, JFIF (ITU-T T.871) or EXIF density, orientation,
 * colour profile (ICC.1, annex B.4), and the mark of Adobe's segment that says what four channels are; the last from memory.
 */
final class JpegHead {

	private static final double CM_PER_INCH = 2.54;
	private static final int PROFILE_HEAD = 14;

	private final ImageInputStream in;
	private final Head head;
	private int channels;
	private boolean jfif;
	private boolean namedRgb;
	private int transform = -1;

	private JpegHead(ImageInputStream in, Head head) {
		this.in = in;
		this.head = head;
	}

	static void read(ImageInputStream in, Head head) throws IOException {
		new JpegHead(in, head).segments();
	}

	private void segments() throws IOException {
		in.seek(2);
		while (true) {
			int marker = in.readUnsignedByte();
			if (marker != 0xff) {
				continue;
			}
			while (marker == 0xff) {
				marker = in.readUnsignedByte();
			}
			if (marker == 0xda || marker == 0xd9) {
				break;
			}
			if (marker == 0 || marker == 1 || marker >= 0xd0 && marker <= 0xd8) {
				continue;
			}
			long start = in.getStreamPosition();
			int length = in.readUnsignedShort();
			segment(marker, length - 2);
			in.seek(start + Math.max(2, length));
		}
		head.inks = inks();
		// with that mark, common practice since its first writer
		head.inverted = channels == 4 && transform >= 0;
	}

	private Inks inks() {
		if (channels == 1) {
			return Inks.GREY;
		}
		if (channels == 4) {
			return transform == 2 ? Inks.YCCK : Inks.CMYK;
		}
		return transform == 0 && !jfif || transform < 0 && !jfif && namedRgb ? Inks.RGB : Inks.YCC;
	}

	private void segment(int marker, int length) throws IOException {
		if (marker >= 0xc0 && marker <= 0xcf && marker != 0xc4 && marker != 0xc8 && marker != 0xcc) {
			in.readUnsignedByte();
			head.height = in.readUnsignedShort();
			head.width = in.readUnsignedShort();
			channels = in.readUnsignedByte();
			if (channels == 3) {
				int[] names = new int[3];
				for (int i = 0; i < names.length; i++) {
					names[i] = in.readUnsignedByte();
					in.skipBytes(2);
				}
				namedRgb = names[0] == 'R' && names[1] == 'G' && names[2] == 'B';
			}
		} else if (marker == 0xe0 && is("JFIF\0", length)) {
			jfif = true;
			in.skipBytes(2);
			int unit = in.readUnsignedByte();
			double x = in.readUnsignedShort();
			double y = in.readUnsignedShort();
			if (unit > 0 && head.dpiX == 0) {
				head.dpi(x * (unit == 2 ? CM_PER_INCH : 1), y * (unit == 2 ? CM_PER_INCH : 1));
			}
		} else if (marker == 0xe1 && is("Exif\0\0", length)) {
			TiffTags.exif(in, in.getStreamPosition(), head);
		} else if (marker == 0xe2 && length > PROFILE_HEAD && is("ICC_PROFILE\0", length)) {
			in.skipBytes(2);
			byte[] part = new byte[length - PROFILE_HEAD];
			in.readFully(part);
			head.profile.write(part);
		} else if (marker == 0xee && is("Adobe", length)) {
			in.skipBytes(6);
			transform = in.readUnsignedByte();
		}
	}

	private boolean is(String name, int length) throws IOException {
		byte[] bytes = new byte[name.length()];
		if (length < bytes.length) {
			return false;
		}
		in.readFully(bytes);
		return name.equals(new String(bytes, StandardCharsets.ISO_8859_1));
	}
}
