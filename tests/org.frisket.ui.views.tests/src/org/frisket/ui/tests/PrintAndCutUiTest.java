package org.frisket.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.eclipse.draw2d.geometry.Point;
import org.eclipse.jface.action.IStatusLineManager;
import org.eclipse.swt.SWT;
import org.eclipse.swt.SWTError;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.ImageLoader;
import org.eclipse.swt.graphics.PaletteData;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.printing.Printer;
import org.eclipse.swt.printing.PrinterData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Tolerance;
import org.frisket.model.ImageBytes;
import org.frisket.model.Job;
import org.frisket.model.JobFile;
import org.frisket.model.JobHome;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;
import org.frisket.model.OperationKind;
import org.frisket.model.Outline;
import org.frisket.model.Picture;
import org.frisket.model.Sheet;
import org.frisket.prepare.JobPreparer;
import org.frisket.prepare.fonts.FontLibraries;
import org.frisket.print.marks.FoundMarks;
import org.frisket.print.marks.MarkFinder;
import org.frisket.print.marks.MarkPlan;
import org.frisket.print.output.JobPrints;
import org.frisket.print.output.PrintOptions;
import org.frisket.print.output.PrintSheet;
import org.frisket.print.picture.PictureFile;
import org.frisket.print.picture.Resolution;
import org.frisket.print.register.FitKind;
import org.frisket.print.register.Lie;
import org.frisket.studio.Studio;
import org.frisket.ui.ThemeColour;
import org.frisket.ui.print.internal.output.PaperRun;
import org.frisket.ui.print.internal.output.PrintAndCutDialog;
import org.frisket.ui.print.internal.output.WriteRun;
import org.frisket.ui.sheets.internal.sheets.SheetsView;
import org.frisket.ui.sheets.internal.sheets.surface.Board;
import org.frisket.ui.views.Views;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Place cards of Harbour Lane with a picture on them, printed and cut from the screen. */
class PrintAndCutUiTest extends OpenBench {

	private static final String TITLE = "Print and Cut";
	private static final RGB ART = new RGB(0xb5, 0x52, 0x3b);

	private Path studio;
	private Optional<Path> studioBefore;

	@BeforeEach
	void useAStudioOfItsOwn() throws IOException {
		studioBefore = Optional.of(Studio.folder().path());
		studio = Files.createTempDirectory("studio");
		Studio.choose(Optional.of(studio));
	}

	@AfterEach
	void closeDialogs() throws IOException {
		for (String title : List.of(TITLE, "Print Sheet")) {
			if (Dialogs.isOpen(title)) {
				Dialogs.shell(title).close();
			}
		}
		Screen.settle();
		Studio.choose(studioBefore);
		try (Stream<Path> all = Files.walk(studio)) {
			for (Path each : all.sorted(Comparator.reverseOrder()).toList()) {
				Files.deleteIfExists(each);
			}
		}
	}

	/** A picture of 60 by 40 mm that is cut along its edge, in the middle of each sheet; its back has a crease. */
	private void openCards(double width, double height, int sheets) throws Exception {
		openCards(width, height, sheets, false);
	}

	/** @param linked whether the picture is a file beside that of the job */
	private void openCards(double width, double height, int sheets, boolean linked) throws Exception {
		Job job = Jobs.create("cards", "Place cards");
		job.setNumber("10247");
		Layer layer = Jobs.addLayer(job, "Card");
		Outline card = Jobs.addOutline(layer, "M0 0H60V40H0Z");
		Jobs.addOperation(card, OperationKind.CUT);
		ImageLoader image = new ImageLoader();
		image.data = new ImageData[] { new ImageData(120, 80, 8, new PaletteData(ART)) };
		ByteArrayOutputStream png = new ByteArrayOutputStream();
		image.save(png, SWT.IMAGE_PNG);
		Picture picture = Jobs.addPicture(layer, ImageBytes.of(png.toByteArray()), "image/png", 60, 40);
		if (linked) {
			Files.write(folder.resolve("card.png"), png.toByteArray());
			picture.setImage(null);
			picture.setLink("card.png");
		}
		Layer back = Jobs.addLayer(job, "Back");
		back.setBack(true);
		Jobs.addOperation(Jobs.addOutline(back, "M20 0V40"), OperationKind.CREASE);
		for (int i = 0; i < sheets; i++) {
			Sheet sheet = Jobs.addSheet(job, null, width, height);
			Jobs.addPlacement(sheet, card.getId(), width / 2, height / 2, 0);
		}
		Path path = folder.resolve("cards.frjob");
		JobFile.save(job, path);
		bench = open(path);
		Screen.waitUntil("the job is worked through", bench::isUpToDate);
		listen(bench);
	}

