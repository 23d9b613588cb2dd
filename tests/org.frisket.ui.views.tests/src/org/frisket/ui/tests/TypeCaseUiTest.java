package org.frisket.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import org.eclipse.draw2d.geometry.Point;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Event;
import org.frisket.geometry.Bounds;
import org.frisket.geometry.Monitor;
import org.frisket.model.Element;
import org.frisket.model.Jobs;
import org.frisket.model.Outline;
import org.frisket.model.Wording;
import org.frisket.prepare.fonts.FontLibraries;
import org.frisket.typography.UnreadableFontException;
import org.frisket.typography.chart.GlyphEntry;
import org.frisket.typography.chart.GlyphFilter;
import org.frisket.typography.index.FontIndex;
import org.frisket.typography.index.FontIndexer;
import org.frisket.typography.source.FontEntry;
import org.frisket.ui.views.Views;
import org.frisket.ui.views.internal.typecase.CasePopup;
import org.frisket.ui.views.internal.typecase.GlyphGrid;
import org.frisket.ui.views.internal.typecase.TypeCaseView;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The type case: every glyph of a font seen, found by name, code point and character, and put on the bench. */
class TypeCaseUiTest extends OpenProperties {

	private TypeCaseView typeCase;
	private GlyphGrid grid;

	@BeforeEach
	void openTypeCase() throws Exception {
		typeCase = (TypeCaseView) page().showView(Views.TYPE_CASE_ID);
		grid = typeCase.grid();
		typeCase.bar().searchField().setText("");
		setFilter(GlyphFilter.ALL);
		Screen.waitUntil("the fonts are known", typeCase::isSettled);
		open("DejaVu Sans");
		grid.setFocus();
		Screen.settle();
	}

	@AfterEach
	void giveThingsBack() {
		if (typeCase.bar().popup() != null) {
			typeCase.bar().popup().shell().close();
		}
		setFilter(GlyphFilter.ALL);
		typeCase.bar().searchField().setText("");
		setSize(48);
	}

	private void open(String name) {
		FontEntry font = FontLibraries.installed().sources().stream()
				.flatMap(source -> source.fonts(Monitor.NONE).stream())
				.filter(each -> each.family().equals(name) && each.names().isPlain()).findFirst().orElseThrow();
		typeCase.open(font);
		Screen.waitUntil(name + " lies open", () -> typeCase.isSettled() && isOpen(name));
		Screen.settle();
	}

	private boolean isOpen(String family) {
		return grid.shownFace().map(face -> face.family().equals(family)).orElse(false);
	}

	private void setFilter(GlyphFilter filter) {
		typeCase.bar().filterField().select(filter.ordinal());
		typeCase.bar().filterField().notifyListeners(SWT.Selection, new Event());
	}

	private void setSize(int pixels) {
		typeCase.foot().sizeField().setSelection(pixels);
		typeCase.foot().sizeField().notifyListeners(SWT.Selection, new Event());
		Screen.settle();
	}

	private void search(String words) {
		typeCase.bar().searchField().setText(words);
		Screen.waitUntil(words + " is looked for", typeCase::isSettled);
		Screen.settle();
	}

	private static int ink(ImageData picture, Rectangle box) {
		RGB ground = Screen.pixel(picture, box.x + 1, box.y + 1);
		int count = 0;
		for (int y = box.y + 1; y < box.y + box.height - 1; y++) {
			for (int x = box.x + 1; x < box.x + box.width - 1; x++) {
				RGB seen = Screen.pixel(picture, x, y);
				count += Math.abs(seen.red - ground.red) + Math.abs(seen.green - ground.green)
						+ Math.abs(seen.blue - ground.blue) > 200 ? 1 : 0;
			}
		}
		return count;
	}

	private Element added() {
		Screen.waitUntil("it is on the bench", () -> bench.commandStack().canUndo());
		return onBench.selection().get(0);
	}

	@Test
	void everyGlyphHasItsPictureAtItsCell() throws Exception {
		setSize(72);
		int at = index("U+0041");
		grid.go(at);
		Screen.waitUntil("the cells have their pictures", () -> grid.painted() > 5);
		ImageData picture = Screen.picture(grid);
		Screen.keep(picture, "typeCase");
		assertTrue(ink(picture, grid.bounds(at + 1)) > 60, "a B");
		search("U+2588");
		assertEquals(1, grid.entries().size());
		Screen.waitUntil("the block has its picture", () -> grid.painted() == 1);
		Rectangle cell = grid.bounds(0);
		ImageData block = Screen.picture(grid);
		RGB middle = Screen.pixel(block, cell.x + cell.width / 2, cell.y + 36);
		assertColour(grid.getDisplay().getSystemColor(SWT.COLOR_LIST_FOREGROUND).getRGB(), middle);
		assertEquals("U+2588 full block", selectedWords());
	}

	private String selectedWords() {
		grid.setFocus();
		Screen.key("Home");
		return typeCase.foot().text();
	}

