package org.frisket.ui.tests;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.zip.DataFormatException;
import java.util.zip.Inflater;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.printing.Printer;
import org.eclipse.swt.printing.PrinterData;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.frisket.geometry.Line;
import org.frisket.geometry.Point;
import org.frisket.model.Job;
import org.frisket.model.JobFile;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;
import org.frisket.model.OperationKind;
import org.frisket.prepare.layout.PageLayout;
import org.frisket.prepare.layout.PageSetup;
import org.frisket.prepare.layout.Paper;
import org.frisket.ui.LengthUnit;
import org.frisket.ui.ThemeColour;
import org.frisket.ui.bench.internal.looks.BenchLook;
import org.frisket.ui.bench.internal.print.Ground;
import org.frisket.ui.bench.internal.print.PageCanvas;
import org.frisket.ui.bench.internal.print.PageCaption;
import org.frisket.ui.bench.internal.print.PagePainter;
import org.frisket.ui.bench.internal.print.PrintPreview;
import org.frisket.ui.bench.internal.print.PrintedJob;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** The job as it comes onto paper. */
class PrintPreviewUiTest extends OpenBench {

	private static final LocalDate DAY = LocalDate.of(2026, 11, 25);
	private static final String TITLE = "Print Preview";
	private static final Path PRINTED = Path.of("output.pdf");
	private static final double PX_PER_MM = 4;
	private static final double POINTS_PER_MM = 72 / 25.4;

	@AfterEach
	void closePreview() throws IOException {
		Files.deleteIfExists(PRINTED);
		if (Dialogs.isOpen(TITLE)) {
			Dialogs.shell(TITLE).close();
			Screen.settle();
		}
	}

	private Shell preview() {
		Screen.key("ctrl+p");
		Screen.waitUntil("the preview is open", () -> Dialogs.isOpen(TITLE));
		bringToFront(Dialogs.shell(TITLE));
		return Dialogs.shell(TITLE);
	}

	private static PageCanvas pages(Shell preview) {
		return (PageCanvas) Dialogs.all(preview).filter(PageCanvas.class::isInstance).findFirst().orElseThrow();
	}

	private static void choose(Shell preview, String value) {
		Combo combo = Dialogs.all(preview).filter(Combo.class::isInstance).map(Combo.class::cast)
				.filter(each -> Arrays.asList(each.getItems()).contains(value)).findFirst().orElseThrow();
		combo.select(combo.indexOf(value));
		combo.notifyListeners(SWT.Selection, new Event());
		Screen.settle();
	}

	private static RGB seen(PageCanvas canvas, double x, double y) {
		Rectangle paper = canvas.paper();
		Point place = canvas.painter().layout().toPaper(canvas.page()).apply(new Point(x, y));
		return Screen.pixel(Screen.picture(canvas), paper.x + (int) Math.round(place.x() * canvas.scale()),
				paper.y + (int) Math.round(place.y() * canvas.scale()));
	}

	private static String pageText(Shell preview) {
		return Dialogs.all(preview).filter(Label.class::isInstance).map(each -> ((Label) each).getText())
				.filter(text -> text.startsWith("Page ")).findFirst().orElseThrow();
	}

	/** A banner of 400 × 300 mm, on four sheets of A4. */
	private void openBanner() throws Exception {
		Job job = Jobs.create("banner", "Ferry anniversary");
		job.setNumber("1907");
		Layer layer = Jobs.addLayer(job, "Banner");
		layer.setColour("#b5523b");
		Jobs.addOperation(Jobs.addOutline(layer, "M 0 0 V 300 H 400 V 0 Z"), OperationKind.CUT);
		Path path = folder.resolve("banner.frjob");
		JobFile.save(job, path);
		bench = open(path);
		Screen.waitUntil("the job is worked through", bench::isUpToDate);
		listen(bench);
	}

