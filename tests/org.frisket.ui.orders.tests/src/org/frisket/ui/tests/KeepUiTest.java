package org.frisket.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;

import org.eclipse.core.commands.Command;
import org.eclipse.core.commands.Parameterization;
import org.eclipse.core.commands.ParameterizedCommand;
import org.eclipse.core.runtime.NullProgressMonitor;
import org.eclipse.core.runtime.Platform;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.XMLMemento;
import org.eclipse.ui.commands.ICommandService;
import org.eclipse.ui.handlers.IHandlerService;
import org.frisket.editing.arranging.MoveElements;
import org.frisket.model.Element;
import org.frisket.model.Job;
import org.frisket.model.JobFile;
import org.frisket.model.Matrix;
import org.frisket.orders.OrderBook;
import org.frisket.orders.StoredJob;
import org.frisket.studio.Studio;
import org.frisket.studio.StudioFolder;
import org.frisket.ui.bench.Bench;
import org.frisket.ui.bench.PlaceInput;
import org.frisket.ui.bench.internal.editor.BenchEditor;
import org.frisket.ui.bench.internal.files.Recovery;
import org.frisket.ui.orders.Orders;
import org.frisket.ui.orders.internal.keep.MergeCanvas;
import org.frisket.ui.studio.StoreWatch;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.osgi.framework.FrameworkUtil;

/** Jobs of the order book on the bench, while another desk works on the same ones. */
class KeepUiTest extends OpenBench {

	private Path home;
	private OrderBook other;
	private long number;

	@BeforeEach
	void fillBook() throws Exception {
		home = Files.createTempDirectory("keep");
		Studio.choose(Optional.of(home.resolve("studio")));
		other = new OrderBook(new StudioFolder(home.resolve("studio")));
		Job job = JobFile.load(file);
		job.setId("job");
		job.setTitle("Harbour Lane ferry banner");
		number = other.takeIn(job, "Mara").number();
		page().closeAllEditors(false);
	}

	@AfterEach
	void leaveBook() throws IOException {
		page().closeAllEditors(false);
		Studio.choose(Optional.empty());
		try (Stream<Path> files = Files.walk(home)) {
			for (Path each : files.sorted((a, b) -> b.compareTo(a)).toList()) {
				Files.delete(each);
			}
		}
	}

	private static Shell window() {
		return PlatformUI.getWorkbench().getActiveWorkbenchWindow().getShell();
	}

	private static void run(String id, Map<String, String> parameters) throws Exception {
		Command command = PlatformUI.getWorkbench().getService(ICommandService.class).getCommand(id);
		Parameterization[] given = parameters.entrySet().stream().map(each -> {
			try {
				return new Parameterization(command.getParameter(each.getKey()), each.getValue());
			} catch (Exception e) {
				throw new IllegalStateException(e);
			}
		}).toArray(Parameterization[]::new);
		PlatformUI.getWorkbench().getService(IHandlerService.class)
				.executeCommand(new ParameterizedCommand(command, given), null);
	}

	private void openJob() throws Exception {
		run(Orders.OPEN_JOB_COMMAND_ID, Map.of(Orders.OPEN_JOB_NUMBER, Long.toString(number)));
		arrive();
	}

	private void arrive() {
		bench = (BenchEditor) page().getActiveEditor();
		Screen.waitUntil("the job has come", () -> bench.document() != null && bench.isUpToDate());
		listen(bench);
	}

	/** Somebody at another desk takes the job out, does something, and keeps it. */
	private void otherDesk(Consumer<Job> change) throws Exception {
		StoredJob taken = other.open(number);
		change.accept(taken.job());
		other.save(taken.job(), taken.entry().revision(), "Mara");
	}

	private static Element in(Job job, Element like) {
		return org.frisket.model.Jobs.element(job, like.getId()).orElseThrow();
	}

	private void move(double down) {
		edits().execute(new MoveElements(List.of(element(sample.plate)), 0, down));
	}

	@Test
	void jobIsOpenedEditedAndSavedByKeysAndUndoneBeyondTheSaving() throws Exception {
		openJob();
		assertTrue(bench.getPartName().startsWith(String.valueOf(number)) || bench.getPartName().endsWith(String.valueOf(number)),
				bench.getPartName());
		assertFalse(bench.isDirty());
		move(7);
		assertTrue(bench.isDirty());
		Screen.key("ctrl+s");
		Screen.waitUntil("it is saved", () -> !bench.isDirty());
		assertEquals(2, other.find(number).revision());
		assertEquals(Matrix.translation(0, 7), in(other.open(number).job(), sample.plate).getTransform());
		Screen.key("ctrl+z");
		assertTrue(bench.isDirty());
		Screen.key("ctrl+s");
		Screen.waitUntil("it is saved again", () -> !bench.isDirty());
		assertEquals(3, other.find(number).revision());
		assertEquals(Matrix.IDENTITY, in(other.open(number).job(), sample.plate).getTransform());
		assertEquals("", bench.notice());
	}

