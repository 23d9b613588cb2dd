package org.frisket.imports.dxf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Contour;
import org.frisket.geometry.Cubic;
import org.frisket.geometry.Point;
import org.frisket.geometry.Segment;
import org.frisket.imports.ImportedArt;
import org.frisket.imports.ImportedShape;
import org.frisket.imports.LargestFile;
import org.frisket.imports.UnreadableArtException;
import org.junit.jupiter.api.Test;

class DxfImporterTest {

	private static void assertPoint(double x, double y, Point point, double within) {
		assertEquals(x, point.x(), within);
		assertEquals(y, point.y(), within);
	}

	private static void assertOnCircle(double cx, double cy, double radius, Contour contour) {
		for (Segment segment : contour.segments()) {
			for (double t = 0; t <= 1; t += 0.125) {
				assertEquals(radius, segment.at(t).distance(new Point(cx, cy)), 0.001);
			}
		}
	}

	@Test
	void aLineIsTurnedDownwards() throws Exception {
		Contour line = Dxf.only("0 LINE 8 cut 10 1 20 2 11 4 21 6");
		assertFalse(line.isClosed());
		assertPoint(1, -2, line.start(), 0);
		assertPoint(4, -6, line.end(), 0);
	}

	@Test
	void aCircleIsClosedAndRound() throws Exception {
		Contour circle = Dxf.only("0 CIRCLE 10 5 20 5 40 200");
		assertTrue(circle.isClosed());
		assertOnCircle(5, -5, 200, circle);
		assertEquals(Math.PI * 200 * 200, Math.abs(circle.signedArea()), 1);
	}

	@Test
	void anArcRunsCounterClockwiseAcrossZero() throws Exception {
		Contour arc = Dxf.only("0 ARC 10 0 20 0 40 10 50 315 51 45");
		assertFalse(arc.isClosed());
		assertOnCircle(0, 0, 10, arc);
		assertEquals(Math.PI / 2 * 10, arc.length(), 1e-3);
		assertEquals(10, arc.bounds().maxX(), 1e-3);
		assertPoint(7.0710678, 7.0710678, arc.start(), 1e-6);
		assertPoint(7.0710678, -7.0710678, arc.end(), 1e-6);
	}

	/** Bulges of chords of 10: the table of radius and sagitta that the tangent of a quarter of the angle gives. */
	@Test
	void bulgesAreArcs() throws Exception {
		double[][] rows = { { 1, 5, 5 }, { 0.41421356, 7.071068, 2.071068 }, { 0.5, 6.25, 2.5 },
				{ -0.267949, 10, -1.339746 }, { 2, 6.25, 10 } };
		for (double[] row : rows) {
			Contour arc = Dxf.only("0 LWPOLYLINE 90 2 70 0 10 0 20 0 42 " + row[0] + " 10 10 20 0");
			// to the right of the chord where the bulge is positive, which is downwards here too
			assertEquals(row[2], row[0] > 0 ? arc.bounds().maxY() : arc.bounds().minY(), 1e-3, "bulge " + row[0]);
			double angle = 4 * Math.atan(Math.abs(row[0]));
			assertEquals(row[1] * angle, arc.length(), 1e-3, "bulge " + row[0]);
		}
	}

	@Test
	void bothPolylinesCloseWithTheirLastBulge() throws Exception {
		String light = "0 LWPOLYLINE 90 2 70 1 10 0 20 0 42 1 10 10 20 0 42 1";
		String heavy = "0 POLYLINE 66 1 70 1 0 VERTEX 10 0 20 0 42 1 0 VERTEX 10 10 20 0 42 1 0 SEQEND";
		for (String entity : List.of(light, heavy)) {
			Contour disc = Dxf.only(entity);
			assertTrue(disc.isClosed());
			assertOnCircle(5, 0, 5, disc);
			assertEquals(Math.PI * 25, Math.abs(disc.signedArea()), 0.01);
		}
	}

	@Test
	void anEllipseMayBeTurnedAndCutOpen() throws Exception {
		Contour whole = Dxf.only("0 ELLIPSE 10 0 20 0 11 0 21 10 40 0.5");
		assertTrue(whole.isClosed());
		assertEquals(Math.PI * 50, Math.abs(whole.signedArea()), 0.02);
		assertEquals(5, whole.bounds().maxX(), 1e-3);
		Contour quarter = Dxf.only("0 ELLIPSE 10 0 20 0 11 10 21 0 40 0.5 41 0 42 1.5707963267949");
		assertPoint(10, 0, quarter.start(), 1e-9);
		assertPoint(0, -5, quarter.end(), 1e-6);
		Contour below = Dxf.only("0 ELLIPSE 10 0 20 0 11 10 21 0 40 0.5 41 0 42 1.5707963267949 210 0 220 0 230 -1");
		assertPoint(0, 5, below.end(), 1e-6);
	}

