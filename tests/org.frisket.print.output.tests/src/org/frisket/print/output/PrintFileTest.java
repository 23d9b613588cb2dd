package org.frisket.print.output;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Point;
import org.frisket.geometry.Region;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.clean.RegionBoolean;
import org.frisket.model.BleedKind;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;
import org.frisket.model.OperationKind;
import org.frisket.model.Picture;
import org.frisket.print.marks.FoundMarks;
import org.frisket.print.marks.MarkFinder;
import org.frisket.print.marks.SheetCode;
import org.frisket.print.picture.Grey;
import org.frisket.print.picture.Pixels;
import org.frisket.print.register.PrinterProfile;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Print files as tools of other projects see them: poppler paints and measures, qpdf reads the objects. */
class PrintFileTest {

	/** Of places, in mm: pixels are 0.05 mm wide, and their grey values tell the rest. */
	private static final double NEAR = 0.01;
	/** Of widths, in mm: each edge is told in steps of a quarter of a pixel. */
	private static final double WIDE = 0.0251;

	@TempDir
	private Path folder;

	/** What is round the card. */
	private RasterPage page(PrintSheet print, int number) throws Exception {
		return RasterPage.of(SampleSheet.pdf(print), number, new Bounds(45, 40, 155, 110), folder);
	}

	private RasterPage whole(PrintSheet print, int number) throws Exception {
		return RasterPage.of(SampleSheet.pdf(print), number, print.faces().page(), folder);
	}

	@Test
	void bleedReachesBeyondTheCutByTheChosenWidth() throws Exception {
		SampleSheet sample = new SampleSheet();
		SampleSheet.outline(sample.layer, SampleSheet.CARD, OperationKind.PRINT);
		RasterPage usual = page(sample.print(PrintOptions.USUAL), 1);
		assertEquals(86, usual.inkAcross(50, 150, 75), WIDE);
		assertEquals(100, usual.middleAcross(50, 150, 75), NEAR);
		assertEquals(56, usual.inkDown(40, 110, 80), WIDE);
		assertEquals(0x000000, usual.colour(57.2, 47.2), "corners are filled");
		PrintOptions none = new PrintOptions(0, false, TurnEdge.SIDE, true, true, false, Optional.empty());
		assertEquals(80, page(sample.print(none), 1).inkAcross(50, 150, 75), WIDE);
	}

	@Test
	void aBareBorderStaysBare() throws Exception {
		SampleSheet sample = new SampleSheet();
		SampleSheet.outline(sample.layer, "M1 1H79V49H1Z", OperationKind.PRINT);
		assertEquals(78, page(sample.print(PrintOptions.USUAL), 1).inkAcross(50, 150, 75), WIDE);
	}

	@Test
	void bleedIsOnlyWhereArtReachesTheCut() throws Exception {
		SampleSheet sample = new SampleSheet();
		SampleSheet.outline(sample.layer, "M0 10H40V40H0Z", OperationKind.PRINT);
		RasterPage page = page(sample.print(PrintOptions.USUAL), 1);
		assertEquals(43, page.inkAcross(50, 150, 75), WIDE);
		assertEquals(78.5, page.middleAcross(50, 150, 75), NEAR);
		assertEquals(30, page.inkDown(40, 110, 80), WIDE);
	}

	@Test
	void bleedStaysOffOtherParts() throws Exception {
		SampleSheet sample = new SampleSheet();
		SampleSheet.outline(sample.layer, SampleSheet.CARD, OperationKind.PRINT);
		sample.sheet.setWidth(300);
		Jobs.addPlacement(sample.sheet, sample.card.getId(), 182, 75, 0);
		// two cards, 2 mm apart
		PrintSheet print = sample.print(PrintOptions.USUAL);
		assertEquals(2, print.findings().stream().filter(each -> each.id().equals("bleed-short")).count());
		for (int i = 0; i < 2; i++) {
			Region other = print.faces().parts().get(1 - i).room();
			Region both = new RegionBoolean().intersect(print.front().get(i).area(), other, Tolerance.DEFAULT, Monitor.NONE);
			assertEquals(0, both.area(), 0.5);
			// a rim of 3 mm with sharp corners, less 1 mm of it along the other card
			assertEquals(86 * 56 - 50, print.front().get(i).area().area(), 1);
		}
	}