	private int index(String label) {
		for (int i = 0; i < grid.entries().size(); i++) {
			if (grid.entries().get(i).label().equals(label)) {
				return i;
			}
		}
		throw new AssertionError(label);
	}

	@Test
	void keysGoFromGlyphToGlyph() {
		Screen.key("Home");
		Screen.key("Right");
		Screen.key("Right");
		assertEquals("U+0022", grid.selection().orElseThrow().label());
		Screen.key("Down");
		Screen.key("Up");
		assertEquals("U+0022", grid.selection().orElseThrow().label());
		Screen.key("Left");
		assertEquals("U+0021", grid.selection().orElseThrow().label());
		Screen.key("Next");
		int paged = grid.entries().indexOf(grid.selection().orElseThrow());
		assertTrue(paged > 5, "a page on");
		Screen.key("Prior");
		assertEquals("U+0021", grid.selection().orElseThrow().label());
		Screen.key("End");
		assertEquals(grid.entries().get(grid.entries().size() - 1), grid.selection().orElseThrow());
		assertTrue(grid.bounds(grid.entries().size() - 1).y >= 0);
	}

	@Test
	void typingSearchesAndEnterPutsTheGlyphOnTheBenchInOneStep() throws Exception {
		Screen.key("Home");
		Screen.type("U+2767");
		assertEquals("U+2767", typeCase.bar().searchField().getText());
		Screen.waitUntil("it is found", () -> typeCase.isSettled() && grid.entries().size() == 1);
		Screen.key("Down");
		Screen.key("Return");
		Wording wording = (Wording) added();
		assertEquals("\u2767", wording.getText());
		assertEquals("DejaVu Sans", wording.getFont().getName());
		assertEquals(64, wording.getFont().getDigest().length());
		Screen.waitUntil("it is worked through", bench::isUpToDate);
		assertFalse(onBench.bounds(List.of(wording)).isEmpty());
		Screen.keep(Screen.picture(bench.getSite().getShell()), "typeCaseWindow");
		assertOneStep();
	}

	@Test
	void searchIsByNameAndByCharacterToo() {
		search("floral heart");
		assertTrue(grid.entries().size() >= 2 && grid.entries().stream()
				.allMatch(entry -> Character.getName(entry.characters().get(0)).contains("FLORAL HEART")));
		search("\u00e9");
		assertEquals(List.of("U+00E9"), grid.entries().stream().map(GlyphEntry::label).toList());
		search("no such glyph");
		assertTrue(grid.entries().isEmpty());
		assertTrue(grid.note().contains("no such glyph") && grid.note().contains("U+2767"), grid.note());
	}

	@Test
	void doubleClickPutsTheGlyphOnTheBench() throws Exception {
		search("black star");
		Rectangle cell = grid.bounds(0);
		Screen.doubleClick(grid, cell.x + cell.width / 2, cell.y + cell.height / 2);
		assertEquals("\u2605", ((Wording) added()).getText());
		assertOneStep();
	}

	@Test
	void glyphIsDraggedToItsPlace() throws Exception {
		search("U+2605");
		Rectangle cell = grid.bounds(0);
		Point place = pixelOf(60, 90);
		org.eclipse.swt.graphics.Point to = grid.toControl(canvas().toDisplay(place.x, place.y));
		Screen.moveTo(grid, cell.x + cell.width / 2, cell.y + cell.height / 2);
		Screen.pressButton();
		for (int i = 1; i <= 8; i++) {
			Screen.moveTo(grid, cell.x + 8 + i * 3, cell.y + cell.height / 2);
		}
		for (int i = 1; i <= 12; i++) {
			Screen.moveTo(grid, cell.x + (to.x - cell.x) * i / 12, cell.y + (to.y - cell.y) * i / 12);
		}
		Screen.moveTo(grid, to.x + 1, to.y);
		Screen.moveTo(grid, to.x, to.y);
		Screen.releaseButton();
		Wording wording = (Wording) added();
		Screen.waitUntil("it is worked through", bench::isUpToDate);
		Bounds bounds = onBench.bounds(List.of(wording));
		assertEquals(60, bounds.centre().x(), 1);
		assertEquals(90, bounds.centre().y(), 1);
		assertOneStep();
	}

	@Test
	void fontOfTheSelectedWordingLiesOpen() {
		select(made.first);
		Screen.waitUntil("its font lies open", () -> isOpen("Liberation Sans"));
		assertEquals("Liberation Sans", typeCase.bar().fontField().text());
	}

	@Test
	void glyphsWithoutACharacterStayLiveOrSayWhatTheyAre() throws Exception {
		setFilter(GlyphFilter.LONE);
		Screen.waitUntil("they are found", () -> typeCase.isSettled()
				&& grid.entries().stream().allMatch(entry -> entry.characters().isEmpty()));
		search("#" + alternate().glyph());
		Screen.waitUntil("one is found", () -> grid.entries().size() == 1);
		grid.setFocus();
		Screen.key("Home");
		Screen.key("Return");
		Element element = added();
		if (element instanceof Outline outline) {
			assertTrue(outline.getName().startsWith("DejaVu Sans · "), outline.getName());
			assertTrue(outline.getPathData().startsWith("M"), "it has curves");
		} else {
			assertTrue(((Wording) element).getFeatures() != null || ((Wording) element).getText().length() > 1);
		}
		assertOneStep();
		setFilter(GlyphFilter.CHARACTERS);
		search("");
		assertTrue(grid.entries().stream().noneMatch(entry -> entry.characters().isEmpty()));
	}

