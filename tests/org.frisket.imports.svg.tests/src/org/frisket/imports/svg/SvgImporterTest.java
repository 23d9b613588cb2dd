package org.frisket.imports.svg;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Base64;
import java.util.List;
import java.util.Random;
import java.util.zip.GZIPOutputStream;

import javax.imageio.ImageIO;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Outline;
import org.frisket.geometry.Point;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.clean.OutlineCleaner;
import org.frisket.imports.ImportedArt;
import org.frisket.imports.ImportSource;
import org.frisket.geometry.options.OptionValues;
import org.frisket.imports.ImportedLayer;
import org.frisket.imports.LargestFile;
import org.frisket.imports.ImportedShape;
import org.frisket.imports.Remark;
import org.frisket.imports.UnreadableArtException;
import org.junit.jupiter.api.Test;

class SvgImporterTest {

	private static double area(ImportedShape shape) {
		ImportedShape.Area area = (ImportedShape.Area) shape;
		return new OutlineCleaner().clean(area.outline(), area.rule(), new Tolerance(0.001), Monitor.NONE).region().area();
	}

	private static double area(String content, String... options) throws Exception {
		return Svg.shapes(Svg.read(Svg.sheet(content), options)).stream().mapToDouble(SvgImporterTest::area).sum();
	}

	private static Outline lines(String content) throws Exception {
		List<ImportedShape> shapes = Svg.shapes(Svg.read(Svg.sheet(content)));
		assertEquals(1, shapes.size());
		return ((ImportedShape.Lines) shapes.get(0)).outline();
	}

	private static void assertBox(double minX, double minY, double maxX, double maxY, Bounds bounds) {
		assertEquals(minX, bounds.minX(), 1e-3);
		assertEquals(minY, bounds.minY(), 1e-3);
		assertEquals(maxX, bounds.maxX(), 1e-3);
		assertEquals(maxY, bounds.maxY(), 1e-3);
	}

	@Test
	void lengthsComeOutInMillimetres() throws Exception {
		String[][] widths = { { "25.4mm", "25.4" }, { "1in", "25.4" }, { "96px", "25.4" }, { "96", "25.4" },
				{ "72pt", "25.4" }, { "6pc", "25.4" }, { "2.54cm", "25.4" }, { "101.6q", "25.4" } };
		for (String[] width : widths) {
			ImportedArt art = Svg.read("<svg xmlns='http://www.w3.org/2000/svg' width='200mm' height='100mm'><rect width='"
					+ width[0] + "' height='10mm'/></svg>");
			Outline box = ((ImportedShape.Area) Svg.shapes(art).get(0)).outline();
			assertBox(0, 0, Double.parseDouble(width[1]), 10, box.bounds());
			assertBox(0, 0, 200, 100, art.page());
		}
	}

	@Test
	void oldFilesCountNinetyOrSeventyTwoPixels() throws Exception {
		String text = "<svg xmlns='http://www.w3.org/2000/svg' width='900' height='90'><rect width='90' height='90'/></svg>";
		for (int perInch : new int[] { 96, 90, 72 }) {
			Outline box = ((ImportedShape.Area) Svg.shapes(Svg.read(text, "pixels-per-inch", "" + perInch)).get(0)).outline();
			double side = 90 * 25.4 / perInch;
			assertBox(0, 0, side, side, box.bounds());
		}
	}

	@Test
	void shapesHaveTheirAreas() throws Exception {
		assertEquals(200, area("<rect x='5' y='5' width='20' height='10'/>"), 1e-6);
		assertEquals(200 - (4 - Math.PI) * 4, area("<rect x='5' y='5' width='20' height='10' rx='2'/>"), 0.01);
		assertEquals(200 - (4 - Math.PI) * 50, area("<rect width='20' height='10' rx='30' ry='30'/>"), 0.02);
		assertEquals(Math.PI * 100, area("<circle cx='50' cy='50' r='10'/>"), 0.05);
		assertEquals(Math.PI * 50, area("<ellipse cx='50' cy='50' rx='10' ry='5'/>"), 0.05);
		assertEquals(6, area("<polygon points='0,0 4,0 0,3'/>"), 1e-9);
		assertEquals(6, area("<polyline points='0,0 4,0 0,3'/>"), 1e-9);
		assertEquals(0, Svg.shapes(Svg.read(Svg.sheet("<line x1='0' y1='0' x2='9' y2='9'/><rect width='-3' height='4'/>"
				+ "<circle r='-2'/>"))).size());
	}

