package org.frisket.print.output;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

import org.frisket.geometry.Bounds;
import org.frisket.print.measure.PrinterSheet;
import org.frisket.print.output.measuring.PrinterSheetFile;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The sheet that a printer is measured by, as another program renders it. */
class PrinterSheetFileTest {

	private static final PrinterSheet SHEET = new PrinterSheet(210, 297);

	@TempDir
	private Path folder;

	private static byte[] written() throws IOException {
		ByteArrayOutputStream out = new ByteArrayOutputStream();
		PrinterSheetFile.write(SHEET, out);
		return out.toByteArray();
	}

	@Test
	void theSquareHasItsTrueSize() throws Exception {
		byte[] pdf = written();
		String said = RasterPage.output("pdfinfo", write(pdf)).replaceAll(" +", " ");
		assertTrue(said.contains("Page size: 595.276 x 841.89 pts (A4)"), said);
		Bounds square = SHEET.square();
		RasterPage page = RasterPage.of(pdf, 1, new Bounds(0, 0, 210, 297), folder);
		double y = square.minY() + 100;
		double left = page.middleAcross(square.minX() - 1, square.minX() + 1, y);
		double right = page.middleAcross(square.maxX() - 1, square.maxX() + 1, y);
		assertEquals(square.minX(), left, 0.02);
		assertEquals(SHEET.side(), right - left, 0.02);
		double x = square.minX() + 30;
		assertEquals(0.15, page.inkDown(square.minY() - 1, square.minY() + 1, x), 0.03, "one line");
		assertEquals(0.15, page.inkDown(square.maxY() - 1, square.maxY() + 1, x), 0.03);
		assertTrue(page.inkDown(square.minY() - 5, square.minY() - 4, square.minX()) > 0.9, "lines go on beyond the corners");
	}

	private String write(byte[] pdf) throws IOException {
		return Files.write(folder.resolve("sheet.pdf"), pdf).toString();
	}

	@Test
	void theSameSheetGivesTheSameBytes() throws IOException {
		assertArrayEquals(written(), written());
	}
}
