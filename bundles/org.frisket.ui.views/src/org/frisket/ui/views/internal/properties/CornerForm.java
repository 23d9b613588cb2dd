package org.frisket.ui.views.internal.properties;

import java.util.List;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.frisket.editing.shapes.RoundCorners;
import org.frisket.model.Element;
import org.frisket.model.Mat;
import org.frisket.ui.views.internal.properties.fields.Entry;
import org.frisket.ui.views.internal.properties.fields.LengthField;

/** How the corners of the selected outlines and combinations are rounded; those of mats stand with the mats. */
final class CornerForm extends KindForm {

	CornerForm(Composite parent, Subject subject) {
		super(parent, Messages.CornerForm_title, subject);
		add(new Entry(row(Messages.CornerForm_radius), SWT.SINGLE, () -> {
			Double mm = Subject.common(subject.elements(), RoundCorners::radius);
			return mm == null ? null : mm == 0 ? "" : LengthField.text(mm); //$NON-NLS-1$
		}, typed -> subject.execute(new RoundCorners(subject.elements(),
				typed.isBlank() ? 0 : LengthField.AMOUNT.parse(typed, common())))).withHint(Messages.CornerForm_none));
	}

	private double common() {
		Double mm = Subject.common(subject.elements(), RoundCorners::radius);
		return mm == null ? 0 : mm;
	}

	@Override
	public boolean isWanted() {
		List<Element> elements = subject.elements();
		return subject.range().isEmpty() && !elements.isEmpty()
				&& elements.stream().allMatch(element -> RoundCorners.concerns(element) && !(element instanceof Mat));
	}
}
