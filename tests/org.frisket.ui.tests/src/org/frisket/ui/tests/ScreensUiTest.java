package org.frisket.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

import org.eclipse.core.runtime.Adapters;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.frisket.model.Element;
import org.frisket.model.Jobs;
import org.frisket.model.Mat;
import org.frisket.model.Wording;
import org.frisket.ui.bench.Bench;
import org.frisket.ui.bench.JobOnBench;
import org.frisket.ui.bench.UntitledInput;
import org.frisket.ui.bench.internal.editor.BenchEditor;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The whole window with the sample of the tour, at sizes that people have; the pictures are kept. */
class ScreensUiTest extends OpenProperties {

	private static final Point NOTEBOOK = new Point(1366, 768);
	private static final Point DESK = new Point(1600, 1000);

	private Shell shell;
	private Rectangle usual;

	@BeforeEach
	void openTheSampleOfTheTour() throws Exception {
		shell = bench.getSite().getShell();
		usual = shell.getBounds();
		bench = (BenchEditor) page().openEditor(UntitledInput.SAMPLE, Bench.EDITOR_ID);
		onBench = Adapters.adapt(bench, JobOnBench.class);
		Screen.waitUntil("the sample is worked through", bench::isUpToDate);
	}

	@AfterEach
	void giveTheWindowBack() {
		shell.setBounds(usual);
		Screen.waitUntil("the window has its size", () -> shell.getSize().equals(new Point(usual.width, usual.height)));
	}

	@Test
	void sampleIsSeenAtTheSizeOfANotebookAndOfADesk() throws Exception {
		for (Point size : List.of(NOTEBOOK, DESK)) {
			for (Class<? extends Element> kind : List.of(Wording.class, Mat.class)) {
				show(kind, size);
				ImageData picture = Screen.picture(shell);
				Screen.keep(picture, "screen-" + size.x + "x" + size.y + "-" + kind.getSimpleName().toLowerCase());
				assertTrue(colours(picture) > 50, "the window is blank");
				assertTrue(colours(Screen.picture(canvas())) > 20, "the bench is blank");
			}
			page().activate(view);
			Screen.settle();
			view.field("Passes").setFocus();
			Screen.keep(Screen.picture(shell), "screen-" + size.x + "x" + size.y + "-operations");
		}
	}

	@Test
	void noWordIsCutOffOnANotebook() {
		for (Class<? extends Element> kind : List.of(Wording.class, Mat.class)) {
			show(kind, NOTEBOOK);
			List<String> cut = new ArrayList<>();
			collectCut(shell, cut);
			assertEquals(List.of(), cut, kind.getSimpleName());
		}
	}

	private void show(Class<? extends Element> kind, Point size) {
		shell.setBounds(0, 0, size.x, size.y);
		Screen.waitUntil("the window has its size", () -> shell.getSize().equals(size));
		onBench.select(Jobs.elements(bench.document().job()).stream().filter(kind::isInstance).toList());
		Screen.settle();
	}

	/** What needs more room for its words than it has. */
	private static void collectCut(Composite parent, List<String> cut) {
		Rectangle room = parent.getClientArea();
		for (Control child : parent.getChildren()) {
			if (!child.isVisible()) {
				continue;
			}
			if (child instanceof Composite inner && !(child instanceof Combo)) {
				collectCut(inner, cut);
			}
			Rectangle place = child.getBounds();
			boolean isWords = child instanceof Label label && !label.getText().isEmpty() || child instanceof Button
					|| child instanceof Combo || child instanceof Text text && (text.getStyle() & SWT.SINGLE) != 0
							&& wordsOf(text).length() > 0;
			boolean wraps = (child.getStyle() & SWT.WRAP) != 0;
			Point wanted = child instanceof Text text ? needed(text)
					: child.computeSize(wraps ? place.width : SWT.DEFAULT, SWT.DEFAULT);
			if (isWords && (place.x + place.width > room.width || wanted.x > place.width
					|| wanted.y > place.height)) {
				cut.add(child + " " + place + " of " + wanted + " in " + room);
			}
		}
	}

	private static String wordsOf(Text text) {
		return text.getText().isEmpty() ? text.getMessage() : text.getText();
	}

	/** A field asks for no more than its hint; its words need their length and what the frame takes. */
	private static Point needed(Text text) {
		GC gc = new GC(text);
		int length = gc.textExtent(wordsOf(text)).x;
		gc.dispose();
		return new Point(length + text.getBounds().width - text.getClientArea().width, text.getBounds().height);
	}

	/** How many colours there are on a grid over the picture; a blank one has few. */
	private static int colours(ImageData picture) {
		Set<Integer> colours = new HashSet<>();
		for (int y = 0; y < picture.height; y += 2) {
			for (int x = 0; x < picture.width; x += 2) {
				colours.add(picture.getPixel(x, y));
			}
		}
		return colours.size();
	}
}
