package org.frisket.ui.tests;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.nio.file.DirectoryNotEmptyException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.eclipse.jface.dialogs.Dialog;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.frisket.material.ShelvedStock;
import org.frisket.material.Stock;
import org.frisket.material.StockFamily;
import org.frisket.material.StockField;
import org.frisket.material.StockShelf;
import org.frisket.material.sizes.Formats;
import org.frisket.material.weights.BasisWeight;
import org.frisket.material.weights.Grade;
import org.frisket.material.weights.Thickness;
import org.frisket.studio.Studio;
import org.frisket.studio.StudioFolder;
import org.frisket.studio.store.Store;
import org.frisket.ui.bench.StudioChoice;
import org.frisket.ui.material.Material;
import org.frisket.ui.material.internal.StudioShelf;
import org.frisket.ui.material.internal.shelf.ShelfView;
import org.frisket.ui.material.internal.shelf.StockEditor;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;

/** The stock shelf of a studio that is there for one test only. */
abstract class OpenShelf extends OpenBench {

	protected Path home;
	protected ShelfView shelf;

	@BeforeEach
	protected void openShelf() throws Exception {
		home = Files.createTempDirectory("home");
		Studio.choose(Optional.of(home.resolve("studio")));
		List<Stock> first = first();
		if (!first.isEmpty()) {
			elsewhere(there -> there.put(first));
		}
		shelf = (ShelfView) page().showView(Material.SHELF_ID);
		page().activate(shelf);
		StudioShelf.get().refresh();
		waitFor(first.size());
		focus();
	}

	@AfterEach
	protected void backToTheUsualStudio() throws Exception {
		Arrays.stream(Display.getCurrent().getShells()).filter(each -> each.getData() instanceof Dialog)
				.filter(each -> each.getParent() != null && !each.isDisposed()).forEach(Shell::close);
		StudioChoice.apply();
		StudioShelf.get().refresh();
		Screen.waitUntil("the shelf is that of the usual studio", () -> StudioShelf.get().stocks().stream()
				.noneMatch(each -> each.stock().name().startsWith("Harbour")));
		try (Store none = Store.open(new StudioFolder(home.resolve("studio")), StockShelf.AREA);
				Stream<Path> all = Files.walk(home)) {
			// nobody has it open any more
			for (Path each : all.sorted(Comparator.reverseOrder()).toList()) {
				Files.deleteIfExists(each);
			}
		} catch (DirectoryNotEmptyException closing) {
			// what the store leaves when it is closed
		}
	}

	/** What lies there before the workbench looks. */
	protected List<Stock> first() {
		return List.of(
				Stock.named("Harbour card, red #c02020").family(StockFamily.CARD).colour("red #c02020")
						.basisWeight(new BasisWeight(new BigDecimal(65), Grade.COVER)).sizes(List.of(Formats.parse("12x12in")))
						.onHand(new BigDecimal(3)).lowWater(new BigDecimal(5)).build(),
				Stock.named("Harbour film").family(StockFamily.FILM).caliper(new Thickness(new BigDecimal("0.08")))
						.sizes(List.of(Formats.parse("roll 305mm"))).onHand(new BigDecimal("4.5")).build(),
				Stock.named("Harbour board").family(StockFamily.BOARD).grammage(new BigDecimal(620)).colour("#4060a0")
						.caliper(new Thickness(BigDecimal.ONE)).onHand(new BigDecimal(40)).lowWater(new BigDecimal(10)).build());
	}

	/** What is done at the shelf by another desk. */
	protected interface Visit {
		void at(StockShelf there) throws Exception;
	}

	protected static void elsewhere(Visit visit) throws Exception {
		try (Store store = Store.open(Studio.folder(), StockShelf.AREA)) {
			visit.at(new StockShelf(store));
		}
	}

	protected static List<ShelvedStock> onDisk() throws Exception {
		try (Store store = Store.openForReading(Studio.folder(), StockShelf.AREA)) {
			return new StockShelf(store).list();
		}
	}

	protected static Stock onDisk(String name) throws Exception {
		return onDisk().stream().map(ShelvedStock::stock).filter(stock -> stock.name().equals(name)).findFirst()
				.orElseThrow(() -> new AssertionError(name));
	}

	protected void waitFor(int stocks) {
		Screen.waitUntil(stocks + " stocks are seen", () -> shelf.canvas().stocks().size() == stocks);
		Screen.settle();
	}

	protected void focus() {
		bringToFront(shelf.getSite().getShell());
		page().activate(shelf);
		Screen.waitUntil("the shelf listens", () -> shelf.canvas().isFocusControl() || shelf.canvas().setFocus()
				|| shelf.isEmptyPageShown());
		Screen.settle();
	}

	protected List<String> names() {
		return shelf.canvas().stocks().stream().map(Stock::name).toList();
	}

	protected static StockEditor editor(String title) {
		Screen.waitUntil("the form is open", () -> Dialogs.isOpen(title));
		Shell shell = Dialogs.shell(title);
		bringToFront(shell);
		return (StockEditor) shell.getData();
	}

	protected static void type(StockEditor editor, StockField field, String text) {
		type((Text) editor.field(field), text);
	}

	protected static void type(Text text, String words) {
		Screen.waitUntil("the field listens", () -> text.isFocusControl() || text.setFocus());
		Screen.settle();
		Screen.key("ctrl+a");
		Screen.type(words);
		Screen.waitUntil(words + " is typed", () -> text.getText().equals(words));
	}

	protected static void press(Control in, String button) {
		Control found = Dialogs.button(in, button);
		assertTrue(found.isEnabled(), button);
		Screen.click(found, found.getSize().x / 2, found.getSize().y / 2);
	}
}
