package org.frisket.imports.svg;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Path2D;
import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

import javax.imageio.ImageIO;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Cubic;
import org.frisket.geometry.Segment;
import org.frisket.geometry.clean.FillRule;
import org.frisket.imports.ImportedShape;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is read covers the same pixels as what Debian's librsvg paints of the file. */
class SvgAgainstRendererTest {

	private static final Path RENDERER = Path.of("/usr/bin/rsvg-convert");
	private static final int PIXELS = 800;

	private static final List<String> DRAWINGS = List.of(
			// paths, all commands
			"<path d='M10 10h30v20h-30z m5 5v10h20v-10z' fill-rule='evenodd'/><path d='M50 20c10-20 20 20 30 0s5 25-10 30'/>"
					+ "<path d='M10 60q10-20 20 0t20 0t20 5L80 90 10 90z'/>",
			"<path d='M20 50a20 10 30 1 0 40-10a5 5 0 0 1 20 20z'/><path d='M70 90A8 20 -40 0 1 90 60z'/>",
			// shapes
			"<rect x='5' y='5' width='40' height='20' rx='6' ry='9'/><circle cx='70' cy='25' r='17'/>"
					+ "<ellipse cx='30' cy='60' rx='25' ry='12'/><polygon points='60,60 90,65 75,95'/>",
			// fill rules
			"<path d='M50 5L79 95L2 38H98L21 95z' fill-rule='evenodd'/>", "<path d='M50 5L79 95L2 38H98L21 95z'/>",
			// transforms
			"<g transform='translate(30 20) rotate(25)'><g transform='skewX(20) scale(1.5 .8)'><rect width='30' height='30'/>"
					+ "</g><rect x='-10' y='40' width='20' height='8' transform='matrix(.8 .3 -.2 1 20 5)'/></g>",
			"<g transform='rotate(30 50 50) skewY(-10)'><rect x='30' y='30' width='40' height='30'/></g>",
			// strokes
			"<g fill='none' stroke='black'><path d='M10 20L50 10L40 40' stroke-width='6'/>"
					+ "<path d='M60 20L95 15L70 45' stroke-width='5' stroke-linejoin='round' stroke-linecap='round'/>"
					+ "<path d='M10 60C30 40 40 90 60 60' stroke-width='4' stroke-linecap='square'/>"
					+ "<circle cx='75' cy='75' r='15' stroke-width='3' stroke-dasharray='6 3' stroke-dashoffset='2'/>"
					+ "<path d='M10 95L50 80L10 85' stroke-width='3' stroke-linejoin='bevel'/></g>",
			"<g transform='scale(2 1)'><path d='M5 20C20 0 30 60 45 30' fill='none' stroke='black' stroke-width='4'/></g>",
			// use, symbol, nested pictures
			"<defs><g id='g'><rect width='10' height='10'/><circle cx='15' cy='15' r='6'/></g>"
					+ "<symbol id='s' viewBox='0 0 20 10' preserveAspectRatio='xMinYMax slice'><circle cx='5' cy='5' r='4'/>"
					+ "</symbol></defs><use href='#g' x='5' y='5'/><use href='#g' transform='translate(60 20) scale(1.5)'/>"
					+ "<use href='#s' x='10' y='50' width='30' height='30'/>",
			"<svg x='10' y='10' width='50' height='30' viewBox='0 0 100 100'><circle cx='50' cy='50' r='60'/></svg>"
					+ "<svg x='10' y='50' width='50' height='40' viewBox='0 0 100 100' preserveAspectRatio='none'>"
					+ "<circle cx='50' cy='50' r='40'/></svg>",
			// clips and masks
			"<clipPath id='c'><circle cx='40' cy='40' r='25'/><rect x='60' y='60' width='20' height='20'/></clipPath>"
					+ "<g clip-path='url(#c)'><rect x='10' y='30' width='80' height='40'/></g>",
			"<clipPath id='o' clipPathUnits='objectBoundingBox'><circle cx='.5' cy='.5' r='.5'/></clipPath>"
					+ "<rect x='20' y='30' width='60' height='40' clip-path='url(#o)'/>",
			"<mask id='m'><rect width='100' height='100' fill='white'/><circle cx='50' cy='50' r='20' fill='black'/></mask>"
					+ "<rect x='10' y='10' width='80' height='80' mask='url(#m)'/>",
			// styles
			"<style>rect{fill:none} .on{fill:black} g .on{stroke:black;stroke-width:4}</style>"
					+ "<rect x='5' y='5' width='20' height='20'/><rect class='on' x='40' y='5' width='20' height='20'/>"
					+ "<g><rect class='on' x='40' y='60' width='20' height='20'/></g>",
			// visibility
			"<g visibility='hidden'><circle cx='20' cy='20' r='15'/><circle cx='60' cy='20' r='15' visibility='visible'/></g>"
					+ "<g display='none'><rect width='100' height='100'/></g>",
			// text
			"<text x='5' y='40' font-family='DejaVu Sans' font-size='18'>Harbour</text><text x='50' y='80' "
					+ "text-anchor='middle' font-family='DejaVu Sans' font-size='14' font-weight='bold'>La<tspan dy='6'>ne</tspan>"
					+ "</text>");

