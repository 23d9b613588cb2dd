package org.frisket.editing.wording;

import java.util.Objects;
import java.util.function.Consumer;
import java.util.function.Predicate;

import org.eclipse.emf.ecore.util.EcoreUtil;
import org.frisket.model.Alignment;
import org.frisket.model.FontRef;
import org.frisket.model.TextChange;
import org.frisket.model.Wording;

/** Changes what a wording says or how it is set. */
public final class ChangeWording extends WordingEdit {

	private ChangeWording(String name, Wording wording, Predicate<Wording> differs, Consumer<Wording> change) {
		super(name, wording, differs, change);
	}

	/** Says something else; lines are parted by line feeds. Nudges and spans stay with their letters. */
	public static ChangeWording text(Wording wording, String text) {
		return new ChangeWording(Messages.ChangeWording_text, wording, w -> !Objects.equals(text, w.getText()),
				w -> LetterMarks.retext(w, text,
						TextChange.between(LetterMarks.textOf(w), LetterMarks.orEmpty(text))));
	}

	/** Sets it in another font; the reference is copied. */
	public static ChangeWording font(Wording wording, FontRef font) {
		return new ChangeWording(Messages.ChangeWording_font, wording, w -> !EcoreUtil.equals(font, w.getFont()),
				w -> w.setFont(EcoreUtil.copy(font)));
	}

	/** Sets it in another size; {@code height} is that of a capital H in mm and positive. */
	public static ChangeWording height(Wording wording, double height) {
		return new ChangeWording(Messages.ChangeWording_height, wording,
				w -> Double.isFinite(height) && height > 0 && height != w.getHeight(), w -> w.setHeight(height));
	}

	/** Moves its lines apart; {@code factor} times the height, positive. */
	public static ChangeWording lineSpacing(Wording wording, double factor) {
		return new ChangeWording(Messages.ChangeWording_lineSpacing, wording,
				w -> Double.isFinite(factor) && factor > 0 && factor != w.getLineSpacing(),
				w -> w.setLineSpacing(factor));
	}

	/** Adds to the distance of its letters; in mm, negative sets tighter. */
	public static ChangeWording tracking(Wording wording, double tracking) {
		return new ChangeWording(Messages.ChangeWording_tracking, wording,
				w -> Double.isFinite(tracking) && tracking != w.getTracking(), w -> w.setTracking(tracking));
	}

	/** Adds to every blank; in mm, negative sets tighter. */
	public static ChangeWording wordSpacing(Wording wording, double spacing) {
		return new ChangeWording(Messages.ChangeWording_wordSpacing, wording,
				w -> Double.isFinite(spacing) && spacing != w.getWordSpacing(), w -> w.setWordSpacing(spacing));
	}

	/** Breaks its lines at a width in mm, or only where the text says if that is 0. */
	public static ChangeWording measure(Wording wording, double measure) {
		return new ChangeWording(Messages.ChangeWording_measure, wording, w -> isOther(measure, w.getMeasure(), 0),
				w -> w.setMeasure(measure));
	}

	/** Sets it with other features of its font, such as {@code smcp,-kern}; null or empty for none. */
	public static ChangeWording features(Wording wording, String features) {
		String set = features == null || features.isBlank() ? null : features;
		return new ChangeWording(Messages.ChangeWording_features, wording, w -> !Objects.equals(set, w.getFeatures()),
				w -> w.setFeatures(set));
	}

	/** Sets it at other values of the axes of its font, such as {@code wght=700}; null or empty for those of the font. */
	public static ChangeWording axes(Wording wording, String axes) {
		String set = axes == null || axes.isBlank() ? null : axes;
		return new ChangeWording(Messages.ChangeWording_axes, wording, w -> !Objects.equals(set, w.getAxes()),
				w -> w.setAxes(set));
	}

	/** Moves the edges of its letters outwards by so many mm; negative makes them thinner. */
	public static ChangeWording embolden(Wording wording, double by) {
		return new ChangeWording(Messages.ChangeWording_embolden, wording,
				w -> Double.isFinite(by) && by != w.getEmbolden(), w -> w.setEmbolden(by));
	}

	/** Aligns its lines otherwise. */
	public static ChangeWording alignment(Wording wording, Alignment alignment) {
		return new ChangeWording(Messages.ChangeWording_alignment, wording, w -> alignment != null && alignment != w.getAlignment(),
				w -> w.setAlignment(alignment));
	}

	/** Uses the pair distances of the font, or not. */
	public static ChangeWording kerning(Wording wording, boolean kerning) {
		return new ChangeWording(Messages.ChangeWording_kerning, wording, w -> kerning != w.isKerning(), w -> w.setKerning(kerning));
	}

	/** Uses the ligatures of the font, or not. */
	public static ChangeWording ligatures(Wording wording, boolean ligatures) {
		return new ChangeWording(Messages.ChangeWording_ligatures, wording, w -> ligatures != w.isLigatures(),
				w -> w.setLigatures(ligatures));
	}

	/** Joins its letters so that neighbours overlap by {@code touch} mm, which is not negative. */
	public static ChangeWording join(Wording wording, double touch) {
		return new ChangeWording(Messages.ChangeWording_join, wording,
				w -> Double.isFinite(touch) && touch >= 0 && (!w.isJoined() || touch != w.getTouch()), w -> {
					w.setJoined(true);
					w.setTouch(touch);
				});
	}

	/** Parts joined letters; the overlap is remembered. */
	public static ChangeWording part(Wording wording) {
		return new ChangeWording(Messages.ChangeWording_part, wording, Wording::isJoined, w -> w.setJoined(false));
	}
}
