package org.frisket.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.Arrays;

import org.eclipse.draw2d.Figure;
import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.IFigure;
import org.eclipse.draw2d.geometry.Point;
import org.eclipse.gef.GraphicalEditPart;
import org.eclipse.swt.graphics.ImageData;
import org.frisket.editing.arranging.AddGuide;
import org.frisket.geometry.Bounds;
import org.frisket.ui.bench.internal.canvas.BenchViewer;
import org.frisket.ui.bench.internal.canvas.Units;
import org.frisket.ui.bench.internal.grips.Grip;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** What is painted anew while something goes on: no more than what changes, and no less. */
class DragFrameUiTest extends OpenBench {

	/** Something on the sheet that counts how often it is painted. */
	private static final class Witness extends Figure {
		private int painted;

		Witness(Bounds mm) {
			setBounds(Units.figure(mm));
		}

		@Override
		public void paint(Graphics graphics) {
			painted++;
		}
	}

	@AfterEach
	void letGo() {
		Screen.releaseButton();
	}

	private int px(double mm) {
		return (int) Math.round(mm * bench.zoom().pixelsPerMm());
	}

	/** Drags the disc until the guide at 93.25 mm holds it, and keeps the button down. */
	private Point holdByGuide() {
		edits().execute(new AddGuide(bench.document().job(), false, 93.25));
		Screen.waitUntil("the job is worked through", bench::isUpToDate);
		Point from = pixelOf(120, 40);
		Point to = new Point(from.x + px(-6.75) + 3, from.y + px(31.7));
		Screen.moveTo(canvas(), from.x, from.y);
		Screen.pressButton();
		Screen.moveTo(canvas(), (from.x + to.x) / 2, (from.y + to.y) / 2);
		Screen.moveTo(canvas(), to.x, to.y);
		assertEquals(2, tags().size(), "the measure, and what holds");
		return to;
	}

	@Test
	void whatLiesBetweenTheHintAndTheDraggedElementIsLeftAlone() {
		IFigure sheet = ((GraphicalEditPart) bench.viewer().getContents()).getFigure();
		// in the box around the line of the guide and the ghost, and far from both
		Witness aside = new Witness(new Bounds(125, 6, 127, 8));
		Witness under = new Witness(new Bounds(115, 70, 117, 72));
		sheet.add(aside);
		sheet.add(under);
		Point at = holdByGuide();
		int asideBefore = aside.painted;
		int underBefore = under.painted;
		Screen.moveTo(canvas(), at.x + 1, at.y + 1);
		// what the window asks for itself, the picture gives
		canvas().redraw();
		Screen.settle();
		assertEquals(asideBefore, aside.painted);
		assertTrue(under.painted > underBefore, "what lies under the ghost is painted");
	}

	@Test
	void dragLooksTheSameAsIfAllWerePainted() throws IOException {
		Point at = holdByGuide();
		for (int i = 0; i < 6; i++) {
			Screen.moveTo(canvas(), at.x + i % 2, at.y + 9 * i);
			assertSameAsPaintedAnew("held-" + i);
		}
		// hints of edges, centres and nodes come and go
		for (int i = 0; i < 24; i++) {
			Screen.moveTo(canvas(), at.x - 11 * i, at.y - 7 * i + 5 * (i % 3));
			assertSameAsPaintedAnew("free-" + i);
		}
		Screen.releaseButton();
		Screen.waitUntil("the mat has followed", bench::isUpToDate);
		assertSameAsPaintedAnew("done");
		bench.commandStack().undo();
		Screen.waitUntil("the mat has followed", bench::isUpToDate);
		assertSameAsPaintedAnew("undone");
	}

	@Test
	void otherWorkLooksTheSameAsIfAllWerePainted() throws IOException {
		Point disc = pixelOf(120, 40);
		Screen.click(canvas(), disc.x, disc.y);
		assertSameAsPaintedAnew("selected");
		Point side = bench.grips().shown().get(Grip.RIGHT).getAccessibleLocation();
		Screen.moveTo(canvas(), side.x, side.y);
		Screen.pressButton();
		for (int i = 1; i < 6; i++) {
			Screen.moveTo(canvas(), side.x + 13 * i, side.y + i);
			assertSameAsPaintedAnew("scaled-" + i);
		}
		Screen.releaseButton();
		Screen.waitUntil("the job is worked through", bench::isUpToDate);
		assertSameAsPaintedAnew("scaled");
		Screen.moveTo(canvas(), disc.x, disc.y - 200);
		Screen.pressButton();
		Screen.moveTo(canvas(), disc.x - 90, disc.y);
		Screen.moveTo(canvas(), disc.x - 210, disc.y + 60);
		assertSameAsPaintedAnew("marquee");
		Screen.releaseButton();
		assertSameAsPaintedAnew("several selected");
		Screen.wheelWithControl();
		assertSameAsPaintedAnew("zoomed");
	}

	/** The bench as it is after many pieces were painted, beside what it is when all of it is painted at once. */
	private void assertSameAsPaintedAnew(String name) throws IOException {
		ImageData pieces = Screen.picture(canvas());
		((BenchViewer) bench.viewer()).kept().forget();
		canvas().redraw();
		ImageData all = Screen.picture(canvas());
		if (!Arrays.equals(all.data, pieces.data)) {
			Screen.keep(pieces, "frame-" + name);
			Screen.keep(all, "frame-" + name + "-anew");
		}
		assertEquals("", difference(all, pieces), name);
	}

	/** The box of the pixels that differ; empty if none does. */
	private static String difference(ImageData one, ImageData other) {
		assertEquals(one.width, other.width);
		assertEquals(one.height, other.height);
		Bounds box = Bounds.EMPTY;
		boolean differs = false;
		for (int y = 0; y < one.height; y++) {
			for (int x = 0; x < one.width; x++) {
				if (one.getPixel(x, y) != other.getPixel(x, y)) {
					differs = true;
					box = box.with(new org.frisket.geometry.Point(x, y));
				}
			}
		}
		return differs ? box.toString() : "";
	}
}