	@Test
	void drawingsCoverTheSamePixels(@TempDir Path folder) throws Exception {
		assumeTrue(Files.isExecutable(RENDERER), "librsvg2-bin is not installed");
		for (String drawing : DRAWINGS) {
			compare(Svg.sheet(drawing), folder);
		}
	}

	@Test
	void rulesOfTheSpecificationCoverTheSamePixels(@TempDir Path folder) throws Exception {
		assumeTrue(Files.isExecutable(RENDERER), "librsvg2-bin is not installed");
		for (List<String> chapter : List.of(Drawings.PATHS, Drawings.ARCS, Drawings.SHAPES, Drawings.FRAMES,
				Drawings.STRUCTURE, Drawings.STYLES, Drawings.STROKES, Drawings.CLIPS)) {
			for (String drawing : chapter) {
				compare(Svg.sheet(drawing), folder);
			}
		}
		for (String sheet : Drawings.SHEETS) {
			compare("<svg xmlns='http://www.w3.org/2000/svg' width='100mm' height='100mm' " + sheet + "</svg>", folder);
		}
	}

	/** Pixel by pixel, and by the area that is covered, of which pixels at the edge have their part. */
	private static void compare(String svg, Path folder) throws Exception {
		BufferedImage expected = rendered(svg, folder);
		BufferedImage found = painted(Svg.shapes(Svg.read(svg, "strokes", "outlines")));
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
		assertTrue(other <= black / 500, other + " of " + black + " pixels differ: " + svg);
		assertEquals(theirArea, ourArea, 0.005 * theirArea, "area in pixels: " + svg);
	}

	private static BufferedImage rendered(String svg, Path folder) throws Exception {
		Path in = folder.resolve("in.svg");
		Path out = folder.resolve("out.png");
		Files.writeString(in, svg);
		Process process = new ProcessBuilder(RENDERER.toString(), "-w", "" + PIXELS, "-h", "" + PIXELS, "-b", "white", "-o",
				out.toString(), in.toString()).inheritIO().start();
		assertEquals(0, process.waitFor());
		return ImageIO.read(out.toFile());
	}

	private static BufferedImage painted(List<ImportedShape> shapes) {
		BufferedImage image = new BufferedImage(PIXELS, PIXELS, BufferedImage.TYPE_BYTE_GRAY);
		Graphics2D g = image.createGraphics();
		g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
		g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
		g.setColor(Color.WHITE);
		g.fillRect(0, 0, PIXELS, PIXELS);
		g.setColor(Color.BLACK);
		g.scale(PIXELS / 100.0, PIXELS / 100.0);
		for (ImportedShape.Area area : areas(shapes)) {
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
			g.fill(path);
		}
		g.dispose();
		return image;
	}

	private static List<ImportedShape.Area> areas(List<ImportedShape> shapes) {
		List<ImportedShape.Area> areas = new ArrayList<>();
		for (ImportedShape shape : shapes) {
			areas.add((ImportedShape.Area) shape);
		}
		return areas;
	}
}
