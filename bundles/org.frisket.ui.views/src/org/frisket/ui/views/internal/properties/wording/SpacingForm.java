package org.frisket.ui.views.internal.properties.wording;

import java.util.List;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.frisket.editing.wording.ChangeWording;
import org.frisket.model.Alignment;
import org.frisket.model.Wording;
import org.frisket.ui.views.internal.properties.Subject;
import org.frisket.ui.views.internal.properties.fields.Choice;
import org.frisket.ui.views.internal.properties.fields.Entry;
import org.frisket.ui.views.internal.properties.fields.LengthField;
import org.frisket.ui.views.internal.properties.fields.NumberField;

/** How far letters, words and lines of the selected wordings stand apart. */
public final class SpacingForm extends WordingPart {

	private static final double LEAST_SPACING = 0.1;
	private static final double MOST_SPACING = 20;

	public SpacingForm(Composite parent, Subject subject) {
		super(parent, Messages.SpacingForm_title, false, subject);
		add(new Choice<>(row(Messages.WordingForm_alignment), List.of(Alignment.values()), SpacingForm::name,
				common(Wording::getAlignment), alignment -> each(w -> ChangeWording.alignment(w, alignment))));
		Composite lines = row(Messages.WordingForm_lineSpacing);
		add(new Entry(lines, SWT.SINGLE, this::lineSpacing,
				typed -> each(w -> ChangeWording.lineSpacing(w, NumberField.parse(typed, LEAST_SPACING, MOST_SPACING)))));
		slide(lines, 0.5, 4, 0.05, Wording::getLineSpacing, ChangeWording::lineSpacing);
		Composite tracking = row(Messages.WordingForm_tracking);
		length(tracking, LengthField.ANY, Wording::getTracking, ChangeWording::tracking);
		slide(tracking, -5, 15, 0.1, Wording::getTracking, ChangeWording::tracking);
		Composite words = row(Messages.SpacingForm_words);
		length(words, LengthField.ANY, Wording::getWordSpacing, ChangeWording::wordSpacing).control()
				.setToolTipText(Messages.SpacingForm_wordsTip);
		slide(words, -10, 30, 0.2, Wording::getWordSpacing, ChangeWording::wordSpacing);
		lengthOrNone(row(Messages.SpacingForm_measure), Messages.SpacingForm_measureNone, LengthField.AMOUNT,
				Wording::getMeasure, ChangeWording::measure).control().setToolTipText(Messages.SpacingForm_measureTip);
		tick(Messages.WordingForm_kerning, Wording::isKerning, ChangeWording::kerning);
	}

	private String lineSpacing() {
		Double factor = Subject.common(subject.wordings(), Wording::getLineSpacing);
		return factor == null ? null : LengthField.number(factor);
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