	private Shell ask(String key, String title) {
		Screen.key(key);
		Screen.waitUntil("the form is open", () -> Dialogs.isOpen(title));
		Shell shell = Dialogs.shell(title);
		bringToFront(shell);
		return shell;
	}

	private static Canvas face(Shell shell) {
		return (Canvas) Dialogs.all(shell).filter(each -> "face".equals(each.getData())).findFirst().orElseThrow();
	}

	private static Text field(Shell shell, String name) {
		return (Text) Dialogs.all(shell).filter(each -> name.equals(each.getData())).findFirst().orElseThrow();
	}

	private static void ready(Shell shell, String button) {
		Screen.waitUntil("the sheets are worked out", () -> Dialogs.all(shell).filter(Button.class::isInstance)
				.anyMatch(each -> Dialogs.text(each).equals(button) && each.isEnabled()));
		Screen.settle();
	}

	private static void toggle(Shell shell, String label) {
		Button button = Dialogs.button(shell, label);
		Screen.click(button, 8, button.getSize().y / 2);
		Screen.settle();
	}

	/** At a share of the canvas from its middle, which is that of the sheet. */
	private static RGB seen(Canvas canvas, double mmRight, double mmDown, double width, double height) {
		Rectangle room = canvas.getClientArea();
		double scale = Math.min((room.width - 32) / width, (room.height - 32) / height);
		ImageData picture = Screen.picture(canvas);
		return Screen.pixel(picture, (int) Math.round(picture.width / 2.0 + mmRight * scale),
				(int) Math.round(picture.height / 2.0 + mmDown * scale));
	}

	private static RGB paper() {
		return ThemeColour.BENCH_SHEET.colour().getRGB();
	}

	private List<String> written() throws IOException {
		try (Stream<Path> files = Files.list(folder)) {
			return files.map(each -> each.getFileName().toString()).filter(each -> each.startsWith("10247") || each.startsWith("."))
					.sorted().toList();
		}
	}

	@Test
	void bothFilesOfAllSheetsAreSeenAndWritten() throws Exception {
		openCards(210, 148, 2);
		Shell shell = ask("ctrl+shift+c", TITLE);
		ready(shell, "Write Files");
		Screen.keep(Screen.picture(shell), "print-and-cut");
		assertEquals("Nothing is wrong with these sheets.", field(shell, "findings").getText());
		Canvas face = face(shell);
		assertColour(ART, seen(face, 10, 0, 210, 148));
		// the bleed of 3 mm, and bare paper beyond it
		RGB bled = seen(face, 31.5, 0, 210, 148);
		assertTrue(Math.abs(bled.red - ART.red) < 12 && Math.abs(bled.green - ART.green) < 12, bled.toString());
		assertColour(paper(), seen(face, 35, 0, 210, 148));
		toggle(shell, "Print");
		assertColour(paper(), seen(face, 10, 0, 210, 148));
		assertFalse(paper().equals(seen(face, 30, 0, 210, 148)), "the line that is cut");
		toggle(shell, "Cuts");
		assertColour(paper(), seen(face, 30, 0, 210, 148));
		toggle(shell, "Print");
		toggle(shell, "Cuts");
		toggle(shell, "Back");
		Screen.waitUntil("the crease of the back is seen", () -> !paper().equals(seen(face, 10, 0, 210, 148))
				&& paper().equals(seen(face, -10, 5, 210, 148)));
		ready(shell, "Write Files");
		Screen.keep(Screen.picture(shell), "print-and-cut-back");

		Text bleed = field(shell, "bleed");
		bleed.setFocus();
		bleed.selectAll();
		Screen.type("5mm");
		ready(shell, "Write Files");
		Dialogs.press(Dialogs.button(shell, "Write Files"));
		Screen.waitUntil("all files are there", () -> count() == 6);
		Screen.waitUntil("nothing else is there", () -> count() == all());
		assertEquals(List.of("10247-1-cut-back.svg", "10247-1-cut.svg", "10247-1-print.pdf", "10247-2-cut-back.svg", "10247-2-cut.svg",
				"10247-2-print.pdf"), written());

		Screen.settle();
		Shell again = ask("ctrl+shift+c", TITLE);
		ready(again, "Replace Files");
		assertEquals("5 mm", field(again, "bleed").getText(), "remembered in the studio");
	}

	private int all() {
		try {
			return written().size();
		} catch (IOException e) {
			return -1;
		}
	}

