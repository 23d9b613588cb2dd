package org.frisket.print.picture;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Color;
import java.awt.color.ColorSpace;
import java.awt.color.ICC_Profile;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.concurrent.CancellationException;
import java.util.zip.DeflaterOutputStream;

import org.frisket.geometry.Monitor;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Pictures as they come: their size, what they look like, and what is said of bad ones. */
class PictureFileTest {

	@TempDir
	private Path folder;

	private static Pixels pixels(byte[] file) throws UnreadablePictureException {
		return PictureFile.of("tag", file).pixels(Monitor.NONE);
	}

	private static void assertColour(Color expected, int found, int within) {
		Color colour = new Color(found, true);
		assertTrue(Math.abs(expected.getRed() - colour.getRed()) <= within
				&& Math.abs(expected.getGreen() - colour.getGreen()) <= within
				&& Math.abs(expected.getBlue() - colour.getBlue()) <= within && colour.getAlpha() == 255,
				expected + " but " + colour);
	}

	@ParameterizedTest
	@CsvSource({ "png,PNG,1", "jpeg,JPEG,6", "gif,GIF,1", "bmp,BMP,1", "tiff,TIFF,1" })
	void everyFormatIsReadAsItIs(String format, PictureFormat expected, int within) throws Exception {
		Path file = folder.resolve("tag.any");
		Files.write(file, MadePictures.written(MadePictures.cornered(64, 48, BufferedImage.TYPE_INT_RGB), format));
		PictureFile picture = PictureFile.of(file);
		assertEquals(expected, picture.format());
		assertEquals(64, picture.width());
		assertEquals(48, picture.height());
		assertFalse(picture.isAnimated());
		Pixels pixels = picture.pixels(Monitor.NONE);
		assertColour(new Color(20, 60, 180), pixels.at(5, 5), within);
		assertColour(new Color(200, 40, 30), pixels.at(60, 5), within);
		assertColour(new Color(200, 40, 30), pixels.at(5, 44), within);
	}

	@Test
	void transparencyAndGreyStayWhatTheyAre() throws Exception {
		BufferedImage image = new BufferedImage(2, 1, BufferedImage.TYPE_INT_ARGB);
		image.setRGB(0, 0, 0x80_336699);
		assertEquals(0x80_336699, pixels(MadePictures.written(image, "png")).at(0, 0));
		BufferedImage grey = new BufferedImage(2, 1, BufferedImage.TYPE_BYTE_GRAY);
		grey.getRaster().setSample(0, 0, 0, 77);
		assertEquals(0xff_4d4d4d, pixels(MadePictures.written(grey, "png")).at(0, 0));
		BufferedImage deep = new BufferedImage(2, 1, BufferedImage.TYPE_USHORT_GRAY);
		deep.getRaster().setSample(0, 0, 0, 77 * 257);
		assertEquals(0xff_4d4d4d, pixels(MadePictures.written(deep, "png")).at(0, 0));
		BufferedImage lines = new BufferedImage(2, 1, BufferedImage.TYPE_BYTE_BINARY);
		lines.setRGB(1, 0, 0xffffffff);
		assertArrayEquals(new int[] { 0xff000000, 0xffffffff }, pixels(MadePictures.written(lines, "png")).argb());
	}

	/** Row and column of the corner that is blue, by TIFF 6.0, page 36; the picture is stored 40 wide and 20 high. */
	@ParameterizedTest
	@CsvSource({ "1,5,5", "2,35,5", "3,35,15", "4,5,15", "5,5,5", "6,15,5", "7,15,35", "8,5,35" })
	void exifTurnsAndMirrors(int orientation, int x, int y) throws Exception {
		byte[] file = MadePictures.withSegment(MadePictures.written(MadePictures.cornered(40, 20,
				BufferedImage.TYPE_INT_RGB), "jpeg"), 0xe1, MadePictures.exif(orientation, 240));
		PictureFile picture = PictureFile.of("tag", file);
		assertEquals(orientation > 4 ? 20 : 40, picture.width());
		assertEquals(240, picture.resolution().x(), 1e-9);
		Pixels pixels = picture.pixels(Monitor.NONE);
		assertColour(new Color(20, 60, 180), pixels.at(x, y), 12);
		assertColour(new Color(200, 40, 30), pixels.at(pixels.width() - 1 - x, y), 12);
		assertColour(new Color(200, 40, 30), pixels.at(x, pixels.height() - 1 - y), 12);
	}

