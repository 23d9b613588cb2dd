package org.frisket.print.contour;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Area;
import java.awt.geom.Ellipse2D;
import java.awt.geom.PathIterator;
import java.awt.geom.Rectangle2D;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.frisket.geometry.Contour;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Region;
import org.frisket.print.picture.PictureFile;
import org.junit.jupiter.api.Test;

/** Vectors have their edge where it is: the contour of SVG and PDF of a card's size, against the shapes that they were made of. */
class DrawnOutlinesTest {

	/** Of a card, mm. */
	private static final double WIDTH = 85;
	private static final double HEIGHT = 55;
	/** Of the furthest place of the contour, mm. */
	private static final double NEAR = 0.01;

	private static Map<String, Shape> shapes() throws Exception {
		Map<String, Shape> shapes = new LinkedHashMap<>();
		shapes.put("circle", new Ellipse2D.Double(20.13, 8.71, 41.3, 41.3));
		Area ring = new Area(new Ellipse2D.Double(5, 5, 71, 45));
		ring.subtract(new Area(new Ellipse2D.Double(22.2, 13.1, 32, 24)));
		shapes.put("ring", ring);
		shapes.put("polygon", AffineTransform.getTranslateInstance(22, 7).createTransformedShape(
				KnownOutlinesTest.star(5, 26, 12, 0.1)));
		Area cross = new Area(new Rectangle2D.Double(30.03, 4.07, 21.2, 46.3));
		cross.add(new Area(new Rectangle2D.Double(11.4, 17.77, 60.1, 17.9)));
		shapes.put("cross", cross);
		shapes.put("letters", KnownOutlinesTest.letter("Sa&"));
		return shapes;
	}

	@Test
	void edgesOfSvgAreFound() throws Exception {
		for (Map.Entry<String, Shape> each : shapes().entrySet()) {
			StringBuilder data = new StringBuilder();
			path(each.getValue(), (svg, pdf, c) -> {
				data.append(svg);
				for (double number : c) {
					data.append(String.format(Locale.ROOT, " %.6f", number));
				}
			});
			String file = "<svg xmlns='http://www.w3.org/2000/svg' width='85mm' height='55mm' viewBox='0 0 85 55'>"
					+ "<path fill-rule='evenodd' fill='#1f5060' d='" + data + "'/></svg>";
			assertNear(each, PictureFile.of("card.svg", file.getBytes(StandardCharsets.UTF_8)));
		}
	}

	@Test
	void edgesOfPdfAreFound() throws Exception {
		for (Map.Entry<String, Shape> each : shapes().entrySet()) {
			assertNear(each, PictureFile.of("card.pdf", pdf(each.getValue())));
		}
	}

	private static void assertNear(Map.Entry<String, Shape> shape, PictureFile file) throws Exception {
		Region region = ContourTracer.trace(file.pixels(Monitor.NONE), file.resolution(), ContourOptions.USUAL, Monitor.NONE).region();
		List<Contour> truth = Drawing.contours(shape.getValue());
		assertEquals(truth.size(), region.contours().size(), shape.getKey());
		Accuracy accuracy = Accuracy.of(region, truth, NEAR);
		String found = shape.getKey() + " as " + file.format() + " in units of " + NEAR + " mm: " + accuracy;
		assertTrue(accuracy.hausdorff() < 1, found);
		assertTrue(Math.abs(accuracy.bias()) < 0.1, found);
		assertTrue(Math.abs(accuracy.area()) < 1e-4, found);
	}

	private interface Path {
		void to(String svg, String pdf, double... coordinates) throws IOException;
	}

	private static void path(Shape shape, Path path) throws IOException {
		double[] c = new double[6];
		double x = 0;
		double y = 0;
		for (PathIterator i = shape.getPathIterator(null); !i.isDone(); i.next()) {
			switch (i.currentSegment(c)) {
			case PathIterator.SEG_MOVETO -> path.to("M", "m", c[0], c[1]);
			case PathIterator.SEG_LINETO -> path.to("L", "l", c[0], c[1]);
			case PathIterator.SEG_QUADTO -> path.to("C", "c", x + 2 * (c[0] - x) / 3, y + 2 * (c[1] - y) / 3,
					c[2] + 2 * (c[0] - c[2]) / 3, c[3] + 2 * (c[1] - c[3]) / 3, c[2], c[3]);
			case PathIterator.SEG_CUBICTO -> path.to("C", "c", c);
			default -> path.to("Z", "h");
			}
			int last = switch (i.currentSegment(c)) {
			case PathIterator.SEG_QUADTO -> 2;
			case PathIterator.SEG_CUBICTO -> 4;
			default -> 0;
			};
			x = c[last];
			y = c[last + 1];
		}
	}

	private static byte[] pdf(Shape shape) throws IOException {
		float unit = 72 / 25.4f;
		try (PDDocument document = new PDDocument()) {
			PDPage page = new PDPage(new PDRectangle((float) WIDTH * unit, (float) HEIGHT * unit));
			document.addPage(page);
			try (PDPageContentStream stream = new PDPageContentStream(document, page)) {
				stream.setNonStrokingColor(0.1f, 0.3f, 0.4f);
				path(shape, (svg, pdf, c) -> {
					float[] at = new float[c.length];
					for (int i = 0; i < c.length; i++) {
						at[i] = (float) (unit * (i % 2 == 0 ? c[i] : HEIGHT - c[i]));
					}
					switch (pdf) {
					case "m" -> stream.moveTo(at[0], at[1]);
					case "l" -> stream.lineTo(at[0], at[1]);
					case "c" -> stream.curveTo(at[0], at[1], at[2], at[3], at[4], at[5]);
					default -> stream.closePath();
					}
				});
				stream.fillEvenOdd();
			}
			ByteArrayOutputStream out = new ByteArrayOutputStream();
			document.save(out);
			return out.toByteArray();
		}
	}
}
