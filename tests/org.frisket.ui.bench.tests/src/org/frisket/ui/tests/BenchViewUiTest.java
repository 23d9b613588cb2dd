package org.frisket.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.stream.Stream;

import org.eclipse.draw2d.geometry.Point;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.PlatformUI;
import org.frisket.ui.ThemeColour;
import org.junit.jupiter.api.Test;

/** What is seen of a job, and how large. */
class BenchViewUiTest extends OpenBench {

	private static final double FAR_OFF = 1000;

	@Test
	void workbenchStandsInTheBenchPerspective() {
		assertEquals("org.frisket.app.bench", page().getPerspective().getId());
	}

	@Test
	void emptyBenchSaysHowToOpenAJob() throws IOException {
		page().closeAllEditors(false);
		Shell shell = PlatformUI.getWorkbench().getActiveWorkbenchWindow().getShell();
		Screen.keep(Screen.picture(shell), "empty");
		assertTrue(texts(shell).anyMatch(text -> text.startsWith("The bench is empty.")));
		assertTrue(texts(shell).anyMatch(text -> text.equals("Ctrl+O")));
	}

	private static Stream<String> texts(Control control) {
		if (!control.isVisible()) {
			return Stream.empty();
		}
		if (control instanceof Composite composite) {
			return Stream.of(composite.getChildren()).flatMap(BenchViewUiTest::texts);
		}
		return control instanceof Label label ? Stream.of(label.getText()) : Stream.empty();
	}

	@Test
	void windowNamesTheJobInFront() {
		String title = PlatformUI.getWorkbench().getActiveWorkbenchWindow().getShell().getText();
		assertTrue(title.startsWith("sample.frjob"), title);
	}

	@Test
	void jobIsSeenInTheColoursOfItsStocks() throws IOException {
		assertNull(bench.trouble());
		ImageData picture = Screen.picture(canvas());
		Screen.keep(Screen.picture(PlatformUI.getWorkbench().getActiveWorkbenchWindow().getShell()), "bench");
		assertColour(SampleJob.PLATE_COLOUR, seenAt(picture, 30, 30));
		assertColour(SampleJob.DISC_COLOUR, seenAt(picture, 120, 40));
		assertColour(SampleJob.MAT_COLOUR, seenAt(picture, 17.5, 40));
		assertColour(ThemeColour.BENCH_SHEET.colour().getRGB(), seenAt(picture, 50, 40));
		assertColour(ThemeColour.BENCH_SHEET.colour().getRGB(), seenAt(picture, 90, 70));
		assertColour(ThemeColour.BENCH_DESK.colour().getRGB(), Screen.pixel(picture, 3, 3));
	}

	@Test
	void edgesStayTrueCurvesWhenMagnified() throws IOException {
		double radius = 20;
		for (double degrees : new double[] { 10, 22.5, 37, 45, 61 }) {
			double x = 120 + radius * Math.cos(Math.toRadians(degrees));
			double y = 40 + radius * Math.sin(Math.toRadians(degrees));
			bench.fit();
			Point edge = pixelOf(x, y);
			bench.zoom().about(edge.x, edge.y, FAR_OFF);
			ImageData picture = Screen.picture(canvas());
			Screen.keep(picture, "edge-" + Math.round(degrees));
			// 4 pixels to either side of the edge, which at this scale are hundredths of a millimetre
			double step = 4 / bench.zoom().pixelsPerMm();
			assertTrue(step < 0.02, "not magnified enough: " + step);
			assertColour(SampleJob.DISC_COLOUR, seenAt(picture, x - step * Math.cos(Math.toRadians(degrees)),
					y - step * Math.sin(Math.toRadians(degrees))));
			assertColour(SampleJob.MAT_COLOUR, seenAt(picture, x + step * Math.cos(Math.toRadians(degrees)),
					y + step * Math.sin(Math.toRadians(degrees))));
		}
	}

	@Test
	void wheelZoomKeepsThePlaceUnderThePointer() {
		Point place = pixelOf(75, 55);
		double before = bench.zoom().scale();
		Screen.moveTo(canvas(), place.x, place.y);
		Screen.wheelWithControl();
		assertTrue(bench.zoom().scale() > before);
		Point after = pixelOf(75, 55);
		assertEquals(place.x, after.x, 1);
		assertEquals(place.y, after.y, 1);
	}

	@Test
	void zoomKeysWork() {
		double before = bench.zoom().scale();
		canvas().setFocus();
		Screen.key("ctrl+equal");
		assertTrue(bench.zoom().scale() > before);
		Screen.key("ctrl+0");
		assertEquals(1, bench.zoom().scale(), 1e-9);
		Screen.key("ctrl+9");
		assertEquals(before, bench.zoom().scale(), before * 0.01);
	}
}
