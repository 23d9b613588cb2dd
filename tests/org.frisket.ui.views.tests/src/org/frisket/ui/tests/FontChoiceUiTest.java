package org.frisket.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.PlatformUI;
import org.frisket.editing.wording.ChangeWording;
import org.frisket.geometry.Monitor;
import org.frisket.model.Jobs;
import org.frisket.prepare.fonts.FontLibraries;
import org.frisket.prepare.fonts.FontVerdict;
import org.frisket.typography.face.FontNames;
import org.frisket.typography.source.FontEntry;
import org.frisket.ui.views.internal.fonts.FontFamily;
import org.frisket.ui.views.internal.fonts.FontField;
import org.frisket.ui.views.internal.fonts.FontList;
import org.frisket.ui.views.internal.fonts.FontPopup;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** The choice of a font: seen in itself, tried on the bench while the list is gone through, one step when kept. */
class FontChoiceUiTest extends OpenProperties {

	@AfterEach
	void closeList() {
		if (view.fontPopup() != null) {
			view.fontPopup().shell().close();
		}
	}

	private FontField field() {
		return (FontField) view.field("Font");
	}

	private FontPopup openList() {
		select(made.first);
		Screen.waitUntil("the font is known", () -> field().text().equals("Liberation Sans"));
		Screen.waitUntil("the list opens", () -> {
			if (view.fontPopup() == null) {
				Screen.click(field(), 20, 8);
			}
			return view.fontPopup() != null;
		});
		Screen.waitUntil("the filter listens", () -> view.fontPopup().filterField().isFocusControl());
		return view.fontPopup();
	}

	private String family() {
		return first().getFont().getName();
	}

	@Test
	void arrowKeysTryEachFamilyAndEnterKeepsItInOneStep() throws IOException {
		FontPopup popup = openList();
		int at = popup.list().families().indexOf(popup.list().selection());
		assertEquals("Liberation Sans", popup.list().selection().name());
		for (int i = 1; i <= 2; i++) {
			Screen.key("Down");
			String next = popup.list().families().get(at + i).name();
			Screen.waitUntil("the bench shows " + next, () -> family().equals(next));
			assertFalse(bench.commandStack().canUndo());
		}
		Screen.waitUntil("the picture follows", bench::isUpToDate);
		Screen.key("Return");
		Screen.waitUntil("the font is set", () -> bench.commandStack().canUndo());
		assertNull(view.fontPopup());
		assertEquals(64, first().getFont().getDigest().length());
		assertOneStep();
	}

	@Test
	void escapeBringsTheFirstFontBackAndLeavesNoStep() throws IOException {
		FontPopup popup = openList();
		Screen.key("Down");
		Screen.waitUntil("another font is tried", () -> !family().equals("Liberation Sans"));
		assertFalse(text(bench.document().job()).equals(before));
		Screen.key("Escape");
		Screen.waitUntil("the list is closed", popup.shell()::isDisposed);
		assertEquals(before, text(bench.document().job()));
		assertFalse(bench.commandStack().canUndo());
		assertEquals("Liberation Sans", field().text());
	}

	@Test
	void clickElsewhereGivesUpToo() throws IOException {
		FontPopup popup = openList();
		Screen.key("Down");
		Screen.waitUntil("another font is tried", () -> !family().equals("Liberation Sans"));
		Screen.click(canvas(), 5, 5);
		Screen.waitUntil("the list is closed", popup.shell()::isDisposed);
		assertEquals(before, text(bench.document().job()));
		assertFalse(bench.commandStack().canUndo());
	}

	@Test
	void typingFiltersAndEnterTakesTheFirst() throws IOException {
		FontPopup popup = openList();
		int all = popup.list().families().size();
		Screen.type("deja mono");
		assertEquals(List.of("DejaVu Sans Mono"), popup.list().families().stream().map(FontFamily::name).toList());
		assertTrue(all > 3);
		Screen.key("Return");
		Screen.waitUntil("the font is set", () -> family().equals("DejaVu Sans Mono"));
		assertOneStep();
	}

