package org.frisket.ui.views.internal.properties;

import java.util.List;

import org.eclipse.swt.widgets.Composite;
import org.frisket.ui.views.internal.properties.fields.Form;

/** A section for elements of some kinds, seen where nothing else is selected. */
abstract class KindForm extends Form {

	protected final Subject subject;

	KindForm(Composite parent, String title, Subject subject) {
		super(parent, title);
		this.subject = subject;
	}

	/** Whether there is something to set here for what is selected. */
	public abstract boolean isWanted();

	/** The selected elements if all are of a kind; none otherwise. */
	final <T> List<T> all(Class<T> kind) {
		return subject.range().isEmpty() && subject.elements().stream().allMatch(kind::isInstance)
				? subject.elements().stream().map(kind::cast).toList()
				: List.of();
	}
}
