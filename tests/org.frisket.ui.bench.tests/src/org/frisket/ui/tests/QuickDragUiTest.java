package org.frisket.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicBoolean;

import org.eclipse.draw2d.geometry.Point;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Listener;
import org.frisket.editing.arranging.MoveElements;
import org.frisket.model.Matrix;
import org.frisket.ui.bench.internal.grips.Grip;
import org.frisket.ui.bench.internal.surface.SurfaceOption;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Drags that are over before the bench, busy with something else, comes to hear of them. */
class QuickDragUiTest extends OpenBench {

	private static final int FAR_PX = 60;
	private static final List<String> DOWN = List.of("mousedown", "1");
	private static final List<String> UP = List.of("mouseup", "1");

	private Point disc;

	@BeforeEach
	void letNothingHold() {
		SurfaceOption.SNAP.set(false);
		disc = pixelOf(120, 40);
	}

	@AfterEach
	void restore() {
		SurfaceOption.SNAP.set(SurfaceOption.SNAP.isUsuallyOn());
	}

	/** The words that send the pointer to a pixel of the canvas. */
	private List<String> to(int x, int y) {
		org.eclipse.swt.graphics.Point place = canvas().toDisplay(x, y);
		return List.of("mousemove", String.valueOf(place.x), String.valueOf(place.y));
	}

	@SafeVarargs
	private static void allAtOnce(List<String>... parts) {
		List<String> line = new ArrayList<>();
		List.of(parts).forEach(line::addAll);
		Screen.eventsWhileBusy(line.toArray(String[]::new));
	}

	private void assertMovedBy(int px) {
		Matrix moved = element(sample.disc).getTransform();
		assertEquals(px / bench.zoom().pixelsPerMm(), moved.e(), 1 / bench.zoom().pixelsPerMm());
		assertEquals(0, moved.f(), 1e-12);
		assertEquals(List.of(sample.disc.getId()), selectedIds());
	}

	/** Presses the button, and waits until the bench has heard of it. */
	private void press(int x, int y) {
		Screen.moveTo(canvas(), x, y);
		AtomicBoolean heard = new AtomicBoolean();
		Listener listener = event -> heard.set(true);
		canvas().addListener(SWT.MouseDown, listener);
		Screen.pressButton();
		Screen.waitUntil("the bench has heard of the press", heard::get);
		canvas().removeListener(SWT.MouseDown, listener);
	}

	@Test
	void wholeDragAtOnceIsFollowed() {
		// with no move but this one, if a window manager holds the press back for a moment
		allAtOnce(to(disc.x, disc.y), DOWN, to(disc.x + FAR_PX, disc.y), UP);
		assertMovedBy(FAR_PX);
	}

	@Test
	void moveAndReleaseAfterThePressAreFollowed() {
		press(disc.x, disc.y);
		allAtOnce(to(disc.x + 5, disc.y), to(disc.x + FAR_PX, disc.y), UP);
		assertMovedBy(FAR_PX);
	}

	@Test
	void dragThatIsOverBeforeItBeginsEndsWhereTheButtonWasLetGo() {
		press(disc.x, disc.y);
		allAtOnce(to(disc.x + FAR_PX, disc.y), UP, to(disc.x + 3 * FAR_PX, disc.y - FAR_PX));
		assertMovedBy(FAR_PX);
	}

	@Test
	void dragUnderWayEndsWhereTheButtonWasLetGo() {
		press(disc.x, disc.y);
		Screen.moveTo(canvas(), disc.x + 20, disc.y);
		allAtOnce(to(disc.x + FAR_PX, disc.y), UP, to(disc.x + 3 * FAR_PX, disc.y - FAR_PX));
		assertMovedBy(FAR_PX);
	}

	@Test
	void pictureThatArrivesBetweenPressAndMoveTakesNothingAway() {
		edits().execute(new MoveElements(List.of(element(sample.plate)), 0, 1));
		press(disc.x, disc.y);
		Screen.waitUntil("the job is worked through", bench::isUpToDate);
		allAtOnce(to(disc.x + FAR_PX, disc.y), UP);
		assertMovedBy(FAR_PX);
	}

	@Test
	void gripIsDraggedAtOnce() {
		Screen.click(canvas(), disc.x, disc.y);
		Point side = bench.grips().shown().get(Grip.RIGHT).getAccessibleLocation();
		press(side.x, side.y);
		allAtOnce(to(side.x + FAR_PX, side.y), UP, to(side.x, side.y + FAR_PX));
		double wide = 40 * bench.zoom().pixelsPerMm();
		assertEquals((wide + FAR_PX) / wide, element(sample.disc).getTransform().a(), 1 / wide);
	}

	@Test
	void boxIsDrawnAtOnce() {
		Point from = pixelOf(96, 16);
		Point to = pixelOf(146, 66);
		press(from.x, from.y - 30);
		allAtOnce(to(to.x, to.y + 10), UP, to(from.x, from.y));
		assertEquals(List.of(sample.disc.getId()), selectedIds());
	}

	@Test
	void quickClickMovesNothing() {
		press(disc.x, disc.y);
		allAtOnce(to(disc.x + 2, disc.y), UP, to(disc.x + 3 * FAR_PX, disc.y));
		assertMovedBy(0);
		assertFalse(bench.isDirty());
	}

	/** Another window may have taken it, while the pointer goes on. */
	@Test
	void releaseThatNeverComesEndsTheDrag() {
		press(disc.x, disc.y);
		Screen.moveTo(canvas(), disc.x + FAR_PX, disc.y);
		move(disc.x + 2 * FAR_PX, 1_000);
		assertMovedBy(0);
		move(disc.x + 2 * FAR_PX, 1_600);
		assertMovedBy(2 * FAR_PX);
		Screen.releaseButton();
		assertMovedBy(2 * FAR_PX);
	}

	/** A move with no button held, as the window system would tell of it. */
	private void move(int x, int time) {
		Event event = new Event();
		event.x = x;
		event.y = disc.y;
		event.time = time;
		canvas().notifyListeners(SWT.MouseMove, event);
		Screen.settle();
	}
}