	private GlyphEntry alternate() {
		return grid.entries().stream().filter(entry -> entry.name().indexOf('.') > 0).findFirst().orElseThrow();
	}

	@Test
	void characterIsTypedAtTheCaretOfAWordingInTheSameFont() throws Exception {
		open("Liberation Sans");
		select(made.first);
		bench.typing().edit(first());
		Screen.settle();
		search("U+2020");
		page().activate(typeCase);
		grid.setFocus();
		Screen.key("Home");
		Screen.key("Return");
		Screen.waitUntil("it is typed", () -> first().getText().equals("Harbour\u2020"));
		assertTrue(bench.typing().isActive());
		assertOneStep();
	}

	@Test
	void fontsAreSearchedByNameScriptAndCharacters() throws Exception {
		FontIndex known = FontIndexer.withoutMemory()
				.index(FontLibraries.installed().sources().stream().filter(source -> source.id().endsWith(".embedded")).toList(),
						Monitor.NONE);
		FontIndex index = new FontIndex(known.fonts(),
				List.of(new UnreadableFontException("quay.ttf", "it is cut off")));
		boolean[] closed = new boolean[1];
		FontEntry[] taken = new FontEntry[1];
		CasePopup popup = new CasePopup(typeCase.bar().fontField(), font -> taken[0] = font, () -> closed[0] = true);
		popup.open(index, null, false);
		Screen.waitUntil("the search listens", () -> popup.nameField().isFocusControl());
		assertTrue(popup.broken().contains("quay.ttf") && popup.broken().contains("cut off"), popup.broken());
		bringToFront(popup.shell());
		Screen.type("serif italic");
		Screen.waitUntil("all is typed", () -> popup.nameField().getText().equals("serif italic"));
		assertTrue(popup.list().families().size() >= 2
				&& popup.list().families().stream().allMatch(row -> row.name().contains("Serif")), popup.counted());
		popup.nameField().setText("");
		int all = popup.list().families().size();
		popup.charactersField().setText("\u2767");
		assertTrue(popup.list().families().size() > 0 && popup.list().families().size() < all);
		assertTrue(popup.list().families().stream().allMatch(row -> row.name().startsWith("DejaVu")));
		assertTrue(List.of(popup.scriptField().getItems()).containsAll(List.of("Any script", "Greek", "Latin")),
				List.of(popup.scriptField().getItems()).toString());
		popup.charactersField().setText("");
		popup.scriptField().select(popup.scriptField().indexOf("Arabic"));
		popup.scriptField().notifyListeners(SWT.Selection, new Event());
		assertTrue(popup.list().families().size() > 0 && popup.list().families().size() < all);
		Screen.keep(Screen.picture(popup.shell()), "typeCaseFonts");
		Screen.key("Return");
		Screen.waitUntil("it is closed", () -> closed[0]);
		assertTrue(taken[0].family().startsWith("DejaVu"), String.valueOf(taken[0]));
	}

	@Test
	void aBigFontScrollsAndTheScreenPaintsOnly() {
		open("Symbola");
		int count = grid.entries().size();
		assertTrue(count > 9000, "a big font");
		int before = grid.pictures().madeEver();
		Screen.key("Home");
		for (int i = 0; i < 60; i++) {
			grid.go(i * (count / 60));
			grid.update();
		}
		Screen.key("End");
		Screen.waitUntil("the last page has its pictures", () -> grid.painted() > 3
				&& grid.bounds(count - 1).y < grid.getClientArea().height);
		assertEquals(0, grid.pictures().madeOnScreenThread());
		assertTrue(grid.pictures().madeEver() - before < count / 2, "what is scrolled past is not made: "
				+ (grid.pictures().madeEver() - before));
		assertTrue(grid.pictures().keptBytes() <= grid.pictures().mostBytes());
		assertTrue(grid.painted() < 300, "only what is seen is painted: " + grid.painted());
	}

	@Test
	void chartOfWhatIsShownIsWritten() throws Exception {
		search("arrow");
		Path file = folder.resolve("chart.pdf");
		typeCase.print(file);
		Screen.waitUntil("it is written", () -> typeCase.foot().text().contains(file.toString()));
		byte[] bytes = Files.readAllBytes(file);
		assertEquals("%PDF-", new String(bytes, 0, 5, StandardCharsets.US_ASCII));
		typeCase.print(folder.resolve("chart.svg"));
		assertTrue(typeCase.foot().text().contains(".pdf"), typeCase.foot().text());
	}
}