	@Test
	void theEdgeOfAPictureGoesOn() throws Exception {
		SampleSheet sample = new SampleSheet();
		sample.picture(80, 50);
		RasterPage page = page(sample.print(PrintOptions.USUAL), 1);
		assertEquals(0xff0000, page.colour(57.3, 75));
		assertEquals(0xff0000, page.colour(57.3, 47.3));
		assertEquals(0x0000ff, page.colour(142.7, 102.7));
		assertEquals(0xff0000, page.colour(99.5, 48));
		assertEquals(0x0000ff, page.colour(100.5, 48));
		assertEquals(0xffffff, page.colour(56.5, 75));
		assertEquals(0xff0000, page.colour(99.9, 75));
		assertEquals(0x0000ff, page.colour(100.1, 75));
	}

	@Test
	void anEnlargedPictureIsWiderByItsBleed() throws Exception {
		SampleSheet sample = new SampleSheet();
		Picture picture = sample.picture(40, 50);
		picture.setBleed(4);
		picture.setBleedKind(BleedKind.ENLARGE);
		// at the left edge of the card; it reaches the cut on three sides, and goes on under none inside
		PrintSheet print = sample.print(PrintOptions.USUAL);
		RasterPage page = page(print, 1);
		assertEquals(0xff0000, page.colour(56.3, 75));
		assertEquals(0xffffff, page.colour(55.5, 75));
		assertEquals(0x0000ff, page.colour(99.7, 75));
		assertEquals(0xffffff, page.colour(100.5, 75));
	}

	@Test
	void theRulerIsOfItsLength() throws Exception {
		SampleSheet sample = new SampleSheet();
		SampleSheet.outline(sample.layer, SampleSheet.CARD, OperationKind.PRINT);
		PrintSheet print = sample.print(PrintOptions.USUAL);
		assertEquals(100, ruler(print, 100), NEAR);
		PrinterProfile wide = new PrinterProfile("Front desk", 1.01, 0.99, 0, LocalDate.of(2026, 11, 30), 4);
		PrintSheet undone = sample.print(PrintOptions.USUAL.on(wide));
		assertEquals(100 / 1.01, ruler(undone, 100 / 1.01), NEAR);
		assertTrue(PrintFile.subject(undone).contains("Front desk"), PrintFile.subject(undone));
	}

	private double ruler(PrintSheet print, double about) throws Exception {
		ScaleRuler ruler = print.ruler().orElseThrow();
		assertFalse(ruler.upright());
		Point centre = print.faces().page().centre();
		double left = centre.x() - about / 2 + (ruler.start().x() + 50 - centre.x());
		double y = centre.y() + (ruler.start().y() - 3 - centre.y()) * (about < 100 ? 1 / 0.99 : 1);
		RasterPage page = RasterPage.of(SampleSheet.pdf(print), 1, new Bounds(0, 120, 200, 150), folder);
		return page.middleAcross(left + about - 1, left + about + 1, y) - page.middleAcross(left - 1, left + 1, y);
	}

	@Test
	void boxesAreThoseOfTheSheet() throws Exception {
		SampleSheet sample = new SampleSheet();
		SampleSheet.outline(sample.layer, SampleSheet.CARD, OperationKind.PRINT);
		Path file = Files.write(folder.resolve("boxes.pdf"), SampleSheet.pdf(sample.print(PrintOptions.USUAL)));
		String said = RasterPage.output("pdfinfo", "-box", file.toString());
		assertBox(said, "MediaBox", 0, 0, 200, 150);
		assertBox(said, "TrimBox", 60, 50, 140, 100);
		assertBox(said, "BleedBox", 57, 47, 143, 103);
		assertTrue(said.contains("Job 10247, sheet 1. Printed as designed"), said);
		RasterPage.output("qpdf", "--check", file.toString());
	}

