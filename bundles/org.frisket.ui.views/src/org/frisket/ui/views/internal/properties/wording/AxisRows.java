package org.frisket.ui.views.internal.properties.wording;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.frisket.editing.Edit;
import org.frisket.editing.wording.ChangeWording;
import org.frisket.model.Wording;
import org.frisket.prepare.letterforms.Letterforms;
import org.frisket.typography.face.Axis;
import org.frisket.typography.face.AxisSettings;
import org.frisket.typography.face.NamedInstance;
import org.frisket.ui.views.internal.properties.Slide;
import org.frisket.ui.views.internal.properties.fields.Choice;
import org.frisket.ui.views.internal.properties.fields.Entry;
import org.frisket.ui.views.internal.properties.fields.Field;
import org.frisket.ui.views.internal.properties.fields.Form;
import org.frisket.ui.views.internal.properties.fields.LengthField;
import org.frisket.ui.views.internal.properties.fields.NumberField;

/** The named styles of a variable font, and a row with a slider for each of its axes. */
final class AxisRows {

	private static final int SPACE_PX = 4;
	/** Ranges from which whole numbers, and tenths, are fine enough. */
	private static final double WIDE = 50;
	private static final double NARROW = 5;

	private final WordingPart form;
	private final Composite list;
	private final List<Field> fields = new ArrayList<>();
	private Letterforms forms = Letterforms.NONE;

	AxisRows(WordingPart form) {
		this.form = form;
		list = new Composite(form.body(), SWT.NONE);
		GridLayoutFactory.fillDefaults().numColumns(2).spacing(2 * SPACE_PX, SPACE_PX).applyTo(list);
		GridDataFactory.fillDefaults().grab(true, false).span(2, 1).exclude(true).applyTo(list);
	}

	void show(Letterforms newForms) {
		forms = newForms;
		fields.clear();
		for (var child : list.getChildren()) {
			child.dispose();
		}
		if (!forms.instances().isEmpty()) {
			addInstances();
		}
		forms.axes().forEach(this::addAxis);
		fields.forEach(Field::reset);
		refresh();
	}

	private void addInstances() {
		List<Optional<NamedInstance>> choices = new ArrayList<>();
		choices.add(Optional.empty());
		forms.instances().forEach(instance -> choices.add(Optional.of(instance)));
		Form.label(list, Messages.AxisRows_instance);
		fields.add(new Choice<>(Form.cell(list, Messages.AxisRows_instance, 1), choices,
				choice -> choice.map(NamedInstance::name).orElse(Messages.AxisRows_own),
				form.common(w -> forms.instance(said(w))),
				choice -> choice.ifPresent(instance -> form.each(w -> axes(w, forms.with(said(w), instance))))));
	}

	private void addAxis(Axis axis) {
		String name = axis.name().isBlank() ? axis.tag() : NLS.bind(Messages.AxisRows_axis, axis.name(), axis.tag());
		Form.label(list, name);
		Composite row = Form.cell(list, name, 1);
		Entry entry = new Entry(row, SWT.SINGLE, () -> {
			Double value = form.<Double>common(w -> forms.value(axis, said(w))).get();
			return value == null ? null : LengthField.number(value);
		}, typed -> {
			double value = NumberField.parse(typed, axis.least(), axis.most());
			form.each(w -> axes(w, forms.with(said(w), axis, value)));
		});
		entry.control().setToolTipText(NLS.bind(Messages.AxisRows_range, new Object[] { LengthField.number(axis.least()),
				LengthField.number(axis.most()), LengthField.number(forms.value(axis, AxisSettings.NONE)) }));
		fields.add(entry);
		double range = axis.most() - axis.least();
		fields.add(new Slide(row, form.subject, axis.least(), axis.most(), range >= WIDE ? 1 : range >= NARROW ? 0.1 : 0.01,
				form.common(w -> forms.value(axis, said(w))),
				value -> form.together(w -> axes(w, forms.with(said(w), axis, value)))));
	}

	private static Edit axes(Wording wording, AxisSettings settings) {
		return ChangeWording.axes(wording, settings.toString());
	}

	/** What cannot be read counts as nothing; makeready says so. */
	private static AxisSettings said(Wording wording) {
		try {
			return AxisSettings.parse(Objects.requireNonNullElse(wording.getAxes(), "")); //$NON-NLS-1$
		} catch (IllegalArgumentException e) {
			return AxisSettings.NONE;
		}
	}

	public void refresh() {
		if (Form.show(list, !fields.isEmpty() && form.subject.range().isEmpty())) {
			Form.layout(list);
		}
		fields.forEach(Field::refresh);
	}
}
