package org.frisket.ui.views.internal.properties.wording;

import java.util.List;

import org.eclipse.swt.widgets.Composite;
import org.frisket.editing.wording.ChangePen;
import org.frisket.model.OperationKind;
import org.frisket.model.PenStyle;
import org.frisket.model.Wording;
import org.frisket.ui.views.internal.properties.Subject;
import org.frisket.ui.views.internal.properties.fields.Choice;
import org.frisket.ui.views.internal.properties.fields.LengthField;

/** What a pen draws of the selected wordings; seen where one of them is drawn. */
public final class PenForm extends WordingPart {

	private static final LengthField SPACING = new LengthField(0.05, 100);

	public PenForm(Composite parent, Subject subject) {
		super(parent, Messages.PenForm_title, false, subject);
		add(new Choice<>(row(Messages.PenForm_style), List.of(PenStyle.values()), PenForm::name,
				common(Wording::getPenStyle), style -> each(w -> ChangePen.style(w, style))));
		Composite spacing = row(Messages.PenForm_spacing);
		length(spacing, SPACING, Wording::getHatchSpacing, ChangePen::hatchSpacing);
		slide(spacing, 0.2, 5, 0.1, Wording::getHatchSpacing, ChangePen::hatchSpacing);
		Composite turn = row(Messages.PenForm_angle);
		angle(turn, Wording::getHatchAngle, ChangePen::hatchAngle);
		slide(turn, -90, 90, 1, Wording::getHatchAngle, ChangePen::hatchAngle);
		Composite inset = row(Messages.PenForm_inset);
		length(inset, LengthField.AMOUNT, Wording::getHatchInset, ChangePen::hatchInset).control()
				.setToolTipText(Messages.PenForm_insetTip);
		showWhen(() -> Subject.common(subject.wordings(), Wording::getPenStyle) == PenStyle.HATCHED, spacing, turn, inset);
	}

	@Override
	public boolean isWanted() {
		return super.isWanted() && subject.wordings().stream().anyMatch(w -> w.getPenStyle() != PenStyle.OUTLINE
				|| w.getOperations().stream().anyMatch(operation -> operation.getKind() == OperationKind.DRAW));
	}

	private static String name(PenStyle style) {
		return switch (style) {
		case OUTLINE -> Messages.PenForm_outline;
		case CENTRELINE -> Messages.PenForm_centreline;
		case HATCHED -> Messages.PenForm_hatched;
		};
	}
}
