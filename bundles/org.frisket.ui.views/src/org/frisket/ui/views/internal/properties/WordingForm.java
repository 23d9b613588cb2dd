package org.frisket.ui.views.internal.properties;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.Supplier;

import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.frisket.editing.ChangeWording;
import org.frisket.editing.Edit;
import org.frisket.model.Alignment;
import org.frisket.model.FontRef;
import org.frisket.model.Wording;

/** What the selected wordings say and how they are set. */
final class WordingForm extends Form {

	private static final int TEXT_LINES = 3;
	private static final double LEAST_SPACING = 0.1;
	private static final double MOST_SPACING = 20;
	/** Beyond it a wording is no lettering any more, and the outlines of it would take all memory. */
	private static final int LONGEST_TEXT = 10_000;

	private final Subject subject;
	private final Choice<String> font;

	WordingForm(Composite parent, Subject subject) {
		super(parent, Messages.WordingForm_title);
		this.subject = subject;
		Entry text = add(new Entry(wide(Messages.WordingForm_text), SWT.MULTI | SWT.WRAP | SWT.V_SCROLL,
				() -> Subject.common(subject.wordings(), Wording::getText), this::setText));
		((GridData) text.control().getLayoutData()).heightHint = TEXT_LINES * text.control().getLineHeight();
		text.control().setToolTipText(Messages.WordingForm_textTip);
		font = add(new Choice<>(row(Messages.WordingForm_font), List.of(), Function.identity(), this::family,
				this::setFamily));
		add(new Entry(this, Messages.WordingForm_height, SWT.SINGLE, length(Wording::getHeight),
				typed -> each(w -> ChangeWording.height(w, LengthField.SIZE.parse(typed, w.getHeight())))));
		add(new Entry(this, Messages.WordingForm_lineSpacing, SWT.SINGLE, this::lineSpacing,
				typed -> each(w -> ChangeWording.lineSpacing(w, NumberField.parse(typed, LEAST_SPACING, MOST_SPACING)))));
		add(new Entry(this, Messages.WordingForm_tracking, SWT.SINGLE, length(Wording::getTracking),
				typed -> each(w -> ChangeWording.tracking(w, LengthField.ANY.parse(typed, w.getTracking())))));
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
		FontFamilies.load(parent, this::setFamilies);
	}

	private void each(Function<Wording, Edit> change) {
		subject.execute(subject.wordings(), change);
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
		if (text.length() > LONGEST_TEXT) {
			throw new IllegalArgumentException(Messages.WordingForm_textTooLong);
		}
		each(w -> ChangeWording.text(w, text));
	}

	private String family() {
		FontRef common = Subject.common(subject.wordings(), Wording::getFont);
		return common != null ? common.getName()
				: Subject.common(subject.wordings(), w -> w.getFont() == null ? null : w.getFont().getName());
	}

	private void setFamily(String family) {
		List<Wording> wordings = subject.wordings();
		FontFamilies.open(font.control(), family, reference -> {
			subject.execute(wordings, w -> ChangeWording.font(w, reference));
			font.refresh();
		});
	}

	private void setFamilies(List<String> families) {
		font.setValues(families);
	}

	@Override
	void reset() {
		String family = family();
		// the job may name a font that is not at hand
		if (family != null && !font.values().contains(family)) {
			List<String> more = new ArrayList<>(font.values());
			more.add(0, family);
			font.setValues(more);
		}
		super.reset();
	}

	private static String name(Alignment alignment) {
		return switch (alignment) {
		case LEFT -> Messages.WordingForm_left;
		case CENTRE -> Messages.WordingForm_centre;
		case RIGHT -> Messages.WordingForm_right;
		};
	}
}
