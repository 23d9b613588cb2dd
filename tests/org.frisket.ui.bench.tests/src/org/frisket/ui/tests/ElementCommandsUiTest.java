package org.frisket.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

import org.eclipse.draw2d.geometry.Point;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;
import org.eclipse.ui.PlatformUI;
import org.frisket.model.Element;
import org.frisket.model.Job;
import org.frisket.model.JobFile;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;
import org.frisket.model.Mat;
import org.frisket.model.Matrix;
import org.frisket.ui.bench.internal.editor.BenchEditor;
import org.junit.jupiter.api.Test;

/** Commands on the selected elements, each by its key, each undone to the first bytes. */
class ElementCommandsUiTest extends OpenBench {

	private void selectPlate() {
		Point plate = pixelOf(30, 30);
		Screen.click(canvas(), plate.x, plate.y);
		assertEquals(List.of(sample.plate.getId()), selectedIds());
	}

	private void selectPlateAndDisc() {
		selectPlate();
		Point disc = pixelOf(120, 40);
		Screen.holding("shift", () -> Screen.click(canvas(), disc.x, disc.y));
		assertEquals(2, selectedIds().size());
	}

	private void press(String... keys) {
		for (String key : keys) {
			Screen.key(key);
		}
	}

	private Job job() {
		return bench.document().job();
	}

	private Matrix plate() {
		return element(sample.plate).getTransform();
	}

	private Matrix disc() {
		return element(sample.disc).getTransform();
	}

	@Test
	void duplicateLiesBesideAndIsSelected() throws IOException {
		String before = text(job());
		selectPlate();
		press("ctrl+shift+d");
		Layer layer = Jobs.layerOf(element(sample.plate));
		assertEquals(2, layer.getElements().size());
		Element copy = layer.getElements().get(1);
		assertEquals(Matrix.translation(5, 5), copy.getTransform());
		assertEquals(List.of(copy.getId()), selectedIds());
		press("ctrl+z");
		assertEquals(before, text(job()));
	}

	@Test
	void copyAndPasteGoFromJobToJob() throws Exception {
		selectPlateAndDisc();
		press("ctrl+c");
		Path other = folder.resolve("other.frjob");
		JobFile.save(Jobs.create("other", "Other"), other);
		BenchEditor second = open(other);
		Screen.waitUntil("the other job is shown", second::isUpToDate);
		press("ctrl+v");
		Job pasted = second.document().job();
		assertEquals(2, Jobs.elements(pasted).size());
		assertEquals(List.of("Plate", "Disc"), pasted.getLayers().stream().map(Layer::getName).toList());
		assertEquals(Matrix.IDENTITY, Jobs.elements(pasted).get(0).getTransform());
		press("ctrl+z");
		assertEquals(0, pasted.getLayers().size());
	}

	@Test
	void cutAndPasteInOneJobBringsTheElementBack() throws IOException {
		String before = text(job());
		selectPlate();
		press("ctrl+x");
		assertTrue(Jobs.element(job(), sample.plate.getId()).isEmpty());
		press("ctrl+v");
		assertEquals(3, Jobs.elements(job()).size());
		press("ctrl+z", "ctrl+z");
		assertEquals(before, text(job()));
	}

	@Test
	void pasteBesideTheOriginal() {
		selectPlate();
		press("ctrl+c", "ctrl+v");
		Layer layer = Jobs.layerOf(element(sample.plate));
		assertEquals(Matrix.translation(5, 5), layer.getElements().get(1).getTransform());
	}

