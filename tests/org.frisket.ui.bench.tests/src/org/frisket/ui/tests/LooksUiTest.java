package org.frisket.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;

import org.eclipse.core.commands.ParameterizedCommand;
import org.eclipse.draw2d.geometry.Point;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.MenuItem;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.XMLMemento;
import org.eclipse.ui.commands.ICommandService;
import org.eclipse.ui.handlers.IHandlerService;
import org.frisket.geometry.Bounds;
import org.frisket.model.Job;
import org.frisket.model.JobFile;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;
import org.frisket.model.Matrix;
import org.frisket.model.OperationKind;
import org.frisket.model.Outline;
import org.frisket.ui.ThemeColour;
import org.frisket.ui.bench.OperationLook;
import org.frisket.ui.bench.internal.editor.BenchEditor;
import org.frisket.ui.bench.internal.looks.BenchLook;
import org.frisket.ui.bench.internal.parts.Selection;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The ways of looking at a job, by the pixels that each shows at known places. */
class LooksUiTest extends OpenBench {

	private final OperationsJob tag = new OperationsJob();

	@BeforeEach
	void openTag() throws Exception {
		bench = open(tag.save(folder.resolve("tag.frjob")));
		Screen.waitUntil("the job is worked through", bench::isUpToDate);
		listen(bench);
		bench.fit();
		Screen.settle();
	}

	private ImageData look(String key, BenchLook expected, String name) throws Exception {
		Screen.key(key);
		assertEquals(expected, bench.looks().look());
		Screen.waitUntil("it is known what was cleaned",
				() -> expected != BenchLook.BEFORE || bench.looks().isBeforeKnown());
		Screen.moveTo(canvas(), 4, 4);
		Screen.keep(Screen.picture(PlatformUI.getWorkbench().getActiveWorkbenchWindow().getShell()), "look-" + name);
		return Screen.picture(canvas());
	}

	private static RGB sheet() {
		return ThemeColour.BENCH_SHEET.colour().getRGB();
	}

	/** Whether a colour is seen on the way between two places in mm, which run across or down. */
	private boolean isCrossed(ImageData picture, RGB colour, double x0, double y0, double x1, double y1) {
		Point from = pixelOf(x0, y0);
		Point to = pixelOf(x1, y1);
		int steps = Math.max(Math.abs(to.x - from.x), Math.abs(to.y - from.y));
		for (int i = 0; i <= steps; i++) {
			RGB seen = Screen.pixel(picture, from.x + (to.x - from.x) * i / steps,
					from.y + (to.y - from.y) * i / steps);
			if (isTinged(seen, colour)) {
				return true;
			}
		}
		return false;
	}

	/** A thin line that lies between two rows of pixels tinges both of them by a half. */
	private static boolean isTinged(RGB seen, RGB colour) {
		RGB sheet = sheet();
		double[] way = { colour.red - sheet.red, colour.green - sheet.green, colour.blue - sheet.blue };
		double[] gone = { seen.red - sheet.red, seen.green - sheet.green, seen.blue - sheet.blue };
		double square = 0;
		double product = 0;
		for (int i = 0; i < 3; i++) {
			square += way[i] * way[i];
			product += way[i] * gone[i];
		}
		double share = product / square;
		double off = 0;
		for (int i = 0; i < 3; i++) {
			off = Math.max(off, Math.abs(gone[i] - share * way[i]));
		}
		return share > 0.35 && share < 1.1 && off < 16;
	}

	private static RGB hue(OperationKind kind) {
		return OperationLook.of(kind).hue().colour().getRGB();
	}

	@Test
	void previewShowsStocks() throws Exception {
		ImageData picture = look("F5", BenchLook.PREVIEW, "preview");
		assertColour(OperationsJob.CARD_COLOUR, seenAt(picture, 90, 20));
		assertColour(OperationsJob.MAT_COLOUR, seenAt(picture, 60, -4));
	}

	/** Nothing is cut free, so that the sheet itself is what is made; with a cut the piece is, and lies on paper. */
	@Test
	void sheetOfWhichNothingIsCutFreeHasTheColourOfItsStock() throws Exception {
		Job job = Jobs.create("card", "Place card");
		Layer layer = Jobs.addLayer(job, "Card");
		layer.setColour("#c8dcc0");
		Outline line = Jobs.addOutline(layer, "M 10 10 H 60");
		Jobs.addOperation(line, OperationKind.DRAW);
		Path path = folder.resolve("card.frjob");
		JobFile.save(job, path);
		bench = open(path);
		Screen.waitUntil("the job is worked through", bench::isUpToDate);
		listen(bench);
		bench.fit();
		assertColour("#c8dcc0", seenAt(30, 15));
		Screen.key("F6");
		assertColour(sheet(), seenAt(30, 15));
		Screen.key("F5");
		assertColour("#c8dcc0", seenAt(30, 15));
		element(line).getOperations().get(0).setKind(OperationKind.CUT);
		bench.document().job().getLayers().get(0).setName("Plate");
		assertColour(sheet(), seenAt(30, 15));
	}

