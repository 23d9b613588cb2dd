package org.frisket.print.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.awt.image.BufferedImage;
import java.util.Random;
import java.util.concurrent.CancellationException;

import org.frisket.geometry.Monitor;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Pictures in fewer pixels than they have. */
class WantedSizeTest {

	private static final int RED = 0xc8281e;
	private static final int BLUE = 0x143cb4;

	private static void assertColour(int rgb, int found, String what) {
		for (int shift = 0; shift <= 16; shift += 8) {
			assertEquals(rgb >> shift & 0xff, found >> shift & 0xff, 8, what);
		}
	}

	@ParameterizedTest
	@ValueSource(strings = { "png", "jpeg", "gif", "bmp", "tiff" })
	void everyFormatComesInTheWantedWidth(String format) throws Exception {
		PictureFile file = PictureFile.of("tag",
				MadePictures.written(MadePictures.cornered(640, 480, BufferedImage.TYPE_INT_RGB), format));
		for (int width : new int[] { 1, 7, 64, 200, 321, 639, 640, 5000 }) {
			BufferedImage image = file.image(width, Monitor.NONE);
			int wide = Math.min(640, width);
			assertEquals(wide, image.getWidth());
			assertEquals(Math.max(1, Math.round(wide * 0.75)), image.getHeight(), 1);
			if (width > 60) {
				assertColour(BLUE, image.getRGB(wide / 4, wide / 4), format + " at " + width);
				assertColour(BLUE, image.getRGB(wide / 2 - 2, image.getHeight() / 2 - 2), format + " at " + width);
				assertColour(RED, image.getRGB(wide / 2 + 2, image.getHeight() / 4), format + " at " + width);
				assertColour(RED, image.getRGB(wide / 4, image.getHeight() / 2 + 2), format + " at " + width);
			}
		}
		assertThrows(CancellationException.class, () -> file.image(64, () -> true));
	}

	@Test
	void turnedPicturesAreTurned() throws Exception {
		PictureFile file = PictureFile.of("tag", MadePictures.withSegment(MadePictures.written(MadePictures.cornered(400, 200,
				BufferedImage.TYPE_INT_RGB), "jpeg"), 0xe1, MadePictures.exif(6, 240)));
		BufferedImage image = file.image(40, Monitor.NONE);
		assertEquals(40, image.getWidth());
		assertEquals(80, image.getHeight());
		assertColour(BLUE, image.getRGB(30, 10), "upper right");
		assertColour(RED, image.getRGB(10, 10), "upper left");
	}

	/** No light is lost or won, and what is not seen does not count. */
	@Test
	void pixelsAreMeansOfWhatTheyCover() {
		Random random = new Random(3);
		int[] argb = new int[97 * 61];
		double[] before = new double[4];
		for (int i = 0; i < argb.length; i++) {
			argb[i] = random.nextInt();
			add(argb[i], before);
		}
		Pixels pixels = new Pixels(97, 61, argb);
		assertSame(pixels, FewerPixels.of(pixels, 97, Monitor.NONE));
		Pixels one = FewerPixels.of(pixels, 1, Monitor.NONE);
		assertEquals(before[0] / argb.length, one.alpha(0, 0), 0.51);
		for (int i = 1; i < 4; i++) {
			assertEquals(before[i] / before[0], one.at(0, 0) >> 24 - 8 * i & 0xff, 0.51);
		}
		Pixels some = FewerPixels.of(pixels, 40, Monitor.NONE);
		double[] after = new double[4];
		for (int pixel : some.argb()) {
			add(pixel, after);
		}
		for (int i = 0; i < 4; i++) {
			assertEquals(before[i] / argb.length, after[i] / some.argb().length, i == 0 ? 0.1 : 100, "sum " + i);
		}
		assertEquals(0x80ff0000, FewerPixels.of(new Pixels(2, 1, new int[] { 0xffff0000, 0x0000ff00 }), 1, Monitor.NONE).at(0, 0));
	}

	private static void add(int pixel, double[] sums) {
		int alpha = pixel >>> 24;
		sums[0] += alpha;
		for (int i = 1; i < 4; i++) {
			sums[i] += alpha * (pixel >> 24 - 8 * i & 0xff);
		}
	}
}
