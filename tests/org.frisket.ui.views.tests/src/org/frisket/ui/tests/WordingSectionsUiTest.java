package org.frisket.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;
import java.util.Locale;

import org.eclipse.draw2d.geometry.Point;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Scale;
import org.eclipse.ui.PlatformUI;
import org.frisket.editing.elements.AddElement;
import org.frisket.geometry.Bounds;
import org.frisket.model.Alignment;
import org.frisket.model.BarKind;
import org.frisket.model.Flow;
import org.frisket.model.FrisketFactory;
import org.frisket.model.Jobs;
import org.frisket.model.Outline;
import org.frisket.model.PenStyle;
import org.frisket.prepare.letterforms.FeatureNames;
import org.frisket.typography.source.FontLibrary;
import org.frisket.ui.views.Views;
import org.frisket.ui.views.internal.properties.PropertiesView;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** All that the sections of a wording set, by real keys: model, picture, and back to the first bytes. */
class WordingSectionsUiTest extends OpenProperties {

	private static final List<String> FOLDED = List.of("Letterforms", "Setting", "Holding together");

	/** As a user finds them who never touched one. */
	@AfterEach
	void foldAgain() {
		FOLDED.forEach(section -> view.setFolded(section, true));
	}

	private void toggle(String section) {
		view.section(section).setFocus();
		Screen.settle();
		Screen.key("space");
	}

	private void keepPicture(String name) throws IOException {
		Screen.keep(Screen.picture(PlatformUI.getWorkbench().getActiveWorkbenchWindow().getShell()), name);
	}

	private Bounds worked() {
		Screen.waitUntil("the job is worked through", bench::isUpToDate);
		return bounds(made.first);
	}

	private Outline path() {
		Outline path = FrisketFactory.INSTANCE.createOutline();
		path.setPathData("M20 150L180 150");
		path.setName("Harbour wall");
		edits().execute(new AddElement(Jobs.layerOf(first()), path));
		return path;
	}

	@Test
	void sectionsAreFoldedByKeyAndStaySo() throws Exception {
		select(made.first);
		assertTrue(view.isFolded("Letterforms"));
		assertFalse(view.isFolded("Spacing"));
		toggle("Spacing");
		assertTrue(view.isFolded("Spacing"));
		select(made.second);
		assertTrue(view.isFolded("Spacing"));
		page().hideView(view);
		view = (PropertiesView) page().showView(Views.PROPERTIES_ID);
		assertTrue(view.isFolded("Spacing"), "remembered");
		Screen.settle();
		toggle("Spacing");
		assertFalse(view.isFolded("Spacing"));
		assertFalse(bench.commandStack().canUndo());
	}

	@Test
	void wordSpacingAndLineWidthAreTyped() throws IOException {
		select(made.first);
		enter("Word spacing", "2mm");
		assertEquals(2, first().getWordSpacing());
		assertOneStep();
		assertEquals("", entry("Line width").getText());
		assertEquals("as the text has it", entry("Line width").getMessage());
		enter("Line width", "3in");
		assertEquals(76.2, first().getMeasure(), 1e-9);
		enter("Line width", " ");
		assertEquals(0, first().getMeasure());
		bench.commandStack().undo();
		assertOneStep();
	}

	@Test
	void featuresOfTheFontAreTickedOnOffAndLeft() throws Exception {
		select(made.first);
		view.field("Features");
		List<String> tags = FeatureNames.chosenByEye(FontLibrary.standard().find("Liberation Sans").features());
		assertFalse(tags.isEmpty(), "the font has features");
		String name = FeatureNames.in(Locale.ENGLISH).of(tags.get(0)) + " (" + tags.get(0) + ")";
		Screen.waitUntil("the features are listed", () -> hasField(name));
		tick(name);
		assertEquals(tags.get(0), first().getFeatures());
		keepPicture("features");
		tick(name);
		assertEquals("-" + tags.get(0), first().getFeatures());
		tick(name);
		assertNull(first().getFeatures());
		bench.commandStack().undo();
		bench.commandStack().undo();
		assertOneStep();
	}

