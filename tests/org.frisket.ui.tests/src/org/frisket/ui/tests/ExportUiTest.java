package org.frisket.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

import org.eclipse.core.runtime.preferences.InstanceScope;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.ToolBar;
import org.eclipse.swt.widgets.ToolItem;
import org.eclipse.ui.PlatformUI;
import org.frisket.editing.elements.AddElement;
import org.frisket.material.desk.SettingsDesk;
import org.frisket.material.tools.MachineOptions;
import org.frisket.model.FrisketFactory;
import org.frisket.model.Job;
import org.frisket.model.Jobs;
import org.frisket.model.Mat;
import org.frisket.model.OperationKind;
import org.frisket.model.Outline;
import org.frisket.model.Sheet;
import org.frisket.studio.Studio;
import org.frisket.ui.bench.ExportStart;
import org.frisket.ui.bench.internal.editor.BenchEditor;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** From the bench to a file for a machine. */
class ExportUiTest extends OpenBench {

	private static final String TITLE = "Export";

	@BeforeEach
	void forgetEarlierExports() throws Exception {
		InstanceScope.INSTANCE.getNode("org.frisket.ui.bench").node("export").removeNode();
	}

	private static Shell pressExport() {
		Screen.key("ctrl+e");
		Screen.waitUntil("the form is there", () -> Dialogs.isOpen(TITLE));
		Shell form = Dialogs.shell(TITLE);
		bringToFront(form);
		return form;
	}

	private static <C extends Control> C field(Shell shell, Class<C> type, String name) {
		return Dialogs.all(shell).filter(type::isInstance).map(type::cast).filter(c -> name.equals(c.getData()))
				.findFirst().orElseThrow();
	}

	private static Stream<String> texts(Shell shell) {
		return Dialogs.all(shell).map(Dialogs::text);
	}

	@Test
	void twoKeysMakeADrawingBesideTheJob() throws IOException {
		pressExport();
		Screen.keep(Screen.picture(Dialogs.shell(TITLE)), "export");
		Screen.key("Return");
		Path drawing = folder.resolve("sample.svg");
		Screen.waitUntil("the drawing is there", () -> Files.exists(drawing));
		assertFalse(Dialogs.isOpen(TITLE));
		String text = Files.readString(drawing);
		assertTrue(text.contains("<svg"), text);
		Screen.waitUntil("the window says where", () -> StatusText.shown().contains("Exported to " + drawing));
		assertFalse(bench.isDirty());
	}

	/** The actions after the word: add a mat, add a mat, export, accept. */
	@Test
	void fourActionsMakeACutReadyDrawingOfAWordWithTwoMats() throws IOException {
		Screen.key("ctrl+n");
		Screen.waitUntil("a new job is in front", () -> page().getActiveEditor() != bench);
		bench = (BenchEditor) page().getActiveEditor();
		Screen.waitUntil("it is worked through", bench::isUpToDate);
		listen(bench);
		for (String letter : "ferry".split("")) {
			Screen.key(letter);
		}
		Screen.key("ctrl+shift+m");
		Screen.key("ctrl+shift+m");
		pressExport();
		Screen.key("Return");
		Path drawing = folder.resolve("ferry.svg");
		Screen.waitUntil("the drawing is there", () -> Files.exists(drawing));
		assertEquals(2, Jobs.elements(bench.document().job()).stream().filter(Mat.class::isInstance).count());
		String text = Files.readString(drawing);
		assertTrue(text.split("<path").length > 3, text);
		Screen.waitUntil("the window says where", () -> StatusText.shown().contains("Exported to " + drawing));
	}

	@Test
	void formIsMadeOfWhatTheFormatSaysAndRefusesWrongValuesInPlace() {
		Shell shell = pressExport();
		Text margin = field(shell, Text.class, "margin");
		assertTrue(Dialogs.button(shell, "Export").isEnabled());
		margin.setText("wide");
		Screen.settle();
		assertFalse(Dialogs.button(shell, "Export").isEnabled());
		assertTrue(texts(shell).anyMatch(text -> text.contains("“wide” is not a length")), texts(shell).toList()::toString);
		margin.setText("4mm");
		Screen.settle();
		assertTrue(Dialogs.button(shell, "Export").isEnabled());
		assertFalse(texts(shell).anyMatch(text -> text.contains("is not a length")));
		Screen.key("Escape");
		assertFalse(Dialogs.isOpen(TITLE));
	}