	@Test
	void mirrorAndRotateAboutTheMiddle() throws IOException {
		String before = text(job());
		selectPlate();
		press("ctrl+b", "h");
		assertEquals(new Matrix(-1, 0, 0, 1, 100, 0), plate());
		press("ctrl+b", "v");
		assertEquals(new Matrix(-1, 0, 0, -1, 100, 80), plate());
		press("ctrl+z", "ctrl+z");
		Screen.waitUntil("the plate is back", bench::isUpToDate);
		press("ctrl+b", "r");
		assertEquals(0, plate().a());
		assertEquals(1, plate().b());
		assertEquals(90, plate().e(), 1e-9);
		press("ctrl+b", "shift+r");
		assertEquals(1, plate().a());
		press("ctrl+b", "t");
		assertEquals(Math.cos(Math.toRadians(15)), plate().a(), 1e-12);
		press("ctrl+z", "ctrl+z", "ctrl+z");
		assertEquals(before, text(job()));
	}

	@Test
	void alignBringsEdgesOntoOneLine() throws IOException {
		String before = text(job());
		selectPlateAndDisc();
		press("ctrl+b", "Left");
		assertEquals(Matrix.IDENTITY, plate());
		assertEquals(-80, disc().e(), 0.01);
		press("ctrl+z", "ctrl+b", "c");
		assertEquals(30, plate().e(), 0.01);
		assertEquals(-40, disc().e(), 0.01);
		press("ctrl+z");
		assertEquals(before, text(job()));
	}

	@Test
	void orderChangesWithinTheLayer() throws IOException {
		selectPlate();
		press("ctrl+shift+d");
		String before = text(job());
		press("alt+Next");
		Layer layer = Jobs.layerOf(element(sample.plate));
		assertEquals(sample.plate.getId(), layer.getElements().get(1).getId());
		press("ctrl+z");
		assertEquals(before, text(job()));
	}

	@Test
	void matsAreAddedOneBehindTheOther() throws IOException {
		String before = text(job());
		selectPlate();
		// the sample has a mat of 5 mm behind both
		press("ctrl+shift+m", "ctrl+shift+m");
		List<Mat> mats = Jobs.matsOf(element(sample.plate));
		assertEquals(List.of(11.0, 8.0, 5.0), mats.stream().map(Mat::getDistance).toList());
		assertEquals("Mat 11 mm", job().getLayers().get(0).getName());
		Screen.waitUntil("the mats are worked through", bench::isUpToDate);
		bench.viewer().deselectAll();
		assertColour(job().getLayers().get(1).getColour(), seenAt(50, 20 - 6.5));
		press("ctrl+z", "ctrl+z");
		assertEquals(before, text(job()));
	}

	@Test
	void shapesLieInTheMiddleOfWhatIsSeen() throws IOException {
		String before = text(job());
		int first = Jobs.elements(job()).size();
		for (String key : List.of("1", "2", "3", "4", "5", "6", "7")) {
			press("ctrl+b", key);
			assertEquals(1, selectedIds().size(), key);
		}
		assertEquals(first + 7, Jobs.elements(job()).size());
		Screen.waitUntil("the shapes are worked through", bench::isUpToDate);
		Screen.keep(Screen.picture(canvas()), "shapes");
		assertTrue(bench.document().picture().findings().stream().noneMatch(f -> f.id().equals("path-unreadable")));
		for (int i = 0; i < 7; i++) {
			press("ctrl+z");
		}
		assertEquals(before, text(job()));
	}

	@Test
	void menuHasTheCommands() {
		Menu bar = PlatformUI.getWorkbench().getActiveWorkbenchWindow().getShell().getMenuBar();
		Menu element = item(bar, "Element").getMenu();
		element.notifyListeners(SWT.Show, new Event());
		Screen.settle();
		assertNotNull(item(element, "Wording"));
		assertNotNull(item(element, "Add Mat Behind"));
		Menu align = item(element, "Align").getMenu();
		align.notifyListeners(SWT.Show, new Event());
		Screen.settle();
		assertEquals(6, align.getItemCount());
	}

	private static MenuItem item(Menu menu, String name) {
		for (MenuItem item : menu.getItems()) {
			if (item.getText().replace("&", "").startsWith(name)) {
				return item;
			}
		}
		throw new AssertionError("no " + name);
	}
}
