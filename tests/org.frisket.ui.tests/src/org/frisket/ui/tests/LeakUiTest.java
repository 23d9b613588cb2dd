package org.frisket.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.ref.WeakReference;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

import org.eclipse.swt.graphics.DeviceData;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.widgets.Display;
import org.frisket.model.Job;
import org.frisket.model.Jobs;
import org.frisket.ui.bench.internal.editor.BenchEditor;
import org.frisket.ui.bench.internal.parts.Selection;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Editors give back all they took from the window system, and are forgotten. */
class LeakUiTest extends OpenBench {

	private static final int WARM_UP = 10;
	private static final int EDITORS = 200;
	/** Of so many editors one is closed after its picture was made, the others meanwhile. */
	private static final int EDITORS_PER_PICTURE = 10;
	/** The workbench remembers the part that was active last. */
	private static final int REMEMBERED = 1;

	private static final int ORIGIN_CALLS = 6;

	@BeforeEach
	void track() {
		Display.getCurrent().setTracking(true);
	}

	@AfterEach
	void stopTracking() {
		Display.getCurrent().setTracking(false);
	}

	@Test
	void closedEditorsLeaveNothingBehind() throws Exception {
		page().closeAllEditors(false);
		Image image = new Image(Display.getCurrent(), 1, 1);
		assertTrue(resources().toString().contains("Image of"), "resources are tracked");
		image.dispose();
		List<WeakReference<?>> gone = new ArrayList<>();
		openAndClose(WARM_UP, gone);
		Map<String, Integer> before = resources();
		gone.clear();
		openAndClose(EDITORS, gone);
		Map<String, Integer> after = resources();
		assertEquals(before, after);
		Screen.waitUntil("closed editors are collected", () -> {
			System.gc();
			return gone.stream().filter(each -> each.get() != null).count() <= 2 * REMEMBERED;
		});
	}

	private void openAndClose(int count, List<WeakReference<?>> gone) throws Exception {
		for (int i = 1; i <= count; i++) {
			BenchEditor editor = open(file);
			if (i % EDITORS_PER_PICTURE == 0) {
				Screen.waitUntil("the picture is made", editor::isUpToDate);
				Selection.select(editor.viewer(), Jobs.elements(editor.document().job()));
			}
			Job job = editor.document().job();
			gone.add(new WeakReference<>(editor));
			gone.add(new WeakReference<>(job));
			page().closeEditor(editor, false);
		}
		Screen.settle();
	}

	/** How many there are of each kind and from where. */
	private static Map<String, Integer> resources() {
		DeviceData data = Display.getCurrent().getDeviceData();
		Map<String, Integer> counts = new TreeMap<>();
		for (int i = 0; i < data.objects.length; i++) {
			if (data.objects[i] != null) {
				String origin = Arrays.stream(data.errors[i].getStackTrace()).map(StackTraceElement::toString)
						.filter(call -> !call.contains("org.eclipse.swt.graphics")).limit(ORIGIN_CALLS)
						.collect(Collectors.joining(" < "));
				counts.merge(data.objects[i].getClass().getSimpleName() + " of " + origin, 1, Integer::sum);
			}
		}
		return counts;
	}
}