	@Test
	void jobIsSeenOnPaperInTheColoursOfItsStocks() throws Exception {
		Shell preview = preview();
		PageCanvas canvas = pages(preview);
		Screen.keep(Screen.picture(preview), "print-preview");
		assertColour(SampleJob.PLATE_COLOUR, seen(canvas, 30, 30));
		assertColour(SampleJob.DISC_COLOUR, seen(canvas, 120, 40));
		assertColour(SampleJob.MAT_COLOUR, seen(canvas, 17.5, 40));
		assertColour(ThemeColour.BENCH_SHEET.colour().getRGB(), seen(canvas, 50, 40));
		assertEquals("Page 1 of 1", pageText(preview));
		assertEquals(1, canvas.painter().layout().scale());
	}

	@Test
	void lookOfTheBenchIsTheFirstAndCanBeChanged() throws Exception {
		Screen.key("F6");
		Shell preview = preview();
		assertColour(ThemeColour.BENCH_SHEET.colour().getRGB(), seen(pages(preview), 30, 30));
		choose(preview, "Preview");
		assertColour(SampleJob.PLATE_COLOUR, seen(pages(preview), 30, 30));
		choose(preview, "Operations");
		Screen.keep(Screen.picture(preview), "print-operations");
		assertColour(ThemeColour.BENCH_SHEET.colour().getRGB(), seen(pages(preview), 30, 30));
	}

	@Test
	void keysTurnThePagesOfALargeJob() throws Exception {
		openBanner();
		Shell preview = preview();
		PageCanvas canvas = pages(preview);
		int count = canvas.painter().layout().pages();
		assertEquals(6, count);
		assertEquals("Page 1 of 6", pageText(preview));
		Screen.key("Next");
		assertEquals(1, canvas.page());
		Screen.keep(Screen.picture(preview), "print-tile");
		assertEquals("Page 2 of 6", pageText(preview));
		Screen.key("End");
		assertEquals(5, canvas.page());
		Screen.key("Next");
		assertEquals(5, canvas.page());
		Screen.key("Prior");
		assertEquals(4, canvas.page());
		Screen.key("Home");
		assertEquals(0, canvas.page());
		Dialogs.press(Dialogs.button(preview, "Next"));
		assertEquals(1, canvas.page());
		choose(preview, "Fit to one page");
		assertEquals("Page 1 of 1", pageText(preview));
		assertEquals(0, canvas.page());
		choose(preview, "Landscape");
		assertEquals(297, canvas.painter().layout().setup().width());
		choose(preview, "Letter");
		assertEquals(279.4, canvas.painter().layout().setup().width(), 1e-9);
	}

	@Test
	void emptyJobCannotBePrinted() throws Exception {
		Job job = Jobs.create("empty", "Nothing yet");
		Path path = folder.resolve("empty.frjob");
		JobFile.save(job, path);
		bench = open(path);
		Screen.waitUntil("the job is worked through", bench::isUpToDate);
		listen(bench);
		Shell preview = preview();
		assertFalse(Dialogs.button(preview, "Print\u2026").isEnabled());
		assertTrue(Dialogs.all(preview).anyMatch(each -> Dialogs.text(each).equals("There is nothing to print.")));
	}

	@Test
	void previewChangesNothing() throws Exception {
		String before = text(bench.document().job());
		preview().close();
		assertEquals(before, text(bench.document().job()));
		assertFalse(bench.isDirty());
	}

	private PrintedJob printed() {
		return PrintedJob.of(bench.viewer(), bench.document().job(), "sample");
	}

	private static PagePainter painter(PrintedJob job, PageSetup setup, BenchLook look) {
		PageLayout layout = PageLayout.of(job.bounds(), setup);
		return new PagePainter(job, layout, look, new PageCaption(job, layout, look, DAY));
	}

