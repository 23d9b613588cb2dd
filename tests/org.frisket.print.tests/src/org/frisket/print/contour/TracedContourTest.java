package org.frisket.print.contour;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Area;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.concurrent.CancellationException;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Polygons;
import org.frisket.geometry.Region;
import org.frisket.geometry.Transform;
import org.frisket.geometry.measure.Straying;
import org.frisket.print.picture.PictureRemark;
import org.frisket.print.picture.Pixels;
import org.frisket.print.picture.Resolution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What holds of every contour, and what its options do. Lengths are in mm, and pixels as large, unless something is said. */
class TracedContourTest {

	/** A pixel is a mm. */
	private static final Resolution COARSE = Resolution.given(25.4);
	private static final Resolution FINE = Resolution.given(254);

	private static TracedContour traced(Pixels pixels, Resolution resolution, ContourOptions options) {
		TracedContour traced = ContourTracer.trace(pixels, resolution, options, Monitor.NONE);
		assertTrue(Polygons.of(traced.region(), 1e-4).isValid());
		for (Contour contour : traced.region().contours()) {
			assertTrue(contour.isClosed());
		}
		return traced;
	}

	private static Region region(Pixels pixels, ContourOptions options) {
		TracedContour traced = traced(pixels, FINE, options);
		assertFalse(traced.isBlocked(), traced.remarks().toString());
		return traced.region();
	}

	/** Blots of all sizes over each other, with holes. */
	private static Shape blots(long seed) {
		Random random = new Random(seed);
		Area area = new Area();
		for (int i = 0; i < 14; i++) {
			double width = 0.5 + 6 * random.nextDouble();
			double height = 0.5 + 6 * random.nextDouble();
			double x = 2 + 10 * random.nextDouble();
			double y = 2 + 10 * random.nextDouble();
			Area blot = new Area(AffineTransform.getRotateInstance(random.nextDouble() * 3, x, y).createTransformedShape(
					i % 3 == 0 ? new Rectangle2D.Double(x, y, width, height) : new Ellipse2D.Double(x, y, width, height)));
			if (i % 4 == 3) {
				area.subtract(blot);
			} else {
				area.add(blot);
			}
		}
		area.intersect(new Area(new Rectangle2D.Double(0.5, 0.5, 19, 19)));
		return area;
	}

	private static Pixels picture(Shape shape) {
		return Drawing.draw(shape, 20, 20, 254, Color.BLACK, null);
	}

	@ParameterizedTest
	@ValueSource(longs = { 1, 2, 3, 4, 5, 6, 7, 8 })
	void areaIsThatOfThePixels(long seed) {
		Pixels pixels = picture(blots(seed));
		double covered = 0;
		for (int pixel : pixels.argb()) {
			covered += (pixel >>> 24) / 255.0;
		}
		Region region = region(pixels, ContourOptions.USUAL.without(0, 0));
		double pixel = FINE.pixelWidth();
		assertEquals(covered * pixel * pixel, region.area(), 0.03 * pixel * region.perimeter());
		assertEquals(region, region(pixels, ContourOptions.USUAL.without(0, 0)));
	}

	@ParameterizedTest
	@ValueSource(longs = { 11, 12, 13, 14 })
	void contourGoesWithThePicture(long seed) {
		Pixels pixels = picture(blots(seed));
		Region region = region(pixels, ContourOptions.USUAL);
		int w = pixels.width();
		int h = pixels.height();
		int[] moved = new int[(w + 7) * (h + 11)];
		int[] turned = new int[w * h];
		for (int y = 0; y < h; y++) {
			for (int x = 0; x < w; x++) {
				moved[(y + 11) * (w + 7) + x + 7] = pixels.at(x, y);
				turned[x * h + h - 1 - y] = pixels.at(x, y);
			}
		}
		double pixel = FINE.pixelWidth();
		assertSame(region.transformed(Transform.translation(7 * pixel, 11 * pixel)),
				region(new Pixels(w + 7, h + 11, moved), ContourOptions.USUAL), pixel / 100);
		// the ends of curves may lie elsewhere: within twice the deviation
		assertSame(region.transformed(new Transform(0, 1, -1, 0, h * pixel, 0)),
				region(new Pixels(h, w, turned), ContourOptions.USUAL), 0.6 * pixel);
	}

	private static void assertSame(Region expected, Region found, double within) {
		assertEquals(expected.contours().size(), found.contours().size());
		assertTrue(Straying.of(expected.contours(), found.contours(), within / 10, Monitor.NONE).mm() <= within);
		assertTrue(Straying.of(found.contours(), expected.contours(), within / 10, Monitor.NONE).mm() <= within);
	}

