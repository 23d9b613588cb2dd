package org.frisket.ui.views.internal.properties.wording;

import java.util.List;

import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.frisket.editing.EditGroup;
import org.frisket.editing.wording.ChangeSpan;
import org.frisket.editing.wording.ChangeWording;
import org.frisket.model.Wording;
import org.frisket.typography.TextSetter;
import org.frisket.ui.bench.TextRange;
import org.frisket.ui.views.internal.properties.Subject;
import org.frisket.ui.views.internal.properties.fields.Entry;
import org.frisket.ui.views.internal.properties.fields.LengthField;

/** What the selected wordings say, in which font and how large; of selected letters, font and size alone. */
public final class WordingForm extends WordingPart {

	private static final int TEXT_LINES = 3;

	private final FontChoice font;

	public WordingForm(Composite parent, Subject subject) {
		super(parent, Messages.WordingForm_title, false, subject);
		Composite words = wide(Messages.WordingForm_text);
		Entry text = add(new Entry(words, SWT.MULTI | SWT.WRAP | SWT.V_SCROLL, common(Wording::getText), this::setText));
		((GridData) text.control().getLayoutData()).heightHint = TEXT_LINES * text.control().getLineHeight();
		text.control().setToolTipText(Messages.WordingForm_textTip);
		showWhen(() -> subject.range().isEmpty(), words);
		font = add(new FontChoice(this, subject));
		add(new Entry(this, Messages.WordingForm_height, SWT.SINGLE, this::height, this::setHeight));
		Composite plain = wide(Messages.WordingForm_asRest);
		Button asRest = new Button(plain, SWT.PUSH);
		asRest.setText(Messages.WordingForm_asRest);
		asRest.setToolTipText(Messages.WordingForm_asRestTip);
		asRest.setData(NAME, Messages.WordingForm_asRest);
		asRest.addListener(SWT.Selection, event -> subject.range().ifPresent(this::setAsRest));
		showWhen(() -> subject.range().isPresent(), plain);
	}

	@Override
	public boolean isWanted() {
		return !subject.wordings().isEmpty();
	}

	private String height() {
		Double mm = subject.range().isPresent()
				? Subject.common(subject.stretches(), stretch -> stretch.heightIn(subject.range().get().wording()))
				: Subject.common(subject.wordings(), Wording::getHeight);
		return mm == null ? null : LengthField.text(mm);
	}

	private void setHeight(String typed) {
		if (subject.range().isPresent()) {
			Wording wording = subject.range().get().wording();
			subject.execute(subject.stretches(), stretch -> ChangeSpan.height(wording, stretch.start(), stretch.end(),
					LengthField.SIZE.parse(typed, stretch.heightIn(wording))));
		} else {
			each(w -> ChangeWording.height(w, LengthField.SIZE.parse(typed, w.getHeight())));
		}
	}

	private void setAsRest(TextRange letters) {
		Wording wording = letters.wording();
		subject.execute(new EditGroup(Messages.WordingForm_asRest,
				List.of(ChangeSpan.font(wording, letters.start(), letters.end(), null),
						ChangeSpan.height(wording, letters.start(), letters.end(), 0),
						ChangeSpan.features(wording, letters.start(), letters.end(), null))));
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
	public FontChoice font() {
		return font;
	}
}