	/** SVG 1.1, section 8.3.9 gives this path as its example of arcs; two sectors of a disc of radius 150. */
	@Test
	void arcsOfTheSpecificationsExample() throws Exception {
		double found = area("<g transform='scale(0.1)'><path d='M300,200 h-150 a150,150 0 1,0 150,-150 z'/>"
				+ "<path d='M275,175 v-150 a150,150 0 0,0 -150,150 z'/></g>");
		assertEquals(Math.PI * 15 * 15, found, 0.1);
	}

	@Test
	void whatIsOnlyDrawnAlongIsLines() throws Exception {
		Outline line = lines("<path d='M1 2L3 4' fill='none' stroke='red' stroke-width='2'/>");
		assertEquals(new Point(1, 2), line.contours().get(0).start());
		assertTrue(lines("<rect width='3' height='3' fill='none' stroke='#000'/>").contours().get(0).isClosed());
		ImportedShape.Lines shape = (ImportedShape.Lines) Svg
				.shapes(Svg.read(Svg.sheet("<g transform='scale(2)'><line x2='3' stroke='red' stroke-width='2'/></g>"))).get(0);
		assertEquals(4, shape.width(), 1e-9);
		assertEquals("#ff0000", shape.colour());
		assertEquals(1, Svg.shapes(Svg.read(Svg.sheet("<rect width='3' height='3' stroke='red'/>"))).size());
	}

	@Test
	void strokesMayBecomeOutlines() throws Exception {
		String[] outlines = { "strokes", "outlines" };
		assertEquals(20, area("<line x1='5' y1='5' x2='15' y2='5' stroke='red' stroke-width='2'/>", outlines), 1e-3);
		assertEquals(20 + Math.PI,
				area("<line x1='5' y1='5' x2='15' y2='5' stroke='red' stroke-width='2' stroke-linecap='round'/>", outlines),
				0.01);
		assertEquals(10, area("<line x1='5' y1='5' x2='15' y2='5' stroke='red' stroke-width='2' stroke-dasharray='1'/>",
				outlines), 1e-2);
		assertEquals(Math.PI * (121 - 81),
				area("<circle cx='50' cy='50' r='10' fill='none' stroke='red' stroke-width='2'/>", outlines), 0.05);
	}

	/** SVG 1.1, section 11.4: a subpath without length has its caps, and only them; a move alone is no subpath. */
	@Test
	void dotsOfThePenAreKept() throws Exception {
		String[] outlines = { "strokes", "outlines" };
		for (String shape : List.of("<path d='M5 5z' %s/>", "<path d='M5 5h0' %s/>", "<path d='M5 5c0 0 0 0 0 0' %s/>",
				"<path d='M5 5a3 3 0 0 1 0 0' %s/>", "<path d='M5 5q0 0 0 0zz' %s/>", "<path d='M5 5zM9 9' %s/>",
				"<path d='M5 5zL' %s/>", "<line x1='5' y1='5' x2='5' y2='5' %s/>", "<polyline points='5 5 5 5' %s/>",
				"<polygon points='5 5' %s/>")) {
			String pen = "stroke='red' stroke-width='2' stroke-linecap=";
			assertEquals(Math.PI, area(String.format(shape, pen + "'round'"), outlines), 0.01, shape);
			assertEquals(4, area(String.format(shape, pen + "'square'"), outlines), 1e-6, shape);
			assertEquals(0, area(String.format(shape, pen + "'butt'"), outlines), shape);
			assertEquals(0, area(String.format(shape, "stroke-linecap='round'"), outlines), shape);
			assertEquals(0, Svg.shapes(Svg.read(Svg.sheet(String.format(shape, pen + "'round'")))).size(), shape);
		}
		String[] none = { "<polygon points='' %s/>", "<path d='M5 5' %s/>", "<path d='M5 5M9 9' %s/>", "<path d='' %s/>" };
		for (String shape : none) {
			assertEquals(0, area(String.format(shape, "stroke='red' stroke-linecap='round'"), outlines), shape);
		}
		String both = "<path d='M5 5zM20 5h10M5 40' fill='none' stroke='red' stroke-width='2' stroke-linecap='round'/>";
		assertEquals(2 * Math.PI + 20, area(both, outlines), 0.02);
		String many = Svg.sheet("<path d='" + "M1 1z".repeat(1_100_000) + "' stroke='red' stroke-linecap='round'/>");
		UnreadableArtException e = assertThrows(UnreadableArtException.class, () -> Svg.read(many, outlines));
		assertTrue(e.getMessage().contains("more than 4 million nodes"), e.getMessage());
	}