	@Test
	void whatAnotherDeskSavesIsShownAtOnceWhereNothingWasChangedHere() throws Exception {
		openJob();
		otherDesk(job -> job.setTitle("Ferry banner, wider"));
		StoreWatch.get().changed();
		Screen.waitUntil("it is shown", () -> "Ferry banner, wider".equals(bench.document().job().getTitle()));
		assertFalse(bench.isDirty());
		assertEquals("", bench.notice());
		assertEquals("Take over from the order book", bench.commandStack().getUndoCommand().getLabel());
	}

	@Test
	void bothHaveChangedTheJobItIsToldComparedAndMergedIntoOneStep() throws Exception {
		openJob();
		move(7);
		String mine = text(bench.document().job());
		otherDesk(job -> job.setTitle("Ferry banner, wider"));
		StoreWatch.get().changed();
		Screen.waitUntil("it is told", () -> bench.notice().contains("Mara has saved this job"));
		Screen.keep(Screen.picture(window()), "keep-notice");
		List<String> read = Dialogs.answer("Merge and Save",
				() -> Dialogs.press(Dialogs.button(window(), "Compare\u2026")), () -> keepDialog("keep-merge"));
		assertTrue(read.stream().anyMatch(text -> text.contains("nowhere the same")), read::toString);
		Screen.waitUntil("it is saved", () -> !bench.isDirty());
		assertEquals(3, other.find(number).revision());
		Job kept = other.open(number).job();
		assertEquals("Ferry banner, wider", kept.getTitle());
		assertEquals(Matrix.translation(0, 7), in(kept, sample.plate).getTransform());
		assertEquals(text(kept), text(bench.document().job()));
		assertEquals("", bench.notice());
		bench.commandStack().undo();
		assertEquals(mine, text(bench.document().job()));
	}

	private static void keepDialog(String name) {
		try {
			Screen.keepScreen(name);
		} catch (IOException e) {
			throw new IllegalStateException(e);
		}
	}

	@Test
	void whereTheyTouchTheUserChoosesAtSaving() throws Exception {
		openJob();
		move(7);
		otherDesk(job -> in(job, sample.plate).setTransform(Matrix.translation(20, 0)));
		NullProgressMonitor monitor = new NullProgressMonitor();
		Dialogs.answer("Cancel", () -> bench.doSave(monitor));
		assertTrue(monitor.isCanceled());
		assertTrue(bench.isDirty());
		assertEquals(2, other.find(number).revision());
		List<String> read = Dialogs.answer("Merge and Save", () -> bench.doSave(new NullProgressMonitor()), () -> {
			Shell dialog = Stream.of(window().getDisplay().getShells())
					.filter(each -> each.isVisible() && each.getText().startsWith("Compare: ")).findFirst().orElseThrow();
			bringToFront(dialog);
			AccessibleNames.assertAllNamed(dialog);
			sides(dialog);
			org.eclipse.swt.widgets.Button mine = Dialogs.button(dialog, "Mine holds");
			Screen.click(mine, 8, mine.getSize().y / 2);
			Screen.waitUntil("it is chosen", mine::getSelection);
			keepDialog("keep-choose");
		});
		assertTrue(read.stream().anyMatch(text -> text.contains("moved by")), read::toString);
		assertFalse(bench.isDirty());
		assertEquals(Matrix.translation(0, 7), in(other.open(number).job(), sample.plate).getTransform());
		assertEquals(3, other.find(number).revision());
	}

	/** Both sides are seen in one scale, and what was moved is framed where it is on each. */
	private void sides(Shell dialog) {
		String plate = sample.plate.getId();
		List<MergeCanvas> sides = Dialogs.all(dialog).filter(MergeCanvas.class::isInstance).map(MergeCanvas.class::cast)
				.toList();
		assertEquals(2, sides.size());
		Screen.waitUntil("both are drawn", () -> sides.stream().allMatch(side -> side.boundsOf(plate).isPresent()));
		Rectangle mine = sides.get(0).boundsOf(plate).orElseThrow();
		Rectangle theirs = sides.get(1).boundsOf(plate).orElseThrow();
		assertTrue(theirs.x > mine.x && theirs.y < mine.y, mine + ", " + theirs);
		assertTrue(Math.abs(mine.width - theirs.width) <= 1 && Math.abs(mine.height - theirs.height) <= 1, mine + ", " + theirs);
		assertTrue(sides.get(0).spoken().startsWith("Mine, changed: "), sides.get(0).spoken());
		Table words = (Table) Dialogs.all(dialog).filter(Table.class::isInstance).findFirst().orElseThrow();
		words.deselectAll();
		Screen.click(sides.get(1), theirs.x + 2, theirs.y + 2);
		Screen.waitUntil("its row is chosen", () -> words.getSelectionIndex() == 0);
	}