	private boolean hasField(String name) {
		try {
			return view.field(name) != null;
		} catch (IllegalArgumentException e) {
			return false;
		}
	}

	@Test
	void featuresAreTypedAndRefusedBesideTheField() throws IOException {
		select(made.first, made.second);
		enter("Features", "smcp, -kern");
		assertEquals("smcp,-kern", first().getFeatures());
		assertEquals("smcp,-kern", second().getFeatures());
		assertOneStep();
		enter("Features", "small");
		assertEquals(before, text(bench.document().job()));
		assertTrue(labels(entry("Features").getParent()).anyMatch(label -> label.contains("small")));
	}

	@Test
	void lettersAreMadeHeavier() throws IOException {
		select(made.first);
		Bounds old = bounds(made.first);
		enter("Heavier by", "0.5mm");
		assertEquals(old.height() + 1, worked().height(), 0.02);
		assertOneStep();
		((Scale) view.field("Heavier by slider")).setFocus();
		Screen.settle();
		Screen.key("Right");
		assertEquals(0.05, first().getEmbolden());
		assertOneStep();
	}

	@Test
	void wordingIsSetOnAnArcNearWhereItWas() throws IOException {
		select(made.first);
		Bounds old = bounds(made.first);
		choose("Lines run", "On an arc");
		assertEquals(Flow.ARC, first().getFlow());
		assertEquals(Alignment.CENTRE, first().getAlignment());
		Bounds now = worked();
		assertEquals(old.centre().x(), now.centre().x(), 6);
		assertEquals(old.centre().y(), now.centre().y(), 12);
		assertTrue(now.height() > old.height());
		keepPicture("arc");
		assertFalse(view.field("Start at").isVisible());
		enter("Radius", "80mm");
		enter("Place on circle", "+15");
		tick("Heads to the middle");
		tick("Letters within the circle");
		assertEquals(List.of(80.0, 15.0, true, true), List.of(first().getArcRadius(), first().getArcAngle(),
				first().isArcInside(), first().isArcInward()));
		for (int i = 0; i < 4; i++) {
			bench.commandStack().undo();
		}
		assertOneStep();
		assertFalse(view.field("Radius").isVisible());
	}

	@Test
	void radiusIsSlidInOneStep() throws IOException {
		select(made.first);
		choose("Lines run", "On an arc");
		((Scale) view.field("Radius slider")).setFocus();
		Screen.settle();
		Screen.key("Right");
		assertEquals(51, first().getArcRadius());
		bench.commandStack().undo();
		assertOneStep();
	}

	@Test
	void wordingIsStackedAndFittedIntoABox() throws IOException {
		select(made.first);
		Bounds old = bounds(made.first);
		choose("Lines run", "Letter under letter");
		assertTrue(worked().height() > old.width());
		assertOneStep();
		enter("Fit to width", "100mm");
		assertEquals(List.of(100.0, 100.0), List.of(first().getBoxWidth(), first().getBoxHeight()));
		assertEquals(100, worked().width(), 0.1);
		enter("Fit to height", "10mm");
		assertTrue(worked().height() <= 10.1);
		enter("Fit to width", " ");
		assertEquals(List.of(0.0, 0.0), List.of(first().getBoxWidth(), first().getBoxHeight()));
		bench.commandStack().undo();
		bench.commandStack().undo();
		assertOneStep();
	}

	@Test
	void wordingIsSetAlongAnOutlineFromTheList() throws IOException {
		select(made.first);
		choose("Lines run", "Along an outline");
		assertEquals(before, text(bench.document().job()));
		assertTrue(labels(view.field("Lines run").getParent().getParent()).anyMatch(text -> text.startsWith("There is no outline")));
		Outline path = path();
		choose("Lines run", "Along an outline");
		assertEquals(path, first().getPath());
		assertEquals(150, worked().maxY(), 0.6);
		assertEquals("Harbour wall", ((Combo) view.field("Outline")).getText());
		keepPicture("alongOutline");
		enter("Start at", "30mm");
		assertEquals(51, worked().minX(), 3);
		tick("Letters hang below the outline");
		// an ascender is a little higher than a capital
		assertEquals(150, worked().minY(), 2);
		tick("From the other end");
		assertTrue(first().isPathReversed());
		for (int i = 0; i < 4; i++) {
			bench.commandStack().undo();
		}
		assertOneStep();
	}

