package org.frisket.ui.views.internal.properties;

import java.util.List;
import java.util.Locale;
import java.util.function.Function;

import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.frisket.editing.Edit;
import org.frisket.editing.shapes.ChangePicture;
import org.frisket.model.BackdropRule;
import org.frisket.model.BleedKind;
import org.frisket.model.EdgeHoles;
import org.frisket.model.Picture;
import org.frisket.model.PictureEdge;
import org.frisket.prepare.OwnPath;
import org.frisket.prepare.pictures.PictureSizes;
import org.frisket.prepare.pictures.PictureSource;
import org.frisket.ui.views.internal.properties.fields.Choice;
import org.frisket.ui.views.internal.properties.fields.Entry;
import org.frisket.ui.views.internal.properties.fields.Field;
import org.frisket.ui.views.internal.properties.fields.Form;
import org.frisket.ui.views.internal.properties.fields.LengthField;
import org.frisket.ui.views.internal.properties.fields.NumberField;
import org.frisket.ui.views.internal.properties.fields.Tick;

/** How the contour of the selected pictures is found, how far their print goes on beyond it, and how fine they are. */
final class PictureForm extends KindForm {

	private static final double MOST = 100;
	private static final double FINE = 0.1;

	/** How a number of them is changed. */
	private interface Change {
		Edit to(List<Picture> pictures, double value);
	}

	PictureForm(Composite parent, Subject subject) {
		super(parent, Messages.PictureForm_title, subject);
		add(new Tick(wide(Messages.PictureForm_edge), Messages.PictureForm_edge,
				() -> Subject.common(pictures(), picture -> picture.getEdge() != null),
				on -> subject.execute(ChangePicture.edged(pictures(), on))));
		Composite backdrop = row(Messages.PictureForm_backdrop);
		add(new Choice<>(backdrop, List.of(BackdropRule.values()), PictureForm::name,
				() -> edge(PictureEdge::getBackdrop), rule -> subject.execute(ChangePicture.backdrop(pictures(), rule))));
		Composite colour = row(Messages.PictureForm_colour);
		add(new Entry(colour, SWT.SINGLE, () -> edge(PictureEdge::getColour),
				typed -> subject.execute(ChangePicture.colour(pictures(), colour(typed))))
				.withHint(Messages.PictureForm_colourHint));
		Composite difference = number(Messages.PictureForm_difference, Messages.PictureForm_differenceTip, 50,
				PictureEdge::getDifference, ChangePicture::difference);
		Composite shadow = number(Messages.PictureForm_shadow, Messages.PictureForm_shadowTip, 50, PictureEdge::getShadow,
				ChangePicture::shadow);
		Composite specks = length(Messages.PictureForm_specks, LengthField.AMOUNT, 0, 5, ofEdge(PictureEdge::getSpecks),
				ChangePicture::specks);
		Composite holes = row(Messages.PictureForm_holes);
		add(new Choice<>(holes, List.of(EdgeHoles.values()), PictureForm::name, () -> edge(PictureEdge::getHoles),
				rule -> subject.execute(ChangePicture.holes(pictures(), rule))));
		Composite smoothing = length(Messages.PictureForm_smoothing, LengthField.AMOUNT, 0, 5,
				ofEdge(PictureEdge::getSmoothing), ChangePicture::smoothing);
		Composite border = length(Messages.PictureForm_border, LengthField.ANY, -3, 10, ofEdge(PictureEdge::getBorder),
				ChangePicture::border);
		Composite whole = wide(Messages.PictureForm_whole);
		add(new Tick(whole, Messages.PictureForm_whole, () -> edge(PictureEdge::isWhole),
				on -> subject.execute(ChangePicture.whole(pictures(), on))));
		showWhen(this::isEdged, backdrop, difference, shadow, specks, holes, smoothing, border, whole);
		showWhen(() -> isEdged() && edge(PictureEdge::getBackdrop) == BackdropRule.COLOUR, colour);
		length(Messages.PictureForm_bleed, new LengthField(0, 50), 0, 10, Picture::getBleed, ChangePicture::bleed);
		Composite kind = row(Messages.PictureForm_bleedKind);
		add(new Choice<>(kind, List.of(BleedKind.values()), PictureForm::name,
				() -> Subject.common(pictures(), Picture::getBleedKind),
				each -> subject.execute(ChangePicture.bleedKind(pictures(), each))));
		showWhen(() -> pictures().stream().anyMatch(picture -> picture.getBleed() > 0), kind);
		resolution(row(Messages.PictureForm_resolution));
	}

