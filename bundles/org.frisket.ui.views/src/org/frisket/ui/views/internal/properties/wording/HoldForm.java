package org.frisket.ui.views.internal.properties.wording;

import java.util.List;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.frisket.editing.wording.ChangeBridges;
import org.frisket.editing.wording.ChangeHold;
import org.frisket.editing.wording.ChangeWording;
import org.frisket.model.Bridge;
import org.frisket.model.Wording;
import org.frisket.ui.views.internal.properties.Subject;
import org.frisket.ui.views.internal.properties.fields.Entry;
import org.frisket.ui.views.internal.properties.fields.LengthField;

/** What makes the letters of the selected wordings hang together, or keeps their insides in a stencil. */
public final class HoldForm extends WordingPart {

	private final BarRows bars;

	public HoldForm(Composite parent, Subject subject) {
		super(parent, Messages.HoldForm_title, true, subject);
		tick(Messages.WordingForm_joined, Wording::isJoined,
				(w, on) -> on ? ChangeWording.join(w, w.getTouch()) : ChangeWording.part(w));
		length(row(Messages.WordingForm_touch), LengthField.AMOUNT, Wording::getTouch, ChangeWording::join);
		tick(Messages.HoldForm_ties, Wording::isTieMarks, ChangeHold::ties);
		length(row(Messages.HoldForm_tieWidth), LengthField.SIZE, Wording::getTieWidth, ChangeHold::tieWidth);
		Entry bridges = lengthOrNone(row(Messages.HoldForm_bridges), Messages.HoldForm_bridgesNone, LengthField.AMOUNT,
				Wording::getStencil, ChangeBridges::stencil);
		bridges.control().setToolTipText(Messages.HoldForm_bridgesTip);
		Entry between = add(new Entry(row(Messages.HoldForm_between), SWT.SINGLE, this::between,
				typed -> each(w -> ChangeBridges.widths(w, LengthField.SIZE.parse(typed, width(w))))));
		between.control().setToolTipText(Messages.HoldForm_betweenTip);
		bars = new BarRows(this);
	}

	/** How wide the bridges between letters are that were set on the bench; empty if there are none. */
	private String between() {
		List<Double> widths = subject.wordings().stream().flatMap(w -> w.getBridges().stream()).map(Bridge::getWidth)
				.distinct().toList();
		return widths.isEmpty() ? "" : widths.size() > 1 ? null : LengthField.text(widths.get(0)); //$NON-NLS-1$
	}

	private static double width(Wording wording) {
		return wording.getBridges().isEmpty() ? wording.getTieWidth() : wording.getBridges().get(0).getWidth();
	}

	@Override
	public void refresh() {
		super.refresh();
		bars.refresh();
	}

	@Override
	public void reset() {
		super.reset();
		bars.reset();
	}
}
