package org.frisket.ui.views.internal.properties;

import java.util.List;
import java.util.function.Function;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.frisket.editing.Edit;
import org.frisket.editing.shapes.ChangeWeedLines;
import org.frisket.model.WeedLines;
import org.frisket.ui.views.internal.properties.fields.Entry;
import org.frisket.ui.views.internal.properties.fields.LengthField;
import org.frisket.ui.views.internal.properties.fields.Tick;

/** Where the selected weed lines run. */
final class WeedLinesForm extends KindForm {

	/** How a length of them is changed. */
	private interface Change {
		Edit to(List<WeedLines> lines, double mm);
	}

	WeedLinesForm(Composite parent, Subject subject) {
		super(parent, Messages.WeedLinesForm_title, subject);
		length(Messages.WeedLinesForm_margin, LengthField.SIZE, WeedLines::getMargin, ChangeWeedLines::margin, null);
		add(new Tick(wide(Messages.WeedLinesForm_between), Messages.WeedLinesForm_between,
				() -> Subject.common(lines(), WeedLines::isBetween),
				on -> subject.execute(ChangeWeedLines.between(lines(), on))));
		length(Messages.WeedLinesForm_spacing, LengthField.AMOUNT, WeedLines::getSpacing, ChangeWeedLines::spacing,
				Messages.WeedLinesForm_noStrips);
		length(Messages.WeedLinesForm_clearance, LengthField.AMOUNT, WeedLines::getClearance,
				ChangeWeedLines::clearance, null);
	}

	private List<WeedLines> lines() {
		return all(WeedLines.class);
	}

	/** @param none what an empty field says, where 0 is shown as one; null otherwise */
	private void length(String name, LengthField range, Function<WeedLines, Double> value, Change change, String none) {
		Entry entry = new Entry(row(name), SWT.SINGLE, () -> {
			Double mm = Subject.common(lines(), value);
			return mm == null ? null : mm == 0 && none != null ? "" : LengthField.text(mm); //$NON-NLS-1$
		}, typed -> {
			Double now = Subject.common(lines(), value);
			subject.execute(change.to(lines(), typed.isBlank() && none != null ? 0
					: range.parse(typed, now == null ? 0 : now)));
		});
		add(none == null ? entry : entry.withHint(none));
	}

	@Override
	public boolean isWanted() {
		return !lines().isEmpty();
	}
}
