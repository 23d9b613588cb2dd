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

/** Gives up the outermost groups of elements. Groups within them stay, and are then outermost themselves. */
public final class UngroupElements extends RecordingEdit {

	private final Set<Element> elements;

	public UngroupElements(List<? extends Element> elements) {
		super(NLS.bind(Messages.UngroupElements_name, Targets.spoken(elements)));
		this.elements = new LinkedHashSet<>(elements);
	}

	@Override
	public boolean canApply() {
		return Targets.freeInOneJob(elements) && !Groupings.outermost(job(), elements).isEmpty();
	}

	@Override
	protected Collection<? extends EObject> scope() {
		return List.of(job());
	}

	@Override
	protected void change() {
		List<Group> groups = job().getGroups();
		for (Group group : Groupings.outermost(job(), elements)) {
			int index = groups.indexOf(group);
			List<Group> inner = List.copyOf(group.getGroups());
			group.getElements().clear();
			groups.remove(group);
			groups.addAll(index, inner);
		}
	}

	private Job job() {
		return Jobs.jobOf(elements.iterator().next());
	}
}
