package org.frisket.ui.views.internal;

import org.eclipse.osgi.util.NLS;
import org.frisket.model.Combination;
import org.frisket.model.CombinationRule;
import org.frisket.model.Element;
import org.frisket.model.Job;
import org.frisket.model.Jobs;
import org.frisket.model.Mat;
import org.frisket.model.Picture;
import org.frisket.model.WeedLines;
import org.frisket.model.Wording;
import org.frisket.ui.LengthText;

/** What an element is called on the screen. */
public final class ElementText {

	private ElementText() {
	}

	/** Its name, or else what it is. */
	public static String of(Element element) {
		if (element.getName() != null && !element.getName().isBlank()) {
			return element.getName();
		}
		if (element instanceof Wording wording) {
			String line = wording.getText() == null ? "" //$NON-NLS-1$
					: wording.getText().lines().filter(l -> !l.isBlank()).findFirst().orElse("").strip(); //$NON-NLS-1$
			return line.isEmpty() ? Messages.ElementText_wordingEmpty : NLS.bind(Messages.ElementText_wording, line);
		}
		if (element instanceof Combination combination) {
			return rule(combination.getRule());
		}
		if (element instanceof WeedLines) {
			return Messages.ElementText_weedLines;
		}
		if (element instanceof Picture) {
			return Messages.ElementText_picture;
		}
		return element instanceof Mat mat ? NLS.bind(Messages.ElementText_mat, LengthText.of(mat.getDistance()))
				: Messages.ElementText_outline;
	}

	/** What a combination does with its parts. */
	public static String rule(CombinationRule rule) {
		return switch (rule) {
		case UNITE -> Messages.ElementText_unite;
		case SUBTRACT -> Messages.ElementText_subtract;
		case INTERSECT -> Messages.ElementText_intersect;
		case EXCLUDE -> Messages.ElementText_exclude;
		case LEFT -> Messages.ElementText_left;
		case RIGHT -> Messages.ElementText_right;
		};
	}

	/** The name of the element with this id, or a dash if the job has none. */
	public static String of(Job job, String id) {
		return Jobs.element(job, id).map(ElementText::of).orElse(Messages.ElementText_unknown);
	}
}
