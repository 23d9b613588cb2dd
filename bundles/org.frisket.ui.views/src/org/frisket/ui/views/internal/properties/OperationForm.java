package org.frisket.ui.views.internal.properties;

import java.util.List;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.frisket.editing.ChangeOperation;
import org.frisket.model.Element;
import org.frisket.model.OperationKind;
import org.frisket.ui.views.internal.OperationText;

/** What is done along the outlines of the selection, and how often. */
final class OperationForm extends Form {

	private static final int MOST_PASSES = 20;

	private final Subject subject;

	OperationForm(Composite parent, Subject subject) {
		super(parent, Messages.OperationForm_title);
		this.subject = subject;
		add(new Choice<>(row(Messages.OperationForm_kind), List.of(OperationKind.values()), OperationText::of,
				() -> Subject.common(subject.elements(), OperationForm::kind),
				kind -> subject.execute(ChangeOperation.kind(subject.elements(), kind))));
		add(new Entry(this, Messages.OperationForm_passes, SWT.SINGLE, this::passes, typed -> subject.execute(
				ChangeOperation.passes(subject.elements(), NumberField.parseWhole(typed, 1, MOST_PASSES)))));
	}

	/** Null where there is not exactly one. */
	private static OperationKind kind(Element element) {
		return element.getOperations().size() == 1 ? element.getOperations().get(0).getKind() : null;
	}

	private String passes() {
		Integer passes = Subject.common(
				subject.elements().stream().flatMap(element -> element.getOperations().stream()).toList(),
				operation -> operation.getPasses());
		return passes == null ? null : String.valueOf(passes);
	}
}