	@Test
	void outlineIsPickedOnTheBench() throws IOException {
		Outline path = path();
		path.setPathData("M70 60L130 60L130 95L70 95Z");
		Outline other = path();
		Screen.waitUntil("the outlines are shown", bench::isUpToDate);
		select(made.first);
		choose("Lines run", "Along an outline");
		choose("Outline", "Harbour wall");
		press("Pick on the Bench");
		Point place = pixelOf(110, 85);
		Screen.moveTo(canvas(), place.x, place.y);
		assertEquals("Click the outline to set along", tags().get(0).getText());
		Screen.click(canvas(), place.x, place.y);
		assertEquals(path, first().getPath());
		assertNotEquals(other, first().getPath());
		assertEquals(List.of(), tags());
		assertEquals(bench.viewer().getEditDomain().getDefaultTool(), bench.viewer().getEditDomain().getActiveTool());
	}

	@Test
	void tiesAndBridgesHoldLetters() throws IOException {
		select(made.first);
		tick("Tie dots and accents");
		assertTrue(first().isTieMarks());
		enter("Width of ties", "0.8");
		assertEquals(0.8, first().getTieWidth());
		enter("Bridges", "1.5mm");
		assertEquals(1.5, first().getStencil());
		enter("Bridges", " ");
		assertEquals(0, first().getStencil());
		for (int i = 0; i < 3; i++) {
			bench.commandStack().undo();
		}
		assertOneStep();
	}

	@Test
	void barsAreAddedChangedAndRemoved() throws IOException {
		select(made.first, made.second);
		press("Add Bar");
		assertEquals(List.of(2.0, 1.2), List.of(first().getBars().get(0).getThickness(),
				second().getBars().get(0).getThickness()));
		assertOneStep();
		select(made.first);
		Bounds old = bounds(made.first);
		press("Add Bar");
		choose("Kind of bar", "Frame");
		enter("Bar offset", "2mm");
		enter("Bar thickness", "3mm");
		assertEquals(BarKind.FRAME, first().getBars().get(0).getKind());
		assertEquals(old.width() + 10, worked().width(), 0.05);
		keepPicture("bars");
		press("Remove Bar");
		assertEquals(List.of(), first().getBars());
		for (int i = 0; i < 4; i++) {
			bench.commandStack().undo();
		}
		assertOneStep();
	}

	@Test
	void penIsSeenWhereTheWordingIsDrawn() throws IOException {
		select(made.first);
		assertFalse(view.section("Pen").isVisible());
		choose("Operation", "Draw");
		assertTrue(view.section("Pen").isVisible());
		choose("Pen draws", "Outlines and hatching");
		assertEquals(PenStyle.HATCHED, first().getPenStyle());
		enter("Hatch spacing", "0.7mm");
		enter("Hatch angle", "30");
		enter("Hatch inset", "0.2");
		worked();
		keepPicture("hatched");
		assertEquals(List.of(0.7, 30.0, 0.2),
				List.of(first().getHatchSpacing(), first().getHatchAngle(), first().getHatchInset()));
		choose("Pen draws", "Middle of the strokes");
		assertFalse(view.field("Hatch spacing").isVisible());
		for (int i = 0; i < 5; i++) {
			bench.commandStack().undo();
		}
		assertOneStep();
	}

	@Test
	void differingWordingsAreShownEmptyAndSetTogether() throws IOException {
		select(made.first);
		enter("Word spacing", "3mm");
		String mixed = text(bench.document().job());
		select(made.first, made.second);
		assertEquals("", entry("Word spacing").getText());
		enter("Word spacing", "+1mm");
		assertEquals(List.of(4.0, 1.0), List.of(first().getWordSpacing(), second().getWordSpacing()));
		bench.commandStack().undo();
		assertEquals(mixed, text(bench.document().job()));
	}
}
