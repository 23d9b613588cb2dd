package org.frisket.ui.views.internal.properties.wording;

import java.util.function.BiFunction;
import java.util.function.DoubleFunction;
import java.util.function.Function;
import java.util.function.Supplier;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.frisket.editing.Edit;
import org.frisket.model.Wording;
import org.frisket.ui.views.internal.properties.Slide;
import org.frisket.ui.views.internal.properties.Subject;
import org.frisket.ui.views.internal.properties.fields.AngleField;
import org.frisket.ui.views.internal.properties.fields.Entry;
import org.frisket.ui.views.internal.properties.fields.Form;
import org.frisket.ui.views.internal.properties.fields.LengthField;
import org.frisket.ui.views.internal.properties.fields.Tick;

/** A section on the selected wordings. A field is empty where they differ, and sets them all as one step. */
public abstract class WordingPart extends Form {

	protected final Subject subject;

	protected WordingPart(Composite parent, String title, boolean folded, Subject subject) {
		super(parent, title, folded);
		this.subject = subject;
	}

	/** Whether there is something to set here for what is selected. */
	public boolean isWanted() {
		return !subject.wordings().isEmpty() && subject.range().isEmpty();
	}

	protected final void each(Function<Wording, Edit> change) {
		subject.execute(subject.wordings(), change);
	}

	protected final Edit together(Function<Wording, Edit> change) {
		return Subject.together(subject.wordings(), change);
	}

	protected final <V> Supplier<V> common(Function<Wording, V> value) {
		return () -> Subject.common(subject.wordings(), value);
	}

	/** An entry for a length in mm; what is typed is done to the value of each wording. */
	protected final Entry length(Composite row, LengthField range, Function<Wording, Double> value,
			BiFunction<Wording, Double, Edit> change) {
		return add(new Entry(row, SWT.SINGLE, () -> {
			Double mm = Subject.common(subject.wordings(), value);
			return mm == null ? null : LengthField.text(mm);
		}, typed -> each(w -> change.apply(w, range.parse(typed, value.apply(w))))));
	}

	/** An entry for a length of which 0 is shown as an empty field with a hint, and the other way round. */
	protected final Entry lengthOrNone(Composite row, String none, LengthField range, Function<Wording, Double> value,
			BiFunction<Wording, Double, Edit> change) {
		return add(new Entry(row, SWT.SINGLE, () -> {
			Double mm = Subject.common(subject.wordings(), value);
			return mm == null ? null : mm == 0 ? "" : LengthField.text(mm); //$NON-NLS-1$
		}, typed -> each(w -> change.apply(w, typed.isBlank() ? 0 : range.parse(typed, value.apply(w)))))
				.withHint(none));
	}

	/** An entry for degrees. */
	protected final Entry angle(Composite row, Function<Wording, Double> value,
			BiFunction<Wording, Double, Edit> change) {
		return add(new Entry(row, SWT.SINGLE, () -> {
			Double degrees = Subject.common(subject.wordings(), value);
			return degrees == null ? null : AngleField.text(degrees);
		}, typed -> each(w -> change.apply(w, AngleField.parse(typed, value.apply(w))))));
	}

	protected final void slide(Composite row, double least, double most, double step, Function<Wording, Double> value,
			BiFunction<Wording, Double, Edit> change) {
		DoubleFunction<Edit> edit = number -> together(w -> change.apply(w, number));
		add(new Slide(row, subject, least, most, step, common(value), edit));
	}

	/** @return where the tick is, a row of its own */
	protected final Composite tick(String name, Function<Wording, Boolean> value,
			BiFunction<Wording, Boolean, Edit> change) {
		Composite row = wide(name);
		add(new Tick(row, name, common(value), on -> each(w -> change.apply(w, on))));
		return row;
	}
}