	private static ImageData page(PagePainter painter, int page) {
		PageSetup setup = painter.layout().setup();
		Image image = new Image(Display.getCurrent(), (int) (setup.width() * PX_PER_MM),
				(int) (setup.height() * PX_PER_MM));
		GC gc = new GC(image);
		painter.paint(gc, page, new Ground(PX_PER_MM, 0, 0));
		gc.dispose();
		ImageData data = image.getImageData();
		image.dispose();
		return data;
	}

	private static RGB at(ImageData picture, Point paper) {
		return Screen.pixel(picture, (int) Math.round(paper.x() * PX_PER_MM), (int) Math.round(paper.y() * PX_PER_MM));
	}

	@Test
	void pageIsPaintedAtItsTrueSize() throws Exception {
		PagePainter painter = painter(printed(), new PageSetup(Paper.A4, false, false), BenchLook.PREVIEW);
		ImageData picture = page(painter, 0);
		Screen.keep(picture, "print-page");
		PageLayout layout = painter.layout();
		// the disc of 20 mm about (120, 40): inside and outside of its edge by half a millimetre
		for (double[] way : new double[][] { { 1, 0 }, { -1, 0 }, { 0, 1 }, { 0, -1 } }) {
			Point in = new Point(120 + 19.3 * way[0], 40 + 19.3 * way[1]);
			Point out = new Point(120 + 20.7 * way[0], 40 + 20.7 * way[1]);
			assertColour(SampleJob.DISC_COLOUR, at(picture, layout.toPaper(0).apply(in)));
			assertColour(SampleJob.MAT_COLOUR, at(picture, layout.toPaper(0).apply(out)));
		}
	}

	@Test
	void overlapAndMarksAreOnBothPages() throws Exception {
		openBanner();
		PagePainter painter = painter(printed(), new PageSetup(Paper.A4, false, false), BenchLook.OUTLINE);
		ImageData first = page(painter, 0);
		ImageData second = page(painter, 1);
		RGB ink = ThemeColour.BENCH_INK.colour().getRGB();
		Line right = painter.layout().marks(0).get(0);
		Line left = painter.layout().marks(1).get(0);
		assertTrue(isDark(first, right), "mark on the first page");
		assertTrue(isDark(second, left), "mark on the second page");
		assertTrue(ink.red < 100);
		// nothing of the job is painted beyond the area that belongs to it
		PageLayout layout = painter.layout();
		ImageData filled = page(painter(printed(), layout.setup(), BenchLook.PREVIEW), 0);
		double y = layout.area().centre().y();
		assertColour(new RGB(255, 255, 255), at(filled, new Point(layout.area().maxX() + 2, y)));
		assertColour("#b5523b", at(filled, new Point(layout.area().maxX() - 2, y)));
	}

	private static boolean isDark(ImageData picture, Line mark) {
		Point middle = mark.start().towards(mark.end(), 0.5);
		for (double off = -0.5; off <= 0.5; off += 0.25) {
			if (at(picture, new Point(middle.x() + off, middle.y())).red < 170) {
				return true;
			}
		}
		return false;
	}

	@Test
	void captionNamesJobScaleUnitDateAndPage() throws Exception {
		openBanner();
		PrintedJob job = printed();
		PageLayout layout = PageLayout.of(job.bounds(), new PageSetup(Paper.A4, false, false));
		PageCaption caption = new PageCaption(job, layout, BenchLook.OUTLINE, DAY);
		assertEquals("Ferry anniversary \u00b7 Job 1907", caption.heading());
		String details = caption.details(1);
		assertTrue(details.contains("scale 1 : 1") && details.contains("mm") && details.contains("2026")
				&& details.contains("page 2 of 6, tile B1"), details);
		PageLayout fitted = PageLayout.of(job.bounds(), new PageSetup(Paper.A4, false, true));
		String smaller = new PageCaption(job, fitted, BenchLook.OUTLINE, DAY).details(0);
		assertTrue(smaller.matches(".*scale 1 : 2\\.\\d.*"), smaller);
		assertFalse(smaller.contains("page"), smaller);
	}

