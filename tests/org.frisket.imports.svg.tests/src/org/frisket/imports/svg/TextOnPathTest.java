package org.frisket.imports.svg;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

import javax.imageio.ImageIO;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Contour;
import org.frisket.geometry.Outline;
import org.frisket.geometry.Point;
import org.frisket.geometry.Segment;
import org.frisket.imports.ImportedArt;
import org.frisket.imports.ImportedShape;
import org.frisket.imports.UnreadableArtException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Text along paths: SVG 1.1, section 10.13, and SVG 2, section 11.8. */
class TextOnPathTest {

	private static final Path RENDERER = Path.of("/usr/bin/rasterizer");
	/** A circle of 30 about the middle of the sheet, from its top, to the right. */
	private static final String CIRCLE = "M50 20A30 30 0 0 1 50 80A30 30 0 0 1 50 20";
	private static final double RADIUS = 30;
	private static final double SIZE = 8;
	/** The capital I of DejaVu Sans, a plain bar, is 604 of 2048 units wide and stands in the middle of it. */
	private static final double WIDTH = SIZE * 604 / 2048;

	private static String text(String attributes, String textPath) {
		return "<text font-family='DejaVu Sans' font-size='" + SIZE + "' " + attributes + ">" + textPath + "</text>";
	}

	private static String onPath(String data, String attributes, String content) {
		return "<defs><path id='p' d='" + data + "'/></defs>"
				+ text("", "<textPath xlink:href='#p' " + attributes + ">" + content + "</textPath>");
	}

	private static Outline outline(String content) throws Exception {
		List<Contour> contours = new ArrayList<>();
		for (ImportedShape shape : Svg.shapes(Svg.read(Svg.sheet(content)))) {
			contours.addAll(((ImportedShape.Area) shape).outline().contours());
		}
		return new Outline(contours);
	}

	private static void assertSame(Outline expected, Outline found) {
		assertEquals(expected.contours().size(), found.contours().size());
		assertTrue(!expected.contours().isEmpty());
		for (int i = 0; i < expected.contours().size(); i++) {
			List<Segment> segments = expected.contours().get(i).segments();
			for (int k = 0; k < segments.size(); k++) {
				Point there = found.contours().get(i).segments().get(k).start();
				assertTrue(segments.get(k).start().distance(there) < 1e-6, segments.get(k).start() + " and " + there);
			}
		}
	}

	/** Where each bar stands: the middle of its foot. The outlines of bars begin there. */
	private static List<Point> feet(Outline bars, Point inside) {
		return bars.contours().stream().map(bar -> {
			List<Point> corners = bar.segments().stream().map(Segment::start)
					.sorted((a, b) -> Double.compare(b.distance(inside), a.distance(inside))).toList();
			assertEquals(4, corners.size());
			return corners.get(2).plus(corners.get(3)).times(0.5);
		}).toList();
	}

	@Test
	void alongAStraightLineItIsThePlainText() throws Exception {
		String[][] cases = { { "x='10' y='50'", "", "" }, { "x='17' y='50'", "startOffset='7'", "" },
				{ "x='30' y='50'", "startOffset='25%'", "" }, { "x='50' y='50'", "startOffset='50%' text-anchor='middle'", "" },
				{ "x='90' y='50'", "startOffset='100%' text-anchor='end'", "" },
				{ "x='10' y='50' letter-spacing='2' word-spacing='3'", "letter-spacing='2' word-spacing='3'", "" },
				{ "x='14' y='47'", "", "x='4' dy='-3'" }, { "x='15' y='48'", "", "dx='5' dy='-2'" },
				{ "x='18' y='50' xml:space='preserve'", "method='align' spacing='exact' startOffset='8' xml:space='preserve'", "" } };
		for (String[] one : cases) {
			String anchor = one[1].contains("'middle'") ? " text-anchor='middle'"
					: one[1].contains("'end'") ? " text-anchor='end'" : "";
			Outline plain = outline(text(one[0] + anchor, "Harbour Lane"));
			assertSame(plain, outline("<defs><path id='p' d='M10 50H90'/></defs>"
					+ text(one[2], "<textPath xlink:href='#p' " + one[1] + ">Harbour Lane</textPath>")));
			String blanks = one[1].contains("preserve") ? "" : "\n ";
			assertSame(plain, outline(text(one[2],
					"<textPath path='M10 50H90' " + one[1] + ">" + blanks + "Harbour Lane" + blanks + "</textPath>" + blanks)));
		}
		assertSame(outline(text("x='10' y='50'", "Har<tspan dy='-2' font-size='5'>bour</tspan>")),
				outline(onPath("M10 50H90", "", "Har<tspan dy='-2' font-size='5'>bour</tspan>")));
		assertSame(outline(text("x='10' y='50'", "Har<tspan x='40'>bour</tspan>")),
				outline(onPath("M10 50H90", "", "Har<tspan x='30' y='99'>bour</tspan>")));
	}

