package org.frisket.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

import org.eclipse.core.runtime.Adapters;
import org.eclipse.draw2d.geometry.Point;
import org.eclipse.gef.LayerConstants;
import org.eclipse.gef.editparts.LayerManager;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.MenuItem;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.PlatformUI;
import org.frisket.editing.elements.DeleteElements;
import org.frisket.editing.elements.RenameElements;
import org.frisket.model.Job;
import org.frisket.model.JobFile;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;
import org.frisket.model.OperationKind;
import org.frisket.model.Outline;
import org.frisket.ui.bench.JobOnBench;
import org.frisket.ui.bench.internal.figures.FlagFigure;
import org.frisket.ui.views.Views;
import org.frisket.ui.views.internal.repairs.RepairsView;
import org.frisket.ui.views.internal.stack.StackCanvas;
import org.frisket.ui.views.internal.stack.StackView;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Repairs are listed, visited, compared and made, by pointer and keys. */
class RepairsViewUiTest extends OpenBench {

	/**
	 * Two plates that overlap, a line twice, a speck, and a frame of 30 × 20 mm in two strokes that do not quite meet, and a
	 * small one that is open; besides a second outline that is in order, and one that cannot be read.
	 */
	private static final String BROKEN = "M10 10V30H50V10Z M40 20V40H70V20Z M20 60H60 M60 60H20 M90 20v.05h.05v-.05z "
			+ "M80 60V80H110 M110 80V60H80.01 M80 90V100H90V90H80.01";
	private static final List<String> REPAIRS = List.of("Contour closed", "Crossing resolved", "Crossing resolved",
			"Doubled line removed", "Ends joined", "Ends joined", "Speck removed");

	private RepairsView view;
	private JobOnBench onBench;
	private String broken;
	private String sound;
	private String before;

	@Override
	protected Path jobFile() throws IOException {
		Job job = Jobs.create("ferry", "Ferry banner");
		Layer layer = Jobs.addLayer(job, "Card");
		layer.setColour("#1f6f78");
		broken = cut(layer, "Bow plate", BROKEN);
		sound = cut(layer, "Keel", "M10 100V110H60V100Z");
		cut(layer, "Flag", "M0 0 L oops");
		Path path = folder.resolve("broken.frjob");
		JobFile.save(job, path);
		return path;
	}

	@BeforeEach
	void remember() throws IOException {
		onBench = Adapters.adapt(bench, JobOnBench.class);
		before = text(bench.document().job());
	}

	@AfterEach
	void closeView() {
		page().hideView(page().findView(Views.REPAIRS_ID));
	}

	private static String cut(Layer layer, String name, String data) {
		Outline outline = Jobs.addOutline(layer, data);
		outline.setName(name);
		Jobs.addOperation(outline, OperationKind.CUT);
		return outline.getId();
	}

	private void ask() {
		Screen.events("key", "ctrl+b", "k");
		Screen.waitUntil("the view is there", () -> page().findView(Views.REPAIRS_ID) != null);
		view = (RepairsView) page().findView(Views.REPAIRS_ID);
		plan();
		assertSame(view, page().getActivePart());
	}

	private void plan() {
		Screen.waitUntil("it is known what would be repaired", view::isPlanned);
		Screen.waitUntil("the job as it would be is there", () -> onBench.preview().isThere() == !listed().isEmpty());
		Screen.settle();
	}

	/** What is listed as a repair. */
	private List<String> listed() {
		return IntStream.range(0, view.table().getItemCount()).filter(i -> !cell(i, 0).isEmpty())
				.mapToObj(i -> cell(i, 1)).sorted().toList();
	}

	private String cell(int line, int column) {
		return view.table().getItem(line).getText(column);
	}

	private int line(String repair) {
		return IntStream.range(0, view.table().getItemCount()).filter(i -> cell(i, 1).equals(repair)).findFirst()
				.orElseThrow();
	}

	/** Clicks the first line that is seen, and goes on by keys: a list is short in a small window. */
	private static void goTo(Table table, int index) {
		Rectangle place = table.getItem(table.getTopIndex()).getBounds(0);
		if (place.y + place.height / 2 < table.getClientArea().y) {
			// scrolled out of sight but for its foot
			place = table.getItem(table.getTopIndex() + 1).getBounds(0);
		}
		Screen.click(table, place.x + place.width / 2, place.y + place.height / 2);
		Screen.key("Home");
		for (int i = 0; i < index; i++) {
			Screen.key("Down");
		}
		assertEquals(index, table.getSelectionIndex());
	}

	private List<FlagFigure> raised() {
		List<FlagFigure> flags = new ArrayList<>();
		for (Object figure : LayerManager.Helper.find(bench.viewer().getRootEditPart())
				.getLayer(LayerConstants.SCALED_FEEDBACK_LAYER).getChildren()) {
			if (figure instanceof FlagFigure flag && flag.isRaised()) {
				flags.add(flag);
			}
		}
		return flags;
	}