	private int count() {
		try {
			return (int) written().stream().filter(each -> !each.startsWith(".")).count();
		} catch (IOException e) {
			return 0;
		}
	}

	/** Also before the sheets are worked out, when no button can be pressed but Close. */
	@Test
	void formHearsKeysFromTheStart() throws Exception {
		openCards(210, 297, 1);
		ask("ctrl+shift+c", TITLE);
		Screen.settle();
		Screen.key("Escape");
		Screen.waitUntil("the form is closed", () -> !Dialogs.isOpen(TITLE));
	}

	@Test
	void whatBlocksIsSaidAndNothingIsWritten() throws Exception {
		openCards(66, 46, 1);
		Shell shell = ask("ctrl+shift+c", TITLE);
		Text findings = field(shell, "findings");
		Screen.waitUntil("findings are listed", () -> !findings.getText().isEmpty());
		Screen.keep(Screen.picture(shell), "print-and-cut-blocked");
		assertFalse(Dialogs.button(shell, "Write Files").isEnabled());
		assertFalse(Dialogs.button(shell, "Print\u2026").isEnabled());
		assertTrue(findings.getText().startsWith("Blocking, sheet 1:"), findings.getText());
	}

	@Test
	void picturesBesideTheJobArePrinted() throws Exception {
		openCards(210, 148, 1, true);
		Shell shell = ask("ctrl+shift+c", TITLE);
		Text findings = field(shell, "findings");
		Screen.waitUntil("the sheet is worked out", () -> !findings.getText().isEmpty());
		Screen.settle();
		assertColour(ART, seen(face(shell), 10, 0, 210, 148));
	}

	@Test
	void wrongValuesAndMissingSheetsAreSaid() throws Exception {
		openCards(210, 148, 2);
		Shell shell = ask("ctrl+shift+c", TITLE);
		ready(shell, "Write Files");
		field(shell, "bleed").setText("much");
		Screen.settle();
		assertFalse(Dialogs.button(shell, "Write Files").isEnabled());
		field(shell, "bleed").setText("3mm");
		ready(shell, "Write Files");
		field(shell, "folder").setText("/no/such/folder");
		Screen.settle();
		assertFalse(Dialogs.button(shell, "Write Files").isEnabled());
		assertTrue(Dialogs.button(shell, "Print\u2026").isEnabled(), "paper needs no folder");
		shell.close();
		page().closeAllEditors(false);
		openCards(210, 148, 0);
		Shell empty = ask("ctrl+shift+c", TITLE);
		Text findings = field(empty, "findings");
		Screen.settle();
		assertFalse(Dialogs.button(empty, "Write Files").isEnabled());
		assertTrue(Dialogs.all(empty).map(Dialogs::text).anyMatch(each -> each.contains("its stock comes in none")),
				findings.getText());
		Text size = field(empty, "size");
		size.setFocus();
		Screen.type("wide");
		Screen.settle();
		assertTrue(Dialogs.all(empty).map(Dialogs::text).anyMatch(each -> each.contains("wide")));
		size.selectAll();
		Screen.type("A6");
		ready(empty, "Write Files");
		Screen.keep(Screen.picture(empty), "print-and-cut-bare");
		// it lies in the middle of the sheet
		assertColour(ART, seen(face(empty), 10, 0, 105, 148));
		assertColour(paper(), seen(face(empty), 0, 40, 105, 148));
	}