	@Test
	void transformsWorkFromTheRight() throws Exception {
		Outline line = lines("<path transform='translate(10,20) rotate(90) scale(2,3)' d='M0 0L1 1' fill='none' stroke='red'/>");
		Point end = line.contours().get(0).end();
		assertEquals(10 - 3, end.x(), 1e-9);
		assertEquals(20 + 2, end.y(), 1e-9);
		Point turned = lines("<path transform='rotate(90 5 5)' d='M5 5L10 5' fill='none' stroke='red'/>").contours().get(0)
				.end();
		assertEquals(5, turned.x(), 1e-9);
		assertEquals(10, turned.y(), 1e-9);
	}

	@Test
	void styleSheetsWeighMoreThanAttributesAndLessThanStyles() throws Exception {
		String sheet = "<style>/* weights */ rect{fill:none} .a{fill:red} #b{fill:blue} g > .c{fill:lime}"
				+ " g rect.d{fill:none !important} @import url(http://example.invalid/x.css); rect:hover{fill:none}</style>";
		ImportedArt art = Svg.read(Svg.sheet(sheet + "<g><rect width='1' height='1' fill='red'/>"
				+ "<rect class='x a' width='1' height='1'/><rect class='a' id='b' width='1' height='1'/>"
				+ "<rect class='c' width='1' height='1'/><rect class='d' style='fill:red' width='1' height='1'/>"
				+ "<rect class='c' style='fill:#123' width='1' height='1'/></g>"));
		assertEquals(List.of("#ff0000", "#0000ff", "#00ff00", "#112233"),
				Svg.shapes(art).stream().map(shape -> ((ImportedShape.Area) shape).colour()).toList());
		assertTrue(art.remarks().stream().anyMatch(remark -> remark.reason().contains("hover")), art.remarks().toString());
	}

	@Test
	void whatIsHiddenIsNotRead() throws Exception {
		assertEquals(1, area("<g display='none'><rect width='5' height='5'/></g><g visibility='hidden'>"
				+ "<rect width='5' height='5'/><rect visibility='visible' width='1' height='1'/></g>"
				+ "<defs><rect width='9' height='9'/></defs><symbol id='s'><rect width='9' height='9'/></symbol>"), 1e-9);
	}

	@Test
	void usesAndSymbolsAreDrawnWhereTheyAreUsed() throws Exception {
		ImportedArt art = Svg.read(Svg.sheet("<defs><rect id='r' width='2' height='2'/>"
				+ "<symbol id='s' viewBox='0 0 10 10'><circle cx='5' cy='5' r='5'/></symbol></defs>"
				+ "<use xlink:href='#r' x='10' y='20'/><use href='#s' x='50' y='50' width='20' height='20'/>"));
		List<ImportedShape> shapes = Svg.shapes(art);
		assertBox(10, 20, 12, 22, ((ImportedShape.Area) shapes.get(0)).outline().bounds());
		assertBox(50, 50, 70, 70, ((ImportedShape.Area) shapes.get(1)).outline().bounds());
	}