	@Test
	void seenFromBelowXIsMirrored() throws Exception {
		Contour arc = Dxf.only("0 ARC 10 20 20 0 40 5 50 0 51 90 210 0 220 0 230 -1");
		assertPoint(-25, 0, arc.start(), 1e-6);
		assertPoint(-20, -5, arc.end(), 1e-6);
	}

	@Test
	void aCubicSplineStaysExact() throws Exception {
		Contour spline = Dxf.only("0 SPLINE 70 8 71 3 72 8 73 4 40 0 40 0 40 0 40 0 40 1 40 1 40 1 40 1 "
				+ "10 0 20 0 30 0 10 10 20 30 30 0 10 60 20 40 30 0 10 80 20 0 30 0");
		assertEquals(List.of(new Cubic(new Point(0, 0), new Point(10, -30), new Point(60, -40), new Point(80, 0))),
				spline.segments().stream().map(DxfImporterTest::withoutMinusZero).toList());
		assertEquals(101.678211, spline.length(), 1e-6);
	}

	private static Segment withoutMinusZero(Segment segment) {
		Cubic c = (Cubic) segment;
		return new Cubic(c.start().plus(Point.ORIGIN), c.control1().plus(Point.ORIGIN), c.control2().plus(Point.ORIGIN),
				c.end().plus(Point.ORIGIN));
	}

	/** Seven poles and weights 1 and 1/2 make a full circle of degree 2; Piegl and Tiller, The NURBS Book, chapter 7. */
	@Test
	void aRationalSplineIsFollowed() throws Exception {
		double h = Math.sqrt(3) / 2;
		double[][] poles = { { h, 0.5, 1 }, { 0, 2, 0.5 }, { -h, 0.5, 1 }, { -2 * h, -1, 0.5 }, { 0, -1, 1 },
				{ 2 * h, -1, 0.5 }, { h, 0.5, 1 } };
		StringBuilder text = new StringBuilder("0 SPLINE 70 13 71 2");
		for (double knot : new double[] { 0, 0, 0, 1, 1, 2, 2, 3, 3, 3 }) {
			text.append(" 40 ").append(knot);
		}
		for (double[] pole : poles) {
			text.append(" 41 ").append(pole[2]);
		}
		for (double[] pole : poles) {
			text.append(" 10 ").append(pole[0] * 50).append(" 20 ").append(pole[1] * 50);
		}
		Contour circle = Dxf.only(text.toString());
		assertTrue(circle.isClosed());
		assertOnCircle(0, 0, 50, circle);
		assertEquals(Math.PI * 2500, Math.abs(circle.signedArea()), 0.2);
	}

	@Test
	void aSplineOfPointsAloneGoesThroughThem() throws Exception {
		Contour curve = Dxf.only("0 SPLINE 70 8 71 3 74 4 11 0 21 0 11 10 21 5 11 20 21 0 11 35 21 10");
		assertEquals(3, curve.segments().size());
		assertPoint(10, -5, curve.segments().get(0).end(), 1e-9);
		for (int i = 1; i < 3; i++) {
			Point before = curve.segments().get(i - 1).endTangent();
			assertEquals(0, before.cross(curve.segments().get(i).startTangent()), 1e-9);
		}
	}

	@Test
	void blocksAreScaledTurnedRepeatedAndNested() throws Exception {
		String blocks = "0 BLOCK 2 bar 10 1 20 0 0 LINE 8 0 10 1 20 0 11 3 21 0 0 ENDBLK "
				+ "0 BLOCK 2 pair 10 0 20 0 0 INSERT 2 bar 10 0 20 0 0 INSERT 2 BAR 10 0 20 1 0 ENDBLK";
		ImportedArt art = Dxf.read(Dxf.withBlocks(blocks,
				"0 INSERT 8 top 2 pair 10 100 20 0 41 2 42 3 50 90 70 2 44 10"));
		List<ImportedShape.Lines> lines = Dxf.lines(art);
		assertEquals(4, lines.size());
		assertEquals("top", art.layers().get(0).name());
		Bounds bounds = lines.stream().map(line -> line.outline().bounds()).reduce(Bounds.EMPTY, Bounds::with);
		// two bars of 2, 1 apart, scaled by 2 and 3, turned upright; a second pair 10 further along the turned x axis
		assertEquals(97, bounds.minX(), 1e-9);
		assertEquals(100, bounds.maxX(), 1e-9);
		assertEquals(-14, bounds.minY(), 1e-9);
		assertEquals(0, bounds.maxY(), 1e-9);
	}

