package org.frisket.editing.arranging;

import java.util.Collection;
import java.util.List;

import org.eclipse.emf.ecore.EObject;
import org.frisket.editing.RecordingEdit;
import org.frisket.model.Job;
import org.frisket.model.Jobs;

/** Lays a new guide. */
public final class AddGuide extends RecordingEdit {

	private final Job job;
	private final boolean across;
	private final double at;

	/**
	 * @param across whether it runs from left to right; otherwise from top to bottom
	 * @param at     its y in mm if it runs across, otherwise its x
	 */
	public AddGuide(Job job, boolean across, double at) {
		super(Messages.AddGuide_name);
		this.job = job;
		this.across = across;
		this.at = at;
	}

	/** A guide that lies exactly on another one would only be in the way. */
	@Override
	public boolean canApply() {
		return Double.isFinite(at)
				&& job.getGuides().stream().noneMatch(guide -> guide.isAcross() == across && guide.getAt() == at);
	}

	@Override
	protected Collection<? extends EObject> scope() {
		return List.of(job);
	}

	@Override
	protected void change() {
		Jobs.addGuide(job, across, at);
	}
}
