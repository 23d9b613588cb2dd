package org.frisket.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.Arrays;
import java.util.List;

import org.eclipse.draw2d.geometry.Point;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.frisket.editing.arranging.AddGuide;
import org.frisket.model.Guide;
import org.frisket.model.Matrix;
import org.frisket.ui.LengthUnit;
import org.frisket.ui.ThemeColour;
import org.frisket.ui.bench.internal.grips.Grip;
import org.frisket.ui.bench.internal.surface.SurfaceOption;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** Rulers, guides, the grid, and what holds things that are dragged. */
class SurfaceUiTest extends OpenBench {

	@AfterEach
	void restore() {
		for (SurfaceOption option : SurfaceOption.values()) {
			option.set(option.isUsuallyOn());
		}
		LengthUnit.show(LengthUnit.MILLIMETRE);
		Screen.settle();
	}

	private List<Guide> guides() {
		return bench.document().job().getGuides();
	}

	private void addGuide(boolean across, double at) {
		edits().execute(new AddGuide(bench.document().job(), across, at));
		Screen.waitUntil("the job is worked through", bench::isUpToDate);
	}

	private double pixel() {
		return 1 / bench.zoom().pixelsPerMm();
	}

	private int px(double mm) {
		return (int) Math.round(mm * bench.zoom().pixelsPerMm());
	}

	private String text() throws IOException {
		return text(bench.document().job());
	}

	/** Pulls from the middle of a ruler to a pixel of the canvas, and keeps the button down. */
	private void pull(Control ruler, int x, int y) {
		Screen.moveTo(ruler, ruler.getSize().x / 2, ruler.getSize().y / 2);
		Screen.pressButton();
		Screen.moveTo(canvas(), 30, 30);
		Screen.moveTo(canvas(), x - 3, y - 3);
		Screen.moveTo(canvas(), x, y);
	}

	private void press(int fromX, int fromY, int toX, int toY) {
		Screen.moveTo(canvas(), fromX, fromY);
		Screen.pressButton();
		for (int i = 1; i <= 5; i++) {
			Screen.moveTo(canvas(), fromX + (toX - fromX) * i / 5, fromY + (toY - fromY) * i / 5);
		}
	}

	/** Whether most of the pixels around one have the colour; dashes leave some out. */
	private static int count(ImageData picture, ThemeColour colour, int x, int y, int width, int height) {
		int count = 0;
		RGB wanted = colour.colour().getRGB();
		for (int i = 0; i < width; i++) {
			for (int j = 0; j < height; j++) {
				RGB seen = Screen.pixel(picture, x + i, y + j);
				int off = Math.abs(seen.red - wanted.red) + Math.abs(seen.green - wanted.green)
						+ Math.abs(seen.blue - wanted.blue);
				count += off <= 12 ? 1 : 0;
			}
		}
		return count;
	}

	@Test
	void pullFromTheTopRulerLaysAGuideAcross() throws IOException {
		String before = text();
		Point place = pixelOf(60, 70);
		pull(bench.rulers().top(), place.x, place.y);
		ImageData during = Screen.picture(canvas());
		Screen.keep(during, "guide-pulled");
		assertEquals(100, count(during, ThemeColour.BENCH_GUIDE, 100, place.y, 100, 1), 40);
		assertEquals(List.of(), guides());
		Screen.releaseButton();
		assertEquals(1, guides().size());
		assertTrue(guides().get(0).isAcross());
		assertEquals(70, guides().get(0).getAt(), 6 * pixel());
		Screen.moveTo(canvas(), 5, 5);
		ImageData picture = Screen.picture(canvas());
		int y = pixelOf(0, guides().get(0).getAt()).y;
		assertEquals(60, count(picture, ThemeColour.BENCH_GUIDE, 100, y, 100, 1), 12);
		assertEquals("Add guide", bench.commandStack().getUndoCommand().getLabel());
		Screen.key("ctrl+z");
		assertEquals(before, text());
		assertEquals(0, count(Screen.picture(canvas()), ThemeColour.BENCH_GUIDE, 100, y, 100, 1));
	}

	@Test
	void pullFromTheLeftRulerLaysAGuideDownAndEscapeGivesUp() {
		Point place = pixelOf(93, 60);
		pull(bench.rulers().left(), place.x, place.y);
		Screen.key("Escape");
		Screen.releaseButton();
		assertEquals(List.of(), guides());
		pull(bench.rulers().left(), place.x, place.y);
		Screen.releaseButton();
		assertFalse(guides().get(0).isAcross());
		assertEquals(93, guides().get(0).getAt(), 6 * pixel());
	}

	@Test
	void guideIsDraggedAndPutBackIntoTheRuler() throws IOException {
		addGuide(true, 75);
		String before = text();
		Point at = pixelOf(5, 75);
		press(at.x, at.y, at.x + 10, pixelOf(5, 68).y);
		Screen.releaseButton();
		assertEquals(68, guides().get(0).getAt(), 6 * pixel());
		assertEquals("Move guide", bench.commandStack().getUndoCommand().getLabel());
		Screen.key("ctrl+z");
		assertEquals(before, text());
		press(at.x, at.y, at.x, -10);
		Screen.releaseButton();
		assertEquals(List.of(), guides());
		assertEquals("Remove guide", bench.commandStack().getUndoCommand().getLabel());
		Screen.key("ctrl+z");
		assertEquals(before, text());
	}

