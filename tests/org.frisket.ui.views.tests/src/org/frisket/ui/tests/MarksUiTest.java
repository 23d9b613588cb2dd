package org.frisket.ui.tests;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

import javax.imageio.ImageIO;

import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.IWorkbenchPage;
import org.frisket.geometry.Segment;
import org.frisket.model.FrisketFactory;
import org.frisket.model.Job;
import org.frisket.model.JobFile;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;
import org.frisket.model.MarkKind;
import org.frisket.model.MeasuredMark;
import org.frisket.model.OperationKind;
import org.frisket.model.Outline;
import org.frisket.model.RegisterMark;
import org.frisket.model.Sheet;
import org.frisket.model.SheetFit;
import org.frisket.print.marks.Mark;
import org.frisket.print.marks.MarkPlan;
import org.frisket.print.measure.KeptMeasures;
import org.frisket.print.output.SheetMarks;
import org.frisket.print.register.FitKind;
import org.frisket.print.register.PrinterProfile;
import org.frisket.print.register.PrinterProfiles;
import org.frisket.studio.Studio;
import org.frisket.ui.bench.StudioChoice;
import org.frisket.ui.print.internal.marks.MarksView;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** The marks of a sheet are placed, measured by hand, by lengths and in a photograph. */
class MarksUiTest extends OpenBench {

	private static final double[][] DESIGNED = { { 10, 10 }, { 290, 10 }, { 290, 190 }, { 10, 190 } };
	private static final String[][] MEASURED = { { "11.48", "9.29" }, { "291.94", "11.79" }, { "290.43", "192.16" },
			{ "9.80", "189.65" } };
	private static final double PIXELS_PER_MM = 6;
	private static final int OPENED_MS = 100;

	private MarksView view;

	/** Gift tags of Harbour Lane on a sheet of 300 by 200 mm. */
	private void open(boolean marked) throws Exception {
		open(marked, false);
	}

	/** @param again whether a second sheet has the same marks */
	private void open(boolean marked, boolean again) throws Exception {
		Job job = Jobs.create("harbour-tags", "Gift tags");
		Layer card = Jobs.addLayer(job, "Card");
		Outline tag = Jobs.addOutline(card, "M0 0H70L90 20L70 40H0Z");
		Jobs.addOperation(tag, OperationKind.CUT);
		Layer back = Jobs.addLayer(job, "Back");
		back.setBack(true);
		Jobs.addOperation(Jobs.addOutline(back, "M30 0V40"), OperationKind.CREASE);
		Sheet sheet = Jobs.addSheet(job, null, 300, 200);
		Jobs.addPlacement(sheet, tag.getId(), 90, 100, 0);
		Jobs.addPlacement(sheet, tag.getId(), 210, 100, 180);
		if (marked) {
			for (double[] place : DESIGNED) {
				RegisterMark mark = FrisketFactory.INSTANCE.createRegisterMark();
				mark.setKind(sheet.getMarks().isEmpty() ? MarkKind.PENNANT : MarkKind.DISC);
				mark.setX(place[0]);
				mark.setY(place[1]);
				mark.setSize(5);
				mark.setWeight(1);
				mark.setQuiet(3);
				sheet.getMarks().add(mark);
			}
		}
		if (again) {
			Sheet second = EcoreUtil.copy(sheet);
			second.setId("another");
			second.getPlacements().clear();
			job.getSheets().add(second);
		}
		Path tags = folder.resolve("tags.frjob");
		JobFile.save(job, tags);
		bench = open(tags);
		Screen.waitUntil("the job is checked", bench::isUpToDate);
		view = (MarksView) page().showView(MarksView.ID);
		page().setPartState(page().getReference(view), IWorkbenchPage.STATE_RESTORED);
		page().setPartState(page().getReference(view), IWorkbenchPage.STATE_MAXIMIZED);
		settled();
	}

	private void settled() {
		Screen.waitUntil("the sheet is worked out", view::isSettled);
		Screen.settle();
	}

