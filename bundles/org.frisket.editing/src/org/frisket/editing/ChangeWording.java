package org.frisket.editing;

import java.util.Collection;
import java.util.List;
import java.util.Objects;
import java.util.function.Consumer;
import java.util.function.Predicate;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.frisket.model.Alignment;
import org.frisket.model.FontRef;
import org.frisket.model.TextChange;
import org.frisket.model.Wording;

/** Changes what a wording says or how it is set. */
public final class ChangeWording extends RecordingEdit {

	private final Wording wording;
	private final Predicate<Wording> differs;
	private final Consumer<Wording> change;

	private ChangeWording(String name, Wording wording, Predicate<Wording> differs,
			Consumer<Wording> change) {
		super(name);
		this.wording = wording;
		this.differs = differs;
		this.change = change;
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

	@Override
	public boolean canApply() {
		return Targets.free(wording) && differs.test(wording);
	}

	@Override
	protected Collection<? extends EObject> scope() {
		return List.of(wording);
	}

	@Override
	protected void change() {
		change.accept(wording);
	}
}
