package org.frisket.imports.svg;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import javax.imageio.ImageIO;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is read covers the same pixels as what Debian's librsvg paints of the file. */
class SvgAgainstRendererTest {

	private static final Path RENDERER = Path.of("/usr/bin/rsvg-convert");

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

	private static void compare(String svg, Path folder) throws Exception {
		Path in = folder.resolve("in.svg");
		Path out = folder.resolve("out.png");
		Files.writeString(in, svg);
		Process process = new ProcessBuilder(RENDERER.toString(), "-w", "" + Painting.PIXELS, "-h", "" + Painting.PIXELS, "-b",
				"white", "-o", out.toString(), in.toString()).inheritIO().start();
		assertEquals(0, process.waitFor());
		Painting.assertSame(ImageIO.read(out.toFile()), svg);
	}
}
