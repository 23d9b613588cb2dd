package org.frisket.page.chart;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.CancellationException;

import javax.imageio.ImageIO;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Contour;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Outline;
import org.frisket.geometry.Point;
import org.frisket.prepare.fonts.FontLibraries;
import org.frisket.prepare.layout.Paper;
import org.frisket.typography.chart.GlyphChart;
import org.frisket.typography.chart.GlyphEntry;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Charts as PDF, read by poppler, which is no part of this project, and as pictures. */
class ChartPagesTest {

	private static final ChartSheet A4 = new ChartSheet(Paper.A4, false, Optional.empty());

	private static GlyphChart chart;
	private static Locale usual;

	@TempDir
	private Path folder;

	@BeforeAll
	static void openFont() throws Exception {
		usual = Locale.getDefault();
		Locale.setDefault(Locale.ENGLISH);
		chart = GlyphChart.of(FontLibraries.installed().find("DejaVu Sans"));
	}

	@AfterAll
	static void giveTheLanguageBack() {
		Locale.setDefault(usual);
	}

	private static ChartPages pages(String words, ChartSheet sheet) {
		return new ChartPages(chart, chart.search(words), sheet);
	}

	private Path pdf(ChartPages pages) throws IOException {
		Path file = folder.resolve("chart.pdf");
		assertEquals(List.of(file), ChartFiles.write(pages, file, Monitor.NONE));
		return file;
	}