	/** SVG 1.1, sections 5.6, 14.3.5 and 9.7: rules that the renderer we compare with does not keep. */
	@Test
	void rulesThatRenderersLeave() throws Exception {
		assertEquals(400 + 2500, area("<svg id='n' width='20' height='20' viewBox='0 0 1 1'><rect width='1' height='1'/></svg>"
				+ "<use href='#n' x='40' y='40' width='50' height='50'/>"), 1e-6);
		assertEquals(Math.PI * 25, area("<symbol id='s'><circle r='10'/></symbol><use href='#s' x='30' y='30'/>"), 0.05);
		assertEquals(Math.PI * 25, area("<clipPath id='c' clip-path='url(#d)'><circle cx='50' cy='50' r='10'/></clipPath>"
				+ "<clipPath id='d'><rect width='50' height='50'/></clipPath><rect width='100' height='100' clip-path='url(#c)'/>"),
				0.05);
		assertEquals(3200, area("<polygon points='10 10 90 10 50 90 33'/>"), 1e-6);
	}

	@Test
	void whatIsForOthersIsNotRead() throws Exception {
		String language = java.util.Locale.getDefault().getLanguage();
		assertEquals(1, area("<rect width='9' height='9' systemLanguage='xx'/><rect width='9' height='9' "
				+ "requiredExtensions='http://example.invalid/x'/><rect width='1' height='1' systemLanguage='xx, " + language
				+ "'/>"), 1e-9);
	}

	/** More than the limit is refused before it is opened, and more curves than memory can hold before they are made. */
	@Test
	void largeFilesAreBounded() throws Exception {
		ImportSource huge = new ImportSource() {
			@Override
			public String name() {
				return "leaf.svg";
			}

			@Override
			public long size() {
				return LargestFile.BYTES + 1;
			}

			@Override
			public InputStream open() {
				throw new AssertionError("not to be opened");
			}
		};
		SvgImporter importer = new SvgImporter();
		UnreadableArtException e = assertThrows(UnreadableArtException.class,
				() -> importer.read(huge, OptionValues.defaults(importer.options()), Monitor.NONE));
		assertTrue(e.getMessage().contains("up to 64 MB"), e.getMessage());
		byte[] path = Svg.sheet("<path d='" + "M1 1H2V2Z".repeat((50 << 20) / 9) + "'/>").getBytes(StandardCharsets.UTF_8);
		e = assertThrows(UnreadableArtException.class, () -> Svg.read(path));
		assertTrue(e.getMessage().contains("16 million characters of path data"), e.getMessage());
	}

	/** As {@code .svgz} is: SVG 1.1, section 1.2 of its conformance. What unpacks to more than the limit is refused. */
	@Test
	void packedFilesAreReadAndBounded() throws Exception {
		byte[] packed = packed(Svg.sheet("<rect width='3' height='4'/>").getBytes(StandardCharsets.UTF_8), 1);
		assertEquals(12, Svg.shapes(Svg.read(packed)).stream().mapToDouble(SvgImporterTest::area).sum(), 1e-9);
		byte[] bomb = packed(new byte[1 << 20], 65);
		UnreadableArtException e = assertThrows(UnreadableArtException.class, () -> Svg.read(bomb));
		assertTrue(e.getMessage().contains("has 65 MB; up to 64 MB"), e.getMessage());
		for (int length = 2; length < packed.length; length++) {
			byte[] torn = Arrays.copyOf(packed, length);
			e = assertThrows(UnreadableArtException.class, () -> Svg.read(torn));
			assertTrue(e.getMessage().startsWith("leaf.svg: its packing is damaged"), e.getMessage());
		}
	}

	private static byte[] packed(byte[] bytes, int times) throws IOException {
		ByteArrayOutputStream out = new ByteArrayOutputStream();
		try (GZIPOutputStream zip = new GZIPOutputStream(out)) {
			for (int i = 0; i < times; i++) {
				zip.write(bytes);
			}
		}
		return out.toByteArray();
	}

