package org.frisket.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;

import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.PlatformUI;
import org.frisket.editing.elements.DeleteElements;
import org.frisket.ui.views.Views;
import org.frisket.ui.views.internal.way.Station;
import org.frisket.ui.views.internal.way.WayStrip;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The strip of stations under the menu. */
class WayUiTest extends OpenBench {

	private final WordingJob made = new WordingJob();
	private WayStrip way;

	@BeforeEach
	void openWording() throws Exception {
		bench = open(made.save(folder.resolve("wording.frjob")));
		Screen.waitUntil("the job is checked", bench::isUpToDate);
		way = find(shell());
		assertNotNull(way);
		Screen.settle();
	}

	private static Shell shell() {
		return PlatformUI.getWorkbench().getActiveWorkbenchWindow().getShell();
	}

	private static WayStrip find(Composite parent) {
		for (Control child : parent.getChildren()) {
			if (child instanceof WayStrip strip) {
				return strip;
			}
			WayStrip found = child instanceof Composite composite ? find(composite) : null;
			if (found != null) {
				return found;
			}
		}
		return null;
	}

	private void click(Station station) {
		Rectangle place = way.boundsOf(station);
		Screen.click(way, place.x + place.width / 3, place.y + place.height / 2);
	}

	private String activeView() {
		return page().getActivePartReference().getId();
	}

	@Test
	void stationsSayTheirStateInWordsAndNumbers() throws IOException {
		Screen.keep(Screen.picture(shell()), "way");
		assertEquals("2 wordings", way.state(Station.WORDING));
		assertTrue(way.state(Station.OUTLINES).matches("1[0-9] pieces, [0-9]+ nodes"), way.state(Station.OUTLINES));
		assertEquals("1 mat", way.state(Station.MATS));
		assertTrue(way.state(Station.MAKEREADY).matches("[0-9]+ cautions"), way.state(Station.MAKEREADY));
	}

	@Test
	void stateFollowsTheJob() {
		edits().execute(new DeleteElements(List.of(element(made.first))));
		assertEquals("1 wording", way.state(Station.WORDING));
		assertEquals("none", way.state(Station.MATS));
		assertEquals("checking\u2026", way.state(Station.MAKEREADY));
		Screen.waitUntil("the job is checked", bench::isUpToDate);
		assertTrue(way.state(Station.OUTLINES).startsWith("4 pieces"), way.state(Station.OUTLINES));
		assertTrue(way.state(Station.MAKEREADY).endsWith("cautions"), way.state(Station.MAKEREADY));
	}

	@Test
	void everyStationIsSeenWhole() {
		Rectangle last = way.boundsOf(Station.values()[Station.values().length - 1]);
		assertTrue(last.x + last.width <= way.getSize().x);
		assertTrue(way.toDisplay(last.x + last.width, 0).x <= shell().toDisplay(0, 0).x + shell().getClientArea().width);
	}

	@Test
	void clickOpensWhatBelongsToTheStation() {
		click(Station.MAKEREADY);
		assertEquals(Views.MAKEREADY_ID, activeView());
		click(Station.OUTLINES);
		assertEquals(Views.STACK_ID, activeView());
		click(Station.WORDING);
		assertEquals(Views.PROPERTIES_ID, activeView());
		assertEquals(List.of(made.first.getId(), made.second.getId()), selectedIds());
		click(Station.MATS);
		assertEquals(List.of(made.mat.getId()), selectedIds());
	}

	@Test
	void keysGoToTheStations() {
		page().activate(bench);
		Screen.key("alt+4");
		assertEquals(Views.MAKEREADY_ID, activeView());
		Screen.key("alt+2");
		assertEquals(Views.STACK_ID, activeView());
		Screen.key("alt+3");
		assertEquals(Views.PROPERTIES_ID, activeView());
	}

	@Test
	void wayIsQuietWhenNothingIsOpen() {
		page().closeAllEditors(false);
		Screen.settle();
		assertEquals("", way.state(Station.MAKEREADY));
		click(Station.MAKEREADY);
		assertEquals(Views.MAKEREADY_ID, activeView());
	}
}
