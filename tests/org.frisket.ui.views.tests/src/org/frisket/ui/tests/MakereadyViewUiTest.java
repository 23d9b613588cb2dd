package org.frisket.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

import org.eclipse.core.runtime.Adapters;
import org.eclipse.draw2d.geometry.Point;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;
import org.eclipse.swt.widgets.Table;
import org.eclipse.ui.PlatformUI;
import org.frisket.editing.elements.DeleteElements;
import org.frisket.editing.layers.SetLayers;
import org.frisket.model.Jobs;
import org.frisket.prepare.Finding;
import org.frisket.prepare.Severity;
import org.frisket.ui.ThemeColour;
import org.frisket.ui.bench.JobOnBench;
import org.frisket.ui.bench.internal.figures.FlagFigure;
import org.frisket.ui.bench.internal.parts.JobPart;
import org.frisket.ui.views.Views;
import org.frisket.ui.views.internal.makeready.MakereadyView;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The list of findings beside the bench, and their flags on it. */
class MakereadyViewUiTest extends OpenBench {

	private static final double CLOSE = 20;
	/** More than are cured unasked. */
	private static final int MANY = 62;

	private final TroubledJob troubled = new TroubledJob();
	private MakereadyView view;
	private JobOnBench onBench;
	private String before;

	@Override
	protected Path jobFile() throws IOException {
		return troubled.save(folder.resolve("troubled.frjob"));
	}

	@BeforeEach
	void openMakeready() throws Exception {
		view = (MakereadyView) page().showView(Views.MAKEREADY_ID);
		Screen.waitUntil("the findings are listed", () -> !view.findings().isEmpty());
		onBench = Adapters.adapt(bench, JobOnBench.class);
		before = text(bench.document().job());
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
		Screen.waitUntil("cures are known", onBench::areCuresKnown);
		Screen.settle();
		assertEquals((index + 1) + "   " + onBench.cures(thin).get(0).name(), line(index, 5));
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
		page().activate(open(sample.save(folder.resolve("sound.frjob"))));
		Screen.waitUntil("the sound job is shown", () -> view.note().startsWith("No findings"));
		page().activate(bench);
		Screen.waitUntil("the troubled job is shown", () -> !view.findings().isEmpty());
		assertEquals("", view.note());
	}

	private int numberOn(String element) {
		Screen.waitUntil("cures are known", onBench::areCuresKnown);
		return view.findings().indexOf(findingOn(element)) + 1;
	}

	private boolean hasFindings(String element) {
		return bench.isUpToDate() && onBench.findings().stream().anyMatch(finding -> finding.element().equals(element));
	}

	/** The finding is gone once the job is checked, and one undo leads back to the first bytes. */
	private void assertCuredInOneStep(String element) throws IOException {
		assertTrue(bench.commandStack().canUndo());
		Screen.waitUntil("the finding is gone", () -> bench.isUpToDate() && !hasFindings(element));
		bench.commandStack().undo();
		Screen.settle();
		assertEquals(before, text(bench.document().job()));
		assertFalse(bench.commandStack().canUndo());
	}

	@Test
	void keyOfALineCuresItsFinding() throws IOException {
		int number = numberOn(troubled.strip.getId());
		clickLine(0);
		Screen.key(String.valueOf(number));
		assertCuredInOneStep(troubled.strip.getId());
	}

	/** A finding that hangs on another element of the layer: the cure is tried with both. */
	@Test
	void overlappingPartsAreLaidApartByKey() throws Exception {
		TroubledJob overlapping = new TroubledJob();
		String front = overlapping.addOverlapping().getId();
		bench = open(overlapping.save(folder.resolve("overlapping.frjob")));
		onBench = Adapters.adapt(bench, JobOnBench.class);
		Screen.waitUntil("the job is checked", bench::isUpToDate);
		Screen.waitUntil("the overlap is listed",
				() -> view.findings().stream().anyMatch(finding -> finding.id().equals("parts-overlap")));
		before = text(bench.document().job());
		int number = numberOn(front);
		assertTrue(line(number - 1, 5).endsWith("Lay it on a layer of its own"), line(number - 1, 5));
		assertEquals(2, bench.document().job().getLayers().size());
		Screen.keep(Screen.picture(view.table()), "makeready-overlap");
		clickLine(0);
		Screen.key(String.valueOf(number));
		assertEquals(3, bench.document().job().getLayers().size());
		assertCuredInOneStep(front);
		assertEquals(2, bench.document().job().getLayers().size());
	}