	/** Every letter's middle is on the circle as far along it as it is in the line, and upright on it. */
	@Test
	void alongACircleEveryLetterStandsOnItAndIsTurnedWithIt() throws Exception {
		for (double offset : new double[] { 0, 10, 47 }) {
			List<Point> feet = feet(outline(onPath(CIRCLE, "startOffset='" + offset + "' letter-spacing='1'", "IIIIIIIII")),
					new Point(50, 50));
			assertEquals(9, feet.size());
			for (int i = 0; i < feet.size(); i++) {
				double angle = (offset + i * (WIDTH + 1) + WIDTH / 2) / RADIUS;
				Point expected = new Point(50 + RADIUS * Math.sin(angle), 50 - RADIUS * Math.cos(angle));
				assertTrue(expected.distance(feet.get(i)) < 2e-3, expected + " and " + feet.get(i));
			}
		}
		for (Contour bar : outline(onPath(CIRCLE, "", "III")).contours()) {
			Bounds upright = bar.bounds();
			Point centre = upright.centre();
			Point out = centre.minus(new Point(50, 50)).unit();
			assertTrue(bar.segments().stream().map(s -> s.end().minus(s.start()).unit())
					.allMatch(edge -> Math.abs(edge.dot(out)) < 1e-3 || Math.abs(edge.cross(out)) < 1e-3));
		}
	}

	/**
	 * In closed form: the middle of a letter is as far round as the advances before it and half of its own, by the radius.
	 * Advances and heights of DejaVu Sans, in 2048ths, as python3-fonttools reads them from its table hmtx; by its table glyf
	 * the corners of H, I and N lie about the middle of the advance, so that their mean is there.
	 */
	@Test
	void alongACircleLettersAreAsFarRoundAsTheirAdvancesSay() throws Exception {
		Map<Character, Integer> advances = Map.of('H', 1540, 'I', 604, 'N', 1532);
		String letters = "HINNIHHNIINH".repeat(3);
		Point round = new Point(50, 50);
		for (String path : List.of("<path id='p' d='" + CIRCLE + "'/>", "<path id='p' d='" + cubics(50, RADIUS) + "'/>",
				"<circle id='p' cx='-50' cy='50' r='30' transform='rotate(-90)'/>")) {
			Outline found = outline("<defs>" + path + "</defs>" + text("", "<textPath xlink:href='#p'>" + letters + "</textPath>"));
			// a cubic for a quarter leaves the circle by 2.7e-4 of its radius, 0.008 here, and is longer than it
			double most = path.contains("A") || path.startsWith("<circle") ? 5e-3 : 3e-2;
			double along = 0;
			for (int i = 0; i < found.contours().size(); i++) {
				double advance = SIZE * advances.get(letters.charAt(i)) / 2048;
				double angle = (along + advance / 2) / RADIUS;
				along += advance;
				Point outwards = new Point(Math.sin(angle), -Math.cos(angle));
				Point centre = centre(found.contours().get(i)).minus(round);
				assertTrue(centre.dot(outwards) > RADIUS, path + ": letter " + i);
				assertEquals(0, outwards.cross(centre), most, path + ": letter " + i);
			}
			assertTrue(found.contours().size() == letters.length() && along > RADIUS * 5.5, "hardly once round: " + along);
		}
	}

	private static Point centre(Contour contour) {
		List<Point> corners = contour.segments().stream().map(Segment::start).toList();
		return corners.stream().reduce(Point.ORIGIN, Point::plus).times(1.0 / corners.size());
	}

	/** A circle from its top to the right, of four cubics: their handles are 4/3 tan(a/4) of the radius for an angle a. */
	private static String cubics(double middle, double r) {
		double h = r * 4 / 3 * Math.tan(Math.PI / 8);
		double b = r - h;
		return "M" + middle + " " + (middle - r) + "c" + h + " 0 " + r + " " + b + " " + r + " " + r + "s" + -b + " " + r + " "
				+ -r + " " + r + " " + -r + " " + -b + " " + -r + " " + -r + " " + b + " " + -r + " " + r + " " + -r + "z";
	}