	@Test
	void theSheetComesOutOfThePrinterInItsTrueSize() throws Exception {
		PrinterData data = new PrinterData();
		data.printToFile = true;
		Path pdf = folder.resolve("paper.pdf");
		data.fileName = pdf.toString();
		Printer printer;
		try {
			printer = new Printer(data);
		} catch (SWTError | IllegalArgumentException e) {
			assumeTrue(false, "the window system cannot print into a file");
			return;
		}
		double width = Math.round(printer.getBounds().width * 25.4 / printer.getDPI().x);
		double height = Math.round(printer.getBounds().height * 25.4 / printer.getDPI().y);
		printer.dispose();
		openCards(width, height, 1);
		bench.document().job().getSheets().get(0).setPrintMargin(15);
		Shell window = bench.getSite().getShell();
		IStatusLineManager line = bench.getEditorSite().getActionBars().getStatusLineManager();
		Job copy = JobHome.copy(bench.document().job());
		PrintSheet print = JobPrints.of(copy, null, new JobPreparer(FontLibraries.installed()), Tolerance.DEFAULT, Monitor.NONE)
				.sheet(1, PrintOptions.USUAL, Monitor.NONE).print();
		List<String> told = new ArrayList<>();
		PrintAndCutDialog dialog = new PrintAndCutDialog(window, copy, null, folder, 1, true, new PrintAndCutDialog.Actions() {

			@Override
			public void write(WriteRun.Request request) {
				told.add("written");
			}

			@Override
			public void print(PaperRun.Request request) {
				told.add("printed");
				new PaperRun(window, line, request).start();
			}
		});
		dialog.open();
		ready(dialog.getShell(), "Print\u2026");
		Screen.keep(Screen.picture(dialog.getShell()), "print-sheet");
		assertEquals(List.of(), PaperRun.findings(data, print));
		dialog.print(data);
		assertEquals(List.of("printed"), told);
		Screen.waitUntil("the sheet is printed", () -> isComplete(pdf));
		Files.createDirectories(Path.of("target", "screenshots"));
		Files.copy(pdf, Path.of("target", "screenshots", "print-sheet.pdf"), StandardCopyOption.REPLACE_EXISTING);

		// read back by a renderer of another project; the marks tell where everything is
		assumeTrue(Files.isExecutable(Path.of("/usr/bin/pdftoppm")), "pdftoppm is not installed");
		assertEquals(0, new ProcessBuilder("pdftoppm", "-gray", "-png", "-r", "300", "-singlefile", pdf.toString(),
				folder.resolve("page").toString()).start().waitFor());
		MarkPlan plan = print.plan().orElseThrow();
		FoundMarks found = MarkFinder.find(plan, PictureFile.of(folder.resolve("page.png")).pixels(Monitor.NONE).grey(), 300,
				Monitor.NONE);
		assertEquals(plan.marks().size(), found.count(), found.findings().toString());
		Lie lie = found.registration(FitKind.AFFINE, Resolution.given(300)).lie();
		assertEquals(1, lie.scaleX(), 2e-4);
		assertEquals(1, lie.scaleY(), 2e-4);
		assertEquals(0, lie.skew(), 2e-4);
		// the printer counts its margins in whole points
		assertTrue(found.registration(FitKind.RIGID, Resolution.given(300)).map().apply(new org.frisket.geometry.Point(0, 0)).length() < 0.4);
	}

	private static boolean isComplete(Path pdf) {
		try {
			byte[] bytes = Files.exists(pdf) ? Files.readAllBytes(pdf) : new byte[0];
			return new String(bytes, StandardCharsets.ISO_8859_1).stripTrailing().endsWith("%%EOF");
		} catch (IOException e) {
			return false;
		}
	}

	@Test
	void sheetsShowPrintBelowTheCuts() throws Exception {
		openCards(210, 148, 2);
		SheetsView view = (SheetsView) page().showView(Views.SHEETS_ID);
		try {
			page().setPartState(page().getReference(view), org.eclipse.ui.IWorkbenchPage.STATE_MAXIMIZED);
			Screen.waitUntil("the sheets are worked out", view::isSettled);
			Sheet first = bench.document().job().getSheets().get(0);
			Screen.waitUntil("the print is seen", () -> ((Board) view).prints().isSeen(first));
			Screen.settle();
			Screen.keep(Screen.picture(bench.getSite().getShell()), "sheets-print");
			assertColour(ART, seen(view, 110, 74));
			assertColour(ART, seen(view, 136.5, 74));
			// the other sheet is not the current one
			assertFalse(ART.equals(seen(view, 110 + view.surface().spread().corner(bench.document().job().getSheets().get(1)).x(), 74)));
			view.surface().canvas().setFocus();
			Screen.events("key", "ctrl+b", "shift+g");
			Screen.waitUntil("the safe area is seen", () -> ((Board) view).prints().of(first, 1)
					.filter(print -> print.safe().size() == 1).isPresent());
			Screen.settle();
			Screen.keep(Screen.picture(bench.getSite().getShell()), "sheets-print-safe");
			Screen.events("key", "ctrl+b", "shift+p");
			Screen.waitUntil("the print is hidden", () -> !((Board) view).prints().isSeen(first));
			Screen.settle();
			assertFalse(ART.equals(seen(view, 110, 74)));
			Shell shell = ask("ctrl+shift+v", "Print Sheet");
			ready(shell, "Print\u2026");
			assertTrue(Dialogs.all(shell).map(Dialogs::text).anyMatch(each -> each.equals("Sheet 1")));
			shell.close();
		} finally {
			page().hideView(view);
		}
	}

	private static RGB seen(SheetsView view, double x, double y) {
		Point at = view.surface().zoom().toPixel(new org.frisket.geometry.Point(x, y));
		Control canvas = view.surface().canvas();
		return Screen.pixel(Screen.picture(canvas), at.x, at.y);
	}
}
