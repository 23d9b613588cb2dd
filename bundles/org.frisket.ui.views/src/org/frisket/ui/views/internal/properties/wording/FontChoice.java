package org.frisket.ui.views.internal.properties.wording;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.stream.Collectors;

import org.eclipse.swt.widgets.Composite;
import org.frisket.editing.Edit;
import org.frisket.editing.wording.ChangeSpan;
import org.frisket.editing.wording.ChangeWording;
import org.frisket.geometry.Tolerance;
import org.frisket.model.FontRef;
import org.frisket.model.Wording;
import org.frisket.prepare.checks.StockLimits;
import org.frisket.prepare.fonts.FontTrial;
import org.frisket.typography.source.FontEntry;
import org.frisket.ui.views.internal.fonts.FontFamily;
import org.frisket.ui.views.internal.fonts.FontField;
import org.frisket.ui.views.internal.fonts.FontPopup;
import org.frisket.ui.views.internal.properties.Subject;
import org.frisket.ui.views.internal.properties.fields.Choice;
import org.frisket.ui.views.internal.properties.fields.Field;
import org.frisket.ui.views.internal.properties.fields.Form;

/** The family of the selected wordings, chosen by eye, and the style within it. */
public final class FontChoice implements Field {

	private static final int LONGEST_SAMPLE = 24;

	private final Subject subject;
	private final FontField field;
	private final Choice<String> style;
	private List<FontFamily> families = List.of();
	private FontPopup popup;
	/** Counts what was asked for, so that a font that is opened late does not come after its follower. */
	private int asked;
	private FontEntry shown;
	private boolean keeping;

	public FontChoice(Form form, Subject subject) {
		this.subject = subject;
		Composite row = form.row(Messages.WordingForm_font);
		field = new FontField(row, Messages.WordingForm_font, this::open);
		field.setData(Form.NAME, Messages.WordingForm_font);
		Form.fill(field);
		style = new Choice<>(form.row(Messages.WordingForm_style), List.of(), name -> name, this::styleName,
				this::setStyle);
		FontFamilies.load(field, loaded -> {
			families = loaded;
			refresh();
		});
	}

	private String family() {
		return Subject.common(subject.fonts(), font -> font == null ? "" : font.getName()); //$NON-NLS-1$
	}

	private Optional<FontFamily> known() {
		String name = family();
		return families.stream().filter(family -> family.name().equalsIgnoreCase(name)).findFirst();
	}

	private String styleName() {
		Optional<FontFamily> family = known();
		Optional<String> name = Optional.ofNullable(Subject.common(subject.fonts(),
				font -> font == null || font.getStyle() == null ? "" : font.getStyle())); //$NON-NLS-1$
		return family.isEmpty() || name.isEmpty() ? null
				: family.get().font(name.get().isEmpty() ? null : name.get()).map(FontEntry::style).orElse(null);
	}

	private void setStyle(String name) {
		known().flatMap(family -> family.font(name)).ifPresent(this::keep);
	}

	private void open() {
		if (popup == null && !families.isEmpty()) {
			popup = new FontPopup(field, families, known().orElse(null), sample(), trial()::of, new FontPopup.Client() {

				@Override
				public void tried(FontFamily family) {
					show(family.plain());
				}

				@Override
				public void kept(FontFamily family) {
					popup = null;
					keep(family.plain());
				}

				@Override
				public void givenUp() {
					popup = null;
					asked++;
					shown = null;
					subject.draft().drop();
					refresh();
				}
			});
		}
	}

	/** The wording's own first words, so that the choice is made for them. */
	private String sample() {
		String text = subject.wordings().stream().map(Wording::getText).filter(t -> t != null && !t.isBlank())
				.findFirst().map(t -> t.strip().lines().findFirst().orElse("")).orElse(Messages.WordingForm_sample); //$NON-NLS-1$
		return text.substring(0, text.offsetByCodePoints(0, Math.min(LONGEST_SAMPLE, text.codePointCount(0, text.length()))));
	}

	/** The first wording, or the selected letters of it, in other fonts. */
	private FontTrial trial() {
		return new FontTrial(subject.wordings().get(0), subject.range()
				.<BiFunction<Wording, FontRef, Edit>>map(
						letters -> (wording, font) -> ChangeSpan.font(wording, letters.start(), letters.end(), font))
				.orElse(ChangeWording::font), StockLimits.remembered(), Tolerance.DEFAULT);
	}

	private void show(FontEntry font) {
		int mine = ++asked;
		Function<FontRef, Edit> change = subject.fontChange();
		FontFamilies.open(field, font, reference -> {
			if (mine == asked) {
				shown = font;
				subject.draft().show(() -> change.apply(reference));
				if (keeping) {
					accept();
				}
			}
		});
	}

	private void keep(FontEntry font) {
		if (font == shown && subject.draft().isShown()) {
			accept();
		} else {
			keeping = true;
			show(font);
		}
	}

	private void accept() {
		keeping = false;
		shown = null;
		subject.draft().accept();
		refresh();
	}

	@Override
	public void refresh() {
		String name = family();
		Optional<FontFamily> family = known();
		List<String> styles = family.map(FontFamily::styles).orElse(List.of());
		if (!styles.equals(style.values())) {
			style.setValues(styles);
		}
		style.refresh();
		field.show(name == null ? Messages.Field_several : name,
				family.map(f -> f.font(styleName()).orElse(f.plain())).orElse(null), isMissing());
	}

	/** As makeready says, which looks for a font by its content too. */
	private boolean isMissing() {
		Set<String> ids = subject.wordings().stream().map(Wording::getId).collect(Collectors.toSet());
		return subject.bench() != null && subject.bench().findings().stream()
				.anyMatch(finding -> finding.id().equals("font-missing") && ids.contains(finding.element())); //$NON-NLS-1$
	}

	@Override
	public void reset() {
		asked++;
		keeping = false;
		refresh();
	}

	/** The list, while it is open. */
	public FontPopup popup() {
		return popup;
	}
}