	@AfterEach
	void closeView() {
		if (view != null) {
			page().setPartState(page().getReference(view), IWorkbenchPage.STATE_RESTORED);
			page().hideView(view);
		}
	}

	private Sheet sheet() {
		return bench.document().job().getSheets().get(0);
	}

	private boolean isSaid(String words) {
		return view.page().notices().words().stream().anyMatch(each -> each.contains(words));
	}

	private void typeMark(int mark) {
		Screen.type(MEASURED[mark][0]);
		Screen.key("Tab");
		Screen.type(MEASURED[mark][1]);
		Screen.key("Return");
	}

	@Test
	void typedMeasuresTellHowTheSheetLies() throws Exception {
		open(true);
		Point first = view.page().canvas().pixelOf(10, 10);
		Screen.click(view.page().canvas(), first.x, first.y);
		Text x = view.page().places().fields(0).get(0);
		Screen.waitUntil("the caret is where the mark is measured", x::isFocusControl);
		assertArrayEquals(new int[] { 0 }, view.page().canvas().lit());
		typeMark(0);
		assertArrayEquals(new int[] { 1 }, view.page().canvas().lit(), "on to the next mark");
		assertEquals(1, sheet().getMeasured().size());
		assertTrue(isSaid("nothing is to be cut"));
		for (int mark = 1; mark < 4; mark++) {
			typeMark(mark);
		}
		assertEquals(4, sheet().getMeasured().size());
		assertEquals(290.43, sheet().getMeasured().get(2).getX(), 1e-9);
		String words = view.page().fit().words();
		assertTrue(words.contains("Off by 0.043 mm on average (RMS); mark 2 the most, by 0.051 mm."), words);
		assertTrue(words.contains("Turned by 0.510°, clockwise."), words);
		assertTrue(words.contains("Scale 100.201 %."), words);
		assertEquals("0.041 mm", view.page().places().off(0));
		assertTrue(isSaid("the blade follows"));
		keep(view.page(), "marks-measured");

		view.page().fit().kind().setFocus();
		Screen.key("Down");
		Screen.waitUntil("another fit is chosen", () -> sheet().getFit() == SheetFit.AFFINE);
		assertTrue(view.page().fit().words().contains("0.043 mm on average"), view.page().fit().words());
		Screen.key("ctrl+z");
		Screen.waitUntil("the fit is taken back", () -> sheet().getFit() == SheetFit.SIMILARITY);
		Screen.key("ctrl+z");
		Screen.waitUntil("the last mark is taken back", () -> sheet().getMeasured().size() == 3);
		assertEquals("", view.page().places().fields(3).get(0).getText());
		measureBack();
	}

	/** The first mark stands to the right on a sheet that is turned over its side; the front stays as it is. */
	private void measureBack() {
		view.page().side().setFocus();
		Screen.key("Down");
		Text x = view.page().places().fields(0).get(0);
		Screen.waitUntil("the back is not measured", () -> x.getText().isEmpty());
		Point first = view.page().canvas().pixelOf(290, 10);
		Screen.click(view.page().canvas(), first.x, first.y);
		Screen.waitUntil("the caret is where the mark of the back is measured", x::isFocusControl);
		typeMark(0);
		Screen.waitUntil("it is kept", () -> sheet().getMeasured().size() == 4);
		assertEquals(List.of(false, false, false, true), sheet().getMeasured().stream().map(MeasuredMark::isBack).toList());
		keep(view.page(), "marks-back");
		view.page().side().setFocus();
		Screen.key("Up");
		Screen.waitUntil("the front is seen again", () -> !view.page().places().fields(2).get(0).getText().isEmpty());
	}

