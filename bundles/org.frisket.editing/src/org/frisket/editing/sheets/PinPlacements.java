package org.frisket.editing.sheets;

import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.Set;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.osgi.util.NLS;
import org.frisket.editing.RecordingEdit;
import org.frisket.model.Placement;

/** Pins parts, so that they stay where they are when parts are laid again, or frees them. */
public final class PinPlacements extends RecordingEdit {

	private final Set<Placement> placements;
	private final boolean pinned;

	public PinPlacements(Collection<Placement> placements, boolean pinned) {
		super(NLS.bind(pinned ? Messages.PinPlacements_pin : Messages.PinPlacements_free,
				SheetTargets.spoken(placements)));
		this.placements = new LinkedHashSet<>(placements);
		this.pinned = pinned;
	}

	@Override
	public boolean canApply() {
		return SheetTargets.inOneJob(placements) && placements.stream().anyMatch(each -> each.isPinned() != pinned);
	}

	@Override
	protected Collection<? extends EObject> scope() {
		return placements;
	}

	@Override
	protected void change() {
		placements.forEach(each -> each.setPinned(pinned));
	}
}