	/** Small files that would draw millions: elements that are no nested use, letters, dashes. */
	@Test
	void whatIsDrawnIsBounded() throws Exception {
		String svg = Svg.sheet("<text id='t' font-size='1'>" + "o".repeat(20_000) + "</text>" + "<use href='#t'/>".repeat(30));
		UnreadableArtException e = assertThrows(UnreadableArtException.class, () -> Svg.read(svg));
		assertTrue(e.getMessage().contains("more than 4 million nodes"), e.getMessage());
		String elements = Svg.sheet("<g/>".repeat(TreeReader.MOST_ELEMENTS));
		e = assertThrows(UnreadableArtException.class, () -> Svg.read(elements));
		assertTrue(e.getMessage().contains("more than 1000000 elements"), e.getMessage());
		ImportedArt art = Svg.read(Svg.sheet("<path d='M0 0H1e8' stroke='red' stroke-dasharray='.1'/>"), "strokes", "outlines");
		assertEquals(1, Svg.shapes(art).size());
		assertTrue(art.remarks().get(0).reason().contains("more than 100000 dashes"), art.remarks().toString());
	}

	/** SVG 1.1, section 14.3.5: shapes in a clip path count as they are, however they are painted. */
	@Test
	void whatClipsNeedNotBePainted() throws Exception {
		assertEquals(16, area("<clipPath id='c'><rect width='4' height='4' fill='none' stroke='red' stroke-width='3'/></clipPath>"
				+ "<rect width='50' height='50' clip-path='url(#c)'/>", "strokes", "outlines"), 0.02);
	}

	@Test
	void filesThatBreakOffAreRefusedWherever() throws Exception {
		byte[] whole = Svg.sheet("<style>.a{fill:red}</style><g transform='scale(2)'><path class='a' d='M0 0H9V9z'/></g>")
				.getBytes(StandardCharsets.UTF_8);
		for (int length = 0; length < whole.length; length++) {
			byte[] torn = Arrays.copyOf(whole, length);
			UnreadableArtException e = assertThrows(UnreadableArtException.class, () -> Svg.read(torn));
			assertTrue(e.getMessage().startsWith("leaf.svg"), e.getMessage());
		}
	}

	@Test
	void nestedPicturesAreFittedAndCut() throws Exception {
		assertEquals(50, area("<svg x='10' y='10' width='10' height='5'><rect x='-5' y='-5' width='90' height='90'/></svg>"),
				1e-2);
		ImportedArt art = Svg.read(Svg.sheet("<svg x='10' y='10' width='20' height='10' viewBox='0 0 10 10'>"
				+ "<rect width='10' height='10'/></svg>"));
		assertBox(15, 10, 25, 20, ((ImportedShape.Area) Svg.shapes(art).get(0)).outline().bounds());
	}

	@Test
	void clipPathsAndMasksCut() throws Exception {
		String disc = "<clipPath id='c'><circle cx='50' cy='50' r='10'/></clipPath>";
		assertEquals(Math.PI * 100, area(disc + "<rect width='100' height='100' clip-path='url(#c)'/>"), 0.1);
		assertEquals(Math.PI * 50, area(disc + "<g clip-path='url(#c)'><rect width='50' height='100'/></g>"), 0.1);
		assertEquals(25, area("<clipPath id='h' clipPathUnits='objectBoundingBox'><rect width='.5' height='.5'/></clipPath>"
				+ "<rect x='7' y='7' width='10' height='10' clip-path='url(#h)'/>"), 0.02);
		assertEquals(100 - Math.PI * 9, area("<mask id='m'><rect width='50' height='50' fill='white'/>"
				+ "<circle cx='5' cy='5' r='3' fill='black'/></mask><rect width='10' height='10' mask='url(#m)'/>"), 0.05);
		Outline line = lines(disc + "<line x1='0' y1='50' x2='100' y2='50' stroke='red' clip-path='url(#c)'/>");
		assertBox(40, 50, 60, 50, line.bounds());
	}

	@Test
	void groupsAreLayers() throws Exception {
		String groups = "<g id='front'><rect width='1' height='1'/></g><g><title>Back</title><rect width='1' height='1'/></g>";
		assertEquals(List.of("front", "Back"),
				Svg.read(Svg.sheet(groups)).layers().stream().map(ImportedLayer::name).toList());
		assertEquals(List.of("front", "Back"),
				Svg.read(Svg.sheet("<g transform='scale(2)'>" + groups + "</g>")).layers().stream().map(ImportedLayer::name)
						.toList());
		assertEquals(List.of("Shapes", "front", "Back"),
				Svg.read(Svg.sheet("<rect width='1' height='1'/>" + groups + "<rect width='1' height='1'/>")).layers().stream()
						.map(ImportedLayer::name).toList());
	}