	private static void assertBox(String said, String name, double left, double bottom, double right, double top) {
		Matcher box = Pattern.compile(name + ":\\s+([\\d.]+)\\s+([\\d.]+)\\s+([\\d.]+)\\s+([\\d.]+)").matcher(said);
		assertTrue(box.find(), said);
		double[] sides = { left, bottom, right, top };
		for (int i = 0; i < sides.length; i++) {
			assertEquals(sides[i], Double.parseDouble(box.group(i + 1)) / 72 * 25.4, NEAR, name + " " + i);
		}
	}

	/** ISO 19593-1: a processing step is told by GTS_Metadata, which nothing that is to be printed may have. */
	@Test
	void artMarksCodeAndRulerAreGroupsAndNoSteps() throws Exception {
		SampleSheet sample = new SampleSheet();
		SampleSheet.outline(sample.layer, SampleSheet.CARD, OperationKind.PRINT);
		Path file = Files.write(folder.resolve("groups.pdf"), SampleSheet.pdf(sample.print(PrintOptions.USUAL)));
		String objects = RasterPage.output("qpdf", "--json=2", "--json-key=qpdf", file.toString());
		Matcher groups = Pattern.compile("\"/Name\": \"u:([^\"]+)\",\\s+\"/Type\": \"/OCG\"").matcher(objects);
		assertArrayEquals(new String[] { "100 mm to measure", "Artwork", "Register marks", "Sheet code" },
				groups.results().map(found -> found.group(1)).sorted().toArray());
		assertFalse(objects.contains("GTS_"), objects);
	}

	/** The names of ISO 19593-1:2018, table 3, as the tests of the PDF exporter have them. */
	@Test
	void linesToCutAreStepsApartFromArtWhereTheyAreAskedFor() throws Exception {
		SampleSheet sample = new SampleSheet();
		SampleSheet.outline(sample.layer, SampleSheet.CARD, OperationKind.PRINT);
		SampleSheet.outline(sample.layer, "M40 0V50", OperationKind.CREASE);
		PrintOptions steps = new PrintOptions(3, false, TurnEdge.SIDE, true, true, true, Optional.empty());
		Path file = Files.write(folder.resolve("steps.pdf"), SampleSheet.pdf(sample.print(steps)));
		String objects = RasterPage.output("qpdf", "--json=2", "--json-key=qpdf", file.toString());
		Matcher types = Pattern.compile("\"/GTS_ProcStepsType\": \"/(\\w+)\"").matcher(objects);
		assertArrayEquals(new String[] { "Creasing", "Cutting" }, types.results().map(found -> found.group(1)).sorted().toArray());
		assertEquals(6, Pattern.compile("\"/Type\": \"/OCG\"").matcher(objects).results().count());
	}

	@Test
	void theBackIsMirroredAndItsMarksWithIt() throws Exception {
		SampleSheet sample = new SampleSheet();
		SampleSheet.outline(sample.layer, SampleSheet.CARD, OperationKind.PRINT);
		Layer back = Jobs.addLayer(sample.job, "Back");
		back.setBack(true);
		back.setColour("#000000");
		SampleSheet.outline(back, "M5 5H15V45H5Z", OperationKind.PRINT);
		Jobs.addPlacement(sample.sheet, sample.card.getId(), 34, 110, 90);
		RasterPage side = whole(sample.print(PrintOptions.USUAL), 2);
		assertEquals(10, side.inkAcross(100, 142, 75), WIDE);
		assertEquals(200 - 70, side.middleAcross(100, 142, 75), NEAR);
		PrintOptions pad = new PrintOptions(3, false, TurnEdge.HEAD, true, true, false, Optional.empty());
		RasterPage head = page(sample.print(pad), 2);
		assertEquals(70, head.middleAcross(60, 142, 75), NEAR);
		PrintSheet print = sample.print(PrintOptions.USUAL);
		Point mark = print.plan().orElseThrow().marks().get(1).place();
		assertEquals(0x000000, side.colour(200 - mark.x(), mark.y()));
		assertEquals(Optional.of(new SheetCode(10247, 1)), SheetCode.find(grey(side.image())));
	}