	@Test
	void whatIsTypedWronglyIsSaid() throws Exception {
		open(true);
		Screen.events("key", "ctrl+b", "e");
		Text x = view.page().places().fields(0).get(0);
		Screen.waitUntil("the first mark is asked for", x::isFocusControl);
		Screen.type("ten");
		Screen.key("Tab");
		List<String> notices = view.page().notices().words();
		assertTrue(notices.get(0).startsWith("Mark 1:"), notices.toString());
		assertTrue(sheet().getMeasured().isEmpty());
		Screen.key("shift+Tab");
		Screen.key("Escape");
		assertEquals("", x.getText());
		Screen.type("1.5in");
		Screen.key("Tab");
		assertTrue(view.page().notices().words().stream().noneMatch(each -> each.startsWith("Mark 1:")));
		assertTrue(sheet().getMeasured().isEmpty(), "half a place is none");
		Screen.type("20");
		Screen.key("Tab");
		MeasuredMark kept = sheet().getMeasured().get(0);
		assertEquals(38.1, kept.getX(), 1e-9);
		assertEquals(20, kept.getY(), 1e-9);
	}

	@Test
	void lengthsBetweenMarksAreTypedInsteadAndKeptAsThoseOfAPrinter() throws Exception {
		Path studio = Files.createTempDirectory("studio");
		Studio.choose(Optional.of(studio));
		try {
			open(true);
			sheet().setPrinter("Front desk");
			// only that one tells what a printer does along and across
			sheet().setFit(KeptMeasures.toModel(FitKind.AFFINE));
			typeLengths();
			settled();
			Dialogs.answer("OK", () -> Dialogs.press(Dialogs.button(view.page(), "Keep as Printer\u2026")),
					() -> keep(Dialogs.shell("Keep as Printer"), "marks-keep-printer"));
			Screen.waitUntil("the studio knows the printer", () -> keptPrinter().isPresent());
			PrinterProfile kept = keptPrinter().orElseThrow();
			assertEquals(1.002, kept.scaleX(), 1e-4);
			assertEquals(1, kept.scaleY(), 1e-4);
		} finally {
			forget(studio);
		}
	}

	private static Optional<PrinterProfile> keptPrinter() {
		try {
			return new PrinterProfiles(Studio.folder().preferences()).named("Front desk");
		} catch (IOException e) {
			return Optional.empty();
		}
	}

	private static void forget(Path studio) throws IOException {
		StudioChoice.apply();
		try (var files = Files.walk(studio)) {
			for (Path each : files.sorted(Comparator.reverseOrder()).toList()) {
				Files.delete(each);
			}
		}
	}

	private void typeLengths() throws Exception {
		Screen.events("key", "ctrl+b", "l");
		Screen.events("key", "ctrl+b", "e");
		Text first = view.page().lengths().fields().get(0);
		Screen.waitUntil("the first length is asked for", first::isFocusControl);
		assertArrayEquals(new int[] { 0, 1 }, view.page().canvas().lit());
		double sx = 1.002;
		for (double[] pair : new double[][] { { 280, 0 }, { 280, 180 }, { 0, 180 }, { 0, 180 }, { 280, 180 }, { 280, 0 } }) {
			Screen.type(String.format(Locale.ROOT, "%.3f", Math.hypot(pair[0] * sx, pair[1])));
			Screen.key("Return");
		}
		assertTrue(view.page().lengths().said().contains("1 to spare"), view.page().lengths().said());
		keep(view.page(), "marks-lengths");
		Screen.waitUntil("the button has the focus", view.page().lengths().takeButton()::isFocusControl);
		Screen.key("space");
		Screen.waitUntil("the marks are measured", () -> sheet().getMeasured().size() == 4);
		assertEquals(10 + 280 * sx, sheet().getMeasured().get(2).getX(), 0.01);
		assertEquals(190, sheet().getMeasured().get(2).getY(), 0.01);
	}

	@Test
	void whatIsTypedByHalfStaysWithItsSheet() throws Exception {
		open(true, true);
		Text x = view.page().places().fields(0).get(0);
		Text length = view.page().lengths().fields().get(0);
		x.setText("11.48");
		length.setText("280.5");
		Combo sheets = Dialogs.all(view.page()).filter(Combo.class::isInstance).map(Combo.class::cast).findFirst().orElseThrow();
		Screen.events("key", "ctrl+b", "n");
		Screen.waitUntil("another sheet is shown", () -> sheets.getSelectionIndex() == 1);
		assertEquals("", view.page().places().fields(0).get(0).getText());
		assertEquals("", view.page().lengths().fields().get(0).getText());
	}

