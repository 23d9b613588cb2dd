package org.frisket.ui.material.internal.shelf;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.widgets.Shell;
import org.frisket.material.InvalidStockException;
import org.frisket.material.ShelvedStock;
import org.frisket.material.Stock;
import org.frisket.material.StockExchange;
import org.frisket.material.StockField;
import org.frisket.material.shelf.StockChange;
import org.frisket.material.shelf.StockDraft;
import org.frisket.ui.LengthUnit;
import org.frisket.ui.material.internal.StudioShelf;

/** What is done at the shelf, each change one step of its undo. */
public final class ShelfActions {

	private final ShelfView view;
	private final StudioShelf shelf = StudioShelf.get();

	ShelfActions(ShelfView view) {
		this.view = view;
	}

	private Shell window() {
		return view.getSite().getShell();
	}

	static boolean isInches() {
		return LengthUnit.shown() == LengthUnit.INCH;
	}

	/** Opens an empty form. */
	public void create() {
		new StockEditor(window(), Optional.empty(), StockDraft.empty(isInches()), view.canvas()::select).open();
	}

	/** Opens the form of the selected stock. */
	public void edit() {
		view.canvas().selection().ifPresent(this::edit);
	}

	void edit(Stock stock) {
		shelf.find(stock.id()).ifPresent(seen -> new StockEditor(window(), Optional.of(seen),
				StockDraft.of(seen.stock(), isInches()), view.canvas()::select).open());
	}

	/** Opens the form of a new stock that begins like the selected one. */
	public void duplicate() {
		view.canvas().selection().ifPresent(stock -> {
			StockDraft draft = StockDraft.like(stock, isInches());
			draft.set(StockField.NAME, NLS.bind(Messages.ShelfActions_copy, stock.name()));
			new StockEditor(window(), Optional.empty(), draft, view.canvas()::select).open();
		});
	}

	/** Takes the selected stock off the shelf; undo brings it back. */
	public void remove() {
		view.canvas().selection().ifPresent(this::remove);
	}

	void remove(Stock stock) {
		Optional<ShelvedStock> seen = shelf.find(stock.id());
		if (seen.isPresent()) {
			shelf.change(NLS.bind(Messages.ShelfActions_remove, stock.name()),
					there -> new StockChange(List.of(StockExchange.remove(seen.get()))), view::say);
		}
	}

	/** So many sheets have come in, or, below 0, have been used. */
	void count(Stock stock, int more) {
		String label = NLS.bind(more > 0 ? Messages.ShelfActions_more : Messages.ShelfActions_fewer, stock.name());
		shelf.change(label, there -> {
			// whatever number another desk has made of it meanwhile
			ShelvedStock now = there.find(stock.id()).orElseThrow(() -> new IllegalArgumentException(
					NLS.bind(Messages.ShelfActions_gone, stock.name())));
			try {
				Stock counted = now.stock().withMore(BigDecimal.valueOf(more));
				return new StockChange(List.of(StockExchange.change(now, counted)));
			} catch (InvalidStockException none) {
				throw new IllegalArgumentException(NLS.bind(Messages.ShelfActions_none, stock.name()), none);
			}
		}, view::say);
	}

	/** Opens the catalogues. */
	public void takeFromCatalogue() {
		new CatalogueDialog(window()).open();
	}

	/** Opens the page that finds out what a pack holds. */
	public void studyPack() {
		new PackDialog(window(), found -> {
			StockDraft draft = StockDraft.empty(isInches());
			found.forEach(draft::set);
			new StockEditor(window(), Optional.empty(), draft, view.canvas()::select).open();
		}).open();
	}

	/** Asks for a table and shows what it would bring. */
	public void importTable() {
		TableFiles.toRead(window()).ifPresent(this::importTable);
	}

	/** Shows what a table would bring. */
	public void importTable(Path file) {
		new TableDialog(window(), file).open();
	}

	/** Asks where to, and writes all that is on the shelf as a table. */
	public void exportTable() {
		TableFiles.toWrite(window()).ifPresent(this::exportTable);
	}

	/** Writes all that is on the shelf as a table. */
	public void exportTable(Path file) {
		TableFiles.write(file, view::say);
	}

	/** Shows only what it is time to order, or everything again. */
	public void toggleLow() {
		view.showLow(!view.isLowShown());
	}
}