	@Test
	void inksOfFourChannelsBecomeColours() throws Exception {
		// cyan, magenta, yellow, black as shares of 255: 10 %, 90 %, 80 %, 20 %
		Color expected = new Color((int) (255 * 0.9 * 0.8), (int) (255 * 0.1 * 0.8), (int) (255 * 0.2 * 0.8));
		byte[] plain = MadePictures.jpeg(32, 32, 26, 230, 204, 51);
		assertColour(expected, pixels(plain).at(16, 16), 4);
		byte[] inverted = MadePictures.withSegment(MadePictures.jpeg(32, 32, 229, 25, 51, 204), 0xee, MadePictures.adobe(0));
		assertColour(expected, pixels(inverted).at(16, 16), 4);
		// the complements of 229, 25, 51, which are stored, as brightness and two differences (ITU-T T.871): files of other
		// writers have them so, which was tried by hand
		int y = (int) Math.round(0.299 * 26 + 0.587 * 230 + 0.114 * 204);
		byte[] differences = MadePictures.withSegment(MadePictures.jpeg(32, 32, y, (int) Math.round(128 + (204 - y) / 1.772),
				(int) Math.round(128 + (26 - y) / 1.402), 204), 0xee, MadePictures.adobe(2));
		assertColour(expected, pixels(differences).at(16, 16), 5);
	}

	@Test
	void profileIsKeptAndUsed() throws Exception {
		byte[] profile = ICC_Profile.getInstance(ColorSpace.CS_LINEAR_RGB).getData();
		ByteArrayOutputStream chunk = new ByteArrayOutputStream();
		chunk.write("linear\0\0".getBytes(StandardCharsets.ISO_8859_1));
		try (DeflaterOutputStream packed = new DeflaterOutputStream(chunk)) {
			packed.write(profile);
		}
		BufferedImage image = new BufferedImage(3, 70, BufferedImage.TYPE_INT_RGB);
		image.setRGB(1, 66, 0x808080);
		byte[] file = MadePictures.withChunk(MadePictures.written(image, "png"), "iCCP", chunk.toByteArray());
		PictureFile picture = PictureFile.of("tag", file);
		assertArrayEquals(profile, picture.profile().orElseThrow());
		// half of the light is 188 in sRGB, by IEC 61966-2-1: 1.055 * 0.502 ^ (1 / 2.4) - 0.055
		assertColour(new Color(188, 188, 188), picture.pixels(Monitor.NONE).at(1, 66), 1);
		assertTrue(picture.remarks(Resolution.given(300)).isEmpty());
		PictureFile damaged = PictureFile.of("tag", MadePictures.withChunk(MadePictures.written(image, "png"), "iCCP",
				Arrays.copyOf(chunk.toByteArray(), 40)));
		assertEquals("profile-unused", damaged.remarks(Resolution.given(300)).get(0).id());
		assertColour(new Color(128, 128, 128), damaged.pixels(Monitor.NONE).at(1, 66), 0);
	}