	@Test
	void textFallsToOutlinesInItsFont() throws Exception {
		ImportedArt art = Svg.read(Svg.sheet("<text x='10' y='50' font-family='DejaVu Sans' font-size='20'>HI</text>"));
		Bounds bounds = ((ImportedShape.Area) Svg.shapes(art).get(0)).outline().bounds();
		// the capital H of DejaVu Sans is 1493 of 2048 units high, its left edge at 201
		assertEquals(50, bounds.maxY(), 1e-3);
		assertEquals(20 * 1493 / 2048.0, bounds.height(), 1e-3);
		assertEquals(10 + 20 * 201 / 2048.0, bounds.minX(), 1e-2);
		ImportedArt middle = Svg.read(Svg.sheet("<text x='50' y='50' text-anchor='middle' font-size='20'>HIH</text>"));
		Bounds centred = ((ImportedShape.Area) Svg.shapes(middle).get(0)).outline().bounds();
		assertEquals(50, (centred.minX() + centred.maxX()) / 2, 0.05);
		ImportedArt missing = Svg.read(Svg.sheet("<text y='50' font-family='Nowhere Gothic'>a</text>"));
		assertTrue(missing.remarks().get(0).reason().contains("Nowhere Gothic"), missing.remarks().toString());
		assertEquals(1, Svg.shapes(missing).size());
	}

	@Test
	void picturesStayPictures() throws Exception {
		BufferedImage image = new BufferedImage(4, 2, BufferedImage.TYPE_INT_RGB);
		ByteArrayOutputStream png = new ByteArrayOutputStream();
		ImageIO.write(image, "png", png);
		String data = Base64.getEncoder().encodeToString(png.toByteArray());
		ImportedArt art = Svg.read(Svg.sheet("<image x='10' y='10' width='20' height='20' href='data:image/png;base64,"
				+ data + "'/><image href='http://example.invalid/a.png'/><image href='data:image/png;base64,AAAA'/>"));
		ImportedShape.Picture picture = (ImportedShape.Picture) Svg.shapes(art).get(0);
		assertArrayEquals(png.toByteArray(), picture.bytes());
		assertEquals(new Point(10, 15), picture.place().apply(Point.ORIGIN));
		assertEquals(new Point(30, 25), picture.place().apply(new Point(1, 1)));
		assertEquals(1, Svg.shapes(art).size());
		assertEquals(2, art.remarks().size());
	}

	@Test
	void pathsAreReadUpToTheirFault() throws Exception {
		ImportedArt art = Svg.read(Svg.sheet("<path id='leaf' d='M0 0H10V10H0Z M20 20 H x'/>"));
		assertEquals(100, Svg.shapes(art).stream().mapToDouble(SvgImporterTest::area).sum(), 1e-9);
		Remark remark = art.remarks().get(0);
		assertTrue(remark.place().contains("line 1, #leaf"), remark.toString());
	}

	@Test
	void entitiesOfTheirOwnAreRefusedAndNothingIsFetched() throws Exception {
		String bomb = "<!DOCTYPE svg [<!ENTITY a 'aaaaaaaaaa'><!ENTITY b '&a;&a;&a;&a;&a;&a;&a;&a;'>]>";
		for (String text : List.of(bomb + Svg.sheet("<text>&b;</text>"),
				"<!DOCTYPE svg [<!ENTITY x SYSTEM 'file:///etc/hostname'>]>" + Svg.sheet("<text>&x;</text>"))) {
			try {
				ImportedArt art = Svg.read(text);
				assertEquals(0, Svg.shapes(art).size());
			} catch (UnreadableArtException e) {
				assertTrue(e.getMessage().startsWith("leaf.svg"), e.getMessage());
			}
		}
		assertEquals(1, Svg.shapes(Svg.read("<!DOCTYPE svg PUBLIC '-//W3C//DTD SVG 1.1//EN' "
				+ "'http://www.w3.org/Graphics/SVG/1.1/DTD/svg11.dtd'>" + Svg.sheet("<rect width='1' height='1'/>"))).size());
		ImportedArt art = Svg.read(Svg.sheet("<script>alert(1)</script><use href='other.svg#a'/><rect width='1' height='1'/>"));
		assertEquals(1, Svg.shapes(art).size());
		assertEquals(2, art.remarks().size());
	}

