package org.frisket.ui.views.internal.properties.wording;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.OptionalInt;

import org.eclipse.core.runtime.Platform;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.frisket.editing.wording.ChangeWording;
import org.frisket.model.FontRef;
import org.frisket.model.Wording;
import org.frisket.prepare.fonts.FontLibraries;
import org.frisket.prepare.letterforms.FeatureNames;
import org.frisket.prepare.letterforms.FontFinder;
import org.frisket.prepare.letterforms.Letterforms;
import org.frisket.typography.FeatureList;
import org.frisket.ui.views.internal.properties.Subject;
import org.frisket.ui.views.internal.properties.fields.Entry;
import org.frisket.ui.views.internal.properties.fields.Field;
import org.frisket.ui.views.internal.properties.fields.Form;
import org.frisket.ui.views.internal.properties.fields.LengthField;

/**
 * Which of the forms that the font has the letters take: its features by their names, its axes, its named styles. Of
 * selected letters, their features alone.
 */
public final class LetterformForm extends WordingPart {

	private static final int SPACE_PX = 4;
	private static final double THINNEST = -2;
	private static final double BOLDEST = 3;
	private static final double STEP = 0.05;

	/** One for all views: fonts are opened once. */
	private static final FontFinder FINDER = new FontFinder(FontLibraries.installed());

	private final Composite list;
	private final AxisRows axes;
	private final FeatureNames names = FeatureNames.in(Locale.forLanguageTag(Platform.getNL().replace('_', '-')));
	private final Features features;
	private final List<Field> fields = new ArrayList<>();
	/** The fonts that the rows are of, or will be once they are read. */
	private List<Object> fonts = List.of();
	private Letterforms forms = Letterforms.NONE;

	/** What one font is known by. */
	private record Key(String name, String style, String digest, String file) {

		static Key of(FontRef font) {
			return font == null ? new Key(null, null, null, null)
					: new Key(font.getName(), font.getStyle(), font.getDigest(), font.getFile());
		}
	}

	public LetterformForm(Composite parent, Subject subject) {
		super(parent, Messages.LetterformForm_title, true, subject);
		features = new Features(subject);
		Composite ligatures = tick(Messages.WordingForm_ligatures, Wording::isLigatures, ChangeWording::ligatures);
		Composite bold = row(Messages.LetterformForm_embolden);
		length(bold, LengthField.ANY, Wording::getEmbolden, ChangeWording::embolden).control()
				.setToolTipText(Messages.LetterformForm_emboldenTip);
		slide(bold, THINNEST, BOLDEST, STEP, Wording::getEmbolden, ChangeWording::embolden);
		showWhen(() -> subject.range().isEmpty(), ligatures, bold);
		axes = new AxisRows(this);
		Entry tags = add(new Entry(row(Messages.LetterformForm_tags), SWT.SINGLE, features::text, features::setText)
				.withHint(Messages.LetterformForm_tagsNone));
		tags.control().setToolTipText(Messages.LetterformForm_tagsTip);
		list = new Composite(body(), SWT.NONE);
		GridLayoutFactory.fillDefaults().spacing(SPACE_PX, SPACE_PX).applyTo(list);
		GridDataFactory.fillDefaults().grab(true, false).span(2, 1).applyTo(list);
	}

	@Override
	public boolean isWanted() {
		return !subject.wordings().isEmpty();
	}

	@Override
	public void refresh() {
		// a folded section opens no font
		if (!heading().isFolded() && isWanted()) {
			List<Object> wanted = List.copyOf(subject.fonts().stream().map(Key::of).distinct().toList());
			if (!wanted.equals(fonts)) {
				fonts = wanted;
				read(wanted, subject.fonts().stream().filter(Objects::nonNull).toList());
			}
		}
		super.refresh();
		fields.forEach(Field::refresh);
		axes.refresh();
	}

	@Override
	public void reset() {
		super.reset();
		refresh();
	}

	private void read(List<Object> asked, List<FontRef> wanted) {
		FontFamilies.inBackground(Messages.FontFamilies_open, list.getDisplay(), () -> Letterforms.common(wanted.stream()
				.map(FINDER::find).map(face -> face.map(Letterforms::of).orElse(Letterforms.NONE)).toList()), list, read -> {
					if (asked.equals(fonts)) {
						show(read);
					}
				});
	}

	private void show(Letterforms read) {
		if (!read.equals(forms)) {
			forms = read;
			showFeatures();
			axes.show(read);
			Form.layout(list);
		}
	}

	private void showFeatures() {
		fields.clear();
		for (var child : list.getChildren()) {
			child.dispose();
		}
		Label key = new Label(list, SWT.WRAP);
		key.setText(forms.features().isEmpty() ? Messages.LetterformForm_none : Messages.LetterformForm_key);
		GridDataFactory.fillDefaults().grab(true, false).hint(SPACE_PX, SWT.DEFAULT).applyTo(key);
		for (String tag : forms.features()) {
			String name = NLS.bind(Messages.LetterformForm_feature, forms.name(tag, names), tag);
			fields.add(new FeatureTick(cell(list, name, 1), name, () -> features.value(tag), value -> features.set(tag, value)));
		}
		fields.forEach(Field::reset);
	}

	/** Features of all that is selected, as texts of the job. */
	private static final class Features {

		private final Subject subject;

		Features(Subject subject) {
			this.subject = subject;
		}

		private List<String> texts() {
			return subject.range().isPresent()
					? subject.stretches().stream().map(stretch -> Objects.requireNonNullElse(stretch.features(), "")).toList() //$NON-NLS-1$
					: subject.wordings().stream().map(w -> Objects.requireNonNullElse(w.getFeatures(), "")).toList(); //$NON-NLS-1$
		}

		/** Null where it differs. */
		String text() {
			return Subject.common(texts(), text -> text);
		}

		/** What is said of a feature; null where it differs. */
		OptionalInt value(String tag) {
			return Subject.common(texts(), text -> list(text).value(tag));
		}

		void set(String tag, OptionalInt value) {
			subject.setFeatures(text -> list(text).with(tag, value).toString());
		}

		void setText(String typed) {
			try {
				String text = FeatureList.parse(typed).toString();
				subject.setFeatures(old -> text);
			} catch (IllegalArgumentException e) {
				throw new IllegalArgumentException(NLS.bind(Messages.LetterformForm_tagsWrong, typed.strip()), e);
			}
		}

		/** What cannot be read counts as nothing; makeready says so. */
		private static FeatureList list(String text) {
			try {
				return FeatureList.parse(text);
			} catch (IllegalArgumentException e) {
				return FeatureList.NONE;
			}
		}
	}
}