	@Test
	void inchesAreWrittenInInches() throws Exception {
		LengthUnit.show(LengthUnit.INCH);
		try {
			PrintedJob job = printed();
			PageLayout layout = PageLayout.of(job.bounds(), new PageSetup(Paper.LETTER, false, false));
			assertTrue(new PageCaption(job, layout, BenchLook.PREVIEW, DAY).details(0).contains("lengths in in"));
		} finally {
			LengthUnit.show(LengthUnit.MILLIMETRE);
		}
	}

	@Test
	void samePageIsPaintedTheSameTwice() throws Exception {
		PageSetup setup = new PageSetup(Paper.A4, true, false);
		assertArrayEquals(page(painter(printed(), setup, BenchLook.OPERATIONS), 0).data,
				page(painter(printed(), setup, BenchLook.OPERATIONS), 0).data);
	}

	@Test
	void printerGetsAllPages() throws Exception {
		openBanner();
		PrinterData toFile = Arrays.stream(Printer.getPrinterList())
				.filter(each -> String.valueOf(each.driver).toLowerCase(Locale.ROOT).contains("file")).findFirst()
				.orElse(null);
		assumeTrue(toFile != null, "the window system cannot print into a file");
		// only a person can choose the file, in the window system's own dialog; without one it is always this
		Path pdf = PRINTED;
		Files.deleteIfExists(pdf);
		PrintPreview preview = new PrintPreview(bench.getSite().getShell(), this::printed, BenchLook.PREVIEW);
		preview.open();
		Screen.settle();
		choose(preview.getShell(), paperOf(toFile));
		int pages = pages(preview.getShell()).painter().layout().pages();
		preview.print(toFile);
		Screen.waitUntil("it is printed", () -> isComplete(pdf));
		String written = Files.readString(pdf, StandardCharsets.ISO_8859_1);
		assertEquals(pages, Pattern.compile("/Type /Page\\b(?!s)").matcher(written).results().count());
		assertTrue(holdsBox(Files.readAllBytes(pdf), 400 * POINTS_PER_MM, 300 * POINTS_PER_MM), "at true size");
		Files.move(pdf, Path.of("target", "screenshots", "print.pdf"), StandardCopyOption.REPLACE_EXISTING);
		preview.close();
	}

	/** Whether something of this size is painted in a PDF file, in points. */
	private static boolean holdsBox(byte[] pdf, double width, double height) throws DataFormatException {
		String text = new String(pdf, StandardCharsets.ISO_8859_1);
		Matcher streams = Pattern.compile("stream\r?\n(.*?)endstream", Pattern.DOTALL).matcher(text);
		if (streams.find()) {
			Inflater inflater = new Inflater();
			inflater.setInput(streams.group(1).getBytes(StandardCharsets.ISO_8859_1));
			byte[] page = new byte[1 << 20];
			String painted;
			try {
				painted = new String(page, 0, inflater.inflate(page), StandardCharsets.ISO_8859_1);
			} finally {
				inflater.end();
			}
			Matcher boxes = Pattern.compile("(\\S+) (\\S+) re\\b").matcher(painted);
			while (boxes.find()) {
				if (Math.abs(Math.abs(Double.parseDouble(boxes.group(1))) - width) < 0.5
						&& Math.abs(Math.abs(Double.parseDouble(boxes.group(2))) - height) < 0.5) {
					return true;
				}
			}
		}
		return false;
	}

	private static boolean isComplete(Path pdf) {
		try {
			return Files.exists(pdf)
					&& Files.readString(pdf, StandardCharsets.ISO_8859_1).stripTrailing().endsWith("%%EOF");
		} catch (IOException e) {
			return false;
		}
	}

	private static String paperOf(PrinterData data) {
		Printer printer = new Printer(data);
		double width = printer.getBounds().width * 25.4 / printer.getDPI().x;
		printer.dispose();
		return Math.abs(width - 210) < 3 ? "A4" : "Letter";
	}
}