	/** A directory that is said to lie beyond the end of the file. */
	@Test
	void damageInWhatCamerasSayIsNoReasonToRefuseAPicture() throws Exception {
		BufferedImage image = new BufferedImage(3, 7, BufferedImage.TYPE_INT_RGB);
		byte[] exif = { 'M', 'M', 0, 42, 0x7f, 0, 0, 0 };
		PictureFile png = PictureFile.of("tag", MadePictures.withChunk(MadePictures.written(image, "png"), "eXIf", exif));
		assertEquals(7, png.height());
		assertTrue(png.isUpright());
		assertEquals(21, png.pixels(Monitor.NONE).argb().length);
		byte[] named = new byte[6 + exif.length];
		System.arraycopy("Exif\0\0".getBytes(StandardCharsets.ISO_8859_1), 0, named, 0, 6);
		System.arraycopy(exif, 0, named, 6, exif.length);
		PictureFile jpeg = PictureFile.of("tag", MadePictures.withSegment(MadePictures.written(image, "jpeg"), 0xe1, named));
		assertEquals(7, jpeg.height());
	}

	@Test
	void sizeComesFromTheResolution() throws Exception {
		byte[] png = MadePictures.written(MadePictures.cornered(30, 20, BufferedImage.TYPE_INT_RGB), "png");
		assertEquals(Resolution.Source.ASSUMED, PictureFile.of("tag", png).resolution().source());
		assertEquals(96, PictureFile.of("tag", png).resolution().x());
		ByteBuffer physical = ByteBuffer.allocate(9).putInt(11811).putInt(5906).put((byte) 1);
		Resolution found = PictureFile.of("tag", MadePictures.withChunk(png, "pHYs", physical.array())).resolution();
		assertEquals(300, found.x(), 0.01);
		assertEquals(150, found.y(), 0.02);
		assertEquals(Resolution.Source.FILE, found.source());
		assertEquals(25.4 / 300, found.pixelWidth(), 1e-5);
		assertEquals(254, Resolution.effective(1000, 100), 1e-9);
		// in pixels without a unit: says how wide pixels are, not how large the picture is
		physical.put(8, (byte) 0);
		assertEquals(Resolution.Source.ASSUMED,
				PictureFile.of("tag", MadePictures.withChunk(png, "pHYs", physical.array())).resolution().source());
		PictureFile coarse = PictureFile.of("tag", png);
		assertEquals(List.of("resolution-assumed", "resolution-low"),
				coarse.remarks(coarse.resolution()).stream().map(PictureRemark::id).toList());
		assertTrue(coarse.remarks(Resolution.given(200)).isEmpty());
	}

	@Test
	void animatedPicturesGiveTheirFirst() throws Exception {
		byte[] gif = MadePictures.written(MadePictures.cornered(20, 20, BufferedImage.TYPE_INT_RGB), "gif");
		// the one picture of the file, from its descriptor to before the end, once more
		int at = gif.length - 1;
		int descriptor = 13 + (3 << (gif[10] & 7) + 1);
		while (gif[descriptor] == 0x21) {
			descriptor += 2;
			while (gif[descriptor] != 0) {
				descriptor += 1 + (gif[descriptor] & 0xff);
			}
			descriptor++;
		}
		byte[] twice = new byte[gif.length + at - descriptor];
		System.arraycopy(gif, 0, twice, 0, at);
		System.arraycopy(gif, descriptor, twice, at, gif.length - descriptor);
		PictureFile picture = PictureFile.of("tag", twice);
		assertTrue(picture.isAnimated());
		assertFalse(PictureFile.of("tag", gif).isAnimated());
		assertEquals("first-only", picture.remarks(Resolution.given(300)).get(0).id());
		assertColour(new Color(20, 60, 180), picture.pixels(Monitor.NONE).at(2, 2), 1);
	}

	@Test
	void hugePicturesAreRefusedByTheirHeads() throws Exception {
		byte[] png = MadePictures.written(MadePictures.cornered(30, 20, BufferedImage.TYPE_INT_RGB), "png");
		ByteBuffer.wrap(png).putInt(16, 20_000).putInt(20, 20_000);
		String message = assertThrows(UnreadablePictureException.class, () -> PictureFile.of("ferry.png", png)).getMessage();
		assertEquals("“ferry.png”: has 20000 × 20000 pixels; up to 100 million are read, so save it with fewer", message);
		ByteBuffer.wrap(png).putInt(16, -1).putInt(20, -1);
		assertThrows(UnreadablePictureException.class, () -> PictureFile.of("ferry.png", png));
	}

