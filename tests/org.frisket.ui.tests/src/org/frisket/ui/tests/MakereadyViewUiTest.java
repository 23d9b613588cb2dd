package org.frisket.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;

import org.eclipse.draw2d.geometry.Point;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Table;
import org.eclipse.ui.PlatformUI;
import org.frisket.editing.DeleteElements;
import org.frisket.prepare.Finding;
import org.frisket.prepare.Severity;
import org.frisket.ui.ThemeColour;
import org.frisket.ui.bench.internal.figures.FlagFigure;
import org.frisket.ui.bench.internal.parts.JobPart;
import org.frisket.ui.views.Views;
import org.frisket.ui.views.internal.makeready.MakereadyView;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The list of findings beside the bench, and their flags on it. */
class MakereadyViewUiTest extends OpenBench {

	private static final double CLOSE = 20;

	private final TroubledJob troubled = new TroubledJob();
	private MakereadyView view;

	@BeforeEach
	void openTroubledJob() throws Exception {
		view = (MakereadyView) page().showView(Views.MAKEREADY_ID);
		bench = open(troubled.save(folder.resolve("troubled.frjob")));
		Screen.waitUntil("the job is checked", bench::isUpToDate);
		Screen.waitUntil("the findings are listed", () -> !view.findings().isEmpty());
		Screen.settle();
	}

	private String line(int index, int column) {
		return view.table().getItem(index).getText(column);
	}

	private Finding findingOn(String element) {
		return view.findings().stream().filter(finding -> finding.element().equals(element)).findFirst().orElseThrow();
	}

	private void clickLine(int index) {
		Rectangle place = view.table().getItem(index).getBounds(2);
		Screen.click(view.table(), place.x + 10, place.y + place.height / 2);
	}

	@Test
	void findingIsOneLineWithMeasureLimitCureAndElement() throws IOException {
		Screen.keep(Screen.picture(PlatformUI.getWorkbench().getActiveWorkbenchWindow().getShell()), "makeready");
		Finding thin = findingOn(troubled.strip.getId());
		int index = view.findings().indexOf(thin);
		assertEquals(String.valueOf(index + 1), line(index, 0));
		assertEquals("Caution", line(index, 1));
		assertEquals(thin.message(), line(index, 2));
		assertEquals("0.60 mm", line(index, 3));
		assertEquals("1.00 mm", line(index, 4));
		assertEquals(thin.cure(), line(index, 5));
		assertEquals("Outline", line(index, 6));
		assertEquals(view.findings().size(), view.table().getItemCount());
		assertEquals("Makeready (" + view.findings().size() + ")", view.getPartName());
	}

	@Test
	void gravestFindingStandsFirst() {
		List<Severity> severities = view.findings().stream().map(Finding::severity).toList();
		assertEquals(severities.stream().sorted().toList(), severities);
	}

	@Test
	void listFollowsTheJob() {
		int before = view.findings().size();
		edits().execute(new DeleteElements(List.of(element(troubled.strip))));
		Screen.waitUntil("the strip's finding is gone", () -> view.findings().stream()
				.noneMatch(finding -> finding.element().equals(troubled.strip.getId())));
		assertTrue(view.findings().size() < before);
		bench.commandStack().undo();
		Screen.waitUntil("the finding is back", () -> view.findings().size() == before);
		assertEquals(before, view.table().getItemCount());
	}

	@Test
	void jobWithoutFindingsIsSaidToBeInOrder() {
		edits().execute(new DeleteElements(List.of(element(troubled.strip), element(troubled.speck))));
		Screen.waitUntil("there are no findings", () -> view.note().startsWith("No findings"));
		assertEquals("Makeready", view.getPartName());
		assertEquals(List.of(), ((JobPart) bench.viewer().getContents()).flags());
	}

	@Test
	void clickShowsThePlaceAndSelectsTheElement() throws IOException {
		Finding thin = findingOn(troubled.strip.getId());
		Point plate = pixelOf(25, 25);
		bench.zoom().about(plate.x, plate.y, CLOSE);
		Screen.settle();
		assertFalse(isSeen(thin.place()));
		clickLine(view.findings().indexOf(thin));
		assertTrue(isSeen(thin.place()));
		assertEquals(List.of(troubled.strip.getId()), selectedIds());
		Screen.keep(Screen.picture(PlatformUI.getWorkbench().getActiveWorkbenchWindow().getShell()), "revealed");
	}

	private boolean isSeen(org.frisket.geometry.Point place) {
		Point pixel = bench.zoom().toPixel(place);
		return canvas().getBounds().contains(pixel.x + canvas().getBounds().x, pixel.y + canvas().getBounds().y);
	}

	@Test
	void arrowKeysGoFromPlaceToPlaceAndEnterGoesThere() {
		Table table = view.table();
		clickLine(0);
		assertEquals(List.of(view.findings().get(0).element()), selectedIds());
		Screen.key("Down");
		assertEquals(1, table.getSelectionIndex());
		assertEquals(List.of(view.findings().get(1).element()), selectedIds());
		assertSame(view, page().getActivePart());
		Screen.key("Return");
		assertSame(bench, page().getActivePart());
	}

	@Test
	void flagStandsOnThePlaceOfEachFinding() throws IOException {
		List<FlagFigure> flags = ((JobPart) bench.viewer().getContents()).flags();
		assertEquals(view.findings().size(), flags.size());
		Finding thin = findingOn(troubled.strip.getId());
		Point foot = bench.zoom().toPixel(thin.place());
		ImageData picture = Screen.picture(canvas());
		Screen.keep(picture, "flags");
		assertColour(ThemeColour.FINDING_CAUTION.colour().getRGB(), Screen.pixel(picture, foot.x, foot.y - 8));
		assertColour(ThemeColour.FINDING_CAUTION.colour().getRGB(), Screen.pixel(picture, foot.x + 2, foot.y - 18));
		clickLine(view.findings().indexOf(thin));
		assertTrue(flags.get(view.findings().indexOf(thin)).isRaised());
		assertEquals(1, flags.stream().filter(FlagFigure::isRaised).count());
	}

	@Test
	void viewSaysWhatItIsForWhenNothingIsOpen() {
		page().closeAllEditors(false);
		Screen.waitUntil("the view is empty", () -> view.note().startsWith("Open a job"));
		assertEquals("Makeready", view.getPartName());
	}

	@Test
	void viewFollowsTheBenchInFront() throws Exception {
		page().activate(open(file));
		Screen.waitUntil("the sound job is shown", () -> view.note().startsWith("No findings"));
		page().activate(bench);
		Screen.waitUntil("the troubled job is shown", () -> !view.findings().isEmpty());
		assertEquals("", view.note());
	}
}