	@Test
	void absurdSizesAreRefusedInPlaceWithWhatIsAllowed() throws IOException {
		Shell shell = pressExport();
		Text margin = field(shell, Text.class, "margin");
		for (String absurd : List.of("1e308mm", "-5mm", "99999999in", "NaN", "", "1/0", "9".repeat(10_000))) {
			margin.setText(absurd);
			Screen.settle();
			assertFalse(Dialogs.button(shell, "Export").isEnabled(), absurd);
			String told = texts(shell).filter(text -> text.contains("mm to ") || text.contains("mm and ")).findFirst()
					.orElse("nothing is said of " + absurd);
			assertTrue(told.contains("margin: “") && told.endsWith(" mm") && told.length() < 160, told);
		}
		Screen.keep(Screen.picture(shell), "export-absurd");
		margin.setText("0mm");
		Screen.settle();
		assertTrue(Dialogs.button(shell, "Export").isEnabled());
		Screen.key("Escape");
		assertFalse(Dialogs.isOpen(TITLE));
	}

	private static void choose(Combo combo, String choice) {
		combo.select(combo.indexOf(choice));
		combo.notifyListeners(SWT.Selection, new Event());
		Screen.settle();
	}

	private static Combo format(Shell shell) {
		return field(shell, Combo.class, "format");
	}

	@Test
	void failureNamesTheBundleThatFailedAndLeavesNothing() {
		Shell shell = pressExport();
		choose(format(shell), "Trouble");
		List<String> read = Dialogs.answer("OK", () -> Dialogs.press(Dialogs.button(shell, "Export")));
		assertTrue(read.stream().anyMatch(text -> text.contains("org.frisket.ui.testkit") && text.contains("out of ink")),
				read::toString);
		assertFalse(Files.exists(folder.resolve("sample.trouble")));
		assertFalse(StatusText.shown().contains("Exported to"), StatusText.shown());
	}

	@Test
	void longExportCanBeCalledOffAndLeavesNothing() throws IOException {
		Shell shell = pressExport();
		choose(format(shell), "Trouble");
		choose(field(shell, Combo.class, "trouble"), TroubledExporter.GO_ON);
		Dialogs.press(Dialogs.button(shell, "Export"));
		Screen.waitUntil("it is under way", () -> stop() != null && stop().isEnabled());
		Screen.keep(Screen.picture(PlatformUI.getWorkbench().getActiveWorkbenchWindow().getShell()), "exporting");
		stop().notifyListeners(SWT.Selection, new Event());
		Screen.waitUntil("it is called off", () -> StatusText.shown().contains("Export called off"));
		assertFalse(Files.exists(folder.resolve("sample.trouble")));
		try (Stream<Path> left = Files.list(folder)) {
			assertEquals(List.of(file), left.toList());
		}
	}

	@Test
	void exporterThatDoesNotListenLeavesTheBenchToWhoeverWorksAtIt() throws IOException {
		Shell shell = pressExport();
		choose(format(shell), "Trouble");
		choose(field(shell, Combo.class, "trouble"), TroubledExporter.DEAF);
		Dialogs.press(Dialogs.button(shell, "Export"));
		Screen.waitUntil("it is under way", () -> TroubledExporter.mayEnd != null && stop() != null && stop().isEnabled());
		edits().execute(new AddElement(bench.document().job().getLayers().get(0), square()));
		Screen.waitUntil("the bench goes on meanwhile", bench::isUpToDate);
		stop().notifyListeners(SWT.Selection, new Event());
		Screen.waitUntil("it is left to itself",
				() -> StatusText.shown().contains("The bundle org.frisket.ui.testkit has not stopped"));
		TroubledExporter.mayEnd.countDown();
		try (Stream<Path> left = Files.list(folder)) {
			assertEquals(List.of(file), left.toList());
		}
	}

