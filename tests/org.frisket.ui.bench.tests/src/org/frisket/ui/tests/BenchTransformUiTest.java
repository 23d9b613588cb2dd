package org.frisket.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;
import java.util.Set;

import org.eclipse.draw2d.geometry.Point;
import org.eclipse.swt.graphics.ImageData;
import org.frisket.model.Mat;
import org.frisket.model.Matrix;
import org.frisket.ui.ThemeColour;
import org.frisket.ui.bench.internal.grips.Grip;
import org.junit.jupiter.api.Test;

/** Scaling, turning and changing a mat's distance by grips. */
class BenchTransformUiTest extends OpenBench {

	private void select(double x, double y) {
		Point place = pixelOf(x, y);
		Screen.click(canvas(), place.x, place.y);
	}

	private Point grip(Grip grip) {
		return bench.grips().shown().get(grip).getAccessibleLocation();
	}

	private int px(double mm) {
		return (int) Math.round(mm * bench.zoom().pixelsPerMm());
	}

	/** A pixel in mm. */
	private double pixel() {
		return 1 / bench.zoom().pixelsPerMm();
	}

	private void drag(Grip grip, double dx, double dy) {
		Point from = grip(grip);
		Screen.drag(canvas(), from.x, from.y, from.x + px(dx), from.y + px(dy));
	}

	private Matrix plate() {
		return element(sample.plate).getTransform();
	}

	private String text() throws IOException {
		return text(bench.document().job());
	}

	@Test
	void cornerKeepsTheRatioAndTheOppositeCorner() throws IOException {
		String before = text();
		select(30, 30);
		Screen.keep(Screen.picture(canvas()), "grips");
		// half as large again along the diagonal: the plate is 60 × 40 from (20, 20)
		drag(Grip.BOTTOM_RIGHT, 30, 20);
		Matrix m = plate();
		assertEquals(1.5, m.a(), 2 * pixel() / 60);
		assertEquals(m.a(), m.d());
		assertEquals(20, m.a() * 20 + m.e(), 1e-9);
		assertEquals(20, m.d() * 20 + m.f(), 1e-9);
		Screen.waitUntil("the mat has followed", bench::isUpToDate);
		bench.viewer().deselectAll();
		ImageData picture = Screen.picture(canvas());
		Screen.keep(picture, "scaled");
		assertColour(SampleJob.PLATE_COLOUR, seenAt(picture, 30, 75));
		assertColour(SampleJob.MAT_COLOUR, seenAt(picture, 30, 80 + SampleJob.MAT_DISTANCE / 2));
		assertEquals("Scale outline", bench.commandStack().getUndoCommand().getLabel());
		Screen.key("ctrl+z");
		assertEquals(before, text());
	}

	@Test
	void sideChangesOneSizeOnly() {
		select(30, 30);
		drag(Grip.RIGHT, 30, 12);
		assertEquals(1.5, plate().a(), 2 * pixel() / 60);
		assertEquals(1, plate().d());
	}

	@Test
	void shiftFreesTheRatioAndControlKeepsTheMiddle() {
		select(30, 30);
		Point from = grip(Grip.BOTTOM_RIGHT);
		Screen.holding("shift", () -> Screen.drag(canvas(), from.x, from.y, from.x + px(30), from.y));
		assertEquals(1.5, plate().a(), 2 * pixel() / 60);
		assertEquals(1, plate().d(), 2 * pixel() / 40);
		Screen.key("ctrl+z");
		Screen.waitUntil("the plate is back", bench::isUpToDate);
		Point side = grip(Grip.RIGHT);
		Screen.holding("ctrl", () -> Screen.drag(canvas(), side.x, side.y, side.x + px(15), side.y));
		assertEquals(1.5, plate().a(), 4 * pixel() / 60);
		assertEquals(50, plate().a() * 50 + plate().e(), 1e-9);
	}

