package org.frisket.print.output;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Point;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;
import org.frisket.model.OperationKind;
import org.frisket.print.register.PrinterProfile;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is seen of a print file, beside what poppler sees of it. */
class FilePagesTest {

	private static final int PER_MM = RasterPage.PER_MM;

	@TempDir
	private Path folder;

	private static int green(BufferedImage image, int x, int y) {
		return image.getRGB(x, y) >> 8 & 0xff;
	}

	@Test
	void theSameIsSeenAsPopplerSees() throws Exception {
		SampleSheet sample = new SampleSheet();
		sample.picture(80, 50);
		PrintSheet print = sample.print(PrintOptions.USUAL);
		Bounds page = print.faces().page();
		BufferedImage theirs = RasterPage.of(SampleSheet.pdf(print), 1, page, folder).image();
		try (FilePages pages = FilePages.of(print, Monitor.NONE)) {
			assertEquals(1, pages.count());
			BufferedImage ours = pages.image(0, page, 200 * PER_MM, 150 * PER_MM, false);
			int others = 0;
			for (int y = 0; y < ours.getHeight(); y++) {
				for (int x = 0; x < ours.getWidth(); x++) {
					others += Math.abs(green(ours, x, y) - green(theirs, x, y)) > 100 ? 1 : 0;
				}
			}
			// fonts are drawn a little otherwise, and pixels of clipped pictures are in or out
			assertTrue(others < 3000, others + " pixels");
		}
	}

	/** A strip is the same as that piece of the whole, so that strips fit together. */
	@Test
	void aPieceIsAPieceOfTheWhole() throws Exception {
		SampleSheet sample = new SampleSheet();
		sample.picture(80, 50);
		try (FilePages pages = FilePages.of(sample.print(PrintOptions.USUAL), Monitor.NONE)) {
			BufferedImage whole = pages.image(0, new Bounds(0, 0, 200, 150), 2000, 1500, false);
			BufferedImage piece = pages.image(0, new Bounds(20, 40, 160, 105.5), 1400, 655, false);
			for (int y = 0; y < piece.getHeight(); y++) {
				for (int x = 0; x < piece.getWidth(); x++) {
					assertEquals(green(whole, x + 200, y + 400), green(piece, x, y), 8, x + ", " + y);
				}
			}
		}
	}

	@Test
	void artAndMarksAreShownApartAndNothingIsSeenThrough() throws Exception {
		SampleSheet sample = new SampleSheet();
		SampleSheet.outline(sample.layer, SampleSheet.CARD, OperationKind.PRINT);
		PrintSheet print = sample.print(PrintOptions.USUAL);
		Point mark = print.plan().orElseThrow().marks().get(1).place();
		try (FilePages pages = FilePages.of(print, Monitor.NONE)) {
			assertEquals("on on nothing", seen(pages, mark));
			pages.showArt(false);
			assertEquals("nothing on nothing", seen(pages, mark));
			pages.showMarks(false);
			assertEquals("nothing nothing nothing", seen(pages, mark));
			pages.showArt(true);
			assertEquals("on nothing nothing", seen(pages, mark));
		}
	}

	/** Of the card, of a mark, and of bare paper. */
	private static String seen(FilePages pages, Point mark) throws Exception {
		BufferedImage image = pages.image(0, new Bounds(0, 0, 200, 150), 400, 300, true);
		return alpha(image, new Point(100, 75)) + " " + alpha(image, mark) + " " + alpha(image, new Point(50, 75));
	}

	private static String alpha(BufferedImage image, Point place) {
		int alpha = image.getRGB((int) (2 * place.x()), (int) (2 * place.y())) >>> 24;
		return alpha == 0 ? "nothing" : alpha == 255 ? "on" : "grey";
	}

	@Test
	void asSeenIsWhatComesOutOfThePrinter() throws Exception {
		SampleSheet sample = new SampleSheet();
		SampleSheet.outline(sample.layer, SampleSheet.CARD, OperationKind.PRINT);
		PrinterProfile wide = new PrinterProfile("Front desk", 1.05, 1, 0, LocalDate.of(2026, 11, 30), 4);
		PrintOptions options = new PrintOptions(3, false, TurnEdge.SIDE, true, true, true, Optional.of(wide));
		assertEquals(86 / 1.05, width(sample.print(options)), 0.2);
		assertEquals(86, width(sample.print(options).asSeen()), 0.2);
	}

	private static double width(PrintSheet print) throws Exception {
		try (FilePages pages = FilePages.of(print, Monitor.NONE)) {
			BufferedImage image = pages.image(0, new Bounds(0, 60, 200, 61), 2000, 10, false);
			int dark = 0;
			for (int x = 400; x < 1600; x++) {
				dark += green(image, x, 5) < 128 ? 1 : 0;
			}
			return dark / 10.0;
		}
	}

	@Test
	void theBackIsAPageOfItsOwn() throws Exception {
		SampleSheet sample = new SampleSheet();
		Layer back = Jobs.addLayer(sample.job, "Back");
		back.setBack(true);
		back.setColour("#000000");
		SampleSheet.outline(back, "M5 5H15V45H5Z", OperationKind.PRINT);
		try (FilePages pages = FilePages.of(sample.print(PrintOptions.USUAL), Monitor.NONE)) {
			assertEquals(2, pages.count());
			BufferedImage image = pages.image(1, new Bounds(0, 0, 200, 150), 400, 300, false);
			assertEquals(0, green(image, 2 * (200 - 70), 2 * 75));
			assertEquals(255, green(image, 2 * 70, 2 * 75));
		}
	}
}