	private static Outline square() {
		Outline square = FrisketFactory.INSTANCE.createOutline();
		square.setPathData("M 10 70 h 20 v 20 h -20 z");
		Jobs.addOperation(square, OperationKind.CUT);
		return square;
	}

	@Test
	void sheetsAreExportedIntoAFolderByNamesThatAreShownBefore() throws Exception {
		Job job = bench.document().job();
		String part = Jobs.elements(job).get(0).getId();
		for (String stock : List.of("card", "film")) {
			Sheet sheet = Jobs.addSheet(job, stock, 300, 200);
			sheet.setName("Sheet of " + stock);
			Jobs.addPlacement(sheet, part, 100, 100, 0);
		}
		Shell shell = pressExport();
		assertEquals(folder.toString(), field(shell, Text.class, "place").getText());
		Text names = field(shell, Text.class, "names");
		names.setText("{stock}");
		Screen.settle();
		assertFalse(Dialogs.button(shell, "Export").isEnabled());
		assertTrue(texts(shell).anyMatch(text -> text.contains("{sheet}")), texts(shell).toList()::toString);
		names.setText("{sheet} {stock}");
		Screen.settle();
		assertEquals("1 card.svg\n2 film.svg", field(shell, Label.class, "preview").getText());
		Screen.keep(Screen.picture(shell), "export-sheets");
		field(shell, Text.class, "margin").setText("3mm");
		Screen.waitUntil("presets have been looked for", () -> Dialogs.button(shell, "Save As…").isEnabled());
		Dialogs.answer("OK", () -> Dialogs.press(Dialogs.button(shell, "Save As…")),
				() -> Dialogs.all(Dialogs.shell("Save Preset")).filter(Text.class::isInstance).map(Text.class::cast)
						.filter(Control::isEnabled).filter(text -> text.getEditable()).findFirst().orElseThrow().setText("Tags"));
		Screen.waitUntil("it is kept", () -> field(shell, Combo.class, "preset").getText().equals("Tags"));
		names.setText("{sheet}");
		choose(field(shell, Combo.class, "preset"), "None");
		choose(field(shell, Combo.class, "preset"), "Tags");
		assertEquals("{sheet} {stock}", names.getText());
		Dialogs.press(Dialogs.button(shell, "Delete"));
		Screen.waitUntil("it is gone", () -> field(shell, Combo.class, "preset").getItemCount() == 1);
		choose(field(shell, Combo.class, "what"), "These sheets:");
		field(shell, Text.class, "sheets").setText("2");
		Screen.settle();
		Dialogs.press(Dialogs.button(shell, "Export"));
		Screen.waitUntil("the sheet is there", () -> Files.exists(folder.resolve("2 film.svg")));
		assertFalse(Files.exists(folder.resolve("1 card.svg")));
		Screen.waitUntil("the window says so", () -> StatusText.shown().contains("Exported to "));
	}

