package org.frisket.ui.bench.internal.parts;

import org.eclipse.draw2d.IFigure;
import org.eclipse.gef.LayerConstants;
import org.eclipse.gef.editpolicies.SelectionEditPolicy;
import org.frisket.ui.bench.internal.figures.SelectionFigure;
import org.frisket.ui.bench.internal.letters.LetterMode;
import org.frisket.ui.bench.internal.nodes.NodeMode;

/** Shows that an element is selected by an accent along its own shape. */
final class SelectionPolicy extends SelectionEditPolicy {

	private SelectionFigure accent;

	@Override
	protected void showSelection() {
		if (accent == null) {
			accent = new SelectionFigure(part().zoom());
			// under the flags and whatever else is planted there
			layer().add(accent, 0);
		}
		refresh();
	}

	@Override
	protected void hideSelection() {
		if (accent != null) {
			layer().remove(accent);
			accent = null;
		}
	}

	/** Follows the element to where it is shown now. */
	void refresh() {
		if (accent != null) {
			accent.setVisible(!NodeMode.isOn(part().getViewer(), part().element())
					&& !LetterMode.isOn(part().getViewer(), part().element()));
			accent.show(part().picture(), part().shift());
		}
	}

	private ElementPart part() {
		return (ElementPart) getHost();
	}

	private IFigure layer() {
		return getLayer(LayerConstants.SCALED_FEEDBACK_LAYER);
	}
}
