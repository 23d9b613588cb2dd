package org.frisket.editing.elements;

import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.osgi.util.NLS;
import org.frisket.editing.RecordingEdit;
import org.frisket.editing.internal.Removal;
import org.frisket.editing.internal.Targets;
import org.frisket.model.Element;
import org.frisket.model.Job;
import org.frisket.model.Jobs;

/** Deletes elements, and the mats that then have nothing left to stand behind. */
public final class DeleteElements extends RecordingEdit {

	private final Set<Element> elements;

	public DeleteElements(List<? extends Element> elements) {
		super(NLS.bind(Messages.DeleteElements_name, Targets.spoken(elements)));
		this.elements = new LinkedHashSet<>(elements);
	}

	/** Nothing is deleted from a locked layer, not even a mat that has lost what it followed. */
	@Override
	public boolean canApply() {
		return Targets.freeInOneJob(elements) && Targets.freeInOneJob(doomed());
	}

	@Override
	protected Collection<? extends EObject> scope() {
		return List.of(job());
	}

	@Override
	protected void change() {
		Removal.remove(job(), elements);
	}

	private Job job() {
		return Jobs.jobOf(elements.iterator().next());
	}

	private Set<Element> doomed() {
		return Removal.of(job(), elements);
	}
}
