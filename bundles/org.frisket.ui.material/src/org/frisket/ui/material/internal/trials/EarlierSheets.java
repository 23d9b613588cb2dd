package org.frisket.ui.material.internal.trials;

import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.frisket.material.desk.DeskState;
import org.frisket.material.trials.TestSheet;

/** Sheets that were made of a stock before, the latest first; a double click or Enter opens one. */
final class EarlierSheets extends Composite {

	private static final int MOST_PX = 90;
	private final org.eclipse.swt.widgets.List list;
	private final Label none;
	private List<TestSheet> sheets = new ArrayList<>();

	EarlierSheets(Composite parent, Consumer<TestSheet> opener) {
		super(parent, SWT.NONE);
		GridLayoutFactory.fillDefaults().spacing(4, 4).applyTo(this);
		Label heading = new Label(this, SWT.NONE);
		heading.setText(Messages.EarlierSheets_title);
		heading.setFont(JFaceResources.getFontRegistry().getBold(JFaceResources.DEFAULT_FONT));
		none = new Label(this, SWT.WRAP);
		GridDataFactory.fillDefaults().grab(true, false).hint(MOST_PX, SWT.DEFAULT).applyTo(none);
		list = new org.eclipse.swt.widgets.List(this, SWT.BORDER | SWT.SINGLE | SWT.V_SCROLL);
		GridDataFactory.fillDefaults().grab(true, false).hint(MOST_PX, MOST_PX).applyTo(list);
		list.addListener(SWT.DefaultSelection, event -> {
			if (list.getSelectionIndex() >= 0) {
				opener.accept(sheets.get(list.getSelectionIndex()));
			}
		});
	}

	/** @param stock id of it; empty for those of stock that is not on the shelf */
	void show(DeskState state, String stock) {
		List<TestSheet> now = state.sheetsOf(stock);
		if (!now.equals(sheets) || list.getItemCount() != now.size()) {
			sheets = now;
			list.removeAll();
			for (TestSheet sheet : now) {
				list.add(NLS.bind(Messages.EarlierSheets_sheet, new Object[] {
						sheet.day().format(DateTimeFormatter.ofLocalizedDate(FormatStyle.MEDIUM)), sheet.id(),
						state.machine(sheet.setup().machine()).map(machine -> machine.name())
								.orElse(sheet.setup().machine()),
						sheet.verdicts().size(), sheet.places().size() }));
			}
		}
		none.setText(now.isEmpty() ? Messages.EarlierSheets_none : Messages.EarlierSheets_how);
	}
}