	@Test
	void aBlockThatHoldsItselfIsToldAndLeftOut() throws Exception {
		ImportedArt art = Dxf.read(Dxf.withBlocks("0 BLOCK 2 a 0 LINE 10 0 20 0 11 1 21 0 0 INSERT 2 a 0 ENDBLK",
				"0 INSERT 2 a"));
		assertEquals(1, Dxf.lines(art).size());
		assertTrue(art.remarks().get(0).reason().contains("contains itself"), art.remarks().toString());
	}

	@Test
	void blocksThatMultiplyBeyondMeasureAreRefused() {
		StringBuilder blocks = new StringBuilder("0 BLOCK 2 b0 0 LINE 10 0 20 0 11 1 21 0 0 ENDBLK");
		for (int i = 1; i < 20; i++) {
			blocks.append(" 0 BLOCK 2 b").append(i).append(" 0 INSERT 2 b").append(i - 1).append(" 70 100 71 100 0 ENDBLK");
		}
		UnreadableArtException e = assertThrows(UnreadableArtException.class,
				() -> Dxf.read(Dxf.withBlocks(blocks.toString(), "0 INSERT 2 b19")));
		assertTrue(e.getMessage().startsWith("plate.dxf, line "), e.getMessage());
	}

	/** Larger files than memory can hold are refused before, and groups without end on the way. */
	@Test
	void largeFilesAreBounded() {
		byte[] groups = ("0\nSECTION\n2\nENTITIES\n0\nA\n" + "1\n\n".repeat(DrawingReader.MOST_GROUPS))
				.getBytes(StandardCharsets.UTF_8);
		UnreadableArtException e = assertThrows(UnreadableArtException.class, () -> Dxf.read(groups, "file"));
		assertTrue(e.getMessage().contains("line ") && e.getMessage().contains("more than 4000000 groups"), e.getMessage());
		byte[] large = new byte[(int) LargestFile.BYTES + 1];
		e = assertThrows(UnreadableArtException.class, () -> Dxf.read(large, "file"));
		assertTrue(e.getMessage().contains("up to 64 MB"), e.getMessage());
	}

	@Test
	void unitsComeFromTheFileOrTheUser() throws Exception {
		String inch = "0 SECTION 2 HEADER 9 $INSUNITS 70 1 0 ENDSEC 0 SECTION 2 ENTITIES "
				+ "0 LINE 10 0 20 0 11 2 21 0 0 ENDSEC 0 EOF";
		assertEquals(50.8, Dxf.lines(Dxf.read(inch)).get(0).outline().contours().get(0).length(), 1e-9);
		assertEquals(20, Dxf.lines(Dxf.read(Dxf.bytes(inch), "cm")).get(0).outline().contours().get(0).length(), 1e-9);
		ImportedArt unsaid = Dxf.read("0 SECTION 2 ENTITIES 0 LINE 10 0 20 0 11 2 21 0 0 ENDSEC 0 EOF");
		assertEquals(2, Dxf.lines(unsaid).get(0).outline().contours().get(0).length(), 1e-9);
		assertTrue(unsaid.remarks().get(0).reason().contains("does not say its unit"));
	}

	@Test
	void whatIsNotDrawnIsCountedAndTold() throws Exception {
		ImportedArt art = Dxf.read("0 SECTION 2 HEADER 9 $INSUNITS 70 4 0 ENDSEC 0 SECTION 2 TABLES 0 TABLE 2 LAYER "
				+ "0 LAYER 2 notes 70 0 62 -3 0 LAYER 2 cut 70 0 62 1 0 ENDTAB 0 ENDSEC 0 SECTION 2 ENTITIES "
				+ "0 TEXT 1 Harbour 0 TEXT 1 Lane 0 LINE 8 notes 10 0 20 0 11 1 21 1 "
				+ "0 LINE 8 cut 67 1 10 0 20 0 11 1 21 1 0 LINE 8 cut 10 0 20 0 11 1 21 1 0 ENDSEC 0 EOF");
		assertEquals(1, Dxf.lines(art).size());
		assertEquals("#ff0000", art.layers().get(0).colour());
		List<String> reasons = art.remarks().stream().map(remark -> remark.reason()).toList();
		assertEquals(3, reasons.size());
		assertTrue(reasons.get(0).contains("2 TEXT"), reasons.toString());
		assertTrue(reasons.get(1).contains("“notes”"), reasons.toString());
		assertTrue(reasons.get(2).contains("paper"), reasons.toString());
	}

