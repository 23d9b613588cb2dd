package org.frisket.ui.sheets.internal.sheets;

import java.util.function.Consumer;

import org.eclipse.osgi.util.NLS;
import org.frisket.geometry.Bounds;
import org.frisket.model.Sheet;
import org.frisket.sheets.leftovers.Leftover;
import org.frisket.sheets.leftovers.Leftovers;
import org.frisket.studio.Studio;
import org.frisket.studio.store.Store;
import org.frisket.ui.LengthText;
import org.frisket.ui.studio.StoreJob;

/** Puts a free piece of a sheet among the leftovers of the studio, and takes away one that was cut. */
final class KeptOffcut {

	private KeptOffcut() {
	}

	/** @param piece in mm @param told on the UI thread what has come of it, a little later */
	static void keep(Sheet sheet, Bounds piece, Consumer<String> told) {
		String stock = sheet.getStock();
		String colour = sheet.getColour();
		StoreJob.Task<Leftover> task = () -> {
			try (Store store = Store.open(Studio.folder(), Leftovers.AREA)) {
				return new Leftovers(store).keep(stock, colour, piece.width(), piece.height());
			}
		};
		new StoreJob<>(Messages.KeptOffcut_job, task,
				kept -> told.accept(
						NLS.bind(Messages.KeptOffcut_kept, LengthText.size(kept.width(), kept.height()), kept.id())),
				told).schedule();
	}

	/** @param leftover its id @param told on the UI thread what has come of it, a little later */
	static void use(String leftover, Consumer<String> told) {
		StoreJob.Task<Boolean> task = () -> {
			try (Store store = Store.open(Studio.folder(), Leftovers.AREA)) {
				return new Leftovers(store).use(leftover);
			}
		};
		new StoreJob<>(Messages.KeptOffcut_useJob, task,
				was -> told.accept(NLS.bind(was ? Messages.KeptOffcut_used : Messages.KeptOffcut_wasUsed, leftover)), told)
						.schedule();
	}
}
