package org.frisket.editing.arranging;

import java.util.Collection;
import java.util.List;

import org.eclipse.emf.ecore.EObject;
import org.frisket.editing.RecordingEdit;
import org.frisket.model.Guide;
import org.frisket.model.Jobs;

/** Takes a guide away. */
public final class RemoveGuide extends RecordingEdit {

	private final Guide guide;

	public RemoveGuide(Guide guide) {
		super(Messages.RemoveGuide_name);
		this.guide = guide;
	}

	@Override
	public boolean canApply() {
		return Jobs.jobOf(guide) != null;
	}

	@Override
	protected Collection<? extends EObject> scope() {
		return List.of(Jobs.jobOf(guide));
	}

	@Override
	protected void change() {
		Jobs.jobOf(guide).getGuides().remove(guide);
	}
}