	@Test
	void clickTriesARowAndDoubleClickKeepsIt() throws IOException {
		FontPopup popup = openList();
		Screen.type("deja");
		Rectangle row = popup.list().row(1);
		String name = popup.list().families().get(1).name();
		Screen.doubleClick(popup.list(), row.x + 20, row.y + row.height / 2);
		Screen.waitUntil("the list is closed", popup.shell()::isDisposed);
		Screen.waitUntil("the font is set", () -> bench.commandStack().canUndo());
		assertEquals(name, family());
		assertOneStep();
	}

	@Test
	void rowsAreDrawnWithTheWordsInTheFontsOwnOutlines() throws IOException {
		FontPopup popup = openList();
		Screen.type("liberation");
		FontList list = popup.list();
		Screen.waitUntil("all samples are drawn", () -> {
			ImageData picture = Screen.picture(list);
			for (int i = 0; i < list.families().size(); i++) {
				if (ink(picture, list.sample(i)) < 60) {
					return false;
				}
			}
			return true;
		});
		ImageData picture = Screen.picture(list);
		Screen.keep(picture, "fontList");
		Screen.keep(Screen.picture(PlatformUI.getWorkbench().getActiveWorkbenchWindow().getShell()), "fontChoice");
		// a monospaced and a proportional face do not make the same picture of the same words
		assertTrue(list.families().size() >= 3);
		assertTrue(ink(picture, list.sample(0)) != ink(picture, list.sample(1))
				|| ink(picture, list.sample(1)) != ink(picture, list.sample(2)));
	}

	private static int ink(ImageData picture, Rectangle box) {
		RGB ground = Screen.pixel(picture, box.x + box.width - 1, box.y);
		int count = 0;
		for (int y = box.y; y < box.y + box.height; y++) {
			for (int x = box.x; x < box.x + box.width; x++) {
				RGB seen = Screen.pixel(picture, x, y);
				if (Math.abs(seen.red - ground.red) + Math.abs(seen.green - ground.green)
						+ Math.abs(seen.blue - ground.blue) > 200) {
					count++;
				}
			}
		}
		return count;
	}

	private static List<FontVerdict> known(FontPopup popup) {
		return popup.list().families().stream().map(popup::verdict).toList();
	}

	private static void waitUntilMeasured(FontPopup popup) {
		Screen.waitUntil("all fonts are measured", () -> !known(popup).contains(null));
	}

	@Test
	void rowsSayWhetherTheirFontCutsAndTheFootWhatItSaysOfItsLicence() throws IOException {
		FontPopup popup = openList();
		Screen.waitUntil("the selected font is measured", () -> popup.verdict(popup.list().selection()) != null);
		FontVerdict verdict = popup.verdict(popup.list().selection());
		// a cap height of 20 mm in card is a little too low, as the command line says too
		assertTrue(verdict.word().matches("not below 2[12](\\.\\d)? mm"), verdict.word());
		assertTrue(verdict.facts().startsWith("7 pieces"), verdict.facts());
		Screen.waitUntil("the foot tells", () -> popup.foot().contains("is for the licence to say"));
		assertTrue(popup.foot().endsWith(verdict.licence()));
		Screen.settle();
		Screen.keep(Screen.picture(PlatformUI.getWorkbench().getActiveWorkbenchWindow().getShell()), "fontVerdicts");
		Screen.keepScreen("fontVerdictsScreen");
		Screen.key("Escape");
		Screen.waitUntil("the list is closed", popup.shell()::isDisposed);
		assertEquals(before, text(bench.document().job()));
		assertFalse(bench.commandStack().canUndo());
	}

