package org.frisket.ui.material.internal.trials;

import java.util.Optional;

import org.frisket.geometry.Outline;
import org.frisket.geometry.PathData;
import org.frisket.material.tools.Machine;
import org.frisket.material.trials.CellPlace;
import org.frisket.material.trials.SheetLayout;
import org.frisket.material.trials.TestSheet;
import org.frisket.material.trials.Verdict;

/** The sheet of a page: planned, or cut and being judged. Only for the UI thread. */
final class SheetModel {

	private final Runnable changed;
	private TestSheet kept;
	private TestSheet sheet;
	private Machine machine = Machine.plain();
	private SheetLayout layout;
	private Outline labels = Outline.EMPTY;
	private CellPlace at = new CellPlace(0, 0);

	/** @param changed told when cells are judged or another one is looked at */
	SheetModel(Runnable changed) {
		this.changed = changed;
	}

	/** A sheet that is only planned; null while it cannot be made. */
	void plan(TestSheet planned, Machine on, double size) {
		kept = null;
		show(planned, on, size);
	}

	/** A sheet of the studio as it is kept. */
	void open(TestSheet stored, Machine on, double size) {
		kept = stored;
		show(stored, on, size);
	}

	private void show(TestSheet shown, Machine on, double size) {
		sheet = shown;
		machine = on;
		layout = shown == null ? null : new SheetLayout(shown, size);
		labels = shown == null ? Outline.EMPTY : PathData.parse(layout.labels());
		if (shown != null) {
			go(at.column(), at.row());
		}
		changed.run();
	}

	TestSheet sheet() {
		return sheet;
	}

	Machine machine() {
		return machine;
	}

	/** Null while there is no sheet. */
	SheetLayout layout() {
		return layout;
	}

	Outline labels() {
		return labels;
	}

	/** Whether the sheet is one of the studio's, so that it can be judged. */
	boolean isOpen() {
		return kept != null;
	}

	boolean isDirty() {
		return kept != null && !kept.verdicts().equals(sheet.verdicts());
	}

	/** What is shown is what is kept. */
	void kept() {
		kept = sheet;
		changed.run();
	}

	/** The cell that is looked at. */
	CellPlace at() {
		return at;
	}

	/** Looks at another cell, or the nearest there is. */
	void go(int column, int row) {
		if (sheet != null) {
			at = new CellPlace(Math.max(0, Math.min(sheet.across().values().size() - 1, column)),
					Math.max(0, Math.min(sheet.down().values().size() - 1, row)));
			changed.run();
		}
	}

	void judge(CellPlace place, Optional<Verdict> verdict) {
		sheet = sheet.judged(place, verdict);
		at = place;
		changed.run();
	}
}
