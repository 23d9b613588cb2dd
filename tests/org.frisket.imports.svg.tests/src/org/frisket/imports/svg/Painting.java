package org.frisket.imports.svg;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.List;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Cubic;
import org.frisket.geometry.Segment;
import org.frisket.geometry.clean.FillRule;
import org.frisket.imports.ImportedShape;

/** Paints what was read, to be held against what a renderer paints of the same file. */
final class Painting {

	/** A side of the picture of a whole sheet. */
	static final int PIXELS = 800;

	private Painting() {
	}

	/** Pixel by pixel, and by the area that is covered, of which pixels at the edge have their part. */
	static void assertSame(BufferedImage expected, String svg) throws Exception {
		assertSame(expected, svg, 0.002);
	}

	/** @param most how many of the black pixels may be otherwise */
	static void assertSame(BufferedImage expected, String svg, double most) throws Exception {
		BufferedImage found = black(PIXELS, PIXELS, PIXELS / 100.0, Svg.shapes(Svg.read(svg, "strokes", "outlines")));
		long black = 0;
		long other = 0;
		double theirArea = 0;
		double ourArea = 0;
		for (int y = 0; y < PIXELS; y++) {
			for (int x = 0; x < PIXELS; x++) {
				int theirs = expected.getRaster().getSample(x, y, 0);
				int ours = found.getRaster().getSample(x, y, 0);
				black += theirs < 128 ? 1 : 0;
				other += Math.abs(theirs - ours) > 100 ? 1 : 0;
				theirArea += (255 - theirs) / 255.0;
				ourArea += (255 - ours) / 255.0;
			}
		}
		assertTrue(black > PIXELS * PIXELS / 100, "hardly anything is drawn: " + svg);
		assertTrue(other <= black * most, other + " of " + black + " pixels differ: " + svg);
		assertEquals(theirArea, ourArea, 0.005 * theirArea, "area in pixels: " + svg);
	}

	/** All areas in black on white. */
	static BufferedImage black(int width, int height, double pixelsPerMm, List<ImportedShape> shapes) {
		BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_BYTE_GRAY);
		Graphics2D g = image.createGraphics();
		g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
		g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
		g.setColor(Color.WHITE);
		g.fillRect(0, 0, width, height);
		g.setColor(Color.BLACK);
		g.scale(pixelsPerMm, pixelsPerMm);
		for (ImportedShape shape : shapes) {
			if (shape instanceof ImportedShape.Area area) {
				g.fill(path(area));
			} else if (shape instanceof ImportedShape.Picture picture) {
				Path2D box = new Path2D.Double(new Rectangle2D.Double(0, 0, 1, 1));
				box.transform(new AffineTransform(picture.place().a(), picture.place().b(), picture.place().c(),
						picture.place().d(), picture.place().e(), picture.place().f()));
				g.fill(box);
			}
		}
		g.dispose();
		return image;
	}

	private static Path2D path(ImportedShape.Area area) {
		Path2D path = new Path2D.Double(area.rule() == FillRule.EVEN_ODD ? Path2D.WIND_EVEN_ODD : Path2D.WIND_NON_ZERO);
		for (Contour contour : area.outline().contours()) {
			path.moveTo(contour.start().x(), contour.start().y());
			for (Segment segment : contour.segments()) {
				if (segment instanceof Cubic c) {
					path.curveTo(c.control1().x(), c.control1().y(), c.control2().x(), c.control2().y(), c.end().x(),
							c.end().y());
				} else {
					path.lineTo(segment.end().x(), segment.end().y());
				}
			}
			path.closePath();
		}
		return path;
	}
}