	/** A file for a machine is for one of them; a sheet, a machine and the run's options may be chosen already. */
	@Test
	void machineIsAskedForWhereItMatters() throws Exception {
		SettingsDesk.change(Studio.folder(), settings -> {
			settings.save(MachineOptions.machine("ferry", Map.of("name", "Ferry cutter")));
			settings.save(MachineOptions.machine("pier", Map.of("name", "Pier cutter")));
			return null;
		});
		Job job = bench.document().job();
		for (int i = 0; i < 2; i++) {
			Jobs.addPlacement(Jobs.addSheet(job, "card", 300, 200), Jobs.elements(job).get(0).getId(), 100, 100, 0);
		}
		Shell plain = pressExport();
		assertTrue(Dialogs.all(plain).filter(Control::isVisible).noneMatch(c -> "machine".equals(c.getData())));
		Screen.key("Escape");
		Screen.waitUntil("the form is gone", () -> !Dialogs.isOpen(TITLE));
		new ExportStart(true, 2, "pier", Map.of("direction", "clockwise", "tabs", "0")).ask(page());
		Screen.waitUntil("the form is there", () -> Dialogs.isOpen(TITLE));
		Shell shell = Dialogs.shell(TITLE);
		Combo machine = field(shell, Combo.class, "machine");
		Screen.waitUntil("machines are looked up", () -> machine.getItemCount() == 3);
		assertTrue(machine.isVisible());
		assertEquals("Pier cutter", machine.getText());
		assertEquals("2", field(shell, Text.class, "sheets").getText());
		assertEquals("Run: which way round closed lines go: clockwise", field(shell, Label.class, "run").getText());
		choose(field(shell, Combo.class, "to"), "Folder");
		field(shell, Text.class, "names").setText("{sheet} {machine}");
		Screen.settle();
		assertEquals("2 pier.ngc", field(shell, Label.class, "preview").getText());
		choose(machine, "Ferry cutter");
		assertEquals("2 ferry.ngc", field(shell, Label.class, "preview").getText());
		Screen.keep(Screen.picture(shell), "export-machine");
		Dialogs.press(Dialogs.button(shell, "Export"));
		Path file = folder.resolve("2 ferry.ngc");
		Screen.waitUntil("the sheet is there", () -> Files.exists(file));
		assertTrue(Files.readString(file).contains("G21"), "it is a program in mm");
	}

	/** The button of the progress bar at the foot of the window; null if there is none. */
	private static ToolItem stop() {
		return Dialogs.all(PlatformUI.getWorkbench().getActiveWorkbenchWindow().getShell())
				.filter(control -> control instanceof ToolBar
						&& control.getParent().getClass().getName().endsWith("StatusLine"))
				.map(ToolBar.class::cast).flatMap(bar -> Stream.of(bar.getItems())).findFirst().orElse(null);
	}

	@Test
	void anotherFormatHasOtherOptionsAndEnding() throws IOException {
		Shell shell = pressExport();
		choose(format(shell), "PNG proof");
		assertEquals(folder.resolve("sample.png").toString(), field(shell, Text.class, "place").getText());
		Dialogs.press(Dialogs.button(shell, "Export"));
		Screen.waitUntil("the proof is there", () -> Files.exists(folder.resolve("sample.png")));
		Screen.waitUntil("the window says so", () -> StatusText.shown().contains("Exported to "));
		// and it is what the form offers the next time
		Shell again = pressExport();
		assertEquals(folder.resolve("sample.png").toString(), field(again, Text.class, "place").getText());
		assertTrue(texts(again).anyMatch(text -> text.contains("will be replaced")));
		Dialogs.button(again, "Replace");
		Screen.key("Escape");
	}

	@Test
	void findingsThatBlockAreToldFirst() throws IOException {
		Outline open = FrisketFactory.INSTANCE.createOutline();
		open.setPathData("M 10 70 L 60 90");
		Jobs.addOperation(open, OperationKind.CUT);
		edits().execute(new AddElement(bench.document().job().getLayers().get(0), open));
		Screen.waitUntil("the job is checked", bench::isUpToDate);
		Shell shell = pressExport();
		Screen.keep(Screen.picture(shell), "export-blocked");
		assertTrue(texts(shell).anyMatch(text -> text.contains("blocks this job")), texts(shell).toList()::toString);
		Dialogs.press(Dialogs.button(shell, "Export Anyway"));
		Screen.waitUntil("the drawing is there", () -> Files.exists(folder.resolve("sample.svg")));
		Screen.waitUntil("the window says so", () -> StatusText.shown().contains("Exported to "));
	}

	@Test
	void aPlaceThatIsNotThereIsSaidAtOnce() {
		Shell shell = pressExport();
		field(shell, Text.class, "place").setText(folder.resolve("nowhere/sample.svg").toString());
		Screen.settle();
		assertFalse(Dialogs.button(shell, "Export").isEnabled());
		assertTrue(texts(shell).anyMatch(text -> text.contains("There is no folder")), texts(shell).toList()::toString);
		Screen.key("Escape");
	}
}
