package org.frisket.print.picture;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.color.ColorSpace;
import java.awt.color.ICC_Profile;
import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Base64;
import java.util.List;
import java.util.Random;
import java.util.concurrent.CancellationException;

import org.frisket.geometry.Monitor;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** WebP as libwebp's {@code cwebp} wrote it of drawings of ours, with chunks put in by hand as RFC 9649 has them. */
class WebpTest {

	/** 64 by 48: red, with a blue corner at the top left. */
	private static final String LOSSY = "UklGRnAAAABXRUJQVlA4IGQAAACwBQCdASpAADAAPm00lEakI6IhLVzIAIANiUAaTagvwD8Vdix4B+M34AV/4CHDRBXhnYRJ"
			+ "IAAA/vNpMxMj18oltup/iPfySSY4Zv83ESHKm+yiO83/50alWpmgqtXBpSE4AAAA";
	/** The same size: red in the middle, half of a blue corner at the top left, nothing else. */
	private static final String LOSSLESS = "UklGRkgAAABXRUJQVlA4TDsAAAAvP8ALEBcgEEhxEEMsEEgCHHwsgUASydb7CgiKrlsu4LsOito2Yo7kkSzP2/MZ0f8JAMg4"
			+ "T48s/t3uAQA=";
	private static final String LOSSY_ALPHA = "UklGRsoAAABXRUJQVlA4WAoAAAAQAAAAPwAALwAAQUxQSCQAAAABFyAQSFKffI2ICAdFbRsxR/JIluft+Yzo/wQAZJynRxb/"
			+ "bvdWUDgggAAAAHAGAJ0BKkAAMAA+YSaORaQiIRv/HABABgSyAGXugB+M2mAkwH+AuP+7gP0ABPZb14DT0jqyDAR2VrBjgAD+"
			+ "+zX//pYf/iaf/9H3JG2Df6H9OwKGMHpNUDQqrnfIH4NlvVRnk8TRDlBXlh2q0a2jVq3/Wr5naCxr6pOosxAAgAAA";
	private static final int RED = 0xc8281e;
	private static final int BLUE = 0x143cb4;

	@TempDir
	private Path folder;

	private static byte[] bytes(String file) {
		return Base64.getDecoder().decode(file);
	}

	private static Pixels pixels(byte[] file) throws UnreadablePictureException {
		return PictureFile.of("tag", file).pixels(Monitor.NONE);
	}

	private static void assertColour(int rgb, int found, int within) {
		for (int shift = 0; shift <= 16; shift += 8) {
			assertEquals(rgb >> shift & 0xff, found >> shift & 0xff, within, Integer.toHexString(found));
		}
	}

	/** Within a head that gives flags and the size of the canvas. @param chunks names and contents */
	private static byte[] extended(int flags, int width, int height, byte[] simple, Object... chunks) throws Exception {
		ByteArrayOutputStream out = new ByteArrayOutputStream();
		ByteBuffer head = ByteBuffer.allocate(10).order(ByteOrder.LITTLE_ENDIAN).put((byte) flags).put(new byte[3]);
		head.putShort((short) (width - 1)).put((byte) (width - 1 >> 16)).putShort((short) (height - 1)).put((byte) (height - 1 >> 16));
		chunk(out, "VP8X", head.array());
		for (int i = 0; i < chunks.length; i += 2) {
			if (chunks[i].equals("ICCP")) {
				chunk(out, "ICCP", (byte[]) chunks[i + 1]);
			}
		}
		out.write(simple, 12, simple.length - 12);
		for (int i = 0; i < chunks.length; i += 2) {
			if (!chunks[i].equals("ICCP")) {
				chunk(out, (String) chunks[i], (byte[]) chunks[i + 1]);
			}
		}
		ByteArrayOutputStream whole = new ByteArrayOutputStream();
		byte[] content = out.toByteArray();
		whole.write(ByteBuffer.allocate(12).order(ByteOrder.LITTLE_ENDIAN).put("RIFF".getBytes(StandardCharsets.ISO_8859_1))
				.putInt(4 + content.length).put("WEBP".getBytes(StandardCharsets.ISO_8859_1)).array());
		whole.write(content);
		return whole.toByteArray();
	}

	private static void chunk(ByteArrayOutputStream out, String name, byte[] content) throws Exception {
		out.write(name.getBytes(StandardCharsets.ISO_8859_1));
		out.write(ByteBuffer.allocate(4).order(ByteOrder.LITTLE_ENDIAN).putInt(content.length).array());
		out.write(content);
		out.write(new byte[content.length & 1]);
	}