	private static byte[] output(String... command) throws Exception {
		Process process = new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.INHERIT).start();
		byte[] output = process.getInputStream().readAllBytes();
		assertEquals(0, process.waitFor(), String.join(" ", command));
		return output;
	}

	private static String text(Path file) throws Exception {
		return new String(output("pdftotext", "-layout", file.toString(), "-"), StandardCharsets.UTF_8);
	}

	private static String facts(Path file) throws Exception {
		return new String(output("pdfinfo", file.toString()), StandardCharsets.UTF_8);
	}

	private static BufferedImage picture(Path file, int dpi) throws Exception {
		return ImageIO.read(new ByteArrayInputStream(output("pdftocairo", "-png", "-singlefile", "-gray", "-r",
				String.valueOf(dpi), file.toString(), "-")));
	}

	@Test
	void wordsOfThePagesAreTextThatIsFound() throws Exception {
		ChartPages pages = pages("arrow", new ChartSheet(Paper.A4, false, Optional.of(LocalDate.of(2026, 11, 29))));
		Path file = pdf(pages);
		String text = text(file);
		for (GlyphEntry entry : chart.search("arrow")) {
			assertTrue(text.contains(entry.label()), entry.label());
		}
		for (String word : List.of("DejaVu Sans", "50 mm", "capitals 6.5 mm high", "page 2 of 2", "Nov 29, 2026",
				chart.search("arrow").size() + " glyphs")) {
			assertTrue(text.contains(word), word + " in " + text);
		}
		String fonts = new String(output("pdffonts", file.toString()), StandardCharsets.UTF_8);
		assertTrue(fonts.lines().skip(2).allMatch(line -> line.contains("LiberationSans") && line.contains("yes yes yes")),
				fonts);
	}

	@Test
	void pagesAreCountedAndAsLargeAsThePaper() throws Exception {
		ChartPages all = pages("", A4);
		int perPage = new ChartLayout(Paper.A4).perPage();
		assertEquals(120, perPage);
		assertEquals((chart.entries().size() + perPage - 1) / perPage, all.count());
		String facts = facts(pdf(all));
		assertTrue(facts.matches("(?s).*Pages:\\s+" + all.count() + "\\n.*"), facts);
		assertTrue(facts.contains("595.276 x 841.89 pts (A4)"), facts);
		String letter = facts(pdf(pages("A", new ChartSheet(Paper.LETTER, true, Optional.empty()))));
		assertTrue(letter.contains("612 x 792 pts (letter)"), letter);
		assertTrue(text(folder.resolve("chart.pdf")).contains("0.256 in"), "6.5 mm");
	}

	@Test
	void glyphsAreAsLargeAsTheyShouldBe() throws Exception {
		int perMm = 20;
		for (String character : List.of("U+2588", "H", "U+2766", "@")) {
			List<GlyphEntry> entry = chart.search(character);
			Path file = pdf(new ChartPages(chart, entry, A4));
			Bounds cell = new ChartLayout(Paper.A4).cell(0);
			Outline glyph = ChartLayout.placed(chart.outline(entry.get(0), 1), cell);
			double expected = Math.abs(glyph.contours().stream().mapToDouble(Contour::signedArea).sum());
			Bounds box = glyph.bounds().grown(0.3);
			BufferedImage picture = picture(file, (int) Math.round(perMm * 25.4));
			double dark = darkness(picture, box, perMm) / (perMm * perMm);
			assertEquals(1, dark / expected, 0.015, character);
			assertTrue(cell.contains(new Point(box.minX(), box.minY()))
					&& cell.contains(new Point(box.maxX(), box.maxY())), character);
		}
	}

	/** How much of a box in mm is black, in pixels. */
	private static double darkness(BufferedImage picture, Bounds box, double perMm) {
		double sum = 0;
		for (int y = (int) (box.minY() * perMm); y < box.maxY() * perMm; y++) {
			for (int x = (int) (box.minX() * perMm); x < box.maxX() * perMm; x++) {
				sum += 1 - picture.getRaster().getSample(x, y, 0) / 255.0;
			}
		}
		return sum;
	}

	@Test
	void picturesShowWhatThePdfShows() throws Exception {
		ChartPages pages = pages("arrow", A4);
		ByteArrayOutputStream bytes = new ByteArrayOutputStream();
		pages.writePng(0, bytes);
		BufferedImage ours = ImageIO.read(new ByteArrayInputStream(bytes.toByteArray()));
		BufferedImage theirs = picture(pdf(pages), ChartPages.DPI);
		assertEquals(1191, ours.getWidth());
		double perMm = ChartPages.DPI / 25.4;
		ChartLayout layout = new ChartLayout(Paper.A4);
		for (int i = 0; i < layout.perPage(); i++) {
			Bounds glyph = layout.cell(i).grown(-1.3);
			double a = darkness(ours, glyph, perMm);
			double b = darkness(theirs, glyph, perMm);
			assertTrue(a > 50 && Math.abs(a - b) < 12 + 0.04 * a, i + ": " + a + " and " + b);
		}
	}

	@Test
	void sameChartIsTheSameFile() throws Exception {
		byte[] first = Files.readAllBytes(pdf(pages("arrow", A4)));
		Thread.sleep(1100); // a clock that was asked would show another second
		assertArrayEquals(first, Files.readAllBytes(pdf(pages("arrow", A4))));
		byte[] other = Files.readAllBytes(pdf(pages("star", A4)));
		assertFalse(id(first).equals(id(other)), id(first));
		assertTrue(facts(folder.resolve("chart.pdf")).lines().noneMatch(line -> line.startsWith("CreationDate")));
	}

	private static String id(byte[] pdf) {
		String text = new String(pdf, StandardCharsets.ISO_8859_1);
		int at = text.indexOf("/ID");
		assertTrue(at >= 0, "a document has an id");
		return text.substring(at, at + 40);
	}

	@Test
	void cellsDoNotOverlapAndStayOnThePaper() {
		for (Paper paper : Paper.values()) {
			ChartLayout layout = new ChartLayout(paper);
			List<Bounds> cells = new ArrayList<>();
			for (int i = 0; i < layout.perPage(); i++) {
				Bounds cell = layout.cell(i);
				assertTrue(cell.minX() >= ChartLayout.MARGIN - 1e-9 && cell.maxX() <= paper.width() - ChartLayout.MARGIN + 1e-9
						&& cell.maxY() <= paper.height() - ChartLayout.MARGIN + 1e-9, paper + " " + i);
				cells.forEach(other -> assertFalse(other.intersects(cell.grown(-1e-6)), paper + " overlap"));
				cells.add(cell);
			}
		}
	}

	@Test
	void everyGlyphStaysInItsCell() {
		Bounds cell = new ChartLayout(Paper.A4).cell(17);
		for (GlyphEntry entry : chart.entries()) {
			Outline glyph = chart.outline(entry, 1);
			if (!glyph.isEmpty()) {
				Bounds box = ChartLayout.placed(glyph, cell).bounds();
				assertTrue(box.minX() > cell.minX() && box.maxX() < cell.maxX() && box.minY() > cell.minY()
						&& box.maxY() < cell.maxY(), entry.toString());
			}
		}
		// twelve capitals wide, as a long ligature is: made smaller in proportion, into the middle
		Outline wide = Outline.of(Contour.polygon(List.of(new Point(0, 0), new Point(12, 0), new Point(12, -1),
				new Point(0, -1))));
		Bounds box = ChartLayout.placed(wide, cell).bounds();
		assertEquals(12, box.width() / box.height(), 1e-9);
		assertEquals(cell.centre().x(), box.centre().x(), 1e-9);
		assertTrue(box.width() < cell.width() && box.width() > 0.8 * cell.width(), box.toString());
		assertEquals(box.height() / ChartLayout.CAPITAL, ChartLayout.reduction(wide, cell), 1e-9);
	}

	@Test
	void nothingIsLeftOfAChartThatIsStopped() {
		Path file = folder.resolve("chart.pdf");
		assertThrows(CancellationException.class, () -> ChartFiles.write(pages("", A4), file, () -> true));
		assertFalse(Files.exists(file));
		assertThrows(IllegalArgumentException.class,
				() -> ChartFiles.write(pages("A", A4), folder.resolve("chart.svg"), Monitor.NONE));
		IOException e = assertThrows(IOException.class,
				() -> ChartFiles.write(pages("A", A4), folder.resolve("none/chart.pdf"), Monitor.NONE));
		assertTrue(e.getMessage().contains("none"), e.getMessage());
	}
}
