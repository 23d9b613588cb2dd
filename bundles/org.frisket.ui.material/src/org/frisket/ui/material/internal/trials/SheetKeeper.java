package org.frisket.ui.material.internal.trials;

import java.time.LocalDate;
import java.util.function.Consumer;

import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.widgets.Display;
import org.frisket.material.desk.Numbering;
import org.frisket.material.desk.SheetPlan;
import org.frisket.material.trials.TestSheet;
import org.frisket.ui.material.internal.machines.StudioDesk;

/** Keeps sheets in the studio's store, off the UI thread. */
final class SheetKeeper {

	private static final String WORD = "sheet"; //$NON-NLS-1$
	private final Consumer<String> failed;
	private int saving;

	/** @param failed told why something could not be kept */
	SheetKeeper(Consumer<String> failed) {
		this.failed = failed;
	}

	/** Makes a sheet of a plan, with the next number. */
	void make(SheetPlan plan, Consumer<TestSheet> made) {
		StudioDesk.get().change(Messages.SheetKeeper_making, settings -> {
			TestSheet sheet = plan.sheet(Numbering.next(WORD, settings.sheets().stream().map(TestSheet::id).toList()),
					LocalDate.now());
			settings.save(sheet);
			return sheet;
		}, made, failed);
	}

	/**
	 * Keeps the verdicts of a sheet. Returns when that is done, since the workbench asks at once whether it went well; the
	 * screen goes on meanwhile.
	 */
	void save(TestSheet sheet, Runnable done, Runnable not) {
		saving++;
		StudioDesk.get().change(NLS.bind(Messages.SheetKeeper_saving, sheet.id()), settings -> {
			settings.save(sheet);
			return null;
		}, nothing -> {
			done.run();
			saving--;
		}, message -> {
			failed.accept(message);
			not.run();
			saving--;
		});
		Display display = Display.getCurrent();
		while (saving > 0 && !display.isDisposed()) {
			if (!display.readAndDispatch()) {
				display.sleep();
			}
		}
	}
}
