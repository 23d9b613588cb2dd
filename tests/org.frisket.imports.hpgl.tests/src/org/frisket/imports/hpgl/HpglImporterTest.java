package org.frisket.imports.hpgl;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Contour;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Outline;
import org.frisket.geometry.Point;
import org.frisket.geometry.options.OptionValues;
import org.frisket.imports.ImportSource;
import org.frisket.imports.ImportedArt;
import org.frisket.imports.ImportedShape;
import org.frisket.imports.LargestFile;
import org.frisket.imports.UnreadableArtException;
import org.junit.jupiter.api.Test;

class HpglImporterTest {

	static ImportedArt read(byte[] bytes) throws IOException, UnreadableArtException {
		HpglImporter importer = new HpglImporter();
		return importer.read(ImportSource.of("tag.plt", bytes), OptionValues.of(importer.options(), Map.of()), Monitor.NONE);
	}

	private static ImportedArt read(String text) throws IOException, UnreadableArtException {
		return read(text.getBytes(StandardCharsets.ISO_8859_1));
	}

	static List<Outline> outlines(ImportedArt art) {
		return art.layers().stream().flatMap(layer -> layer.shapes().stream())
				.map(shape -> shape instanceof ImportedShape.Area area ? area.outline()
						: ((ImportedShape.Lines) shape).outline())
				.toList();
	}

	private static Contour only(String text) throws IOException, UnreadableArtException {
		List<Outline> outlines = outlines(read(text));
		assertEquals(1, outlines.size());
		assertEquals(1, outlines.get(0).contours().size());
		return outlines.get(0).contours().get(0);
	}

	private static void assertBox(double minX, double minY, double maxX, double maxY, Bounds bounds) {
		assertEquals(List.of(minX, minY, maxX, maxY),
				List.of(bounds.minX(), bounds.minY(), bounds.maxX(), bounds.maxY()).stream()
						.map(value -> Math.rint(value * 1e4) / 1e4 + 0.0).toList());
	}

	/** A square of 10 mm at (10, 10) in units of 0.025 mm, HP-GL/2 reference. */
	@Test
	void aSquareIsClosedAndInMillimetres() throws Exception {
		Contour square = only("IN;SP1;PU400,400;PD800,400,800,800,400,800,400,400;PU;SP0;");
		assertTrue(square.isClosed());
		assertEquals(4, square.nodeCount());
		assertEquals(100, Math.abs(square.signedArea()), 1e-9);
		assertBox(10, -20, 20, -10, square.bounds());
	}

	@Test
	void separatorsMayBeMissingOrMany() throws Exception {
		assertEquals(only("IN;PU0,0;PD400,0,400,400;"), only("\u001b%0BIN PU0 0PD 400,0 400 400 PU"));
		assertEquals(only("IN;PU0,0;PD400,-40;"), only("in;pu0,0;pd400-40"));
	}

	@Test
	void relativeMovesAddUp() throws Exception {
		assertEquals(only("PU400,400;PD800,400,800,800;"), only("PU400,400;PR;PD400,0,0,400;"));
	}

	@Test
	void pensMakeLayers() throws Exception {
		ImportedArt art = read("IN;SP2;PD40,0;PU;SP1;PU0,0;PD0,40;PU;SP2;PU400,0;PD400,40;");
		assertEquals(2, art.layers().size());
		assertEquals(1, art.layers().get(0).shapes().size());
		assertEquals(2, art.layers().get(1).shapes().size());
	}

	@Test
	void arcsAndCirclesAreRound() throws Exception {
		Contour circle = only("IN;PU400,400;CI400;");
		assertTrue(circle.isClosed());
		assertEquals(Math.PI * 100, Math.abs(circle.signedArea()), 0.05);
		Contour arc = only("IN;PU400,0;PD;AA0,0,90;");
		assertFalse(arc.isClosed());
		assertEquals(Math.PI / 2 * 10, arc.length(), 1e-3);
		assertBox(0, -10, 10, 0, arc.bounds());
		Contour through = only("IN;PU400,0;PD;AT282.842712,282.842712,0,400;");
		assertEquals(arc.length(), through.length(), 1e-4);
		Contour other = only("IN;PU400,0;PD;AT282.842712,-282.842712,0,400;");
		assertEquals(3 * Math.PI / 2 * 10, other.length(), 3e-3);
		assertTrue(only("IN;PU400,0;PD;AR-400,0,360;").isClosed());
	}

	@Test
	void curvesStayExact() throws Exception {
		Contour curve = only("IN;PU0,0;PD;BZ400,1200,2400,1600,3200,0;");
		assertEquals(101.678211, curve.length(), 1e-6);
		assertEquals(curve, only("IN;PU0,0;PD;BR400,1200,2400,1600,3200,0;"));
	}

	@Test
	void polygonsAreFilledWithTheirHoles() throws Exception {
		ImportedArt art = read("IN;PU0,0;PM0;PD4000,0,4000,4000,0,4000;PM1;PU1000,1000;CI400;PM2;FP;EP;");
		List<ImportedShape> shapes = art.layers().get(0).shapes();
		assertEquals(2, shapes.size());
		assertEquals(2, ((ImportedShape.Area) shapes.get(0)).outline().contours().size());
		assertEquals(2, ((ImportedShape.Lines) shapes.get(1)).outline().contours().size());
		assertEquals(1, outlines(read("IN;PU0,0;RA400,400;")).size());
		assertEquals(100, Math.abs(only("IN;PU0,0;ER400,400;").signedArea()), 1e-9);
		assertEquals(Math.PI * 25, Math.abs(only("IN;PU0,0;WG400,0,90;").signedArea()), 0.01);
	}

