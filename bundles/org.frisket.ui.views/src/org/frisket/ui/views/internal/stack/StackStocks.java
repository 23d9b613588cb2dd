package org.frisket.ui.views.internal.stack;

import java.util.Optional;

import org.eclipse.core.runtime.Platform;
import org.eclipse.swt.SWT;
import org.frisket.ui.views.StockNotes;

/** What the studio knows of the stocks of layers; nothing where no bundle brings it. */
final class StackStocks {

	private final StackCanvas canvas;
	private StockNotes notes;

	StackStocks(StackCanvas canvas) {
		this.canvas = canvas;
	}

	/** To be called when there is a job: who has none needs to know of no stock. */
	void watch() {
		if (notes == null) {
			notes = (StockNotes) Platform.getAdapterManager().loadAdapter(canvas, StockNotes.class.getName());
			if (notes != null) {
				Runnable end = notes.watch(canvas::refreshPicture);
				canvas.addListener(SWT.Dispose, event -> end.run());
			}
		}
	}

	Optional<StockNotes.Note> of(String id) {
		return notes == null ? Optional.empty() : notes.of(id);
	}
}
