package org.frisket.ui.material.internal.shelf;

import java.util.Optional;

import org.eclipse.core.runtime.IAdapterFactory;
import org.frisket.material.Stock;
import org.frisket.ui.material.internal.StudioShelf;
import org.frisket.ui.views.StockNotes;

/** Has the stack show the names and the thickness of what lies on the shelf. */
public final class ShelfNotes implements IAdapterFactory, StockNotes {

	@Override
	public <T> T getAdapter(Object stack, Class<T> wanted) {
		return wanted == StockNotes.class ? wanted.cast(this) : null;
	}

	@Override
	public Class<?>[] getAdapterList() {
		return new Class<?>[] { StockNotes.class };
	}

	@Override
	public Optional<Note> of(String id) {
		return StudioShelf.get().find(id).map(shelved -> note(shelved.stock()));
	}

	private static Note note(Stock stock) {
		return new Note(stock.name(),
				stock.caliper().map(caliper -> caliper.thickness().mm().doubleValue()).orElse(0.0));
	}

	@Override
	public Runnable watch(Runnable changed) {
		StudioShelf.get().addListener(changed);
		return () -> StudioShelf.get().removeListener(changed);
	}
}
