package org.frisket.editing.arranging;

import java.util.Collection;
import java.util.List;

import org.eclipse.emf.ecore.EObject;
import org.frisket.editing.RecordingEdit;
import org.frisket.model.Guide;
import org.frisket.model.Jobs;

/** Lays a guide to another place. */
public final class MoveGuide extends RecordingEdit {

	private final Guide guide;
	private final double at;

	/** @param at its y in mm if it runs across, otherwise its x */
	public MoveGuide(Guide guide, double at) {
		super(Messages.MoveGuide_name);
		this.guide = guide;
		this.at = at;
	}

	@Override
	public boolean canApply() {
		return Double.isFinite(at) && at != guide.getAt() && Jobs.jobOf(guide) != null;
	}

	@Override
	protected Collection<? extends EObject> scope() {
		return List.of(guide);
	}

	@Override
	protected void change() {
		guide.setAt(at);
	}
}