	@Test
	void userUnitsLieBetweenTwoPointsOfATurnedPage() throws Exception {
		assertBox(10, -20, 20, -10, only("IN;IP400,400,800,800;SC0,1,0,1;PU0,0;PD1,0,1,1,0,1,0,0;").bounds());
		assertBox(-10, -20, 0, 0, only("IN;RO90;PU0,0;PD800,0,800,400,0,400,0,0;").bounds());
		assertBox(0, -2, 1, 0, only("IN;SC0,40,0,40,2;PU0,0;PD1,2;").bounds());
	}

	/** Numbers packed by the rule of the reference: digits of base 64, sign in the lowest bit. */
	@Test
	void packedPointsAreUnpacked() throws Exception {
		for (boolean narrow : new boolean[] { false, true }) {
			String packed = "IN;PE" + (narrow ? "7" : "") + "<=" + pack(400, narrow) + pack(400, narrow)
					+ pack(400, narrow) + pack(0, narrow) + pack(0, narrow) + pack(400, narrow) + pack(-400, narrow)
					+ pack(0, narrow) + pack(0, narrow) + pack(-400, narrow) + ";";
			Contour square = only(packed);
			assertTrue(square.isClosed());
			assertBox(10, -20, 20, -10, square.bounds());
		}
	}

	private static String pack(int number, boolean narrow) {
		int base = narrow ? 32 : 64;
		int rest = number < 0 ? -number * 2 + 1 : number * 2;
		StringBuilder text = new StringBuilder();
		while (rest >= base) {
			text.append((char) (63 + rest % base));
			rest /= base;
		}
		return text.append((char) ((narrow ? 95 : 191) + rest)).toString();
	}

	@Test
	void labelsAreToldAndNotReadAsInstructions() throws Exception {
		ImportedArt art = read("IN;PU0,0;LBPD400,400;\u0003PD40,0;DT#;LBPD1,1#PD80,0;");
		assertEquals(1, outlines(art).size());
		assertBox(0, 0, 2, 0, outlines(art).get(0).bounds());
		assertTrue(art.remarks().get(0).reason().contains("2 LB"), art.remarks().toString());
	}

	@Test
	void badFilesAreRefusedWithPlaceAndReason() {
		String[][] cases = { { "", "no instruction" }, { "<svg/>", "no instruction" },
				{ "IN;PD1,2,3;", "byte 4: PD with 3" }, { "IN;PD1..2,3;", "not a number" },
				{ "IN;PD99999999999,3;", "not a number" }, { "IN;SC1,1,0,5;", "without extent" },
				{ "IN;AA5;", "AA with 1" }, { "IN;PE!;", "not a number" } };
		for (String[] one : cases) {
			UnreadableArtException e = assertThrows(UnreadableArtException.class, () -> read(one[0]), one[0]);
			assertTrue(e.getMessage().startsWith("tag.plt") && e.getMessage().contains(one[1]), e.getMessage());
		}
	}

	@Test
	void largeFilesAreBounded() {
		for (String numbers : List.of("IN;PD" + "1,".repeat(Plotter.MOST) + "1;", "IN;" + "PU;".repeat(Plotter.MOST))) {
			UnreadableArtException e = assertThrows(UnreadableArtException.class, () -> read(numbers));
			assertTrue(e.getMessage().contains("byte ") && e.getMessage().contains("more than 5000000"), e.getMessage());
		}
		byte[] large = new byte[(int) LargestFile.BYTES + 1];
		UnreadableArtException e = assertThrows(UnreadableArtException.class, () -> read(large));
		assertTrue(e.getMessage().contains("up to 64 MB"), e.getMessage());
	}

	@Test
	void mutantsNeitherCrashNorHang() throws Exception {
		byte[] seed = ("IN;IP400,400,800,800;SC0,1,0,1;SP1;PU0,0;PD1,0,1,1,0,1,0,0;SC;PU400,0;PD;AA0,0,90;AT3,4,5,9;CI40;"
				+ "PM0;PD4000,0,4000,4000;PM1;CI400;PM2;FP;EP;BZ1,2,3,4,5,6;PE<=" + pack(400, false) + pack(4, false)
				+ ";RO90;LBHarbour\u0003EW40,0,90;").getBytes(StandardCharsets.ISO_8859_1);
		Random random = new Random(20_261_129);
		int read = 0;
		for (int i = 0; i < 3_000; i++) {
			byte[] mutant = Arrays.copyOf(seed, random.nextInt(4) == 0 ? 1 + random.nextInt(seed.length) : seed.length);
			for (int change = random.nextInt(5); change >= 0; change--) {
				mutant[random.nextInt(mutant.length)] = (byte) random.nextInt(random.nextBoolean() ? 256 : 128);
			}
			try {
				for (Outline outline : outlines(read(mutant))) {
					assertTrue(outline.contours().stream().allMatch(c -> Double.isFinite(c.signedArea())));
				}
				read++;
			} catch (UnreadableArtException e) {
				assertTrue(e.getMessage().startsWith("tag.plt"), e.getMessage());
			}
		}
		assertTrue(read > 300 && read < 2_990, read + " read");
	}

	@Test
	void lengthsComeOutRight() throws Exception {
		assertEquals(new Point(304.8, 0), only("IN;PU0,0;PD12192,0;").end().plus(Point.ORIGIN));
	}
}
