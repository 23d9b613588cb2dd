package org.frisket.ui.bench.internal.export;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.frisket.export.plan.SheetChoice;

/** What of a job is handed out. A job without sheets has no choice, and sees none. */
final class WhatPart {

	private static final int ALL = 0;
	private static final int CHOSEN = 1;
	private static final int BENCH = 2;
	private static final int NUMBERS_PX = 100;

	private Combo what;
	private Text numbers;

	/**
	 * @param parent of three columns
	 * @param chosen number of the sheet that is chosen already, from 1; 0 for the bench, below for none
	 */
	WhatPart(Composite parent, int sheets, int chosen, Runnable changed) {
		if (sheets == 0) {
			return;
		}
		new Label(parent, SWT.NONE).setText(Messages.WhatPart_what);
		what = new Combo(parent, SWT.READ_ONLY);
		what.setData("what"); //$NON-NLS-1$
		what.add(sheets == 1 ? Messages.WhatPart_theSheet : NLS.bind(Messages.WhatPart_all, sheets));
		what.add(Messages.WhatPart_chosen);
		what.add(Messages.WhatPart_bench);
		what.select(chosen < 0 ? ALL : chosen == 0 ? BENCH : CHOSEN);
		GridDataFactory.fillDefaults().grab(true, false).applyTo(what);
		numbers = new Text(parent, SWT.BORDER);
		numbers.setData("sheets"); //$NON-NLS-1$
		numbers.setMessage(Messages.WhatPart_numbers);
		numbers.setEnabled(chosen > 0);
		numbers.setText(chosen > 0 ? Integer.toString(chosen) : ""); //$NON-NLS-1$
		GridDataFactory.fillDefaults().hint(NUMBERS_PX, SWT.DEFAULT).applyTo(numbers);
		what.addListener(SWT.Selection, event -> {
			numbers.setEnabled(what.getSelectionIndex() == CHOSEN);
			changed.run();
		});
		numbers.addListener(SWT.Modify, event -> changed.run());
	}

	SheetChoice choice() {
		if (what == null || what.getSelectionIndex() == ALL) {
			return SheetChoice.ALL;
		}
		return what.getSelectionIndex() == CHOSEN ? SheetChoice.of(numbers.getText()) : SheetChoice.BENCH;
	}
}
