package org.frisket.ui.views.internal.properties;

import org.eclipse.swt.widgets.Composite;
import org.frisket.editing.ChangeHold;
import org.frisket.editing.ChangeWording;
import org.frisket.model.Wording;

/** What makes the letters of the selected wordings hang together, or keeps their insides in a stencil. */
final class HoldForm extends WordingPart {

	private final BarRows bars;

	HoldForm(Composite parent, Subject subject) {
		super(parent, Messages.HoldForm_title, true, subject);
		tick(Messages.WordingForm_joined, Wording::isJoined,
				(w, on) -> on ? ChangeWording.join(w, w.getTouch()) : ChangeWording.part(w));
		length(row(Messages.WordingForm_touch), LengthField.AMOUNT, Wording::getTouch, ChangeWording::join);
		tick(Messages.HoldForm_ties, Wording::isTieMarks, ChangeHold::ties);
		length(row(Messages.HoldForm_tieWidth), LengthField.SIZE, Wording::getTieWidth, ChangeHold::tieWidth);
		Entry bridges = lengthOrNone(row(Messages.HoldForm_bridges), Messages.HoldForm_bridgesNone, LengthField.AMOUNT,
				Wording::getStencil, ChangeHold::stencil);
		bridges.control().setToolTipText(Messages.HoldForm_bridgesTip);
		bars = new BarRows(this);
	}

	@Override
	void refresh() {
		super.refresh();
		bars.refresh();
	}

	@Override
	void reset() {
		super.reset();
		bars.reset();
	}
}