	@Test
	void marksArePlacedAndTakenBack() throws Exception {
		open(false);
		assertTrue(view.page().said().startsWith("No marks on this sheet yet."), view.page().said());
		Dialogs.answer("Place", () -> Screen.events("key", "ctrl+b", "p"),
				() -> keep(Dialogs.shell("Place Marks"), "marks-placing"));
		assertEquals(4, sheet().getMarks().size());
		assertEquals(MarkKind.PENNANT, sheet().getMarks().get(0).getKind());
		assertEquals(List.of(), view.page().notices().words());
		Screen.key("ctrl+z");
		Screen.waitUntil("the marks are taken back", () -> sheet().getMarks().isEmpty());
		Screen.key("ctrl+shift+z");
		Screen.waitUntil("the marks are there again", () -> sheet().getMarks().size() == 4);
		Screen.events("key", "ctrl+b", "x");
		Screen.waitUntil("the marks are removed", () -> sheet().getMarks().isEmpty());
	}

	/** The sheet turned by a degree on a grey table, its corner 20 mm right and 15 mm down. */
	private Path photograph(double degrees) throws Exception {
		MarkPlan plan = SheetMarks.plan(sheet()).orElseThrow();
		BufferedImage image = new BufferedImage((int) (350 * PIXELS_PER_MM), (int) (245 * PIXELS_PER_MM),
				BufferedImage.TYPE_BYTE_GRAY);
		Graphics2D graphics = image.createGraphics();
		graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
		graphics.setColor(new Color(150, 150, 150));
		graphics.fillRect(0, 0, image.getWidth(), image.getHeight());
		graphics.scale(PIXELS_PER_MM, PIXELS_PER_MM);
		graphics.translate(20, 15);
		graphics.rotate(Math.toRadians(degrees));
		graphics.setColor(new Color(230, 230, 230));
		graphics.fill(new Rectangle2D.Double(0, 0, 300, 200));
		graphics.setColor(new Color(35, 35, 35));
		for (Mark mark : plan.marks()) {
			Path2D path = new Path2D.Double();
			mark.region().contours().forEach(contour -> {
				path.moveTo(contour.start().x(), contour.start().y());
				for (Segment segment : contour.segments()) {
					for (int i = 1; i <= 8; i++) {
						org.frisket.geometry.Point point = segment.at(i / 8.0);
						path.lineTo(point.x(), point.y());
					}
				}
				path.closePath();
			});
			graphics.fill(path);
		}
		graphics.dispose();
		Path file = folder.resolve("tags.png");
		ImageIO.write(image, "png", file.toFile());
		return file;
	}

	@Test
	void aPhotographFillsTheMeasures() throws Exception {
		open(true);
		Path photograph = photograph(1);
		// the file does not say how fine it is; the marks do
		Control canvas = view.page().canvas();
		List<String> asked = Dialogs.answer("OK",
				() -> DraggedFiles.drop(List.of(photograph), canvas, canvas.getSize().x / 2, canvas.getSize().y / 2));
		assertTrue(asked.stream().anyMatch(each -> each.contains("does not say how many dots")), asked.toString());
		Screen.waitUntil("the marks are measured", () -> sheet().getMeasured().size() == 4);
		settled();
		double turn = Math.toRadians(1);
		for (int i = 0; i < 4; i++) {
			MeasuredMark found = sheet().getMeasured().get(i);
			double x = DESIGNED[i][0];
			double y = DESIGNED[i][1];
			assertEquals(20 + x * Math.cos(turn) - y * Math.sin(turn), found.getX(), 0.08, "mark " + (i + 1));
			assertEquals(15 + x * Math.sin(turn) + y * Math.cos(turn), found.getY(), 0.08, "mark " + (i + 1));
		}
		assertTrue(view.page().fit().words().contains("Turned by 1.0"), view.page().fit().words());
		assertTrue(view.page().said().contains("4 marks found"), view.page().said());
		keep(view.page(), "marks-photograph");
		Screen.key("ctrl+z");
		Screen.waitUntil("the measures are taken back", () -> sheet().getMeasured().isEmpty());
		assertFalse(view.page().said().contains("marks found"), view.page().said());
	}

