package org.frisket.editing.elements;

import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.osgi.util.NLS;
import org.frisket.editing.RecordingEdit;
import org.frisket.editing.internal.Targets;
import org.frisket.model.Element;

/** Gives elements a name of their own; a blank one leaves them to be called by what they are. */
public final class RenameElements extends RecordingEdit {

	private final Set<Element> elements;
	private final String elementName;

	public RenameElements(List<? extends Element> elements, String name) {
		super(NLS.bind(Messages.RenameElements_name, Targets.spoken(elements)));
		this.elements = new LinkedHashSet<>(elements);
		this.elementName = name == null || name.isBlank() ? null : name.strip();
	}

	@Override
	public boolean canApply() {
		return Targets.freeInOneJob(elements)
				&& elements.stream().anyMatch(element -> !Objects.equals(elementName, element.getName()));
	}

	@Override
	protected Collection<? extends EObject> scope() {
		return elements;
	}

	@Override
	protected void change() {
		elements.forEach(element -> element.setName(elementName));
	}
}