	private boolean isSeen(double x, double y) {
		Point pixel = pixelOf(x, y);
		Rectangle room = canvas().getBounds();
		return pixel.x >= 0 && pixel.y >= 0 && pixel.x < room.width && pixel.y < room.height;
	}

	private Button button(String text) {
		return find(view.table().getParent().getParent().getParent(), Button.class).stream()
				.filter(button -> button.getText().replace("&", "").equals(text)).findFirst().orElseThrow();
	}

	private static <C extends Control> List<C> find(Composite in, Class<C> type) {
		List<C> found = new ArrayList<>();
		for (Control child : in.getChildren()) {
			if (type.isInstance(child)) {
				found.add(type.cast(child));
			}
			if (child instanceof Composite inner) {
				found.addAll(find(inner, type));
			}
		}
		return found;
	}

	private static void press(Control button) {
		Screen.click(button, button.getSize().x / 2, button.getSize().y / 2);
	}

	@Test
	void keyListsEveryRepairWithPlaceAmountStepAndOutline() throws IOException {
		ask();
		Screen.keep(Screen.picture(PlatformUI.getWorkbench().getActiveWorkbenchWindow().getShell()), "repairs");
		assertEquals(REPAIRS, listed());
		int doubled = line("Doubled line removed");
		assertEquals("40 mm", cell(doubled, 2));
		assertEquals("40.00, 60.00 mm", cell(doubled, 3));
		assertEquals("Remove doubled lines", cell(doubled, 4));
		assertEquals("Bow plate", cell(doubled, 5));
		assertEquals("0.01 mm", cell(line("Contour closed"), 2));
		int unreadable = line("Left as it is");
		assertEquals("Flag", cell(unreadable, 5));
		assertTrue(cell(unreadable, 4).contains("character"), cell(unreadable, 4));
		assertTrue(view.summary().startsWith("7 repairs, 3 outlines."), view.summary());
		assertTrue(view.summary().contains("0.02 mm are allowed"), view.summary());
		assertEquals("Repairs (7)", view.getPartName());
		assertEquals(before, text(bench.document().job()), "nothing is changed yet");
	}

	@Test
	void lineVisitsItsPlaceByPointerAndByKeys() throws IOException {
		ask();
		Point far = pixelOf(20, 105);
		bench.zoom().about(far.x, far.y, 20);
		Screen.settle();
		assertFalse(isSeen(90, 20));
		int speck = line("Speck removed");
		goTo(view.table(), speck);
		assertTrue(isSeen(90, 20));
		assertEquals(1, raised().size());
		assertTrue(raised().get(0).text().startsWith((speck + 1) + "  Speck removed"), raised().get(0).text());
		Screen.keep(Screen.picture(PlatformUI.getWorkbench().getActiveWorkbenchWindow().getShell()), "repair-visited");
		goTo(view.table(), 0);
		Screen.key("Down");
		assertEquals(1, view.table().getSelectionIndex());
		assertTrue(raised().get(0).text().startsWith("2  " + cell(1, 1)), raised().get(0).text());
		Screen.key("ctrl+period");
		assertEquals(2, view.table().getSelectionIndex());
		listen(bench);
		Screen.key("ctrl+comma");
		assertEquals(1, view.table().getSelectionIndex());
		assertSame(bench, page().getActivePart());
		double scale = bench.zoom().scale();
		goTo(view.table(), speck);
		Screen.key("Return");
		assertTrue(bench.zoom().scale() != scale && isSeen(90, 20));
	}

	/** The middle of the frame is empty while it is open, and a piece once it is closed. */
	@Test
	void benchShowsBeforeAndAfterInTurn() throws IOException {
		ask();
		RGB after = seenAt(95, 70);
		Screen.key("F9");
		Screen.keep(Screen.picture(PlatformUI.getWorkbench().getActiveWorkbenchWindow().getShell()), "repair-before");
		RGB open = seenAt(95, 70);
		assertFalse(after.equals(open), "" + open);
		assertTrue(button("Before").getSelection());
		press(button("Before"));
		assertColour(after, seenAt(95, 70));
		listen(bench);
		Screen.key("F9");
		assertColour(open, seenAt(95, 70));
		assertTrue(button("Before").getSelection());
		assertEquals(before, text(bench.document().job()));
	}

	@Test
	void keyAppliesInOneStepOfUndo() throws IOException {
		ask();
		Screen.events("key", "ctrl+b", "a");
		Screen.waitUntil("the job is checked", bench::isUpToDate);
		assertTrue(view.note().startsWith("7 repairs made"), view.note());
		String after = text(bench.document().job());
		assertFalse(before.equals(after));
		assertFalse(onBench.preview().isThere());
		assertEquals("Repair outline", bench.commandStack().getUndoCommand().getLabel());
		listen(bench);
		Screen.key("ctrl+z");
		assertEquals(before, text(bench.document().job()));
		assertFalse(bench.commandStack().canUndo());
		Screen.key("ctrl+shift+z");
		assertEquals(after, text(bench.document().job()));
		ask();
		assertEquals(List.of(), listed(), "a second run finds nothing");
		assertTrue(view.summary().endsWith("nothing to repair"), view.summary());
	}