	private List<Picture> pictures() {
		return all(Picture.class);
	}

	private boolean isEdged() {
		return Boolean.TRUE.equals(Subject.common(pictures(), picture -> picture.getEdge() != null));
	}

	/** What the edges have in common; null if they differ or one has none. */
	private <V> V edge(Function<PictureEdge, V> value) {
		return Subject.common(pictures(), ofEdge(value));
	}

	private static <V> Function<Picture, V> ofEdge(Function<PictureEdge, V> value) {
		return picture -> picture.getEdge() == null ? null : value.apply(picture.getEdge());
	}

	private Composite number(String name, String tip, double sliderEnd, Function<PictureEdge, Double> value, Change change) {
		Composite row = row(name);
		Entry entry = new Entry(row, SWT.SINGLE, () -> {
			Double now = edge(value);
			return now == null ? null : LengthField.number(now);
		}, typed -> subject.execute(change.to(pictures(), NumberField.parse(typed, 0, MOST))));
		entry.control().setToolTipText(tip);
		add(entry);
		add(new Slide(row, subject, 0, sliderEnd, 1, () -> edge(value), number -> change.to(pictures(), number)));
		return row;
	}

	private Composite length(String name, LengthField range, double least, double most, Function<Picture, Double> value,
			Change change) {
		Composite row = row(name);
		add(new Entry(row, SWT.SINGLE, () -> {
			Double mm = Subject.common(pictures(), value);
			return mm == null ? null : LengthField.text(mm);
		}, typed -> {
			Double now = Subject.common(pictures(), value);
			subject.execute(change.to(pictures(), range.parse(typed, now == null ? 0 : now)));
		}));
		add(new Slide(row, subject, least, most, FINE, () -> Subject.common(pictures(), value),
				mm -> change.to(pictures(), mm)));
		return row;
	}

	/** Only shown: it follows from the file and the size. */
	private void resolution(Composite row) {
		Label label = new Label(row, SWT.NONE);
		label.setData(NAME, Messages.PictureForm_resolution);
		Form.fill(label);
		add(new Field() {

			@Override
			public void refresh() {
				String text = fineness();
				if (!text.equals(label.getText())) {
					label.setText(text);
				}
			}

			@Override
			public void reset() {
				refresh();
			}
		});
	}

	private String fineness() {
		if (!pictures().isEmpty() && pictures().stream()
				.allMatch(each -> PictureSource.remembered(each).filter(PictureSizes::isDrawn).isPresent())) {
			return Messages.PictureForm_drawn;
		}
		Double dpi = Subject.common(pictures(), PictureForm::resolution);
		return dpi == null ? Messages.PictureForm_unknown : NLS.bind(Messages.PictureForm_dpi, Math.round(dpi));
	}

	private static Double resolution(Picture picture) {
		return PictureSource.remembered(picture)
				.flatMap(bytes -> PictureSizes.resolution(bytes, picture, OwnPath.placement(picture))).orElse(null);
	}

	/** With or without its hash. @throws IllegalArgumentException with the reason */
	private static String colour(String typed) {
		String colour = typed.strip().toLowerCase(Locale.ROOT);
		colour = colour.startsWith("#") ? colour : '#' + colour; //$NON-NLS-1$
		if (!colour.matches("#[0-9a-f]{6}")) { //$NON-NLS-1$
			throw new IllegalArgumentException(NLS.bind(Messages.PictureForm_noColour, typed.strip()));
		}
		return colour;
	}

	private static String name(BackdropRule rule) {
		return switch (rule) {
		case AUTO -> Messages.PictureForm_auto;
		case TRANSPARENT -> Messages.PictureForm_transparent;
		case COLOUR -> Messages.PictureForm_byColour;
		};
	}

	private static String name(EdgeHoles holes) {
		return switch (holes) {
		case AS_TOLD -> Messages.PictureForm_holesAsTold;
		case KEEP -> Messages.PictureForm_holesKept;
		case FILL -> Messages.PictureForm_holesFilled;
		};
	}

	private static String name(BleedKind kind) {
		return kind == BleedKind.EXTEND ? Messages.PictureForm_extend : Messages.PictureForm_enlarge;
	}

	@Override
	public boolean isWanted() {
		return !pictures().isEmpty();
	}
}