	/** A picture of nothing but noise has the worst edges there are. */
	@ParameterizedTest
	@ValueSource(longs = { 21, 22, 23 })
	void noiseHasCleanContoursToo(long seed) {
		Random random = new Random(seed);
		int[] argb = new int[60 * 40];
		for (int i = 0; i < argb.length; i++) {
			argb[i] = random.nextInt() & 0xff000000;
		}
		Region region = traced(new Pixels(60, 40, argb), COARSE, ContourOptions.USUAL.without(0, 0)).region();
		assertTrue(region.pieces().size() > 20);
		assertEquals(region, traced(new Pixels(60, 40, argb), COARSE, ContourOptions.USUAL.without(0, 0)).region());
	}

	@Test
	void corneredPixelsAreJoinedByTheirMean() {
		int[] argb = { 0, 0, 0, 0, 0, 0xff000000, 0, 0, 0, 0, 0xff000000, 0, 0, 0, 0, 0 };
		assertEquals(1, traced(new Pixels(4, 4, argb), COARSE, ContourOptions.USUAL.without(0, 0)).region().pieces().size());
	}

	@Test
	void specksAndHolesAreLeftOutBySizeAndByArea() {
		Area shape = new Area(new Rectangle2D.Double(2, 2, 10, 10));
		shape.subtract(new Area(new Ellipse2D.Double(4, 4, 1, 1)));
		shape.subtract(new Area(new Ellipse2D.Double(7, 7, 3, 3)));
		shape.add(new Area(new Rectangle2D.Double(14, 4, 0.4, 3)));
		Pixels pixels = picture(shape);
		assertCounts(2, 2, region(pixels, ContourOptions.USUAL.without(0.5, 0)));
		assertCounts(2, 1, region(pixels, ContourOptions.USUAL.without(2, 0)));
		assertCounts(1, 0, region(pixels, ContourOptions.USUAL.without(3.5, 0)));
		assertCounts(1, 1, region(pixels, ContourOptions.USUAL.without(0, 1.5)));
		TracedContour none = traced(pixels, FINE, ContourOptions.USUAL.without(50, 0));
		assertEquals(List.of("nothing-to-trace"), none.remarks().stream().map(PictureRemark::id).toList());
		assertTrue(none.isBlocked() && none.region().isEmpty());
		assertTrue(none.remarks().get(0).text().contains("4 specks"), none.remarks().toString());
	}

	private static void assertCounts(int pieces, int holes, Region region) {
		assertEquals(pieces, region.pieces().size());
		assertEquals(holes, region.contours().size() - pieces);
	}

	@Test
	void borderGoesOutwardsAndInwards() {
		Pixels disc = picture(new Ellipse2D.Double(5, 5, 10, 10));
		for (double offset : new double[] { 2, -2 }) {
			double radius = 5 + offset;
			assertEquals(Math.PI * radius * radius, region(disc, ContourOptions.USUAL.moved(offset)).area(), 0.1);
		}
		TracedContour gone = traced(disc, FINE, ContourOptions.USUAL.moved(-6));
		assertEquals("nothing-left", gone.remarks().get(0).id());
	}

	@Test
	void onePieceOfSeveral() {
		Area shape = new Area(new Ellipse2D.Double(2, 2, 5, 5));
		shape.add(new Area(new Ellipse2D.Double(9, 3, 4, 4)));
		shape.add(new Area(new Rectangle2D.Double(4, 13, 6, 3)));
		Pixels pixels = picture(shape);
		Region apart = region(pixels, ContourOptions.USUAL);
		assertEquals(3, apart.pieces().size());
		Region one = region(pixels, ContourOptions.USUAL.inOnePiece(true));
		assertEquals(1, one.pieces().size());
		assertTrue(one.area() > apart.area());
		// all of the art is within
		assertEquals(apart.area(), Polygons.of(one, 1e-3).buffer(0.03).intersection(Polygons.of(apart, 1e-3)).getArea(), 0.05);
	}

	@Test
	void smoothingFillsWhatIsFinerThanTheDisc() {
		Area comb = new Area(new Rectangle2D.Double(3, 10, 14, 5));
		for (double x = 3; x < 17; x += 1) {
			comb.add(new Area(new Rectangle2D.Double(x, 8, 0.5, 3)));
		}
		Pixels pixels = picture(comb);
		Region rough = region(pixels, ContourOptions.USUAL);
		Region smooth = region(pixels, ContourOptions.USUAL.smoothed(1));
		assertTrue(smooth.perimeter() < 0.7 * rough.perimeter(), smooth.perimeter() + " of " + rough.perimeter());
	}