	@Test
	void chosenGuideIsDeletedByKeyAndTheElementsStay() throws IOException {
		addGuide(true, 75);
		String before = text();
		Point at = pixelOf(5, 75);
		Screen.click(canvas(), at.x, at.y);
		Screen.key("Delete");
		assertEquals(List.of(), guides());
		Screen.key("ctrl+z");
		assertEquals(before, text());
		Screen.click(canvas(), at.x, at.y);
		Point disc = pixelOf(120, 40);
		Screen.click(canvas(), disc.x, disc.y);
		Screen.key("Delete");
		assertEquals(1, guides().size());
	}

	@Test
	void lockedGuidesLetThePointerThroughAndHiddenOnesAreNotSeen() {
		addGuide(false, 120);
		SurfaceOption.GUIDES_LOCKED.set(true);
		Point at = pixelOf(120, 40);
		Screen.click(canvas(), at.x, at.y);
		assertEquals(List.of(sample.disc.getId()), selectedIds());
		bench.viewer().deselectAll();
		int x = pixelOf(120, 0).x;
		assertTrue(count(Screen.picture(canvas()), ThemeColour.BENCH_GUIDE, x, 30, 1, 100) > 40);
		Screen.key("ctrl+l");
		Screen.key("u");
		assertFalse(SurfaceOption.GUIDES.isOn());
		assertEquals(0, count(Screen.picture(canvas()), ThemeColour.BENCH_GUIDE, x, 30, 1, 100));
	}

	@Test
	void guideIsTypedToItsExactPlace() {
		Screen.key("ctrl+l");
		typeInDialog("d", "1.5in");
		assertFalse(guides().get(0).isAcross());
		assertEquals(38.1, guides().get(0).getAt(), 1e-9);
		Screen.key("ctrl+l");
		typeInDialog("a", "12.5");
		assertTrue(guides().get(1).isAcross());
		assertEquals(12.5, guides().get(1).getAt());
	}

	private void typeInDialog(String key, String text) {
		Shell window = bench.getSite().getShell();
		window.getDisplay().timerExec(50, new Runnable() {
			@Override
			public void run() {
				Shell active = window.getDisplay().getActiveShell();
				Control focus = window.getDisplay().getFocusControl();
				if (active == window || !(focus instanceof Text)) {
					window.getDisplay().timerExec(50, this);
					return;
				}
				((Text) focus).setText(text);
				Screen.key("Return");
			}
		});
		Screen.key(key);
		Screen.waitUntil("the dialog is closed", () -> window.getDisplay().getActiveShell() == window);
	}

	@Test
	void moveOntoAGuideHoldsExactly() throws IOException {
		addGuide(false, 93.25);
		String before = text();
		Point from = pixelOf(120, 40);
		// four pixels short of where the left edge, at 100, would lie on the guide
		press(from.x, from.y, from.x + px(-6.75) + 4, from.y + px(31.7));
		ImageData during = Screen.picture(canvas());
		Screen.keep(during, "held-by-guide");
		assertTrue(count(during, ThemeColour.BENCH_SELECTION, pixelOf(93.25, 0).x, 10, 1, 100) > 60);
		Screen.releaseButton();
		assertEquals(-6.75, element(sample.disc).getTransform().e(), 1e-9);
		Screen.key("ctrl+z");
		assertEquals(before, text());
	}

	@Test
	void nothingHoldsWhenSwitchedOffOrWithAlt() {
		addGuide(false, 93.25);
		Point from = pixelOf(120, 40);
		int to = from.x + px(-6.75) + 4;
		press(from.x, from.y, to, from.y + px(31.7));
		Screen.holding("alt", () -> {
			Screen.moveTo(canvas(), to + 1, from.y + px(31.7));
			Screen.moveTo(canvas(), to, from.y + px(31.7));
			Screen.releaseButton();
		});
		double free = (to - from.x) * pixel();
		assertEquals(free, element(sample.disc).getTransform().e(), pixel());
		assertTrue(Math.abs(element(sample.disc).getTransform().e() + 6.75) > 2 * pixel());
		Screen.key("ctrl+z");
		Screen.waitUntil("the disc is back", bench::isUpToDate);
		Screen.key("ctrl+l");
		Screen.key("s");
		assertFalse(SurfaceOption.SNAP.isOn());
		press(from.x, from.y, to, from.y + px(31.7));
		Screen.releaseButton();
		assertTrue(Math.abs(element(sample.disc).getTransform().e() + 6.75) > 2 * pixel());
	}