	@Test
	void elementsThatUseThemselvesAreLeftOut() throws Exception {
		ImportedArt art = Svg.read(Svg.sheet("<g id='a'><use href='#b'/></g><g id='b'><use href='#a'/>"
				+ "<rect width='1' height='1'/></g>"));
		assertTrue(art.remarks().stream().anyMatch(remark -> remark.reason().contains("uses itself")));
		StringBuilder bomb = new StringBuilder("<defs><rect id='u0' width='1' height='1'/>");
		for (int i = 1; i < 12; i++) {
			bomb.append("<g id='u").append(i).append("'>").append(("<use href='#u" + (i - 1) + "'/>").repeat(10)).append("</g>");
		}
		UnreadableArtException e = assertThrows(UnreadableArtException.class,
				() -> Svg.read(Svg.sheet(bomb + "</defs><use href='#u11'/>")));
		assertTrue(e.getMessage().contains("elements are drawn"), e.getMessage());
	}

	@Test
	void badFilesAreRefusedWithPlaceAndReason() {
		String[][] cases = { { "", "well-formed" }, { "<svg", "well-formed" }, { "<html/>", "not svg" },
				{ "<svg xmlns='http://www.w3.org/2000/svg'><g></svg>", "line 1" },
				{ "<svg xmlns='http://www.w3.org/2000/svg'>" + "<g>".repeat(100_000), "deeper than 1000" } };
		for (String[] one : cases) {
			UnreadableArtException e = assertThrows(UnreadableArtException.class, () -> Svg.read(one[0]));
			assertTrue(e.getMessage().startsWith("leaf.svg") && e.getMessage().contains(one[1]), e.getMessage());
		}
	}

	@Test
	void absurdNumbersAreTold() throws Exception {
		ImportedArt art = Svg.read(Svg.sheet("<rect width='NaN' height='3'/><rect width='1e99' height='3'/>"
				+ "<circle r='3furlongs'/><rect width='3' height='3' transform='matrix(0 0 0 0 0 0)'/>"
				+ "<path d='M0 0L1e300 3'/>"));
		assertEquals(0, Svg.shapes(art).size());
		assertEquals(4, art.remarks().size());
	}

	@Test
	void mutantsNeitherCrashNorHang() throws Exception {
		byte[] seed = Svg.sheet("<style>.a{fill:red}g>rect{stroke:#123}</style><defs><clipPath id='c'><circle cx='5' cy='5' "
				+ "r='4'/></clipPath><symbol id='s' viewBox='0 0 9 9'><path d='M0 0a3 3 0 1 0 4 4z'/></symbol></defs>"
				+ "<g clip-path='url(#c)' transform='rotate(20)'><rect class='a' x='1' y='1' width='8' height='8' rx='2'/></g>"
				+ "<use href='#s' width='20' height='20'/><polyline points='1,2 3,4 5,1' stroke-width='2' stroke='lime'/>")
				.getBytes(StandardCharsets.UTF_8);
		Random random = new Random(20_261_129);
		int read = 0;
		for (int i = 0; i < 2_000; i++) {
			byte[] mutant = Arrays.copyOf(seed, random.nextInt(6) == 0 ? 1 + random.nextInt(seed.length) : seed.length);
			for (int change = random.nextInt(4); change >= 0; change--) {
				mutant[random.nextInt(mutant.length)] = (byte) (32 + random.nextInt(random.nextInt(10) == 0 ? 220 : 90));
			}
			try {
				Svg.read(mutant, "strokes", random.nextBoolean() ? "lines" : "outlines");
				read++;
			} catch (UnreadableArtException e) {
				assertTrue(e.getMessage().startsWith("leaf.svg"), e.getMessage());
			}
		}
		assertTrue(read > 200 && read < 1_900, read + " read");
	}
}