	@Test
	void mineCanBecomeAJobOfItsOwn() throws Exception {
		openJob();
		move(7);
		otherDesk(job -> in(job, sample.plate).setTransform(Matrix.translation(20, 0)));
		Dialogs.answer("Keep Mine as a Copy", () -> bench.doSave(new NullProgressMonitor()));
		assertFalse(bench.isDirty());
		assertEquals(Matrix.translation(20, 0), element(sample.plate).getTransform());
		Job copy = other.open(other.list(1).get(0).number()).job();
		assertEquals(Matrix.translation(0, 7), in(copy, sample.plate).getTransform());
		assertTrue(copy.getNotes().contains("Copy of job " + number), copy.getNotes());
	}

	@Test
	void afterACrashItIsBackAgainstItsOldRevisionSoThatAChangeIsNoticed() throws Exception {
		openJob();
		move(7);
		Screen.waitUntil("a copy is kept", () -> Recovery.all().size() == 1);
		Path copies = Platform.getStateLocation(FrameworkUtil.getBundle(BenchEditor.class)).toPath().resolve("unsaved");
		Map<Path, byte[]> left = new LinkedHashMap<>();
		try (Stream<Path> files = Files.list(copies)) {
			for (Path each : files.toList()) {
				left.put(each, Files.readAllBytes(each));
			}
		}
		page().closeAllEditors(false);
		for (Map.Entry<Path, byte[]> each : left.entrySet()) {
			Files.write(each.getKey(), each.getValue());
		}
		otherDesk(job -> job.setTitle("Ferry banner, wider"));
		Bench.reopenUnsaved(page());
		arrive();
		assertTrue(bench.isDirty());
		assertEquals(Matrix.translation(0, 7), element(sample.plate).getTransform());
		Dialogs.answer("Merge and Save", () -> bench.doSave(new NullProgressMonitor()));
		assertFalse(bench.isDirty());
		Job kept = other.open(number).job();
		assertEquals("Ferry banner, wider", kept.getTitle());
		assertEquals(Matrix.translation(0, 7), in(kept, sample.plate).getTransform());
		assertEquals(List.of(), Recovery.all());
	}

	@Test
	void jobThatDoesNotComeSaysWhyAndCanBeTriedAgain() throws Exception {
		run(Orders.OPEN_JOB_COMMAND_ID, Map.of(Orders.OPEN_JOB_NUMBER, "99"));
		bench = (BenchEditor) page().getActiveEditor();
		Screen.waitUntil("the reason is told", () -> bench.trouble() != null && bench.trouble().contains("99"));
		Screen.keep(Screen.picture(window()), "keep-trouble");
		assertFalse(bench.isDirty());
		Job job = JobFile.load(file);
		job.setId("job");
		for (long last = number; last < 99;) {
			last = other.takeIn(List.of(JobFile.load(JobFile.toBytes(job), "again")), true, "Mara").get(0).number();
		}
		Dialogs.press(Dialogs.button(window(), "Try Again"));
		arrive();
		assertEquals("99", bench.document().job().getNumber());
	}

	@Test
	void jobOfAFileIsPutIntoTheBookAndStaysThere() throws Exception {
		bench = open(file);
		arrive();
		move(7);
		run(Orders.TAKE_IN_COMMAND_ID, Map.of());
		Screen.waitUntil("it is in the book", () -> page().getActiveEditor() instanceof BenchEditor front
				&& front.getEditorInput() instanceof PlaceInput);
		arrive();
		assertEquals(1, page().getEditorReferences().length);
		assertFalse(bench.isDirty());
		assertEquals(Matrix.translation(0, 7), element(sample.plate).getTransform());
		assertEquals(Long.toString(number + 1), bench.document().job().getNumber());
	}

	@Test
	void openJobsAreRememberedFromOneSessionToTheNext() throws Exception {
		openJob();
		XMLMemento memento = XMLMemento.createWriteRoot("input");
		bench.getEditorInput().getPersistable().saveState(memento);
		Object again = PlatformUI.getWorkbench().getElementFactory(bench.getEditorInput().getPersistable().getFactoryId())
				.createElement(memento);
		assertNotNull(again);
		assertEquals(bench.getEditorInput(), again);
	}
}
