package org.frisket.ui.views.internal.properties;

import java.util.List;
import java.util.function.Function;
import java.util.function.Supplier;

import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.frisket.editing.ChangeWording;
import org.frisket.editing.Edit;
import org.frisket.model.Alignment;
import org.frisket.model.Wording;
import org.frisket.typography.TextSetter;

/** What the selected wordings say and how they are set. */
final class WordingForm extends Form {

	private static final int TEXT_LINES = 3;
	private static final double LEAST_SPACING = 0.1;
	private static final double MOST_SPACING = 20;

	private final Subject subject;
	private final FontChoice font;

	WordingForm(Composite parent, Subject subject) {
		super(parent, Messages.WordingForm_title);
		this.subject = subject;
		Entry text = add(new Entry(wide(Messages.WordingForm_text), SWT.MULTI | SWT.WRAP | SWT.V_SCROLL,
				() -> Subject.common(subject.wordings(), Wording::getText), this::setText));
		((GridData) text.control().getLayoutData()).heightHint = TEXT_LINES * text.control().getLineHeight();
		text.control().setToolTipText(Messages.WordingForm_textTip);
		font = add(new FontChoice(this, subject));
		add(new Entry(this, Messages.WordingForm_height, SWT.SINGLE, length(Wording::getHeight),
				typed -> each(w -> ChangeWording.height(w, LengthField.SIZE.parse(typed, w.getHeight())))));
		Composite spacing = row(Messages.WordingForm_lineSpacing);
		add(new Entry(spacing, SWT.SINGLE, this::lineSpacing,
				typed -> each(w -> ChangeWording.lineSpacing(w, NumberField.parse(typed, LEAST_SPACING, MOST_SPACING)))));
		add(new Slide(spacing, subject, 0.5, 4, 0.05, common(Wording::getLineSpacing),
				factor -> together(w -> ChangeWording.lineSpacing(w, factor))));
		Composite tracking = row(Messages.WordingForm_tracking);
		add(new Entry(tracking, SWT.SINGLE, length(Wording::getTracking),
				typed -> each(w -> ChangeWording.tracking(w, LengthField.ANY.parse(typed, w.getTracking())))));
		add(new Slide(tracking, subject, -5, 15, 0.1, common(Wording::getTracking),
				mm -> together(w -> ChangeWording.tracking(w, mm))));
		add(new Choice<>(row(Messages.WordingForm_alignment), List.of(Alignment.values()), WordingForm::name,
				() -> Subject.common(subject.wordings(), Wording::getAlignment),
				alignment -> each(w -> ChangeWording.alignment(w, alignment))));
		add(new Tick(wide(Messages.WordingForm_kerning), Messages.WordingForm_kerning, flag(Wording::isKerning),
				on -> each(w -> ChangeWording.kerning(w, on))));
		add(new Tick(wide(Messages.WordingForm_ligatures), Messages.WordingForm_ligatures, flag(Wording::isLigatures),
				on -> each(w -> ChangeWording.ligatures(w, on))));
		add(new Tick(wide(Messages.WordingForm_joined), Messages.WordingForm_joined, flag(Wording::isJoined),
				on -> each(w -> on ? ChangeWording.join(w, w.getTouch()) : ChangeWording.part(w))));
		add(new Entry(this, Messages.WordingForm_touch, SWT.SINGLE, length(Wording::getTouch),
				typed -> each(w -> ChangeWording.join(w, LengthField.AMOUNT.parse(typed, w.getTouch())))));
	}

	private void each(Function<Wording, Edit> change) {
		subject.execute(subject.wordings(), change);
	}

	private Edit together(Function<Wording, Edit> change) {
		return Subject.together(subject.wordings(), change);
	}

	private Supplier<Double> common(Function<Wording, Double> value) {
		return () -> Subject.common(subject.wordings(), value);
	}

	private Supplier<String> length(Function<Wording, Double> value) {
		return () -> {
			Double mm = Subject.common(subject.wordings(), value);
			return mm == null ? null : LengthField.text(mm);
		};
	}

	private Supplier<Boolean> flag(Function<Wording, Boolean> value) {
		return () -> Subject.common(subject.wordings(), value);
	}

	private String lineSpacing() {
		Double factor = Subject.common(subject.wordings(), Wording::getLineSpacing);
		return factor == null ? null : LengthField.number(factor);
	}

	private void setText(String typed) {
		String text = typed.replace("\r\n", "\n"); //$NON-NLS-1$ //$NON-NLS-2$
		if (text.length() > TextSetter.LONGEST_TEXT) {
			throw new IllegalArgumentException(
					NLS.bind(Messages.WordingForm_textTooLong, TextSetter.LONGEST_TEXT));
		}
		each(w -> ChangeWording.text(w, text));
	}

	/** The choice of the font. */
	FontChoice font() {
		return font;
	}

	private static String name(Alignment alignment) {
		return switch (alignment) {
		case LEFT -> Messages.WordingForm_left;
		case CENTRE -> Messages.WordingForm_centre;
		case RIGHT -> Messages.WordingForm_right;
		case JUSTIFY -> Messages.WordingForm_justified;
		};
	}
}