	@Test
	void aPictureWithoutTheSheetChangesNothing() throws Exception {
		open(true);
		Path file = folder.resolve("empty.png");
		ImageIO.write(new BufferedImage(400, 300, BufferedImage.TYPE_BYTE_GRAY), "png", file.toFile());
		view.loadScan(file);
		settled();
		List<String> notices = view.page().notices().words();
		assertTrue(notices.get(0).startsWith("No marks of this sheet were found"), notices.toString());
		assertTrue(sheet().getMeasured().isEmpty());
	}

	/** The page of printers measures one by a square; the sheet then names it. */
	@Test
	void aPrinterIsMeasuredAndChosen() throws Exception {
		Path studio = Files.createTempDirectory("studio");
		Studio.choose(Optional.of(studio));
		try {
			open(true);
			Button printers = Dialogs.button(view.page(), "Printers…");
			Dialogs.answer("Apply and Close", () -> Dialogs.press(printers), () -> {
				Button measure = Dialogs.button(Dialogs.shell("Preferences"), "Measure…");
				// the dialog waits for its answer; what is typed there goes on in its own loop
				measure.getDisplay().timerExec(OPENED_MS, MarksUiTest::typePrinter);
				Dialogs.press(measure);
				keep(Dialogs.shell("Preferences"), "marks-printers");
			});
			PrinterProfile kept = new PrinterProfiles(Studio.folder().preferences()).named("Front desk").orElseThrow();
			assertEquals(1.003, kept.scaleX(), 1e-6);
			assertEquals(0.998, kept.scaleY(), 1e-6);
			Combo chosen = Dialogs.all(view.page()).filter(Combo.class::isInstance).map(Combo.class::cast)
					.filter(combo -> List.of(combo.getItems()).contains("as designed, no printer")).findFirst().orElseThrow();
			Screen.waitUntil("the printer is offered", () -> List.of(chosen.getItems()).contains("Front desk"));
			chosen.setFocus();
			Screen.key("Down");
			Screen.waitUntil("the sheet names it", () -> "Front desk".equals(sheet().getPrinter()));
		} finally {
			forget(studio);
		}
	}

	/** By the law of Pythagoras, for a printer that does not skew. */
	private static void typePrinter() {
		if (!Dialogs.isOpen("Measure a Printer")) {
			Display.getCurrent().timerExec(OPENED_MS, MarksUiTest::typePrinter);
			return;
		}
		Shell dialog = Dialogs.shell("Measure a Printer");
		List<Text> fields = Dialogs.all(dialog).filter(Text.class::isInstance).map(Text.class::cast)
				.filter(text -> text.getData() != null).toList();
		double diagonal = Math.hypot(180 * 1.003, 180 * 0.998);
		List<String> lengths = List.of("180.54", "179.64", String.valueOf(diagonal), String.valueOf(diagonal));
		fields.get(0).setFocus();
		for (String length : lengths) {
			Screen.type(length);
			Screen.key("Tab");
		}
		Screen.type("Front desk");
		keep(dialog, "marks-printer");
		// not kept is seen later; a dialog that stays open would be waited for for ever
		Button keep = Dialogs.button(dialog, "Keep");
		Dialogs.press(keep.isEnabled() ? keep : Dialogs.button(dialog, "Cancel"));
	}

	private static void keep(Control seen, String name) {
		try {
			Screen.keep(Screen.picture(seen), name);
		} catch (IOException e) {
			throw new UncheckedIOException(e);
		}
	}

	@Test
	void aJobWithoutSheetsIsToldWhatToDo() throws Exception {
		view = (MarksView) page().showView(MarksView.ID);
		Screen.waitUntil("the view says something", () -> view.note().startsWith("No sheet yet."));
		Control page = view.page();
		Screen.waitUntil("it says nothing else", () -> !page.isVisible());
	}
}