	/** Of so many findings only the first are cured unasked, and only nine have a number for a key. */
	@Test
	void findingFarDownTheListIsCuredByKeyOnceItIsLookedAt() throws Exception {
		TroubledJob many = new TroubledJob();
		many.addSpecks(MANY);
		bench = open(many.save(folder.resolve("many.frjob")));
		onBench = Adapters.adapt(bench, JobOnBench.class);
		Screen.waitUntil("the job is checked", bench::isUpToDate);
		Screen.waitUntil("the findings are listed", () -> view.findings().size() > MANY);
		Screen.waitUntil("the first cures are known", onBench::areCuresKnown);
		before = text(bench.document().job());
		int index = view.findings().size() - 1;
		Finding last = view.findings().get(index);
		assertTrue(onBench.areCuresKnown(view.findings().get(0)));
		assertFalse(onBench.areCuresKnown(last), "nobody has looked at it");
		clickLine(0);
		Screen.key("End");
		assertEquals(index, view.table().getSelectionIndex());
		Screen.waitUntil("what helps is known", () -> onBench.areCuresKnown(last));
		Screen.settle();
		assertEquals(onBench.cures(last).get(0).name(), line(index, 5));
		Screen.keep(Screen.picture(view.table()), "makeready-many");
		Screen.key("ctrl+k");
		assertSame(view, page().getActivePart());
		assertTrue(bench.commandStack().canUndo());
		Screen.waitUntil("the finding is gone", () -> bench.isUpToDate() && !hasFindings(last.element()));
		assertEquals(view.findings().size() - 1, view.table().getSelectionIndex(), "the next one, for the same key");
		assertCuredInOneStep(last.element());
	}

	@Test
	void chordOnTheBenchCuresTheFindingOfAFlag() throws IOException {
		int number = numberOn(troubled.speck.getId());
		page().activate(bench);
		listen(bench);
		Screen.key("ctrl+k");
		Screen.key(String.valueOf(number));
		assertCuredInOneStep(troubled.speck.getId());
	}

	@Test
	void keyOfNoFindingSaysSo() throws IOException {
		numberOn(troubled.speck.getId());
		page().activate(bench);
		listen(bench);
		Screen.key("ctrl+k");
		Screen.key("9");
		assertEquals(before, text(bench.document().job()));
		assertFalse(bench.commandStack().canUndo());
	}

	@Test
	void flagUnderThePointerSaysMeasureLimitKeyAndCure() throws IOException {
		int number = numberOn(troubled.strip.getId());
		FlagFigure flag = ((JobPart) bench.viewer().getContents()).flags().get(number - 1);
		Point foot = bench.zoom().toPixel(findingOn(troubled.strip.getId()).place());
		assertEquals(String.valueOf(number), flag.text());
		Screen.moveTo(canvas(), foot.x + 4, foot.y - 22);
		Screen.keep(Screen.picture(canvas()), "flagHover");
		String cure = onBench.cures(findingOn(troubled.strip.getId())).get(0).name();
		assertEquals(number + "  0.60 mm where 1.00 mm is allowed\nCtrl+K " + number + "  " + cure,
				flag.text().replace("CTRL", "Ctrl").replace("Ctrl+K, ", "Ctrl+K "));
		Screen.moveTo(canvas(), 5, 5);
		assertEquals(String.valueOf(number), flag.text());
	}

	@Test
	void clickOnAFlagSelectsItsLineAndElementAndMovesNothing() throws IOException {
		int number = numberOn(troubled.strip.getId());
		Point foot = bench.zoom().toPixel(findingOn(troubled.strip.getId()).place());
		Screen.click(canvas(), foot.x + 4, foot.y - 22);
		assertEquals(number - 1, view.table().getSelectionIndex());
		assertEquals(List.of(troubled.strip.getId()), selectedIds());
		assertTrue(((JobPart) bench.viewer().getContents()).flags().get(number - 1).isRaised());
		assertEquals(before, text(bench.document().job()));
	}

	@Test
	void findingsOfAHiddenLayerAreNotListedAndHaveNoFlags() {
		edits().execute(SetLayers.visible(List.of(Jobs.layerOf(element(troubled.strip))), false));
		Screen.waitUntil("there are no findings", () -> view.note().startsWith("No findings"));
		assertEquals(List.of(), ((JobPart) bench.viewer().getContents()).flags());
		bench.commandStack().undo();
		Screen.waitUntil("the findings are back", () -> view.findings().size() > 1);
	}

	@Test
	void menuOffersEveryCureAndFiltersBySeverity() throws IOException {
		int number = numberOn(troubled.strip.getId());
		clickLine(number - 1);
		Menu menu = view.table().getMenu();
		menu.notifyListeners(SWT.Show, new Event());
		assertTrue(menu.getItem(0).getText().endsWith("\tCtrl+K"), menu.getItem(0).getText());
		List<String> items = Stream.of(menu.getItems()).map(item -> item.getText().split("\t")[0]).toList();
		onBench.cures(findingOn(troubled.strip.getId())).forEach(cure -> assertTrue(items.contains(cure.name())));
		MenuItem cautions = Stream.of(menu.getItems()).filter(item -> item.getText().equals("List: Caution")).findFirst()
				.orElseThrow();
		cautions.setSelection(false);
		cautions.notifyListeners(SWT.Selection, new Event());
		assertTrue(view.findings().stream().noneMatch(finding -> finding.severity() == Severity.CAUTION));
		cautions.setSelection(true);
		cautions.notifyListeners(SWT.Selection, new Event());
		assertFalse(view.findings().isEmpty());
		menu.getItem(0).notifyListeners(SWT.Selection, new Event());
		assertCuredInOneStep(troubled.strip.getId());
	}
}
