package org.frisket.ui.tests;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.eclipse.ui.PlatformUI;
import org.frisket.ui.orders.Orders;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** A window goes to the order desk and back to the bench by keys, also while a job is open. */
class DeskSwitchUiTest extends OpenBench {

	@AfterEach
	void backToTheBench() throws Exception {
		PlatformUI.getWorkbench().showPerspective(Orders.BENCH_PERSPECTIVE_ID, page().getWorkbenchWindow());
	}

	private static boolean isShown(String perspective) {
		return page().getPerspective().getId().equals(perspective);
	}

	@Test
	void keysGoBetweenDeskAndBench() throws Exception {
		Screen.key("ctrl+shift+o");
		Screen.waitUntil("it is the order desk", () -> isShown(Orders.DESK_PERSPECTIVE_ID));
		assertFalse(page().isEditorAreaVisible());
		Screen.keepScreen("desk-switch");
		Screen.key("ctrl+shift+b");
		Screen.waitUntil("it is the bench again", () -> isShown(Orders.BENCH_PERSPECTIVE_ID));
		assertTrue(page().isEditorAreaVisible());
	}
}
