package org.frisket.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;
import java.util.Set;

import org.eclipse.draw2d.geometry.Point;
import org.eclipse.swt.graphics.ImageData;
import org.frisket.editing.elements.GroupElements;
import org.frisket.model.Element;
import org.frisket.model.Jobs;
import org.frisket.model.Matrix;
import org.frisket.ui.ThemeColour;
import org.frisket.ui.bench.internal.surface.SurfaceOption;
import org.junit.jupiter.api.Test;

/** Elements taken together, hidden and locked, by pointer and keys. */
class GroupUiTest extends OpenBench {

	private void clickPlate() {
		Point plate = pixelOf(30, 30);
		Screen.click(canvas(), plate.x, plate.y);
	}

	private void clickDisc() {
		Point disc = pixelOf(120, 40);
		Screen.click(canvas(), disc.x, disc.y);
	}

	private void groupPlateAndDisc() {
		edits().execute(new GroupElements(List.of(element(sample.plate), element(sample.disc))));
		bench.viewer().deselectAll();
		Screen.settle();
	}

	private Set<String> selected() {
		return Set.copyOf(selectedIds());
	}

	private Set<String> both() {
		return Set.of(sample.plate.getId(), sample.disc.getId());
	}

	@Test
	void keysGroupAndUngroupWhatIsSelectedAndUndoLeadsBack() throws IOException {
		String before = text(bench.document().job());
		clickPlate();
		Screen.holding("shift", this::clickDisc);
		assertEquals(both(), selected());
		Screen.key("ctrl+b");
		Screen.key("g");
		assertEquals(1, bench.document().job().getGroups().size());
		bench.viewer().deselectAll();
		clickDisc();
		assertEquals(both(), selected());
		Screen.key("ctrl+b");
		Screen.key("u");
		assertTrue(bench.document().job().getGroups().isEmpty());
		bench.commandStack().undo();
		bench.commandStack().undo();
		assertEquals(before, text(bench.document().job()));
	}

	@Test
	void clickOnAMemberSelectsTheGroupAndControlReachesTheMember() {
		groupPlateAndDisc();
		clickPlate();
		assertEquals(both(), selected());
		Screen.holding("ctrl", this::clickDisc);
		assertEquals(Set.of(sample.disc.getId()), selected());
		Screen.holding("ctrl", this::clickPlate);
		assertEquals(both(), selected());
		bench.viewer().deselectAll();
		Screen.holding("ctrl", this::clickPlate);
		assertEquals(Set.of(sample.plate.getId()), selected());
		// elsewhere, for a second click at the same place would be a double click
		Point corner = pixelOf(70, 52);
		Screen.click(canvas(), corner.x, corner.y);
		assertEquals(both(), selected());
	}

	@Test
	void groupIsDraggedAsOne() throws IOException {
		groupPlateAndDisc();
		String before = text(bench.document().job());
		Point from = pixelOf(120, 40);
		Screen.drag(canvas(), from.x, from.y, from.x + 30, from.y + 20);
		Matrix disc = element(sample.disc).getTransform();
		assertFalse(disc.equals(Matrix.IDENTITY));
		assertEquals(disc, element(sample.plate).getTransform());
		bench.commandStack().undo();
		assertEquals(before, text(bench.document().job()));
	}

	@Test
	void memberThatWasReachedIsDraggedAlone() {
		groupPlateAndDisc();
		Screen.holding("ctrl", this::clickDisc);
		// not where it was clicked, or the two would be a double click
		Point from = pixelOf(114, 44);
		Screen.drag(canvas(), from.x, from.y, from.x + 30, from.y);
		assertFalse(element(sample.disc).getTransform().equals(Matrix.IDENTITY));
		assertEquals(Matrix.IDENTITY, element(sample.plate).getTransform());
	}

	@Test
	void hiddenElementVanishesAndComesBack() throws IOException {
		String before = text(bench.document().job());
		clickDisc();
		Screen.key("ctrl+b");
		Screen.key("i");
		assertFalse(element(sample.disc).isVisible());
		assertEquals(List.of(), selectedIds());
		Screen.settle();
		assertColour(SampleJob.MAT_COLOUR, seenAt(120, 40));
		Screen.key("ctrl+a");
		assertEquals(Set.of(sample.plate.getId(), sample.mat.getId()), selected());
		Screen.key("ctrl+b");
		Screen.key("shift+i");
		assertTrue(element(sample.disc).isVisible());
		assertColour(SampleJob.DISC_COLOUR, seenAt(120, 40));
		bench.commandStack().undo();
		bench.commandStack().undo();
		assertEquals(before, text(bench.document().job()));
	}

	@Test
	void lockedElementCannotBeReachedUntilAllIsUnlocked() {
		clickDisc();
		Screen.key("ctrl+b");
		Screen.key("l");
		assertTrue(element(sample.disc).isLocked());
		assertEquals(List.of(), selectedIds());
		clickDisc();
		assertEquals(List.of(sample.mat.getId()), selectedIds());
		Screen.key("ctrl+a");
		assertFalse(selected().contains(sample.disc.getId()));
		Screen.key("ctrl+b");
		Screen.key("shift+l");
		assertFalse(element(sample.disc).isLocked());
		clickDisc();
		assertEquals(List.of(sample.disc.getId()), selectedIds());
	}