	@Test
	void outlineShowsThinContoursThroughAllThatLiesAboveThem() throws Exception {
		ImageData picture = look("F6", BenchLook.OUTLINE, "outline");
		assertColour(sheet(), seenAt(picture, 90, 20));
		assertColour(sheet(), seenAt(picture, 60, -4));
		RGB ink = ThemeColour.BENCH_INK.colour().getRGB();
		assertTrue(isCrossed(picture, ink, 90, -10, 90, -3), "the mat's edge");
		assertTrue(isCrossed(picture, ink, 90, -3, 90, 3), "the card's edge");
		assertTrue(isCrossed(picture, ink, 15, 5, 15, 15), "the printed square");
		for (OperationKind kind : new OperationKind[] { OperationKind.KISS_CUT, OperationKind.PERFORATE }) {
			assertFalse(isCrossed(picture, hue(kind), 45, -10, 45, 90), kind + " in its hue");
		}
	}

	@Test
	void openLinesAreDashedInTheOutline() throws Exception {
		ImageData picture = look("F6", BenchLook.OUTLINE, "outline-open");
		assertTrue(longestRun(picture, 20, 50, 60) < 12, "the open line is dashed");
		assertTrue(longestRun(picture, 20, 80, 60) > 40, "the edge of the card is not");
	}

	/** How many pixels in a row are dark along a line across, within a pixel of the height. */
	private int longestRun(ImageData picture, double fromX, double y, double toX) {
		int best = 0;
		int run = 0;
		int row = pixelOf(fromX, y).y;
		for (int x = pixelOf(fromX, y).x; x < pixelOf(toX, y).x; x++) {
			boolean dark = false;
			for (int dy = -1; dy <= 1; dy++) {
				dark |= Screen.pixel(picture, x, row + dy).red < 180;
			}
			run = dark ? run + 1 : 0;
			best = Math.max(best, run);
		}
		return best;
	}

	@Test
	void operationsShowEachHueAndNoStock() throws Exception {
		ImageData picture = look("F7", BenchLook.OPERATIONS, "operations");
		assertColour(sheet(), seenAt(picture, 95, 25));
		assertTrue(isCrossed(picture, hue(OperationKind.CUT), 90, -3, 90, 3));
		assertTrue(isCrossed(picture, hue(OperationKind.KISS_CUT), 40, 12, 40, 28)
				|| isCrossed(picture, hue(OperationKind.KISS_CUT), 38, 20, 42, 20));
		assertTrue(isCrossed(picture, hue(OperationKind.CREASE), 20, 50, 60, 50));
		assertTrue(isCrossed(picture, hue(OperationKind.PERFORATE), 20, 60, 60, 60));
		assertTrue(isCrossed(picture, hue(OperationKind.DRAW), 60, 68, 60, 72));
		assertTrue(isCrossed(picture, hue(OperationKind.PRINT), 12, 20, 28, 20), "hatching");
	}

	@Test
	void legendStandsInTheCornerAlsoAfterScrolling() throws Exception {
		ImageData plain = look("F5", BenchLook.PREVIEW, "legend-none");
		ImageData picture = look("F7", BenchLook.OPERATIONS, "legend");
		Point corner = new Point(20, bench.viewer().getControl().getSize().y - 60);
		assertColour(ThemeColour.BENCH_DESK.colour().getRGB(), Screen.pixel(plain, corner.x, corner.y));
		assertColour(sheet(), Screen.pixel(picture, corner.x, corner.y));
		bench.zoom().pan(60, 40);
		assertColour(sheet(), Screen.pixel(Screen.picture(canvas()), corner.x, corner.y));
	}

	@Test
	void beforeCleaningMarksWhatWasRemoved() throws Exception {
		ImageData picture = look("F8", BenchLook.BEFORE, "before");
		RGB removed = ThemeColour.BENCH_REMOVED.colour().getRGB();
		RGB ink = ThemeColour.BENCH_INK.colour().getRGB();
		// the corner of the second square that lies in the first, and the other way round
		assertTrue(isCrossed(picture, removed, 57, 18, 57, 22));
		assertTrue(isCrossed(picture, removed, 58, 25, 62, 25));
		assertFalse(isCrossed(picture, removed, 38, 15, 42, 15));
		assertTrue(isCrossed(picture, ink, 38, 15, 42, 15));
	}

	@Test
	void oneKeySwitchesBetweenBeforeAndAfter() throws Exception {
		look("F7", BenchLook.OPERATIONS, "after");
		Screen.key("F9");
		assertEquals(BenchLook.BEFORE, bench.looks().look());
		Screen.key("F9");
		assertEquals(BenchLook.OPERATIONS, bench.looks().look());
	}

	@Test
	void keyThatIsHeldShowsBeforeOnlyMeanwhile() throws Exception {
		long start = System.currentTimeMillis();
		Screen.holding("F9", () -> {
			assertEquals(BenchLook.BEFORE, bench.looks().look());
			Screen.waitUntil("somebody has looked", () -> System.currentTimeMillis() - start > 900);
			assertEquals(BenchLook.BEFORE, bench.looks().look());
		});
		Screen.waitUntil("the look is back", () -> bench.looks().look() == BenchLook.PREVIEW);
	}