	@ParameterizedTest
	@ValueSource(strings = { "png", "jpeg", "gif", "bmp", "tiff" })
	void whatBreaksOffIsRefusedWhereverItDoes(String format) throws Exception {
		byte[] whole = MadePictures.written(MadePictures.cornered(64, 48, BufferedImage.TYPE_INT_RGB), format);
		int step = Math.max(1, whole.length / 40);
		// the last bytes of a TIFF file are its tags' values, of a GIF file its end mark: neither is missed
		for (int length = 0; length < whole.length * 3 / 4; length += step) {
			byte[] part = Arrays.copyOf(whole, length);
			String message = assertThrows(UnreadablePictureException.class, () -> pixels(part),
					format + " of " + length + " bytes").getMessage();
			assertTrue(message.startsWith("“tag”: ") && message.contains(";"), message);
		}
	}

	@Test
	void damageAnywhereIsToldAndNothingElseHappens() throws Exception {
		for (String format : new String[] { "png", "jpeg", "gif", "bmp", "tiff" }) {
			byte[] whole = MadePictures.written(MadePictures.cornered(24, 16, BufferedImage.TYPE_INT_RGB), format);
			for (int seed = 0; seed < 60; seed++) {
				byte[] damaged = whole.clone();
				Random random = new Random(seed);
				for (int i = 0; i < 4; i++) {
					damaged[random.nextInt(damaged.length)] = (byte) random.nextInt(256);
				}
				try {
					pixels(damaged);
				} catch (UnreadablePictureException e) {
					assertTrue(e.getMessage().startsWith("“tag”: "), e.getMessage());
				}
			}
		}
	}

	@Test
	void otherKindsAreNamed() throws Exception {
		assertMessage("\0\0\0\u0020ftypavif", "(AVIF)");
		assertMessage("\0\0\0\u0020ftypheic", "(HEIF)");
		assertMessage("Harbour Lane", "another kind");
		assertMessage("", "is empty");
		assertTrue(assertThrows(UnreadablePictureException.class, () -> PictureFile.of(folder.resolve("none.png")))
				.getMessage().contains("none.png”: there is no such file"));
	}

	private static void assertMessage(String content, String expected) {
		String message = assertThrows(UnreadablePictureException.class,
				() -> PictureFile.of("tag", content.getBytes(StandardCharsets.ISO_8859_1))).getMessage();
		assertTrue(message.contains(expected), message);
	}

	@Test
	void readingCanBeCalledOff() throws Exception {
		for (String format : new String[] { "png", "jpeg", "bmp" }) {
			byte[] file = MadePictures.written(MadePictures.cornered(400, 300, BufferedImage.TYPE_INT_RGB), format);
			PictureFile picture = PictureFile.of("tag", file);
			assertThrows(CancellationException.class, () -> picture.pixels(() -> true), format);
		}
	}

	@Test
	void greyIsSampledBetweenTheCentresOfPixels() {
		Grey grey = new Grey(2, 2, new byte[] { 0, 100, (byte) 200, (byte) 255 });
		assertEquals(0, grey.sample(0.5, 0.5));
		assertEquals(50, grey.sample(1, 0.5));
		assertEquals((0 + 100 + 200 + 255) / 4.0, grey.sample(1, 1));
		assertEquals(255, grey.sample(9, 9));
		assertEquals(200, grey.at(0, 1));
		assertThrows(IllegalArgumentException.class, () -> new Grey(2, 2, new byte[3]));
		// half black on white, as transparency leaves it
		assertEquals(127, new Pixels(1, 1, new int[] { 0x80000000 }).grey().at(0, 0));
		assertEquals(255, new Pixels(1, 1, new int[] { 0x00123456 }).grey().at(0, 0));
	}
}
