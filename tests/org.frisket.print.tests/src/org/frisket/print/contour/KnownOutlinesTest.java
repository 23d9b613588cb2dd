package org.frisket.print.contour;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Color;
import java.awt.Font;
import java.awt.Shape;
import java.awt.font.FontRenderContext;
import java.awt.geom.AffineTransform;
import java.awt.geom.Area;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import java.awt.image.BufferedImage;
import java.awt.image.ConvolveOp;
import java.awt.image.Kernel;
import java.io.ByteArrayOutputStream;
import java.io.File;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;

import javax.imageio.ImageIO;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Polygons;
import org.frisket.geometry.Region;
import org.frisket.geometry.Segment;
import org.frisket.print.picture.PictureFile;
import org.frisket.print.picture.Pixels;
import org.frisket.print.picture.Resolution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Shapes whose outlines are known, drawn by Java's renderer and traced: how far the contour lies from what was drawn. */
class KnownOutlinesTest {

	private static final String FONT = "/usr/share/fonts/truetype/dejavu/DejaVuSans.ttf";
	/** In mm. */
	private static final double SHEET = 40;

	private static Region trace(Pixels pixels, double dpi, ContourOptions options) {
		TracedContour traced = ContourTracer.trace(pixels, Resolution.given(dpi), options, Monitor.NONE);
		assertTrue(!traced.isBlocked(), traced.remarks().toString());
		assertTrue(Polygons.of(traced.region(), 1e-4).isValid());
		return traced.region();
	}

	static Shape star(int points, double outer, double inner, double turn) {
		Path2D path = new Path2D.Double();
		for (int i = 0; i < 2 * points; i++) {
			double radius = i % 2 == 0 ? outer : inner;
			double angle = turn + Math.PI * i / points;
			double x = SHEET / 2 + radius * Math.cos(angle);
			double y = SHEET / 2 + radius * Math.sin(angle);
			if (i == 0) {
				path.moveTo(x, y);
			} else {
				path.lineTo(x, y);
			}
		}
		path.closePath();
		return path;
	}

	private static Shape turned(Shape shape, double degrees) {
		return AffineTransform.getRotateInstance(Math.toRadians(degrees), SHEET / 2, SHEET / 2)
				.createTransformedShape(shape);
	}

	static Shape letter(String text) throws Exception {
		Font font = Font.createFont(Font.TRUETYPE_FONT, new File(FONT)).deriveFont(32f);
		return font.createGlyphVector(new FontRenderContext(null, true, true), text).getOutline(5.3f, 33.7f);
	}

	private static Map<String, Shape> smooth() {
		Map<String, Shape> shapes = new LinkedHashMap<>();
		shapes.put("circle", new Ellipse2D.Double(4.13, 3.71, 31.7, 31.7));
		shapes.put("small circle", new Ellipse2D.Double(18.37, 17.91, 2.9, 2.9));
		shapes.put("ellipse", turned(new Ellipse2D.Double(3.3, 12.2, 33, 11), 23));
		Area ring = new Area(new Ellipse2D.Double(5, 5, 30, 30));
		ring.subtract(new Area(new Ellipse2D.Double(12.2, 13.1, 12, 14)));
		shapes.put("ring", ring);
		return shapes;
	}

	private static Map<String, Shape> cornered() {
		Map<String, Shape> shapes = new LinkedHashMap<>();
		shapes.put("square", turned(new Rectangle2D.Double(10.03, 10.07, 20, 20), 17));
		shapes.put("upright square", new Rectangle2D.Double(10.03, 10.07, 20, 20));
		shapes.put("hexagon", star(3, 14, 14, 0.2));
		shapes.put("star", star(5, 17, 8, 0.1));
		return shapes;
	}

	@ParameterizedTest
	@ValueSource(ints = { 150, 300, 600 })
	void smoothShapesAndLettersLieWithinAPartOfAPixel(int dpi) throws Exception {
		Map<String, Shape> shapes = smooth();
		shapes.put("rounded", turned(new RoundRectangle2D.Double(6, 9, 28, 22, 9, 9), 8));
		for (String letters : List.of("S", "R", "&", "a")) {
			shapes.put(letters, letter(letters));
		}
		for (Map.Entry<String, Shape> each : shapes.entrySet()) {
			Region region = trace(Drawing.draw(each.getValue(), SHEET, SHEET, dpi, Color.BLACK, null), dpi,
					ContourOptions.USUAL);
			List<Contour> truth = Drawing.contours(each.getValue());
			Accuracy accuracy = Accuracy.of(region, truth, Drawing.MM_PER_INCH / dpi);
			assertEquals(truth.size(), region.contours().size(), each.getKey());
			assertTrue(accuracy.rms() < 0.15, each.getKey() + " at " + dpi + ": " + accuracy);
			assertTrue(accuracy.hausdorff() < 1, each.getKey() + " at " + dpi + ": " + accuracy);
			assertTrue(Math.abs(accuracy.bias()) < 0.05, each.getKey() + " at " + dpi + ": " + accuracy);
		}
	}