	@Test
	void eachKindCanBeSwitchedOff() {
		addGuide(false, 93.25);
		SurfaceOption.SNAP_GUIDES.set(false);
		Point from = pixelOf(120, 40);
		press(from.x, from.y, from.x + px(-6.75) + 4, from.y + px(31.7));
		Screen.releaseButton();
		assertTrue(Math.abs(element(sample.disc).getTransform().e() + 6.75) > 2 * pixel());
	}

	@Test
	void edgesOfOthersHoldButNotTheMatThatFollows() throws IOException {
		Point from = pixelOf(120, 40);
		// the bottom of the disc, at 60, to the bottom of the plate after a way through the free
		press(from.x, from.y, from.x + px(8.3), from.y + 4);
		Screen.keep(Screen.picture(canvas()), "held-by-edge");
		Screen.releaseButton();
		assertEquals(Matrix.translation(element(sample.disc).getTransform().e(), 0),
				element(sample.disc).getTransform());
		assertNotEquals(0, element(sample.disc).getTransform().e());
	}

	@Test
	void gripIsHeldByAGuide() throws IOException {
		addGuide(false, 93.25);
		Point plate = pixelOf(30, 30);
		Screen.click(canvas(), plate.x, plate.y);
		String before = text();
		Point side = bench.grips().shown().get(Grip.RIGHT).getAccessibleLocation();
		press(side.x, side.y, side.x + px(13.25) + 4, side.y);
		Screen.keep(Screen.picture(canvas()), "grip-held");
		Screen.releaseButton();
		Matrix m = element(sample.plate).getTransform();
		assertEquals(93.25, m.a() * 80 + m.e(), 1e-9);
		assertEquals(20, m.a() * 20 + m.e(), 1e-9);
		assertEquals(1, m.d());
		Screen.key("ctrl+z");
		assertEquals(before, text());
	}

	@Test
	void gridIsSeenOnTheSheetAndHolds() throws IOException {
		RGB bare = seenAt(10, 7.5);
		assertColour(ThemeColour.BENCH_SHEET.colour().getRGB(), bare);
		Screen.key("ctrl+l");
		Screen.key("g");
		assertTrue(SurfaceOption.GRID.isOn());
		ImageData picture = Screen.picture(canvas());
		Screen.keep(picture, "grid");
		assertNotEquals(bare, seenAt(picture, 10, 7.5));
		assertColour(bare, seenAt(picture, 12.5, 7.5));
		// the stronger line at 50 mm
		assertTrue(seenAt(picture, 50, 12.5).red < seenAt(picture, 45, 12.5).red);
		Point outside = pixelOf(0, 0);
		RGB desk = Screen.pixel(picture, Math.max(1, outside.x - 20), outside.y + px(10));
		assertNotEquals(bare, desk);
		Point from = pixelOf(120, 40);
		press(from.x, from.y, from.x + px(10) + 3, from.y + px(15) + 3);
		Screen.releaseButton();
		Matrix m = element(sample.disc).getTransform();
		assertEquals(0, Math.IEEEremainder(m.e(), 5), 1e-9);
		assertEquals(0, Math.IEEEremainder(m.f(), 5), 1e-9);
	}

	@Test
	void rulersShowPointerAndSelectionAndFollowTheUnit() throws IOException {
		Control top = bench.rulers().top();
		Control left = bench.rulers().left();
		Point disc = pixelOf(120, 40);
		Screen.click(canvas(), disc.x, disc.y);
		ImageData picture = Screen.picture(top);
		assertEquals(top.getSize().y, count(picture, ThemeColour.BENCH_ACCENT, disc.x, 0, 1, top.getSize().y), 2);
		// the band tints what is not tinted elsewhere
		assertNotEquals(Screen.pixel(picture, pixelOf(93, 0).x, 10), Screen.pixel(picture, pixelOf(103, 0).x, 10));
		ImageData side = Screen.picture(left);
		assertEquals(left.getSize().x, count(side, ThemeColour.BENCH_ACCENT, 0, disc.y, left.getSize().x, 1), 2);
		keepWindow("rulers-mm");
		LengthUnit.show(LengthUnit.INCH);
		Screen.settle();
		ImageData inches = Screen.picture(top);
		keepWindow("rulers-in");
		boolean same = Arrays.equals(picture.data, inches.data);
		assertFalse(same, "the ruler still shows millimetres");
		// a long tick where an inch ends
		RGB mark = Screen.pixel(inches, pixelOf(3 * 25.4, 0).x, 3);
		assertNotEquals(mark, Screen.pixel(inches, pixelOf(3 * 25.4, 0).x - 5, 3));
	}

	private void keepWindow(String name) throws IOException {
		Screen.keep(Screen.picture(bench.getSite().getShell()), name);
	}

	@Test
	void rulersAreHiddenByKeyAndTheCanvasTakesTheirRoom() {
		int width = canvas().getSize().x;
		Screen.key("ctrl+l");
		Screen.key("r");
		assertFalse(bench.rulers().top().isVisible());
		assertTrue(canvas().getSize().x > width);
		Screen.key("ctrl+l");
		Screen.key("r");
		assertTrue(bench.rulers().top().isVisible());
		assertEquals(width, canvas().getSize().x);
	}
}