	@Test
	void shadowsOnTheBackgroundAreNoArt() {
		BufferedImage image = new BufferedImage(300, 200, BufferedImage.TYPE_INT_ARGB);
		Graphics2D graphics = image.createGraphics();
		Color paper = new Color(240, 228, 200);
		graphics.setColor(paper);
		graphics.fillRect(0, 0, 300, 200);
		graphics.setColor(new Color(paper.getRed() * 85 / 100, paper.getGreen() * 85 / 100, paper.getBlue() * 85 / 100));
		graphics.fillRect(60, 60, 160, 100);
		graphics.setColor(new Color(30, 90, 110));
		graphics.fillRect(50, 50, 150, 90);
		graphics.dispose();
		Pixels pixels = Drawing.pixels(image);
		double pixel = FINE.pixelWidth();
		assertEquals(150 * 90 * pixel * pixel, region(pixels, ContourOptions.USUAL.colours(6, 20)).area(), 0.3);
		assertEquals((150 * 90 + 160 * 100 - 140 * 80) * pixel * pixel,
				region(pixels, ContourOptions.USUAL.colours(6, 0)).area(), 0.3);
		assertEquals(Backdrop.colour(0xf0e4c8), traced(pixels, FINE, ContourOptions.USUAL).backdrop());
	}

	@Test
	void whatDiffersALittleIsArtOnlyBesideWhatDiffersClearly() {
		BufferedImage image = new BufferedImage(300, 200, BufferedImage.TYPE_INT_ARGB);
		Graphics2D graphics = image.createGraphics();
		graphics.setColor(Color.WHITE);
		graphics.fillRect(0, 0, 300, 200);
		// L* of 86: 14 from white
		graphics.setColor(new Color(0xd7d7d7));
		graphics.fillRect(200, 20, 40, 40);
		double pixel = FINE.pixelWidth();
		assertEquals(40 * 40 * pixel * pixel, region(Drawing.pixels(image), ContourOptions.USUAL).area(), 0.1);
		graphics.fillRect(60, 60, 50, 50);
		graphics.setColor(Color.BLACK);
		graphics.fillRect(70, 70, 50, 50);
		graphics.dispose();
		Region found = region(Drawing.pixels(image), ContourOptions.USUAL);
		assertEquals(1, found.pieces().size());
		assertEquals((2 * 50 * 50 - 40 * 40) * pixel * pixel, found.area(), 0.3);
	}

	@Test
	void backdropIsFoundOrGiven() {
		Pixels clear = picture(new Ellipse2D.Double(5, 5, 10, 10));
		assertEquals(Backdrop.TRANSPARENT, Backdrop.of(clear));
		int[] green = new int[100];
		Arrays.fill(green, 0xff20a040);
		TracedContour none = traced(new Pixels(10, 10, green), COARSE, ContourOptions.USUAL);
		assertTrue(none.isBlocked());
		assertTrue(none.remarks().get(0).text().contains("#20a040"), none.remarks().toString());
		TracedContour whole = traced(new Pixels(10, 10, green), COARSE, ContourOptions.USUAL.on(Backdrop.TRANSPARENT));
		assertEquals(100, whole.region().area(), 1e-6);
		assertEquals(List.of("nothing-transparent", "art-at-the-edge"),
				whole.remarks().stream().map(PictureRemark::id).toList());
		TracedContour invisible = traced(new Pixels(10, 10, new int[100]), COARSE, ContourOptions.USUAL);
		assertEquals(List.of("nothing-to-trace"), invisible.remarks().stream().map(PictureRemark::id).toList());
	}

	@Test
	void tracingTellsItsProgressAndCanBeCalledOff() {
		Pixels pixels = picture(blots(3));
		double[] last = { 0 };
		int[] asked = { 0 };
		ContourTracer.trace(pixels, FINE, ContourOptions.USUAL, new Monitor() {
			@Override
			public boolean isCancelled() {
				asked[0]++;
				return false;
			}

			@Override
			public void worked(double fraction) {
				assertTrue(fraction >= last[0] - 1e-9, fraction + " after " + last[0]);
				last[0] = fraction;
			}
		});
		assertEquals(1, last[0]);
		assertTrue(asked[0] > 100);
		for (int calls = 1; calls < asked[0]; calls += asked[0] / 7) {
			int[] left = { calls };
			assertThrows(CancellationException.class,
					() -> ContourTracer.trace(pixels, FINE, ContourOptions.USUAL, () -> --left[0] <= 0));
		}
	}
}