	@Test
	void boxTakesOnlyWhatItEnclosesAndWithControlWhatItTouches() throws IOException {
		Point from = pixelOf(128, 5);
		Point to = pixelOf(150, 70);
		Screen.drag(canvas(), from.x, from.y, to.x, to.y);
		assertEquals(List.of(), selectedIds());
		Screen.holding("ctrl", () -> Screen.drag(canvas(), from.x, from.y, to.x, to.y));
		assertEquals(Set.of(sample.disc.getId(), sample.mat.getId()), selected());
	}

	/** What the user prefers the other way round is shown the other way round, too. */
	@Test
	void boxCanTakeWhatItTouchesAndWithControlWhatItEncloses() {
		SurfaceOption.BOX_TOUCHES.set(true);
		try {
			Point from = pixelOf(128, 5);
			Point to = pixelOf(150, 70);
			Screen.moveTo(canvas(), from.x, from.y);
			Screen.pressButton();
			Screen.moveTo(canvas(), from.x + 20, from.y + 20);
			Screen.moveTo(canvas(), to.x, to.y);
			assertEquals("2 touched", tags().get(0).getText());
			ImageData touching = Screen.picture(canvas());
			assertTrue(gaps(touching, from, to) * 3 > accents(touching, from, to));
			Screen.holding("ctrl", () -> {
				assertEquals("0 enclosed", tags().get(0).getText());
				ImageData enclosing = Screen.picture(canvas());
				assertTrue(accents(enclosing, from, to) > 2 * gaps(enclosing, from, to));
			});
			Screen.releaseButton();
			assertEquals(Set.of(sample.disc.getId(), sample.mat.getId()), selected());
			Screen.holding("ctrl", () -> Screen.drag(canvas(), from.x, from.y, to.x, to.y));
			assertEquals(List.of(), selectedIds());
		} finally {
			SurfaceOption.BOX_TOUCHES.set(false);
		}
	}

	@Test
	void boxTouchesTheTrueShapeAndNotItsBounds() {
		// the corner of the disc's bounds, outside the disc itself but on the mat
		Point from = pixelOf(137, 5);
		Point to = pixelOf(139.5, 22);
		Screen.holding("ctrl", () -> Screen.drag(canvas(), from.x, from.y, to.x, to.y));
		assertFalse(selected().contains(sample.disc.getId()));
	}

	@Test
	void boxInTheWindowOfThePlateTouchesNothing() {
		Point from = pixelOf(47, 37);
		Point to = pixelOf(53, 43);
		Screen.holding("ctrl", () -> Screen.drag(canvas(), from.x, from.y, to.x, to.y));
		assertFalse(selected().contains(sample.plate.getId()));
	}

	@Test
	void boxShowsItsMannerWhileItIsDragged() throws IOException {
		Point from = pixelOf(128, 5);
		Point to = pixelOf(150, 70);
		Screen.moveTo(canvas(), from.x, from.y);
		Screen.pressButton();
		Screen.moveTo(canvas(), from.x + 20, from.y + 20);
		Screen.moveTo(canvas(), to.x, to.y);
		ImageData enclosing = Screen.picture(canvas());
		Screen.keep(enclosing, "marquee-enclosing");
		Screen.holding("ctrl", () -> {
			ImageData touching = Screen.picture(canvas());
			try {
				Screen.keep(touching, "marquee-touching");
			} catch (IOException e) {
				throw new AssertionError(e);
			}
			assertTrue(accents(enclosing, from, to) > 2 * gaps(enclosing, from, to));
			assertTrue(gaps(touching, from, to) * 3 > accents(touching, from, to));
			Screen.releaseButton();
		});
		assertEquals(Set.of(sample.disc.getId(), sample.mat.getId()), selected());
	}

	/** How many pixels of the left edge of the box have its colour. */
	private static int accents(ImageData picture, Point from, Point to) {
		int count = 0;
		for (int y = from.y + 4; y < to.y - 4; y++) {
			count += Screen.pixel(picture, from.x + 1, y).equals(ThemeColour.BENCH_SELECTION.colour().getRGB())
					|| Screen.pixel(picture, from.x, y).equals(ThemeColour.BENCH_SELECTION.colour().getRGB()) ? 1 : 0;
		}
		return count;
	}

	private static int gaps(ImageData picture, Point from, Point to) {
		return to.y - from.y - 8 - accents(picture, from, to);
	}

	@Test
	void groupIsGatheredWhole() {
		groupPlateAndDisc();
		Point from = pixelOf(98, 10);
		Point to = pixelOf(142, 64);
		Screen.drag(canvas(), from.x, from.y - 40, to.x, to.y);
		assertEquals(List.of(), selectedIds());
		Screen.holding("ctrl", () -> Screen.drag(canvas(), from.x, from.y - 40, to.x, to.y));
		assertTrue(selected().containsAll(both()));
	}

	@Test
	void elementsAndLayersAreShownTogetherAgainInOneStep() throws IOException {
		Element disc = element(sample.disc);
		disc.setVisible(false);
		Jobs.layerOf(element(sample.plate)).setVisible(false);
		String before = text(bench.document().job());
		int steps = bench.commandStack().getCommands().length;
		Screen.key("ctrl+b");
		Screen.key("shift+i");
		assertTrue(Jobs.isShown(disc));
		assertTrue(Jobs.isShown(element(sample.plate)));
		assertEquals(steps + 1, bench.commandStack().getCommands().length);
		bench.commandStack().undo();
		assertEquals(before, text(bench.document().job()));
	}
}