	@ParameterizedTest
	@ValueSource(ints = { 150, 300, 600 })
	void polygonsKeepTheirCornersAndStraightEdges(int dpi) {
		for (Map.Entry<String, Shape> each : cornered().entrySet()) {
			Region region = trace(Drawing.draw(each.getValue(), SHEET, SHEET, dpi, Color.BLACK, null), dpi,
					ContourOptions.USUAL);
			Contour truth = Drawing.contours(each.getValue()).get(0);
			Accuracy accuracy = Accuracy.of(region, List.of(truth), Drawing.MM_PER_INCH / dpi);
			assertEquals(truth.nodeCount(), region.nodeCount(), each.getKey() + " at " + dpi);
			for (Segment segment : truth.segments()) {
				double off = region.contours().get(0).segments().stream().map(Segment::start)
						.mapToDouble(segment.start()::distance).min().orElseThrow();
				assertTrue(off < 0.25 * Drawing.MM_PER_INCH / dpi, each.getKey() + " at " + dpi + ": " + off);
			}
			assertTrue(accuracy.rms() < 0.06, each.getKey() + " at " + dpi + ": " + accuracy);
		}
	}

	@Test
	void artOnColourIsPlacedAsWellAsOnNothing() throws Exception {
		Shape letter = letter("R");
		double dpi = 300;
		for (Color[] pair : new Color[][] { { Color.BLACK, Color.WHITE }, { new Color(200, 40, 30), new Color(250, 244, 220) },
				{ new Color(240, 240, 255), new Color(20, 70, 60) }, { new Color(0, 90, 160), new Color(90, 160, 60) } }) {
			Region region = trace(Drawing.draw(letter, SHEET, SHEET, dpi, pair[0], pair[1]), dpi,
					ContourOptions.USUAL.holes(HoleRule.KEEP));
			Accuracy accuracy = Accuracy.of(region, Drawing.contours(letter), Drawing.MM_PER_INCH / dpi);
			assertTrue(accuracy.rms() < 0.15 && accuracy.hausdorff() < 1, accuracy.toString());
		}
	}

	@Test
	void whatIsEnclosedIsFilledUnlessItIsSeenThrough() throws Exception {
		Shape letter = letter("o");
		Pixels onWhite = Drawing.draw(letter, SHEET, SHEET, 300, Color.BLACK, Color.WHITE);
		assertEquals(1, trace(onWhite, 300, ContourOptions.USUAL).contours().size());
		assertEquals(2, trace(onWhite, 300, ContourOptions.USUAL.holes(HoleRule.KEEP)).contours().size());
		Pixels onNothing = Drawing.draw(letter, SHEET, SHEET, 300, Color.BLACK, null);
		assertEquals(2, trace(onNothing, 300, ContourOptions.USUAL).contours().size());
		assertEquals(1, trace(onNothing, 300, ContourOptions.USUAL.holes(HoleRule.FILL)).contours().size());
	}

	/** As pictures come from cameras and scanners: compressed with loss, out of focus, with noise. */
	@Test
	void spoiltPicturesAreTracedWithinAThirdOfAPixelOnTheAverage() throws Exception {
		Shape letter = letter("R");
		double dpi = 300;
		Pixels drawn = Drawing.draw(letter, SHEET, SHEET, dpi, new Color(30, 70, 90), new Color(250, 246, 236));
		BufferedImage image = new BufferedImage(drawn.width(), drawn.height(), BufferedImage.TYPE_INT_RGB);
		image.setRGB(0, 0, drawn.width(), drawn.height(), drawn.argb(), 0, drawn.width());
		ByteArrayOutputStream jpeg = new ByteArrayOutputStream();
		ImageIO.write(image, "jpeg", jpeg);
		assertWithinAThird("compressed", letter, dpi, PictureFile.of("R.jpg", jpeg.toByteArray()).pixels(Monitor.NONE));
		float[] blur = new float[25];
		Arrays.fill(blur, 1f / blur.length);
		BufferedImage soft = new ConvolveOp(new Kernel(5, 5, blur), ConvolveOp.EDGE_NO_OP, null).filter(image, null);
		assertWithinAThird("blurred", letter, dpi, Drawing.pixels(soft));
		Random random = new Random(5);
		for (int y = 0; y < soft.getHeight(); y++) {
			for (int x = 0; x < soft.getWidth(); x++) {
				int rgb = 0;
				for (int shift = 0; shift <= 16; shift += 8) {
					int value = (soft.getRGB(x, y) >> shift & 0xff) + (int) Math.round(4 * random.nextGaussian());
					rgb |= Math.max(0, Math.min(255, value)) << shift;
				}
				soft.setRGB(x, y, rgb);
			}
		}
		assertWithinAThird("noisy", letter, dpi, Drawing.pixels(soft));
	}

	private static void assertWithinAThird(String how, Shape letter, double dpi, Pixels pixels) {
		Region region = trace(pixels, dpi, ContourOptions.USUAL.holes(HoleRule.KEEP).colours(15, 0));
		List<Contour> truth = Drawing.contours(letter);
		Accuracy accuracy = Accuracy.of(region, truth, Drawing.MM_PER_INCH / dpi);
		assertEquals(truth.size(), region.contours().size(), how);
		assertTrue(accuracy.rms() < 0.3, how + " " + accuracy);
	}
}
