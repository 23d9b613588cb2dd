package org.frisket.print.picture;

import java.awt.color.CMMException;
import java.awt.color.ColorSpace;
import java.awt.color.ICC_Profile;
import java.awt.image.ColorConvertOp;
import java.awt.image.DataBufferByte;
import java.awt.image.Raster;
import java.awt.image.WritableRaster;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Locale;

/**
 * Values of grey, RGB or CMYK, by the picture's profile if it has a sound one, as sRGB. Without one, grey and RGB are taken
 * as sRGB; of inks, each is taken to keep back its share of the light, which is how they are mixed on a screen, not how they
 * look in print.
 */
final class SrgbValues {

	private static final int TAGS = 128;
	private static final int DESCRIPTION = 'd' << 24 | 'e' << 16 | 's' << 8 | 'c';

	private final Head head;
	/** Null where values are used as they are. */
	private final ColorConvertOp profile;
	private final int channels;
	private int[] samples = new int[0];

	private SrgbValues(Head head, ColorConvertOp profile, int channels) {
		this.head = head;
		this.profile = profile;
		this.channels = channels;
	}

	static SrgbValues of(Head head) {
		return new SrgbValues(head, profile(head), head.inks.channels());
	}

	/** Null if there is none, if it calls itself that of sRGB, or is not for these values. */
	private static ColorConvertOp profile(Head head) {
		byte[] bytes = head.profile.toByteArray();
		if (bytes.length == 0 || isSrgb(bytes)) {
			return null;
		}
		try {
			ICC_Profile own = ICC_Profile.getInstance(bytes);
			return own.getNumComponents() != head.inks.channels() ? null
					: new ColorConvertOp(new ICC_Profile[] { own, ICC_Profile.getInstance(ColorSpace.CS_sRGB) }, null);
		} catch (IllegalArgumentException | CMMException e) {
			return null;
		}
	}

	/** Whether the picture has a profile that cannot be used. */
	static boolean isDamaged(Head head) {
		return head.profile.size() > 0 && profile(head) == null
				&& !isSrgb(head.profile.toByteArray());
	}

	/** By what it calls itself (ICC.1, tag {@code desc}); converting would only cost time. */
	private static boolean isSrgb(byte[] profile) {
		ByteBuffer bytes = ByteBuffer.wrap(profile);
		int tags = profile.length < TAGS + 4 ? 0 : bytes.getInt(TAGS);
		for (int i = 0; i < tags && TAGS + 16 + 12 * i <= profile.length; i++) {
			int at = TAGS + 4 + 12 * i;
			int start = bytes.getInt(at + 4);
			int length = bytes.getInt(at + 8);
			if (bytes.getInt(at) == DESCRIPTION && start >= 0 && length >= 0 && (long) start + length <= profile.length) {
				String name = new String(profile, start, length, StandardCharsets.ISO_8859_1).replace("\0", "");
				return name.contains("sRGB") && !name.toLowerCase(Locale.ROOT).contains("linear");
			}
		}
		return false;
	}

	void convert(Raster raster, int columns, int from, int rows, boolean premultiplied, int[] strip) {
		int bands = raster.getNumBands();
		int colours = channels > 0 && channels <= bands ? channels : bands < 3 ? 1 : 3;
		boolean alpha = bands > colours;
		int needed = columns * rows * bands;
		if (samples.length < needed) {
			samples = new int[needed];
		}
		raster.getPixels(0, from, columns, rows, samples);
		toBytes(raster, needed, bands);
		if (premultiplied && alpha) {
			divide(needed, bands, colours);
		}
		plainInks(needed, bands);
		byte[] converted = profile == null || colours != channels ? null : converted(columns, rows, bands, colours);
		for (int i = 0, at = 0; i < columns * rows; i++, at += bands) {
			int rgb = converted != null
					? (converted[3 * i] & 0xff) << 16 | (converted[3 * i + 1] & 0xff) << 8 | converted[3 * i + 2] & 0xff
					: switch (colours) {
					case 1 -> samples[at] * 0x10101;
					case 3 -> samples[at] << 16 | samples[at + 1] << 8 | samples[at + 2];
					default -> lit(at, 0) << 16 | lit(at, 1) << 8 | lit(at, 2);
					};
			strip[i] = (alpha ? samples[at + colours] : 255) << 24 | rgb;
		}
	}

	private int lit(int at, int ink) {
		return ((255 - samples[at + ink]) * (255 - samples[at + 3]) + 127) / 255;
	}

	private void toBytes(Raster raster, int count, int bands) {
		int bits = raster.getSampleModel().getSampleSize(0);
		if (bits == 8) {
			return;
		}
		int most = (1 << bits) - 1;
		for (int i = 0; i < count; i++) {
			samples[i] = (int) ((samples[i] * 255L + most / 2) / most);
		}
	}

	private void divide(int count, int bands, int colours) {
		for (int at = 0; at < count; at += bands) {
			int alpha = samples[at + colours];
			for (int i = 0; alpha > 0 && i < colours; i++) {
				samples[at + i] = Math.min(255, (samples[at + i] * 255 + alpha / 2) / alpha);
			}
		}
	}

	/** To RGB, or to inks of which 255 is all. */
	private void plainInks(int count, int bands) {
		boolean ycc = head.inks == Inks.YCC || head.inks == Inks.YCCK;
		if (!ycc && !head.inverted) {
			return;
		}
		for (int at = 0; at + 2 < count; at += bands) {
			if (ycc) {
				double y = samples[at];
				double cb = samples[at + 1] - 128;
				double cr = samples[at + 2] - 128;
				samples[at] = byteOf(y + 1.402 * cr);
				samples[at + 1] = byteOf(y - 0.344136 * cb - 0.714136 * cr);
				samples[at + 2] = byteOf(y + 1.772 * cb);
			}
			// brightness and differences are those of the complements of the stored cyan, magenta and yellow
			for (int i = 0; head.inks == Inks.YCCK && i < 3; i++) {
				samples[at + i] = 255 - samples[at + i];
			}
			for (int i = 0; head.inverted && i < 4; i++) {
				samples[at + i] = 255 - samples[at + i];
			}
		}
	}

	private static int byteOf(double value) {
		return (int) Math.max(0, Math.min(255, Math.round(value)));
	}

	private byte[] converted(int columns, int rows, int bands, int colours) {
		byte[] own = new byte[columns * rows * colours];
		for (int i = 0; i < columns * rows; i++) {
			for (int k = 0; k < colours; k++) {
				own[i * colours + k] = (byte) samples[i * bands + k];
			}
		}
		WritableRaster from = Raster.createInterleavedRaster(new DataBufferByte(own, own.length), columns,
				rows, columns * colours, colours, offsets(colours), null);
		byte[] rgb = new byte[columns * rows * 3];
		WritableRaster to = Raster.createInterleavedRaster(new DataBufferByte(rgb, rgb.length), columns, rows,
				columns * 3, 3, offsets(3), null);
		profile.filter(from, to);
		return rgb;
	}

	private static int[] offsets(int count) {
		int[] offsets = new int[count];
		for (int i = 0; i < count; i++) {
			offsets[i] = i;
		}
		return offsets;
	}
}