	@Test
	void dragSaysTheSizeAndEscapeGivesUp() throws IOException {
		String before = text();
		select(30, 30);
		Point from = grip(Grip.RIGHT);
		Screen.moveTo(canvas(), from.x, from.y);
		Screen.pressButton();
		Screen.moveTo(canvas(), from.x + 10, from.y);
		Screen.moveTo(canvas(), from.x + px(20), from.y);
		ImageData during = Screen.picture(canvas());
		Screen.keep(during, "scaling");
		// the tag hangs right below the pointer
		assertColour(ThemeColour.BENCH_TAG.colour().getRGB(), Screen.pixel(during, from.x + px(20) + 20, from.y + 20));
		Screen.key("Escape");
		Screen.moveTo(canvas(), from.x + px(40), from.y);
		Screen.releaseButton();
		assertEquals(before, text());
		assertFalse(bench.isDirty());
	}

	@Test
	void roundGripTurnsAboutTheMiddle() throws IOException {
		String before = text();
		select(30, 30);
		Point from = grip(Grip.TURN);
		Point middle = pixelOf(50, 40);
		int stem = middle.y - from.y;
		// from straight above to straight right of the middle
		Screen.drag(canvas(), from.x, from.y, middle.x + stem, middle.y);
		assertEquals(0, plate().a(), 0.02);
		assertEquals(1, plate().b(), 0.02);
		Screen.waitUntil("the turned plate is worked through", bench::isUpToDate);
		bench.viewer().deselectAll();
		// upright now: 40 wide and 60 high about (50, 40)
		assertColour(SampleJob.PLATE_COLOUR, seenAt(50, 15));
		assertEquals("Rotate outline", bench.commandStack().getUndoCommand().getLabel());
		Screen.key("ctrl+z");
		assertEquals(before, text());
	}

	@Test
	void shiftTurnsByWideSteps() {
		select(30, 30);
		Point from = grip(Grip.TURN);
		Screen.holding("shift", () -> Screen.drag(canvas(), from.x, from.y, from.x + 60, from.y + 3));
		double degrees = Math.toDegrees(Math.atan2(plate().b(), plate().a()));
		assertTrue(degrees >= 14.9, "turned by " + degrees);
		assertEquals(0, Math.IEEEremainder(degrees, 15), 1e-9);
	}

	@Test
	void matHasNoSizeButADistance() throws IOException {
		String before = text();
		bench.viewer().deselectAll();
		// on the mat beside the disc
		select(120, 40 + 20 + SampleJob.MAT_DISTANCE / 2);
		assertEquals(List.of(sample.mat.getId()), selectedIds());
		assertEquals(Set.of(Grip.LEFT, Grip.RIGHT, Grip.TOP, Grip.BOTTOM), bench.grips().shown().keySet());
		drag(Grip.BOTTOM, 0, 4);
		assertEquals(SampleJob.MAT_DISTANCE + 4, ((Mat) element(sample.mat)).getDistance(), pixel());
		assertEquals(Matrix.IDENTITY, element(sample.mat).getTransform());
		Screen.key("ctrl+z");
		assertEquals(before, text());
	}

	@Test
	void gripsFollowTheSelectionAndTheZoom() {
		assertEquals(Set.of(), bench.grips().shown().keySet());
		select(120, 40);
		assertEquals(9, bench.grips().shown().size());
		Point right = grip(Grip.RIGHT);
		assertEquals(pixelOf(140, 40).x + 10, right.x, 2);
		bench.zoom().about(10, 10, 1.3);
		Screen.settle();
		assertEquals(pixelOf(140, 40).x + 10, grip(Grip.RIGHT).x, 2);
		Screen.key("Right");
		assertEquals(pixelOf(141, 40).x + 10, grip(Grip.RIGHT).x, 2);
		Screen.key("Delete");
		assertEquals(Set.of(), bench.grips().shown().keySet());
	}
}
