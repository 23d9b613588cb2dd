package org.frisket.editing.sheets;

import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.Set;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.osgi.util.NLS;
import org.frisket.editing.RecordingEdit;
import org.frisket.model.Placement;

/** Takes places off sheets whose parts are in no job any more. */
public final class ForgetMissing extends RecordingEdit {

	private final Set<Placement> missing;

	/** @param missing as the laid sheets have found them */
	public ForgetMissing(Collection<Placement> missing) {
		super(NLS.bind(Messages.ForgetMissing_name, SheetTargets.spoken(missing)));
		this.missing = new LinkedHashSet<>(missing);
	}

	@Override
	public boolean canApply() {
		return SheetTargets.inOneJob(missing);
	}

	@Override
	protected Collection<? extends EObject> scope() {
		return SheetTargets.sheetsOf(missing);
	}

	@Override
	protected void change() {
		missing.forEach(each -> SheetTargets.sheetOf(each).getPlacements().remove(each));
	}
}
