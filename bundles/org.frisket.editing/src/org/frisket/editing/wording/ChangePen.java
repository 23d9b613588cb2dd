package org.frisket.editing.wording;

import java.util.function.Consumer;
import java.util.function.Predicate;

import org.frisket.model.PenStyle;
import org.frisket.model.Wording;

/** Changes what of a wording a pen draws. Lengths are in mm. */
public final class ChangePen extends WordingEdit {

	private ChangePen(String name, Wording wording, Predicate<Wording> differs, Consumer<Wording> change) {
		super(name, wording, differs, change);
	}

	public static ChangePen style(Wording wording, PenStyle style) {
		return new ChangePen(Messages.ChangePen_style, wording, w -> style != null && style != w.getPenStyle(),
				w -> w.setPenStyle(style));
	}

	/** The distance of hatching lines, positive. */
	public static ChangePen hatchSpacing(Wording wording, double spacing) {
		return new ChangePen(Messages.ChangePen_hatchSpacing, wording,
				w -> spacing > 0 && isOther(spacing, w.getHatchSpacing(), 0), w -> w.setHatchSpacing(spacing));
	}

	/** In degrees clockwise from the horizontal. */
	public static ChangePen hatchAngle(Wording wording, double degrees) {
		return new ChangePen(Messages.ChangePen_hatchAngle, wording,
				w -> Double.isFinite(degrees) && degrees != w.getHatchAngle(), w -> w.setHatchAngle(degrees));
	}

	/** How far the lines stay off the edge of a letter. */
	public static ChangePen hatchInset(Wording wording, double inset) {
		return new ChangePen(Messages.ChangePen_hatchInset, wording, w -> isOther(inset, w.getHatchInset(), 0),
				w -> w.setHatchInset(inset));
	}
}
