package org.frisket.editing.sheets;

import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.Set;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.osgi.util.NLS;
import org.frisket.editing.RecordingEdit;
import org.frisket.model.Placement;

/** Takes parts off their sheets; the job keeps what they are made of. */
public final class RemovePlacements extends RecordingEdit {

	private final Set<Placement> placements;

	public RemovePlacements(Collection<Placement> placements) {
		super(NLS.bind(Messages.RemovePlacements_name, SheetTargets.spoken(placements)));
		this.placements = new LinkedHashSet<>(placements);
	}

	@Override
	public boolean canApply() {
		return SheetTargets.inOneJob(placements);
	}

	@Override
	protected Collection<? extends EObject> scope() {
		return SheetTargets.sheetsOf(placements);
	}

	@Override
	protected void change() {
		placements.forEach(each -> SheetTargets.sheetOf(each).getPlacements().remove(each));
	}
}
