package org.frisket.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.eclipse.draw2d.geometry.Point;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Event;
import org.frisket.ui.views.Views;
import org.frisket.ui.views.internal.WhenLetGo;
import org.frisket.ui.views.internal.properties.PropertiesView;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** What a press sets going waits until the button is let go; nothing else waits. */
class WhenLetGoUiTest extends OpenBench {

	private int done;
	private WhenLetGo work;

	@AfterEach
	void end() {
		if (work != null) {
			work.dispose();
		}
		send(SWT.MouseUp, pixelOf(120, 40));
		Screen.settle();
	}

	private void send(int type, Point at) {
		Event event = new Event();
		event.x = at.x;
		event.y = at.y;
		event.button = type == SWT.MouseMove ? 0 : 1;
		event.stateMask = type == SWT.MouseDown ? 0 : SWT.BUTTON1;
		event.count = 1;
		canvas().notifyListeners(type, event);
	}

	private void prepare() {
		work = new WhenLetGo(canvas().getDisplay(), () -> done++);
	}

	@Test
	void withoutAButtonNothingWaits() {
		prepare();
		work.run();
		assertEquals(1, done);
		assertFalse(work.isDue());
	}

	@Test
	void itIsDoneOnceWhenTheButtonIsLetGo() {
		prepare();
		Point disc = pixelOf(120, 40);
		send(SWT.MouseDown, disc);
		work.run();
		work.run();
		assertEquals(0, done);
		assertTrue(work.isDue());
		send(SWT.MouseUp, disc);
		Screen.settle();
		assertEquals(1, done);
	}

	@Test
	void whoHoldsTheButtonAndWaitsSeesIt() {
		prepare();
		send(SWT.MouseDown, pixelOf(120, 40));
		work.run();
		assertEquals(0, done);
		Screen.waitUntil("the pointer has rested", () -> done == 1);
	}

	@Test
	void nothingIsDoneThatWasGivenUp() {
		prepare();
		Point disc = pixelOf(120, 40);
		send(SWT.MouseDown, disc);
		work.run();
		work.cancel();
		send(SWT.MouseUp, disc);
		Screen.settle();
		assertEquals(0, done);
	}

	@Test
	void propertiesAreLaidOutAfterThePressThatSelects() throws Exception {
		PropertiesView view = (PropertiesView) page().showView(Views.PROPERTIES_ID);
		page().activate(bench);
		Screen.settle();
		String before = view.note();
		assertNotEquals("", before);
		Point disc = pixelOf(120, 40);
		send(SWT.MouseMove, disc);
		send(SWT.MouseDown, disc);
		assertEquals(1, selectedIds().size());
		assertEquals(before, view.note());
		send(SWT.MouseUp, disc);
		Screen.settle();
		assertEquals("", view.note());
	}
}