	@Test
	void lettersWhoseMiddleIsBeyondTheEndsAreNotDrawn() throws Exception {
		assertEquals(5, outline(onPath("M10 50h" + 5.4 * WIDTH, "", "IIIIIIII")).contours().size());
		assertEquals(6, outline(onPath("M10 50h" + 5.6 * WIDTH, "", "IIIIIIII")).contours().size());
		assertEquals(6, outline(onPath("M10 50h80", "startOffset='" + -2.4 * WIDTH + "'", "IIIIIIII")).contours().size());
		assertEquals(4, outline(onPath("M10 50h80", "startOffset='100%' text-anchor='middle'", "IIIIIIII")).contours().size());
		assertEquals(0, Svg.shapes(Svg.read(Svg.sheet(onPath("M10 50h0", "", "II")))).size());
	}

	/** SVG 2: a closed path is gone round once from where the text is anchored; SVG 1.1 knows it as open. */
	@Test
	void closedPathsAreGoneRoundOnce() throws Exception {
		double round = 2 * Math.PI * RADIUS;
		int all = (int) (round / WIDTH + 0.5);
		String many = "I".repeat(all + 20);
		assertEquals(all, outline(onPath(CIRCLE + "z", "startOffset='70%'", many)).contours().size());
		assertEquals((int) (0.3 * round / WIDTH + 0.5), outline(onPath(CIRCLE, "startOffset='70%'", many)).contours().size());
		List<Point> feet = feet(outline(onPath(CIRCLE + "z", "text-anchor='middle'", "II")), new Point(50, 50));
		assertEquals(50 - WIDTH / 2, feet.get(0).x(), 0.01);
		assertEquals(50 + WIDTH / 2, feet.get(1).x(), 0.01);
		List<Point> before = feet(outline(onPath(CIRCLE + "z", "text-anchor='end'", "II")), new Point(50, 50));
		assertEquals(50 - WIDTH / 2, before.get(1).x(), 0.01);
	}

	@Test
	void theOtherSideRunsAgainstThePath() throws Exception {
		assertSame(outline(onPath("M90 50H10", "startOffset='5'", "Harbour")),
				outline(onPath("M10 50H90", "side='right' startOffset='5'", "Harbour")));
	}

	@Test
	void pathsOfAnyKindAreRunAlong() throws Exception {
		Outline plain = outline(text("x='30' y='50'", "Harbour"));
		String run = text("", "<textPath href='#p' startOffset='20'>Harbour</textPath>");
		assertSame(plain, outline("<line id='p' x1='10' y1='50' x2='90' y2='50' stroke='none'/>" + run));
		assertSame(plain, outline("<defs><path id='p' d='M0 0H40' transform='translate(10 50) scale(2)'/></defs>" + run));
		// a gap counts for nothing
		assertSame(plain, outline("<defs><path id='p' d='M10 20h10M20 50H90'/></defs>" + run));
		// its author's length
		assertSame(plain, outline("<defs><path id='p' pathLength='8' d='M10 50H90'/></defs>" + run.replace("'20'", "'2'")));
		assertSame(plain, outline("<defs><path id='p' pathLength='8' d='M10 50H90'/></defs>" + run.replace("'20'", "'25%'")));
		// whatever lies about the path does not move it
		assertSame(plain, outline("<g transform='scale(7)' fill='none'><path id='p' d='M10 50H90'/></g>" + run));
	}

	@Test
	void textThatFollowsBeginsAtTheEndOfThePath() throws Exception {
		Outline both = outline("<defs><path id='p' d='M10 50V20'/></defs>"
				+ text("", "<textPath href='#p'>I</textPath>I<tspan x='60' y='70'>I</tspan>"));
		double side = SIZE * 201 / 2048;
		assertEquals(10 + side, both.contours().get(1).bounds().minX(), 0.01);
		assertEquals(20, both.contours().get(1).bounds().maxY(), 1e-3);
		assertEquals(60 + side, both.contours().get(2).bounds().minX(), 0.01);
		assertEquals(70, both.contours().get(2).bounds().maxY(), 1e-3);
		// a second path begins anew
		assertSame(new Outline(List.of(outline(onPath("M10 50H90", "", "I")).contours().get(0),
				outline(onPath("M10 80H90", "", "I")).contours().get(0))),
				outline(text("", "<textPath path='M10 50H90'>I</textPath> <textPath path='M10 80H90'>I</textPath>")));
	}

