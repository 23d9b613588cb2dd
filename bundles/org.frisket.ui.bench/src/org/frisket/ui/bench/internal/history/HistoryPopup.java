package org.frisket.ui.bench.internal.history;

import java.util.List;

import org.eclipse.jface.dialogs.PopupDialog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;

/** The steps of a job in a list, the present one marked. Choosing one goes there; Escape leaves all as it is. */
public final class HistoryPopup extends PopupDialog {

	private static final int WIDTH_PX = 280;
	private static final int MOST_ROWS = 18;

	private final JobHistory history;
	private final Control over;
	private Table table;

	/** @param over where it opens, at the upper left corner */
	public HistoryPopup(Shell parent, JobHistory history, Control over) {
		super(parent, SWT.RESIZE, true, true, false, false, false, Messages.HistoryPopup_title,
				Messages.HistoryPopup_advice);
		this.history = history;
		this.over = over;
	}

	@Override
	protected Control createDialogArea(Composite parent) {
		Composite area = (Composite) super.createDialogArea(parent);
		table = new Table(area, SWT.SINGLE | SWT.FULL_SELECTION | SWT.V_SCROLL);
		List<String> steps = history.steps();
		int present = history.present();
		row(Messages.HistoryPopup_opened, present == 0, false);
		for (int i = 0; i < steps.size(); i++) {
			row(steps.get(i), i + 1 == present, i >= present);
		}
		table.setSelection(present);
		table.addListener(SWT.MouseUp, event -> {
			if (event.button == 1 && table.getItem(new Point(event.x, event.y)) != null) {
				go();
			}
		});
		table.addListener(SWT.DefaultSelection, event -> go());
		GridDataFactory.fillDefaults().grab(true, true)
				.hint(WIDTH_PX, Math.min(MOST_ROWS, steps.size() + 1) * table.getItemHeight()).applyTo(table);
		return area;
	}

	private void row(String step, boolean present, boolean undone) {
		TableItem row = new TableItem(table, SWT.NONE);
		row.setText(NLS.bind(present ? Messages.HistoryPopup_present
				: undone ? Messages.HistoryPopup_undone : Messages.HistoryPopup_done, step));
		if (present) {
			row.setFont(JFaceResources.getFontRegistry().getBold(JFaceResources.DIALOG_FONT));
		}
	}

	private void go() {
		int step = table.getSelectionIndex();
		close();
		if (step >= 0) {
			history.goTo(step);
		}
	}

	@Override
	protected Control getFocusControl() {
		return table;
	}

	@Override
	protected Point getInitialLocation(Point size) {
		return over.toDisplay(0, 0);
	}
}
