package org.frisket.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.eclipse.core.runtime.preferences.InstanceScope;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PlatformUI;
import org.frisket.app.internal.tour.Tour;
import org.frisket.app.internal.tour.TourOffer;
import org.frisket.model.Jobs;
import org.frisket.ui.bench.UntitledInput;
import org.frisket.ui.bench.internal.editor.BenchEditor;
import org.junit.jupiter.api.Test;

/** Five steps on a sample job. */
class TourUiTest extends OpenBench {

	private static final List<String> TITLES = List.of("Words lie on the bench", "Font and height",
			"Mats follow the words", "Makeready, before the blade", "Hand it out");

	private static IWorkbenchWindow window() {
		return PlatformUI.getWorkbench().getActiveWorkbenchWindow();
	}

	private static void begin() {
		Screen.key("ctrl+F1");
		Screen.waitUntil("the tour is under way", () -> Tour.isUnderWay(window()));
		Screen.settle();
	}

	private static void waitFor(String title) {
		Screen.waitUntil("it tells: " + title, () -> Tour.title(window()).equals(title));
		Screen.settle();
	}

	private static void click(String label) {
		Button button = Dialogs.button(window().getShell(), label);
		Screen.click(button, button.getSize().x / 2, button.getSize().y / 2);
	}

	@Test
	void keysLeadThroughAllStepsAndBack() throws Exception {
		begin();
		BenchEditor sampleBench = (BenchEditor) page().getActiveEditor();
		assertEquals(UntitledInput.SAMPLE, sampleBench.getEditorInput());
		assertEquals("Sample", sampleBench.getTitle());
		assertFalse(sampleBench.isDirty());
		assertEquals(3, Jobs.elements(sampleBench.document().job()).size());
		Screen.waitUntil("the sample is worked through", sampleBench::isUpToDate);
		assertTrue(sampleBench.document().picture().findings().isEmpty(),
				sampleBench.document().picture().findings().toString());
		for (String title : TITLES) {
			waitFor(title);
			Screen.keep(Screen.picture(window().getShell()), "tour-" + (TITLES.indexOf(title) + 1));
			Screen.key(title.equals(TITLES.get(0)) ? "Return" : "Right");
		}
		Screen.waitUntil("it is over", () -> !Tour.isUnderWay(window()));
		assertFalse(sampleBench.isDirty());
		listen(sampleBench);
		begin();
		Screen.key("Right");
		waitFor(TITLES.get(1));
		Screen.key("Left");
		waitFor(TITLES.get(0));
		Screen.key("Escape");
		Screen.waitUntil("it is over", () -> !Tour.isUnderWay(window()));
	}

	@Test
	void mouseLeadsTooAndTheWindowCanBeUsedMeanwhile() {
		begin();
		click("Next");
		waitFor(TITLES.get(1));
		click("Back");
		waitFor(TITLES.get(0));
		BenchEditor sampleBench = (BenchEditor) page().getActiveEditor();
		listen(sampleBench);
		Screen.key("ctrl+a");
		Screen.waitUntil("all is selected", () -> sampleBench.viewer().getSelectedEditParts().size() == 3);
		assertTrue(Tour.isUnderWay(window()));
		Screen.key("ctrl+F1");
		Screen.key("Right");
		waitFor(TITLES.get(1));
		page().closeEditor(sampleBench, false);
		waitFor(TITLES.get(1));
		click("Next");
		waitFor(TITLES.get(2));
		click("End");
		Screen.waitUntil("it is over", () -> !Tour.isUnderWay(window()));
	}

	@Test
	void isOfferedOnceAndGoesWhenWorkBegins() throws Exception {
		page().closeAllEditors(false);
		InstanceScope.INSTANCE.getNode("org.frisket.app").remove("tourOffered");
		TourOffer.make(window());
		Screen.settle();
		assertTrue(TourOffer.isMade(window()));
		Shell shell = window().getShell();
		Screen.keep(Screen.picture(shell), "tour-offer");
		assertTrue(TourOffer.isSeen(window()));
		Screen.key("ctrl+shift+o");
		Screen.waitUntil("it does not lie over the order desk", () -> TourOffer.isMade(window()) && !TourOffer.isSeen(window()));
		Screen.key("ctrl+shift+b");
		Screen.waitUntil("it is seen over the bench again", () -> TourOffer.isSeen(window()));
		Rectangle usual = shell.getBounds();
		shell.setMaximized(false);
		shell.setSize(900, 700);
		Screen.waitUntil("it follows the bench", () -> TourOffer.isInPlace(window()));
		shell.setBounds(usual);
		Screen.waitUntil("it follows the bench again", () -> TourOffer.isInPlace(window()));
		open(file);
		Screen.waitUntil("it is gone", () -> !TourOffer.isMade(window()));
		page().closeAllEditors(false);
		TourOffer.make(window());
		assertFalse(TourOffer.isMade(window()));
	}

	@Test
	void offerIsTakenByAClick() {
		page().closeAllEditors(false);
		InstanceScope.INSTANCE.getNode("org.frisket.app").remove("tourOffered");
		TourOffer.make(window());
		Screen.settle();
		click("Show");
		waitFor(TITLES.get(0));
		assertFalse(TourOffer.isMade(window()));
		click("End");
		Screen.waitUntil("it is over", () -> !Tour.isUnderWay(window()));
	}
}