	@Test
	void whatPiecesAboveCoverIsLeftOut() throws Exception {
		SampleSheet sample = new SampleSheet();
		SampleSheet.outline(sample.layer, SampleSheet.CARD, OperationKind.PRINT);
		Layer above = Jobs.addLayer(sample.job, "Letters");
		SampleSheet.outline(above, "M20 10H60V40H20Z", OperationKind.CUT);
		PrintOptions knocked = new PrintOptions(3, true, TurnEdge.SIDE, true, true, false, Optional.empty());
		// print goes on 1 mm below what is put on it
		assertEquals(86 - 38, page(sample.print(knocked), 1).inkAcross(50, 150, 75), WIDE);
		assertEquals(86, page(sample.print(PrintOptions.USUAL), 1).inkAcross(50, 150, 75), WIDE);
	}

	@Test
	void theMarksAreFoundInThePrintedPage() throws Exception {
		SampleSheet sample = new SampleSheet();
		SampleSheet.outline(sample.layer, SampleSheet.CARD, OperationKind.PRINT);
		PrintSheet print = sample.print(PrintOptions.USUAL);
		Grey scan = grey(whole(print, 1).image());
		FoundMarks found = MarkFinder.find(print.plan().orElseThrow(), scan, 25.4 * RasterPage.PER_MM, Monitor.NONE);
		assertEquals(4, found.count(), found.findings().toString());
		for (int i = 0; i < 4; i++) {
			Point place = found.places().get(i).orElseThrow().times(1.0 / RasterPage.PER_MM);
			assertTrue(place.distance(print.plan().get().places().get(i)) < NEAR, i + ": " + place);
		}
		assertEquals(Optional.of(new SheetCode(10247, 1)), SheetCode.find(scan));
	}

	private static Grey grey(BufferedImage image) {
		return new Pixels(image.getWidth(), image.getHeight(), image.getRGB(0, 0, image.getWidth(), image.getHeight(), null,
				0, image.getWidth())).grey();
	}

	@Test
	void theSamePrintMakesTheSameBytes() throws Exception {
		SampleSheet sample = new SampleSheet();
		sample.picture(80, 50);
		assertArrayEquals(SampleSheet.pdf(sample.print(PrintOptions.USUAL)), SampleSheet.pdf(sample.print(PrintOptions.USUAL)));
	}

	@Test
	void marksKeepClearOfPrintAndOfEachOther() {
		SampleSheet sample = new SampleSheet();
		SampleSheet.outline(sample.layer, SampleSheet.CARD, OperationKind.PRINT);
		PrintSheet print = sample.print(PrintOptions.USUAL);
		assertTrue(print.proposed());
		assertTrue(print.findings().isEmpty(), print.findings().toString());
		Bounds bleed = print.bleed();
		print.plan().orElseThrow().marks()
				.forEach(mark -> assertFalse(mark.bounds().grown(mark.design().quiet() - 1e-6).intersects(bleed)));
		assertFalse(print.code().orElseThrow().square().intersects(bleed));
		assertFalse(print.ruler().orElseThrow().bounds().intersects(print.code().get().square()));
	}

	@Test
	void marksThatTheSheetHasStay() {
		SampleSheet sample = new SampleSheet();
		SampleSheet.outline(sample.layer, SampleSheet.CARD, OperationKind.PRINT);
		PrintSheet first = sample.print(PrintOptions.USUAL);
		sample.sheet.getMarks().addAll(SheetMarks.toModel(first.plan().orElseThrow()));
		sample.sheet.getMarks().get(1).setX(150);
		PrintSheet second = sample.print(PrintOptions.USUAL);
		assertFalse(second.proposed());
		assertEquals(150, second.plan().orElseThrow().places().get(1).x());
		assertEquals(first.plan().get().places().get(0), second.plan().get().places().get(0));
	}
}
