package org.frisket.editing.elements;

import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.osgi.util.NLS;
import org.frisket.editing.RecordingEdit;
import org.frisket.editing.internal.Groupings;
import org.frisket.editing.internal.Targets;
import org.frisket.model.Element;
import org.frisket.model.Group;
import org.frisket.model.Job;
import org.frisket.model.Jobs;

/**
 * Takes elements together. A group that is wholly among them becomes an inner one; elements of a group that is not leave
 * it, unless all are of that one: then they become a group within it.
 */
public final class GroupElements extends RecordingEdit {

	private final Set<Element> elements;
	private Group group;

	public GroupElements(List<? extends Element> elements) {
		super(NLS.bind(Messages.GroupElements_name, Targets.spoken(elements)));
		this.elements = new LinkedHashSet<>(elements);
	}

	@Override
	public boolean canApply() {
		return Targets.freeInOneJob(elements) && new Groupings.Parts(job(), elements).size() > 1;
	}

	@Override
	protected Collection<? extends EObject> scope() {
		return List.of(job());
	}

	@Override
	protected void change() {
		group = new Groupings.Parts(job(), elements).join(job());
	}

	/** The new group; null before the edit is applied. */
	public Group group() {
		return group;
	}

	private Job job() {
		return Jobs.jobOf(elements.iterator().next());
	}
}