	@Test
	void namesOfLayersComeInAnyCodePage() throws Exception {
		for (Charset charset : List.of(StandardCharsets.UTF_8, Charset.forName("windows-1252"))) {
			byte[] bytes = new String(Dxf.bytes(Dxf.mm("0 LINE 8 Rückseite 10 0 20 0 11 1 21 1")), StandardCharsets.UTF_8)
					.getBytes(charset);
			assertEquals("Rückseite", Dxf.read(bytes, "file").layers().get(0).name());
		}
		assertEquals("Rückseite", Dxf.read(Dxf.mm("0 LINE 8 R\\U+00FCckseite 10 0 20 0 11 1 21 1")).layers().get(0).name());
	}

	@Test
	void badFilesAreRefusedWithPlaceAndReason() {
		String[][] cases = { { "", "empty" }, { "0 SECTION 2 ENTITIES 0 LINE 10 abc", "breaks off" },
				{ Dxf.mm("0 LINE 10 abc 20 0"), "line 18: “abc” is not a number" },
				{ Dxf.mm("0 LINE 10 NaN 20 0"), "not a number" }, { Dxf.mm("0 LINE 10 1e99 20 0"), "not a number" },
				{ "hello world", "not a group code" }, { "0 SECTION 2 HEADER 0 ENDSEC 0 EOF", "no section of entities" },
				{ Dxf.mm("0 POLYLINE 66 1 0 LINE 10 0"), "POLYLINE is not ended" } };
		for (String[] one : cases) {
			byte[] bytes = one[0].isEmpty() ? new byte[0] : Dxf.bytes(one[0]);
			UnreadableArtException e = assertThrows(UnreadableArtException.class, () -> Dxf.read(bytes, "file"), one[1]);
			assertTrue(e.getMessage().startsWith("plate.dxf"), e.getMessage());
			assertTrue(e.getMessage().contains(one[1]), e.getMessage());
		}
		assertTrue(assertThrows(UnreadableArtException.class, () -> Dxf.read(new byte[] { 65, 66, 13, 10, 26, 0, 1 }, "file"))
				.getMessage().contains("binary"));
	}

	/** Bytes changed, cut, doubled: either art comes out, or a reason. */
	@Test
	void mutantsNeitherCrashNorHang() throws Exception {
		byte[] seed = Dxf.bytes(Dxf.withBlocks("0 BLOCK 2 bar 10 1 20 0 0 LINE 8 0 10 1 20 0 11 3 21 0 0 ENDBLK",
				"0 INSERT 8 top 2 bar 10 100 20 0 41 2 42 3 50 90 70 2 44 10 0 ARC 10 0 20 0 40 10 50 315 51 45 "
						+ "0 LWPOLYLINE 90 2 70 1 10 0 20 0 42 1 10 10 20 0 42 1 0 ELLIPSE 10 0 20 0 11 0 21 10 40 0.5 "
						+ "0 POLYLINE 66 1 70 1 0 VERTEX 10 0 20 0 42 1 0 VERTEX 10 10 20 0 0 SEQEND "
						+ "0 SPLINE 70 8 71 3 40 0 40 0 40 0 40 0 40 1 40 1 40 1 40 1 10 0 20 0 10 9 20 3 10 6 20 4 10 8 20 0"));
		Random random = new Random(20_261_129);
		int read = 0;
		int refused = 0;
		for (int i = 0; i < 3_000; i++) {
			List<Byte> bytes = new ArrayList<>();
			for (byte b : seed) {
				bytes.add(b);
			}
			for (int change = 0; change <= random.nextInt(4); change++) {
				int at = random.nextInt(bytes.size());
				switch (random.nextInt(4)) {
				case 0 -> bytes.set(at, (byte) random.nextInt(256));
				case 1 -> bytes.subList(at, Math.min(bytes.size(), at + random.nextInt(20))).clear();
				case 2 -> bytes.add(at, (byte) ('0' + random.nextInt(10)));
				default -> bytes.subList(Math.max(1, at), bytes.size()).clear();
				}
				if (bytes.isEmpty()) {
					break;
				}
			}
			byte[] mutant = new byte[bytes.size()];
			for (int k = 0; k < mutant.length; k++) {
				mutant[k] = bytes.get(k);
			}
			try {
				for (ImportedShape.Lines lines : Dxf.lines(Dxf.read(mutant, "file"))) {
					assertTrue(lines.outline().contours().stream().allMatch(c -> Double.isFinite(c.signedArea())));
				}
				read++;
			} catch (UnreadableArtException e) {
				assertTrue(e.getMessage().startsWith("plate.dxf"), e.getMessage());
				refused++;
			}
		}
		assertTrue(read > 300 && refused > 300, read + " read, " + refused + " refused");
	}
}
