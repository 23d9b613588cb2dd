package org.frisket.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;

import org.frisket.editing.elements.SetElements;
import org.frisket.geometry.Point;
import org.frisket.model.Wording;
import org.frisket.prepare.wording.BridgeEdits;
import org.frisket.prepare.wording.Bridgework;
import org.frisket.ui.bench.internal.bridges.BridgeMode;
import org.junit.jupiter.api.Test;

/** Bridges of the first wording, “Harbour”, set with pointer and keys. */
class BridgeUiTest extends OpenProperties {

	private BridgeMode mode() {
		return bench.bridges();
	}

	private void begin() {
		select(made.first);
		page().activate(bench);
		bench.fit();
		Screen.settle();
		Screen.events("key", "ctrl+b", "b");
		Screen.waitUntil("bridges are set", mode()::isActive);
		measured();
	}

	private void measured() {
		Screen.waitUntil("what holds the letters is worked out", mode()::isUpToDate);
		Screen.settle();
	}

	/** Of the canvas, for a place in the frame of the wording. */
	private org.eclipse.draw2d.geometry.Point pixel(Point own) {
		return pixelOf(own.x() + 10, own.y() + 30);
	}

	private void click(Point own) {
		org.eclipse.draw2d.geometry.Point at = pixel(own);
		Screen.click(canvas(), at.x, at.y);
	}

	private void drag(Point from, Point to) {
		org.eclipse.draw2d.geometry.Point a = pixel(from);
		org.eclipse.draw2d.geometry.Point b = pixel(to);
		Screen.drag(canvas(), a.x, a.y, b.x, b.y);
	}

	private void undoAll() throws IOException {
		while (bench.commandStack().canUndo()) {
			Screen.key("ctrl+z");
		}
		assertEquals(before, text(bench.document().job()));
	}

	/** Between the H and the a, half way up the small letters. */
	private Point gap() {
		List<Bridgework.LetterAt> letters = mode().work().letters();
		return new Point((letters.get(0).outline().bounds().maxX() + letters.get(1).outline().bounds().minX()) / 2, -7);
	}

	@Test
	void clickBetweenLettersAddsABridgeAndDeleteTakesItAway() throws IOException {
		begin();
		assertTrue(bench.grips().shown().isEmpty());
		click(gap());
		Screen.waitUntil("there is a bridge", () -> first().getBridges().size() == 1);
		measured();
		assertEquals(0, first().getBridges().get(0).getOne());
		assertEquals(1, first().getBridges().get(0).getOther());
		assertEquals("Add bridge", bench.commandStack().getUndoCommand().getLabel());
		Bridgework.Span span = mode().work().spans().get(0);
		org.eclipse.draw2d.geometry.Point handle = pixel(span.middle());
		Screen.moveTo(canvas(), handle.x, handle.y);
		Screen.waitUntil("its size is told", () -> mode().measure().startsWith("1.00 mm wide"));
		drag(span.middle(), span.middle().plus(new Point(0, 4)));
		Screen.waitUntil("it has moved", () -> bench.commandStack().getUndoCommand().getLabel().equals("Move bridge"));
		measured();
		assertEquals(span.middle().y() + 4, mode().work().spans().get(0).middle().y(), 1);
		Screen.keep(Screen.picture(canvas()), "bridges");
		click(mode().work().spans().get(0).middle());
		assertTrue(mode().chosen().isPresent());
		Screen.key("Delete");
		Screen.waitUntil("it is gone", () -> first().getBridges().isEmpty());
		assertEquals("Remove bridge", bench.commandStack().getUndoCommand().getLabel());
		undoAll();
		Screen.key("Escape");
		assertFalse(mode().isActive());
		assertFalse(bench.grips().shown().isEmpty());
	}

	@Test
	void bridgesOfAStencilAreDraggedAlongTheirIslands() throws IOException {
		select(made.first);
		enterStencil();
		begin();
		Bridgework.IslandAt island = mode().work().islands().stream().filter(i -> i.index() == 4).findFirst().orElseThrow();
		Point stub = island.bridges().get(0).middle();
		// the rule has set them side by side
		Point goal = island.middle().plus(new Point(0, -6));
		Screen.keep(Screen.picture(canvas()), "bridges-stencil");
		drag(stub, goal);
		Screen.waitUntil("it has moved", () -> first().getIslands().size() == 1);
		measured();
		assertEquals(4, first().getIslands().get(0).getIndex());
		assertEquals(270, first().getIslands().get(0).getAt().get(0).getAngle(), 8);
		click(island.middle().plus(new Point(1, 0.6)));
		Screen.waitUntil("there are three", () -> first().getIslands().get(0).getAt().size() == 3);
		measured();
		for (int i = 3; i > 0; i--) {
			int left = i - 1;
			Bridgework.IslandAt now = mode().work().islands().stream().filter(o -> o.index() == 4).findFirst().orElseThrow();
			click(now.bridges().get(0).middle());
			Screen.key("Delete");
			Screen.waitUntil("one is gone", () -> first().getIslands().get(0).getAt().size() == left);
			measured();
		}
		assertTrue(mode().work().islands().stream().anyMatch(Bridgework.IslandAt::loose));
		Screen.waitUntil("the finding is there", () -> bench.isUpToDate() && bench.document().picture().findings().stream()
				.anyMatch(finding -> finding.id().equals("island-loose")));
		Screen.keep(Screen.picture(canvas()), "bridges-loose");
		undoAll();
	}

	private void enterStencil() {
		enter("Bridges", "1mm");
		assertEquals(1, first().getStencil());
	}

	@Test
	void modeEndsWithItsWording() throws IOException {
		begin();
		edits().execute(SetElements.locked(List.of(first()), true));
		Screen.settle();
		assertFalse(mode().isActive());
		undoAll();
		begin();
		select(made.second);
		assertFalse(mode().isActive());
		begin();
		Screen.events("key", "ctrl+b", "b");
		Screen.waitUntil("the same key leaves", () -> !mode().isActive());
	}

	@Test
	void escapeGivesUpADrag() throws IOException {
		begin();
		click(gap());
		Screen.waitUntil("there is a bridge", () -> first().getBridges().size() == 1);
		measured();
		String then = text(bench.document().job());
		org.eclipse.draw2d.geometry.Point at = pixel(mode().work().spans().get(0).middle());
		Screen.moveTo(canvas(), at.x, at.y);
		Screen.pressButton();
		Screen.moveTo(canvas(), at.x, at.y + 30);
		Screen.key("Escape");
		Screen.releaseButton();
		Screen.settle();
		assertTrue(mode().isActive());
		assertEquals(then, text(bench.document().job()));
		undoAll();
	}

	@Test
	void widthOfBridgesIsAField() throws IOException {
		begin();
		click(gap());
		Screen.waitUntil("there is a bridge", () -> first().getBridges().size() == 1);
		page().activate(view);
		enter("Bridges between letters", "2.5mm");
		Wording wording = first();
		assertEquals(2.5, wording.getBridges().get(0).getWidth());
		measured();
		assertTrue(BridgeEdits.all(mode().work()).size() == 1);
		undoAll();
	}
}