	@Test
	void itIsReadWithAndWithoutLoss() throws Exception {
		PictureFile lossy = PictureFile.of(Files.write(folder.resolve("tag.any"), bytes(LOSSY)));
		assertEquals(PictureFormat.WEBP, lossy.format());
		assertEquals("image/webp", lossy.mediaType());
		assertEquals(64, lossy.width());
		assertEquals(48, lossy.height());
		assertEquals(List.of("resolution-assumed", "resolution-low"),
				lossy.remarks(lossy.resolution()).stream().map(PictureRemark::id).toList());
		Pixels pixels = lossy.pixels(Monitor.NONE);
		assertColour(BLUE, pixels.at(5, 5), 6);
		assertColour(RED, pixels.at(60, 5), 6);
		assertColour(RED, pixels.at(5, 44), 6);
		assertEquals(255, pixels.alpha(60, 44));
		Pixels lossless = pixels(bytes(LOSSLESS));
		assertEquals(0xff000000 | RED, lossless.at(16, 12));
		assertEquals(0xff000000 | RED, lossless.at(47, 35));
		assertEquals(0, lossless.alpha(48, 36));
		assertEquals(0x80, lossless.alpha(3, 3));
		assertColour(BLUE, lossless.at(3, 3), 1);
		Pixels alpha = pixels(bytes(LOSSY_ALPHA));
		assertEquals(255, alpha.alpha(16, 12));
		assertColour(RED, alpha.at(32, 24), 8);
		assertEquals(0, alpha.alpha(15, 11));
		assertEquals(0x80, alpha.alpha(7, 7));
	}

	@Test
	void profileTurnAndResolutionAreUsed() throws Exception {
		byte[] profile = ICC_Profile.getInstance(ColorSpace.CS_LINEAR_RGB).getData();
		// one that Java does not know
		profile[30] ^= 1;
		byte[] exif = Arrays.copyOfRange(MadePictures.exif(6, 240), 6, MadePictures.exif(6, 240).length);
		for (byte[] part : new byte[][] { exif, MadePictures.exif(6, 240) }) {
			PictureFile picture = PictureFile.of("tag", extended(0x28, 64, 48, bytes(LOSSY), "ICCP", profile, "EXIF", part));
			assertEquals(48, picture.width());
			assertEquals(64, picture.height());
			assertFalse(picture.isUpright());
			assertEquals(240, picture.resolution().x(), 1e-9);
			assertArrayEquals(profile, picture.profile().orElseThrow());
			Pixels pixels = picture.pixels(Monitor.NONE);
			// the blue corner is at the upper right, as TIFF 6.0 has it; a share s of the light is 1.055 s^(1/2.4) - 0.055
			assertColour(lit(BLUE), pixels.at(44, 5), 12);
			assertColour(lit(RED), pixels.at(5, 5), 12);
			assertColour(lit(RED), pixels.at(44, 60), 12);
		}
	}

	/** By IEC 61966-2-1. */
	private static int lit(int linear) {
		int rgb = 0;
		for (int shift = 0; shift <= 16; shift += 8) {
			double share = (linear >> shift & 0xff) / 255.0;
			rgb |= (int) Math.round(255 * (share < 0.0031308 ? 12.92 * share : 1.055 * Math.pow(share, 1 / 2.4) - 0.055)) << shift;
		}
		return rgb;
	}

	@Test
	void movingAndHugeOnesAreRefused() throws Exception {
		assertRefused("it is animated", extended(0x02, 64, 48, bytes(LOSSY)));
		assertRefused("has 16383 × 16383 pixels", extended(0, 16383, 16383, bytes(LOSSY)));
		byte[] huge = bytes(LOSSY);
		ByteBuffer.wrap(huge).order(ByteOrder.LITTLE_ENDIAN).putShort(26, (short) 16383).putShort(28, (short) 16383);
		assertRefused("has 16383 × 16383 pixels", huge);
	}

	private static void assertRefused(String reason, byte[] file) {
		String message = assertThrows(UnreadablePictureException.class, () -> pixels(file)).getMessage();
		assertTrue(message.startsWith("“tag”: ") && message.contains(reason), message);
	}

	@Test
	void whatBreaksOffIsRefusedWhereverItDoes() {
		for (String file : new String[] { LOSSY, LOSSLESS, LOSSY_ALPHA }) {
			byte[] whole = bytes(file);
			for (int length = 12; length < whole.length; length++) {
				byte[] part = Arrays.copyOf(whole, length);
				assertRefused("breaks off at byte", part);
			}
		}
	}

	@Test
	void damageAnywhereIsToldAndNothingElseHappens() {
		for (String file : new String[] { LOSSY, LOSSLESS, LOSSY_ALPHA }) {
			for (int seed = 0; seed < 200; seed++) {
				byte[] damaged = bytes(file);
				Random random = new Random(seed);
				for (int i = 0; i < 4; i++) {
					damaged[12 + random.nextInt(damaged.length - 12)] = (byte) random.nextInt(256);
				}
				try {
					PictureFile picture = PictureFile.of("tag", damaged);
					if ((long) picture.width() * picture.height() < 1_000_000) {
						picture.pixels(Monitor.NONE);
					}
				} catch (UnreadablePictureException e) {
					assertTrue(e.getMessage().startsWith("“tag”: "), e.getMessage());
				}
			}
		}
	}

	@Test
	void readingCanBeCalledOff() throws Exception {
		for (String file : new String[] { LOSSY, LOSSLESS }) {
			PictureFile picture = PictureFile.of("tag", bytes(file));
			assertThrows(CancellationException.class, () -> picture.pixels(() -> true));
		}
	}
}
