package org.frisket.ui.material.internal.trials;

import java.util.Optional;

import org.eclipse.core.commands.operations.AbstractOperation;
import org.eclipse.core.commands.operations.IUndoContext;
import org.eclipse.core.runtime.IAdaptable;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.osgi.util.NLS;
import org.frisket.material.trials.CellPlace;
import org.frisket.material.trials.Verdict;

/** Judges a cell, or takes its verdict away. */
class MarkVerdict extends AbstractOperation {

	private final SheetModel model;
	private final CellPlace place;
	private final Optional<Verdict> before;
	private final Optional<Verdict> after;

	MarkVerdict(SheetModel model, IUndoContext context, CellPlace place, Optional<Verdict> verdict) {
		super(verdict.map(given -> NLS.bind(Messages.MarkVerdict_name, place, given.text()))
				.orElse(NLS.bind(Messages.MarkVerdict_clear, place)));
		this.model = model;
		this.place = place;
		before = model.sheet().verdict(place);
		after = verdict;
		addContext(context);
	}

	/** The cell was judged, or a verdict was taken back. */
	protected void judged() {
		// whoever wants to know says what to do
	}

	/** Whether it would change anything. */
	boolean isNews() {
		return !before.equals(after);
	}

	@Override
	public IStatus execute(IProgressMonitor monitor, IAdaptable info) {
		model.judge(place, after);
		judged();
		return Status.OK_STATUS;
	}

	@Override
	public IStatus redo(IProgressMonitor monitor, IAdaptable info) {
		return execute(monitor, info);
	}

	@Override
	public IStatus undo(IProgressMonitor monitor, IAdaptable info) {
		model.judge(place, before);
		judged();
		return Status.OK_STATUS;
	}
}
