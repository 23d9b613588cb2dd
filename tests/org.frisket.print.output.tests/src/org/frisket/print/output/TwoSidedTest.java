package org.frisket.print.output;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

import javax.imageio.ImageIO;

import org.frisket.geometry.Monitor;
import org.frisket.geometry.Tolerance;
import org.frisket.model.ImageBytes;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;
import org.frisket.model.OperationKind;
import org.frisket.model.Picture;
import org.frisket.sheets.LaidSheet;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A card with a picture and a crease on its back, off the middle of the sheet so that a side that is mistaken is
 * seen. The picture is black to the left of its fold, as one sees it through the card, and the crease lies on that
 * edge.
 */
class TwoSidedTest {

	private static final double NEAR = 0.01;
	/** Poppler sets pictures to whole pixels. */
	private static final double PIXEL = 0.0501;
	private static final int PER_MM = RasterPage.PER_MM;
	/** Of the card's left edge and its fold, mm on the sheet. */
	private static final double LEFT = 30;
	private static final double FOLD = LEFT + 30;

	@TempDir
	private Path folder;
	private final SampleSheet sample = new SampleSheet();

	@BeforeEach
	void addBack() throws Exception {
		sample.sheet.getPlacements().get(0).setX(LEFT + 40);
		Layer back = Jobs.addLayer(sample.job, "Back");
		back.setBack(true);
		BufferedImage image = new BufferedImage(160, 100, BufferedImage.TYPE_INT_RGB);
		for (int y = 0; y < 100; y++) {
			for (int x = 0; x < 160; x++) {
				image.setRGB(x, y, x < 60 ? 0x000000 : 0xffffff);
			}
		}
		ByteArrayOutputStream png = new ByteArrayOutputStream();
		ImageIO.write(image, "png", png);
		Picture picture = Jobs.addPicture(back, ImageBytes.of(png.toByteArray()), "image/png", 80, 50);
		Jobs.addOperation(picture, OperationKind.PRINT);
		SampleSheet.outline(back, "M30 0V50", OperationKind.CREASE);
		SampleSheet.outline(sample.layer, "M10 10H20V20H10Z", OperationKind.PRINT);
	}

	private PrintSheet print(TurnEdge turn) {
		return sample.print(new PrintOptions(3, false, turn, true, true, false, Optional.empty()));
	}

	private static LaidSheet cut(PrintSheet print, boolean back) throws Exception {
		return PrintAndCut.of(print, Optional.empty(), Optional.empty()).cut(back, false, Tolerance.DEFAULT, Monitor.NONE).orElseThrow();
	}

	private BufferedImage page(PrintSheet print, int number) throws Exception {
		return RasterPage.of(SampleSheet.pdf(print), number, print.faces().page(), folder).image();
	}

	private static boolean isBlack(BufferedImage page, double x, double y) {
		return (page.getRGB((int) (x * PER_MM), (int) (y * PER_MM)) & 0xff) < 128;
	}

	@Test
	void pictureAndCreaseOfTheBackLieOnEachOther() throws Exception {
		PrintSheet print = print(TurnEdge.SIDE);
		BufferedImage page = page(print, 2);
		BufferedImage crease = CutRaster.of(cut(print, true), folder);
		// turned over its side, what was left of the fold is to the right of it
		double fold = 200 - FOLD;
		assertEquals(fold, CutRaster.edge(page, fold - 2, fold + 2, 62, false), PIXEL);
		assertEquals(fold, CutRaster.middle(crease, fold - 2, fold + 2, 62, false), NEAR);
		assertTrue(isBlack(page, fold + 10, 75) && !isBlack(page, fold - 10, 75));
		assertEquals(List.of(OperationKind.CREASE), cut(print, true).content().elements()
				.flatMap(element -> element.operations().stream()).map(each -> each.getKind()).toList());
	}

	@Test
	void overTheHeadLeftStaysLeft() throws Exception {
		PrintSheet print = print(TurnEdge.HEAD);
		sample.sheet.getPlacements().get(0).setY(60);
		PrintSheet higher = print(TurnEdge.HEAD);
		BufferedImage page = page(print, 2);
		BufferedImage crease = CutRaster.of(cut(print, true), folder);
		assertEquals(FOLD, CutRaster.edge(page, FOLD + 2, FOLD - 2, 62, false), PIXEL);
		assertEquals(FOLD, CutRaster.middle(crease, FOLD - 2, FOLD + 2, 62, false), NEAR);
		assertTrue(isBlack(page, FOLD - 10, 75) && !isBlack(page, FOLD + 10, 75));
		// from 35 to 85 mm seen from the front, with bleed; turned over, from 65 to 115
		BufferedImage moved = page(higher, 2);
		assertTrue(isBlack(moved, FOLD - 10, 117) && !isBlack(moved, FOLD - 10, 119));
		assertTrue(isBlack(moved, FOLD - 10, 63) && !isBlack(moved, FOLD - 10, 61));
	}

	@Test
	void nothingOfTheBackIsOnTheFront() throws Exception {
		PrintSheet print = print(TurnEdge.SIDE);
		BufferedImage page = page(print, 1);
		assertTrue(isBlack(page, LEFT + 15, 65) && !isBlack(page, LEFT + 25, 75) && !isBlack(page, LEFT + 5, 90));
		assertEquals(List.of(OperationKind.CUT), cut(print, false).content().elements()
				.flatMap(element -> element.operations().stream()).map(each -> each.getKind()).toList());
	}

	/** Held against the light: marks and the card's outline are at one place from both sides. */
	@Test
	void bothSidesAreRegistered() throws Exception {
		PrintSheet print = print(TurnEdge.SIDE);
		BufferedImage front = page(print, 1);
		BufferedImage back = page(print, 2);
		print.plan().orElseThrow().marks().forEach(mark -> {
			double y = mark.place().y();
			double x = mark.place().x();
			assertEquals(200 - CutRaster.middle(front, x - 4, x + 4, y, false),
					CutRaster.middle(back, 200 - x - 4, 200 - x + 4, y, false), NEAR);
			assertEquals(CutRaster.middle(front, y - 4, y + 4, x, true), CutRaster.middle(back, y - 4, y + 4, 200 - x, true), NEAR);
		});
	}
}
