package org.frisket.ui.orders.internal.book;

import java.util.List;
import java.util.function.Consumer;

import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.dialogs.TitleAreaDialog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.frisket.model.Stage;
import org.frisket.orders.Entry;
import org.frisket.orders.paper.StageWords;
import org.frisket.ui.orders.internal.Named;
import org.frisket.ui.orders.internal.Words;

/** Asks to which stage jobs are to go, and why. */
final class StageDialog extends TitleAreaDialog {

	private static final int MARGIN_PX = 12;
	private static final int SPACE_PX = 8;
	private static final int COLUMNS = 2;

	private final List<Entry> jobs;
	private final Consumer<StageDialog> done;
	private Stage stage;
	private String remark = ""; //$NON-NLS-1$

	/** @param done told when it was closed with a stage */
	StageDialog(Shell parent, List<Entry> jobs, Consumer<StageDialog> done) {
		super(parent);
		setBlockOnOpen(false);
		this.done = done;
		this.jobs = jobs;
		Stage first = jobs.get(0).stage();
		stage = first.compareTo(Stage.DELIVERED) < 0 ? Stage.values()[first.ordinal() + 1] : Stage.ORDERED;
	}

	@Override
	protected void configureShell(Shell shell) {
		super.configureShell(shell);
		shell.setText(Messages.StageDialog_title);
	}

	@Override
	protected boolean isResizable() {
		return true;
	}

	@Override
	protected Control createDialogArea(Composite parent) {
		Composite area = new Composite((Composite) super.createDialogArea(parent), SWT.NONE);
		GridLayoutFactory.fillDefaults().numColumns(COLUMNS).margins(MARGIN_PX, MARGIN_PX).spacing(SPACE_PX, SPACE_PX)
				.applyTo(area);
		GridDataFactory.fillDefaults().grab(true, true).applyTo(area);
		setTitle(jobs.size() == 1 ? NLS.bind(Messages.StageDialog_one, jobs.get(0).number(), jobs.get(0).title())
				: NLS.bind(Messages.StageDialog_many, jobs.size()));
		setMessage(Messages.StageDialog_message);
		Composite stages = new Composite(area, SWT.NONE);
		GridLayoutFactory.fillDefaults().numColumns(COLUMNS).spacing(4 * SPACE_PX, SPACE_PX / 2).applyTo(stages);
		GridDataFactory.fillDefaults().span(COLUMNS, 1).applyTo(stages);
		for (Stage each : Stage.values()) {
			Button button = new Button(stages, SWT.RADIO);
			button.setText(StageWords.of(each));
			button.setSelection(each == stage);
			button.addListener(SWT.Selection, event -> {
				if (button.getSelection()) {
					stage = each;
				}
			});
			if (each == stage) {
				button.setFocus();
			}
		}
		new Label(area, SWT.NONE).setText(Messages.StageDialog_remark);
		Text why = new Text(area, SWT.BORDER);
		Named.as(Messages.StageDialog_remark, why);
		GridDataFactory.fillDefaults().grab(true, false).applyTo(why);
		why.addListener(SWT.Modify, event -> remark = why.getText());
		return area;
	}

	@Override
	protected void createButtonsForButtonBar(Composite parent) {
		createButton(parent, IDialogConstants.OK_ID, Messages.StageDialog_move, true);
		createButton(parent, IDialogConstants.CANCEL_ID, Words.CANCEL, false);
	}

	@Override
	protected void okPressed() {
		super.okPressed();
		done.accept(this);
	}

	Stage stage() {
		return stage;
	}

	String remark() {
		return remark.strip();
	}
}