	@Test
	void whatCannotBeRunAlongIsTold() throws Exception {
		String[][] cases = { { "<textPath href='#none'>a</textPath>", "“#none” is not in the file" },
				{ "<textPath href='other.svg#p'>a</textPath>", "lies outside the file" },
				{ "<textPath href='#g'>a</textPath>", "“#g” is no path or shape" }, { "<textPath>a</textPath>", "outside the file" },
				{ "<textPath path='M10 50H90' method='stretch'>a</textPath>", "not stretched" },
				{ "<textPath path='M10 50H x'>a</textPath>", "drawn up to the command before" } };
		for (String[] one : cases) {
			ImportedArt art = Svg.read(Svg.sheet("<g id='g'/>" + text("", one[0])));
			assertTrue(art.remarks().stream().anyMatch(remark -> remark.reason().contains(one[1])), art.remarks().toString());
			assertEquals(one[1].contains("stretched") ? 1 : 0, Svg.shapes(art).size(), one[0]);
		}
		assertEquals(0, Svg.shapes(Svg.read(Svg.sheet(text("",
				"<textPath path='M10 50H90' display='none'>a</textPath><textPath path='M10 50H90' visibility='hidden'>a</textPath>"))))
				.size());
	}

	/** The same long path for text after text: refused before all of it is measured again and again. */
	@Test
	void manyTextsOnALongPathAreRefused() {
		String svg = Svg.sheet("<defs><path id='p' d='M0 0" + "h1v1".repeat(100_000) + "'/></defs>"
				+ text("", "<textPath href='#p'>I</textPath>".repeat(1_000)));
		UnreadableArtException e = assertThrows(UnreadableArtException.class, () -> Svg.read(svg));
		assertTrue(e.getMessage().contains("million characters of path data"), e.getMessage());
	}

	/**
	 * The rules that both versions of SVG share, as Debian's Batik paints them. It runs along chords that are a hundredth of
	 * a pixel from the path, and takes its direction from them; so there are a hundred pixels to a mm. Pairs that are
	 * kerned are left out: whether a letter's middle is that of its kerned width is not said. Half a mm beside its place
	 * a letter has ten times as many pixels otherwise as are allowed. The circle is of cubics: of the arcs of path data
	 * Batik 1.16 makes curves that leave the circle by 0.45 % of its radius and are 0.27 % too short, so that its letters
	 * run ahead of where the advances put them.
	 */
	@Test
	void rendererPaintsTheSame(@TempDir Path folder) throws Exception {
		assumeTrue(Files.isExecutable(RENDERER), "libbatik-java is not installed");
		String wave = "M500 7000C3000 1000 7000 1000 9500 7000";
		List<String> drawings = List.of(onPath(wave, "", "Handbound"), onPath(wave, "startOffset='2000'", "Handbo"),
				onPath(wave, "startOffset='50%' text-anchor='middle'", "Handbo"),
				onPath(wave, "startOffset='100%' text-anchor='end'", "Handbo"),
				onPath(wave, "letter-spacing='300'", "Handbo"), onPath(wave, "startOffset='40%'", "Handbound"),
				onPath(wave, "", "Hand<tspan dy='-600' font-size='1200'>bo</tspan>und"),
				onPath(wave, "", "Ha<tspan dx='900'>nd</tspan>"),
				onPath("M1000 8000L5000 2000L9000 8000", "", "Handbound"), onPath(cubics(5000, 3000), "", "Handboundbound"),
				"<g transform='scale(1 .9) rotate(4)'>" + onPath(wave, "", "Handbound") + "</g>");
		List<String> command = new ArrayList<>(List.of(RENDERER.toString(), "-w", "" + Painting.PIXELS, "-h", "" + Painting.PIXELS,
				"-bg", "255.255.255.255", "-d", folder.toString()));
		for (int i = 0; i < drawings.size(); i++) {
			command.add(Files.writeString(folder.resolve(i + ".svg"), large(drawings.get(i))).toString());
		}
		Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
		String said = new String(process.getInputStream().readAllBytes());
		assertEquals(0, process.waitFor(), said);
		for (int i = 0; i < drawings.size(); i++) {
			Painting.assertSame(ImageIO.read(folder.resolve(i + ".png").toFile()), large(drawings.get(i)), 0.025);
		}
	}

	/** Letters that have enough pixels to be compared. */
	private static String large(String content) {
		return Svg.sheet(content.replace("font-size='" + SIZE + "'", "font-size='1600'"))
				.replace("0 0 100 100", "0 0 10000 10000");
	}
}
