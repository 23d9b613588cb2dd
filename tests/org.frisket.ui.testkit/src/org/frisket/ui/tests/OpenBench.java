package org.frisket.ui.tests;

import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

import org.eclipse.core.runtime.Adapters;
import org.eclipse.draw2d.geometry.Point;
import org.eclipse.gef.LayerConstants;
import org.eclipse.gef.editparts.LayerManager;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PlatformUI;
import org.frisket.editing.EditExecutor;
import org.frisket.model.Element;
import org.frisket.model.Job;
import org.frisket.model.JobFile;
import org.frisket.model.Jobs;
import org.frisket.ui.bench.Bench;
import org.frisket.ui.bench.JobInput;
import org.frisket.ui.bench.internal.editor.BenchEditor;
import org.frisket.ui.bench.internal.figures.TagFigure;
import org.frisket.ui.bench.internal.parts.Selection;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;

/** The running workbench with the sample job on its bench, met through pixels, pointer and keys. */
abstract class OpenBench {

	protected final SampleJob sample = new SampleJob();
	protected Path folder;
	protected Path file;
	protected BenchEditor bench;

	@BeforeEach
	protected void openSample() throws Exception {
		bringToFront(PlatformUI.getWorkbench().getWorkbenchWindows()[0].getShell());
		folder = Files.createTempDirectory("bench");
		file = jobFile();
		bench = open(file);
		Screen.waitUntil("the job is worked through", bench::isUpToDate);
		listen(bench);
	}

	/** Makes the file of the job that lies on the bench when a test begins. */
	protected Path jobFile() throws IOException {
		return sample.save(folder.resolve("sample.frjob"));
	}

	/** Has the window system make it the one that is worked in. */
	protected static void bringToFront(Shell window) {
		Screen.waitUntil("the window is in front", () -> {
			if (window.getDisplay().getActiveShell() != window) {
				window.forceActive();
			}
			return window.getDisplay().getActiveShell() == window;
		});
		Screen.settle();
	}

	/** Keys go to what has the focus: one that is pressed before anything has it would be lost. */
	protected static void listen(BenchEditor editor) {
		bringToFront(editor.getSite().getShell());
		Control canvas = editor.viewer().getControl();
		Screen.waitUntil("the bench listens to the keyboard", () -> canvas.isFocusControl() || canvas.setFocus());
		Screen.settle();
	}

	@AfterEach
	protected void close() throws IOException {
		Screen.letGo();
		page().closeAllEditors(false);
		try (var files = Files.list(folder)) {
			for (Path each : files.toList()) {
				Files.delete(each);
			}
		}
		Files.delete(folder);
	}

	protected static BenchEditor open(Path path) throws Exception {
		return (BenchEditor) page().openEditor(new JobInput(path), Bench.EDITOR_ID);
	}

	protected static IWorkbenchPage page() {
		return PlatformUI.getWorkbench().getActiveWorkbenchWindow().getActivePage();
	}

	protected Control canvas() {
		return bench.viewer().getControl();
	}

	protected Element element(Element original) {
		return Jobs.element(bench.document().job(), original.getId()).orElseThrow();
	}

	protected Point pixelOf(double x, double y) {
		return bench.zoom().toPixel(new org.frisket.geometry.Point(x, y));
	}

	protected RGB seenAt(double x, double y) {
		return seenAt(Screen.picture(canvas()), x, y);
	}

	protected RGB seenAt(ImageData picture, double x, double y) {
		Point place = pixelOf(x, y);
		return Screen.pixel(picture, place.x, place.y);
	}

	protected static void assertColour(String expected, RGB seen) {
		int rgb = Integer.parseInt(expected.substring(1), 16);
		assertColour(new RGB(rgb >> 16, rgb >> 8 & 0xff, rgb & 0xff), seen);
	}

	protected static void assertColour(RGB expected, RGB seen) {
		int off = Math.max(Math.abs(expected.red - seen.red),
				Math.max(Math.abs(expected.green - seen.green), Math.abs(expected.blue - seen.blue)));
		assertTrue(off <= 3, "expected " + expected + ", seen " + seen);
	}

	protected static String text(Job job) throws IOException {
		return new String(JobFile.toBytes(job), java.nio.charset.StandardCharsets.UTF_8);
	}

	/** What is written beside the pointer and on what holds it. */
	protected List<TagFigure> tags() {
		List<TagFigure> tags = new ArrayList<>();
		for (Object figure : LayerManager.Helper.find(bench.viewer().getRootEditPart())
				.getLayer(LayerConstants.FEEDBACK_LAYER).getChildren()) {
			if (figure instanceof TagFigure tag) {
				tags.add(tag);
			}
		}
		return tags;
	}

	protected List<String> selectedIds() {
		return Selection.elements(bench.viewer()).stream().map(Element::getId).toList();
	}

	protected EditExecutor edits() {
		EditExecutor executor = Adapters.adapt(bench, EditExecutor.class);
		assertNotNull(executor);
		return executor;
	}
}