	@Test
	void cancelLeavesNothingAndButtonApplies() throws IOException {
		ask();
		goTo(view.table(), 0);
		press(button("Cancel"));
		Screen.settle();
		assertEquals(null, page().findView(Views.REPAIRS_ID));
		assertEquals(before, text(bench.document().job()));
		assertFalse(bench.commandStack().canUndo());
		assertFalse(onBench.preview().isThere());
		assertEquals(List.of(), raised());
		assertSame(bench, page().getActivePart());
		listen(bench);
		ask();
		press(button("Apply"));
		assertFalse(before.equals(text(bench.document().job())));
		bench.commandStack().undo();
		assertEquals(before, text(bench.document().job()));
	}

	@Test
	void singleStepIsPreviewedByItselfAndOptionsCount() throws IOException {
		ask();
		goTo(view.steps(), List.of(view.steps().getItems()).stream().map(TableItem::getText).toList()
				.indexOf("Remove specks and spikes"));
		press(button("Only This Step"));
		plan();
		assertEquals(List.of("Speck removed"), listed());
		Screen.keep(Screen.picture(PlatformUI.getWorkbench().getActiveWorkbenchWindow().getShell()), "repair-step");
		goTo(view.steps(), view.steps().getSelectionIndex());
		Text field = find(view.steps().getParent(), Text.class).stream().filter(text -> "speck".equals(text.getData()))
				.findFirst().orElseThrow();
		Screen.key("Tab");
		assertTrue(field.isFocusControl());
		Screen.key("ctrl+a");
		Screen.type("0.01mm");
		plan();
		assertEquals(List.of("Sliver removed"), listed(), "no speck any more, but narrow still");
		Screen.type("x");
		Screen.settle();
		assertTrue(view.summary().startsWith("Correct the value"), view.summary());
		assertFalse(onBench.preview().isThere());
		press(button("Recommended"));
		plan();
		assertEquals(REPAIRS, listed());
		assertEquals(before, text(bench.document().job()));
	}

	@Test
	void selectionSaysWhichOutlines() {
		onBench.select(List.of(Jobs.element(bench.document().job(), sound).orElseThrow()));
		ask();
		assertEquals(List.of(), listed());
		assertTrue(view.summary().startsWith("1 outline: nothing"), view.summary());
		onBench.select(List.of(Jobs.element(bench.document().job(), broken).orElseThrow()));
		listen(bench);
		ask();
		assertEquals(REPAIRS, listed());
	}

	@Test
	void menuOfTheStackAsksForAnOutline() throws Exception {
		StackCanvas stack = ((StackView) page().showView(Views.STACK_ID)).canvas();
		Screen.settle();
		Rectangle place = stack.boundsOf(Jobs.element(bench.document().job(), broken).orElseThrow());
		Screen.click(stack, place.x + 90, place.y + place.height / 2);
		assertEquals(List.of(broken), selectedIds());
		stack.getMenu().notifyListeners(SWT.Show, new Event());
		MenuItem item = List.of(stack.getMenu().getItems()).stream()
				.filter(each -> each.getText().startsWith("Repair Outlines")).findFirst().orElseThrow();
		item.notifyListeners(SWT.Selection, new Event());
		view = (RepairsView) page().findView(Views.REPAIRS_ID);
		plan();
		assertEquals(REPAIRS, listed());
		assertTrue(view.summary().contains("1 outline."), view.summary());
	}

	@Test
	void editOfTheJobHasItWorkedOutAgain() {
		ask();
		edits().execute(new RenameElements(List.of(Jobs.element(bench.document().job(), broken).orElseThrow()), "Stern"));
		assertFalse(onBench.preview().isThere(), "it was of the job as it was");
		plan();
		assertEquals("Stern", cell(0, 5));
		edits().execute(new DeleteElements(
				List.of(Jobs.element(bench.document().job(), broken).orElseThrow())));
		plan();
		assertEquals(List.of(), listed());
	}

	@Test
	void jobWithoutOutlinesIsToldWhereTheyComeFrom() throws Exception {
		page().closeAllEditors(false);
		Job job = Jobs.create("empty", "Place cards");
		Jobs.addWording(Jobs.addLayer(job, "Card"), "Table", 10);
		JobFile.save(job, folder.resolve("words.frjob"));
		bench = open(folder.resolve("words.frjob"));
		Screen.waitUntil("the job is checked", bench::isUpToDate);
		listen(bench);
		Screen.events("key", "ctrl+b", "k");
		Screen.waitUntil("the view is there", () -> page().findView(Views.REPAIRS_ID) != null);
		view = (RepairsView) page().findView(Views.REPAIRS_ID);
		assertTrue(view.note().startsWith("This job has no outlines"), view.note());
		page().closeAllEditors(false);
		Screen.waitUntil("nothing is open", () -> view.note().startsWith("Open a job"));
	}
}
