package org.frisket.ui.views.internal.properties;

import java.util.Objects;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.frisket.editing.elements.RenameElements;
import org.frisket.editing.elements.SetElements;
import org.frisket.model.Element;
import org.frisket.ui.views.internal.properties.fields.Entry;
import org.frisket.ui.views.internal.properties.fields.Form;
import org.frisket.ui.views.internal.properties.fields.Tick;

/** What the selected elements are called, and whether they are shown and locked. */
final class ElementForm extends Form {

	ElementForm(Composite parent, Subject subject) {
		super(parent, Messages.ElementForm_title);
		add(new Entry(this, Messages.ElementForm_name, SWT.SINGLE, () -> Subject.common(subject.elements(),
				element -> Objects.requireNonNullElse(element.getName(), "")), //$NON-NLS-1$
				typed -> subject.execute(new RenameElements(subject.elements(), typed)))
				.withHint(Messages.ElementForm_unnamed));
		add(new Tick(wide(Messages.ElementForm_visible), Messages.ElementForm_visible,
				() -> Subject.common(subject.elements(), Element::isVisible),
				visible -> subject.execute(SetElements.visible(subject.elements(), visible))));
		add(new Tick(wide(Messages.ElementForm_locked), Messages.ElementForm_locked,
				() -> Subject.common(subject.elements(), Element::isLocked),
				locked -> subject.execute(SetElements.locked(subject.elements(), locked))));
	}
}