	@Test
	void lookingChangesNothing() throws Exception {
		String before = text(bench.document().job());
		for (String key : new String[] { "F6", "F7", "F8", "F9", "F5" }) {
			Screen.key(key);
		}
		assertEquals(before, text(bench.document().job()));
		assertFalse(bench.isDirty());
		assertFalse(bench.commandStack().canUndo());
	}

	@Test
	void movedElementIsSeenAtItsNewPlaceInEveryLook() throws Exception {
		for (String key : new String[] { "F6", "F7", "F8" }) {
			Screen.key(key);
			Screen.waitUntil("the look is ready", () -> bench.isUpToDate() && bench.looks().isBeforeKnown()
					|| bench.looks().look() != BenchLook.BEFORE);
			Jobs.element(bench.document().job(), tag.printed.getId()).orElseThrow()
					.setTransform(Matrix.translation(75, 10));
			ImageData picture = Screen.picture(canvas());
			RGB grey = hue(OperationKind.PRINT);
			RGB ink = ThemeColour.BENCH_INK.colour().getRGB();
			assertTrue(isCrossed(picture, ink, 95, 18, 95, 22) || isCrossed(picture, grey, 95, 18, 95, 22), key);
			Jobs.element(bench.document().job(), tag.printed.getId()).orElseThrow()
					.setTransform(Matrix.IDENTITY);
		}
	}

	@Test
	void eachEditorKeepsItsOwnLook() throws Exception {
		Screen.key("F6");
		BenchEditor other = open(file);
		listen(other);
		assertEquals(BenchLook.PREVIEW, other.looks().look());
		Screen.key("F7");
		assertEquals(BenchLook.OPERATIONS, other.looks().look());
		assertEquals(BenchLook.OUTLINE, bench.looks().look());
	}

	@Test
	void editorRemembersItsLookWithTheWorkbench() {
		Screen.key("F7");
		XMLMemento memento = XMLMemento.createWriteRoot("editor");
		bench.saveState(memento);
		BenchEditor later = new BenchEditor();
		later.restoreState(memento);
		XMLMemento again = XMLMemento.createWriteRoot("editor");
		later.saveState(again);
		assertEquals(memento.getString("look"), again.getString("look"));
		assertEquals("OPERATIONS", again.getString("look"));
	}

	@Test
	void viewMenuTicksTheLook() throws Exception {
		ICommandService commands = PlatformUI.getWorkbench().getService(ICommandService.class);
		ParameterizedCommand outline = ParameterizedCommand.generateCommand(
				commands.getCommand("org.frisket.ui.bench.command.look"),
				Map.of("org.frisket.ui.bench.command.look.look", "OUTLINE"));
		PlatformUI.getWorkbench().getService(IHandlerService.class).executeCommand(outline, null);
		assertEquals(BenchLook.OUTLINE, bench.looks().look());
		MenuItem view = item(bench.getSite().getShell().getMenuBar().getItems(), "View");
		view.getMenu().notifyListeners(SWT.Show, new Event());
		Screen.settle();
		assertTrue(item(view.getMenu().getItems(), "Outline").getSelection());
		assertFalse(item(view.getMenu().getItems(), "Preview").getSelection());
		view.getMenu().notifyListeners(SWT.Hide, new Event());
	}

	private static MenuItem item(MenuItem[] items, String label) {
		for (MenuItem each : items) {
			if (each.getText().replace("&", "").split("\t")[0].equals(label)) {
				return each;
			}
		}
		throw new AssertionError("no menu item " + label);
	}

	@Test
	void selectionIsShownAsLargeAsItFits() {
		select(tag.overlapping.getId());
		Screen.key("ctrl+8");
		Bounds seen = seen();
		assertTrue(seen.contains(new org.frisket.geometry.Point(40, 10))
				&& seen.contains(new org.frisket.geometry.Point(70, 40)), seen.toString());
		assertEquals(55, seen.centre().x(), 2);
		assertEquals(25, seen.centre().y(), 2);
		assertTrue(Math.min(seen.width(), seen.height()) < 36, seen.toString());
	}

	@Test
	void withoutASelectionTheWholeSheetIsShown() {
		double before = bench.zoom().scale();
		Screen.key("ctrl+equal");
		Screen.key("ctrl+8");
		assertEquals(before, bench.zoom().scale(), before * 0.01);
	}

	private void select(String id) {
		Selection.select(bench.viewer(),
				List.of(Jobs.element(bench.document().job(), id).orElseThrow()));
	}

	private Bounds seen() {
		Control canvas = canvas();
		return Bounds.of(bench.zoom().toMm(0, 0)).with(bench.zoom().toMm(canvas.getSize().x, canvas.getSize().y));
	}

	@Test
	void typedPercentageIsShown() {
		Dialogs.answer("Show", () -> Screen.key("ctrl+7"), () -> {
			Screen.key("ctrl+a");
			Screen.type("250");
		});
		assertEquals(2.5, bench.zoom().scale(), 1e-6);
	}
}
