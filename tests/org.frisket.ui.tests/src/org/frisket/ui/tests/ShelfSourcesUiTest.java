package org.frisket.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.frisket.material.Stock;
import org.frisket.material.StockField;
import org.frisket.material.weights.Grade;
import org.frisket.ui.material.internal.shelf.CatalogueDialog;
import org.frisket.ui.material.internal.shelf.StockEditor;
import org.junit.jupiter.api.Test;

/** How stock comes onto an empty shelf: from a catalogue, from a pack, from a table. */
class ShelfSourcesUiTest extends OpenShelf {

	@Override
	protected List<Stock> first() {
		return List.of();
	}

	private static Text field(Shell shell, String label, int which) {
		return Dialogs.all(shell).filter(Text.class::isInstance).map(Text.class::cast)
				.filter(text -> label.equals(text.getData())).skip(which).findFirst().orElseThrow();
	}

	@Test
	void emptyShelfOffersTheCatalogueAndWhatIsTakenLiesThere() throws Exception {
		assertTrue(shelf.isEmptyPageShown());
		Screen.keepScreen("stock-shelf-empty");
		Control view = shelf.canvas().getParent();
		press(view, "Take from a catalogue…");
		Screen.waitUntil("the catalogues are open", () -> Dialogs.isOpen("Catalogues of Stock"));
		Shell shell = Dialogs.shell("Catalogues of Stock");
		bringToFront(shell);
		CatalogueDialog dialog = (CatalogueDialog) shell.getData();
		Screen.waitUntil("they are read", () -> dialog.canvas().stocks().size() > 10);
		Screen.type("felt 80");
		Screen.waitUntil("only the felt card is left", () -> dialog.canvas().stocks().size() == 1);
		Screen.keep(Screen.picture(shell), "stock-catalogue");
		Screen.key("Return");
		waitFor(1);
		assertEquals("Felt card 80 lb", names().get(0));
		assertFalse(shelf.isEmptyPageShown());
		Screen.waitUntil("it cannot be taken twice", () -> !Dialogs.button(shell, "Take").isEnabled());
		shell.close();
		focus();
		Screen.key("ctrl+z");
		Screen.waitUntil("the shelf is empty again", shelf::isEmptyPageShown);
		assertTrue(onDisk().isEmpty());
	}

	@Test
	void packThatSaysPoundsIsWeighedAndMeasuredAndDescribed() throws Exception {
		shelf.actions().studyPack();
		Shell shell = Dialogs.shell("What a Pack Holds");
		bringToFront(shell);
		type(field(shell, "Weight", 0), "10 pt");
		assertTrue(Dialogs.all(shell).map(Dialogs::text).anyMatch(text -> text.contains("perhaps 282 g/m² if it is coated")));
		type(field(shell, "Weight", 0), "65 lb");
		String said = String.join("\n", Dialogs.all(shell).map(Dialogs::text).toList());
		assertTrue(said.contains("175.8 g/m² as cover") && said.contains("96.2 g/m² as text"), said);
		assertFalse(Dialogs.button(shell, "Put into the form").isEnabled(), "nothing is known yet");
		type(field(shell, "Size", 0), "12x12in");
		type(field(shell, "Sheets", 0), "10");
		type(field(shell, "Mass", 0), "163.3 g");
		type(field(shell, "Height", 0), "10mm + 2.5mm");
		type(field(shell, "Sheets", 1), "50");
		Screen.keep(Screen.picture(shell), "stock-pack");
		press(shell, "Put into the form");
		StockEditor form = editor("New Stock");
		assertEquals("65", ((Text) form.field(StockField.BASIS_WEIGHT)).getText());
		type(form, StockField.NAME, "Harbour card");
		Screen.key("Return");
		waitFor(1);
		Stock made = onDisk("Harbour card");
		assertEquals(Grade.COVER, made.basisWeight().orElseThrow().grade());
		assertEquals(new BigDecimal("0.25"), made.statedCaliper().orElseThrow().thickness().mm());
		assertEquals("harbour-card", made.id());
	}

	@Test
	void badRowOfATableIsNamedAndTheGoodOnesAreTakenInOneStep() throws Exception {
		Path table = Files.writeString(folder.resolve("stock.csv"), """
				name;family;grammage g/m²;on hand
				Harbour paper;paper;120;250
				Harbour card;cardboard;216;10
				Harbour foil;film;80;1,5
				""", StandardCharsets.UTF_8);
		shelf.actions().importTable(table);
		Screen.waitUntil("the table is read", () -> Dialogs.isOpen("Import Stock") && problems().length > 0);
		Shell shell = Dialogs.shell("Import Stock");
		assertEquals(1, problems().length, String.join("\n", problems()));
		assertTrue(problems()[0].contains("3") && problems()[0].contains("cardboard"), problems()[0]);
		Screen.keep(Screen.picture(shell), "stock-import");
		assertFalse(Dialogs.button(shell, "Take In").isEnabled(), "nothing is left out unasked");
		bringToFront(shell);
		Button skip = Dialogs.button(shell, "Leave out the bad rows");
		Screen.click(skip, 10, skip.getSize().y / 2);
		press(shell, "Take In");
		waitFor(2);
		assertEquals(List.of("Harbour foil", "Harbour paper"), names());
		Screen.waitUntil("the dialog is closed", () -> !Dialogs.isOpen("Import Stock"));
		Path out = folder.resolve("out.csv");
		shelf.actions().exportTable(out);
		Screen.waitUntil("the table is written", () -> Files.exists(out));
		assertTrue(Files.readString(out).contains("Harbour paper"));
		focus();
		Screen.key("ctrl+z");
		Screen.waitUntil("all rows are gone", shelf::isEmptyPageShown);
	}

	private static String[] problems() {
		return Dialogs.all(Dialogs.shell("Import Stock")).filter(org.eclipse.swt.widgets.List.class::isInstance)
				.map(list -> ((org.eclipse.swt.widgets.List) list).getItems()).findFirst().orElse(new String[0]);
	}
}