	@Test
	void tabAndArrowsPutTheFittestFirstAndTheChoiceIsOneStep() throws IOException {
		FontPopup popup = openList();
		Screen.type("sans");
		List<FontFamily> byName = popup.list().families();
		Screen.key("Tab");
		Screen.key("Right");
		waitUntilMeasured(popup);
		Screen.waitUntil("the list is put in order", () -> !popup.list().families().equals(byName));
		List<FontVerdict> fittest = known(popup);
		assertEquals(fittest.stream().sorted(FontVerdict.FITTEST).toList(), fittest);
		assertEquals("Liberation Sans", popup.list().selection().name());
		Screen.key("Right");
		List<FontVerdict> tallest = known(popup);
		assertEquals(tallest.stream().sorted(FontVerdict.TALLEST).map(FontVerdict::xHeight).toList(),
				tallest.stream().map(FontVerdict::xHeight).toList());
		Screen.key("shift+Tab");
		Screen.waitUntil("the filter listens", () -> popup.filterField().isFocusControl());
		int at = popup.list().families().indexOf(popup.list().selection());
		Screen.key(at == 0 ? "Down" : "Up");
		String next = popup.list().selection().name();
		Screen.waitUntil("the bench shows " + next, () -> family().equals(next));
		Screen.key("Return");
		Screen.waitUntil("the font is set", () -> bench.commandStack().canUndo());
		assertOneStep();
	}

	@Test
	void styleIsChosenBesideTheFamily() throws IOException {
		select(made.first);
		Screen.waitUntil("the font is known", () -> field().text().equals("Liberation Sans"));
		choose("Style", "Bold");
		Screen.waitUntil("the style is set", () -> "Bold".equals(first().getFont().getStyle()));
		assertEquals("Liberation Sans", family());
		assertOneStep();
	}

	@Test
	void missingFontIsShownAsSuchWithItsNameKept() throws IOException {
		select(made.first);
		edits().execute(ChangeWording.font(first(), Jobs.font("Harbour Script", null, null, null)));
		Screen.waitUntil("the field says so", () -> field().isMissing());
		assertEquals("Harbour Script (missing)", field().text());
		Screen.keep(Screen.picture(view.field("Font")), "fontMissing");
		assertOneStep();
	}

	@Test
	void severalFontsAreMixedAndSetInOneStep() throws IOException {
		edits().execute(ChangeWording.font(second(), Jobs.font("DejaVu Serif", null, null, null)));
		String mixed = text(bench.document().job());
		select(made.first, made.second);
		assertEquals("mixed", field().text());
		Screen.click(field(), 20, 8);
		Screen.waitUntil("the list is open", () -> view.fontPopup() != null
				&& view.fontPopup().filterField().isFocusControl());
		Screen.type("liberation mono");
		Screen.key("Return");
		Screen.waitUntil("both are set", () -> "Liberation Mono".equals(second().getFont().getName())
				&& "Liberation Mono".equals(family()));
		Screen.waitUntil("it is a step", () -> bench.commandStack().getCommands().length == 2);
		bench.commandStack().undo();
		assertEquals(mixed, text(bench.document().job()));
	}

	@Test
	void twoThousandFontsOpenAndScrollAtOnce() {
		FontEntry real = FontLibraries.installed().sources().stream()
				.flatMap(source -> source.fonts(Monitor.NONE).stream()).findFirst().orElseThrow();
		List<FontFamily> many = new ArrayList<>();
		for (int i = 0; i < 2000; i++) {
			String name = String.format("Ferry %04d", i);
			many.add(new FontFamily(name, List.of(new FontEntry(new FontNames(name, "Regular", name, name), name,
					real::open, real::digest))));
		}
		Shell shell = new Shell(Display.getCurrent());
		try {
			shell.setLayout(new FillLayout(SWT.VERTICAL));
			FontList list = new FontList(shell, family -> {
			}, () -> {
			});
			shell.setSize(460, 380);
			shell.open();
			Screen.settle();
			list.show(many, "Harbour Lane");
			for (int i = 0; i < 250; i++) {
				list.go(list.page());
				list.update();
			}
			assertEquals(1999, list.families().indexOf(list.selection()));
		} finally {
			shell.dispose();
		}
	}
}
