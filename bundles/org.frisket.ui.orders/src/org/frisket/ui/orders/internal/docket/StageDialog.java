package org.frisket.ui.orders.internal.docket;

import java.util.List;
import java.util.function.BiConsumer;
import java.util.stream.Stream;

import org.eclipse.jface.dialogs.Dialog;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.frisket.model.Stage;
import org.frisket.orders.Entry;
import org.frisket.orders.StageStep;
import org.frisket.orders.paper.StageWords;
import org.frisket.ui.orders.internal.Named;
import org.frisket.ui.orders.internal.Words;

/** Which stage a job comes to, and why. */
final class StageDialog extends Dialog {

	private static final int LINE_PX = 280;

	private final Entry entry;
	private final List<Stage> stages;
	private org.eclipse.swt.widgets.List list;
	private Text text;
	private final BiConsumer<Stage, String> chosen;

	/** @param chosen told which stage, and why */
	StageDialog(Shell shell, Entry entry, BiConsumer<Stage, String> chosen) {
		super(shell);
		this.entry = entry;
		this.chosen = chosen;
		setBlockOnOpen(false);
		stages = Stream.of(Stage.values()).filter(each -> each != entry.stage()).toList();
	}

	@Override
	protected void configureShell(Shell shell) {
		super.configureShell(shell);
		shell.setText(NLS.bind(Messages.StageDialog_title, entry.number()));
	}

	@Override
	protected Control createDialogArea(Composite parent) {
		Composite area = (Composite) super.createDialogArea(parent);
		Label now = new Label(area, SWT.NONE);
		now.setText(NLS.bind(Messages.StageDialog_now, StageWords.of(entry.stage())));
		list = new org.eclipse.swt.widgets.List(area, SWT.BORDER | SWT.SINGLE);
		stages.forEach(each -> list.add(StageWords.of(each)));
		Named.as(now.getText(), list);
		list.select(next());
		list.addListener(SWT.DefaultSelection, event -> okPressed());
		GridDataFactory.fillDefaults().grab(true, true).hint(LINE_PX, SWT.DEFAULT).applyTo(list);
		new Label(area, SWT.NONE).setText(Messages.StageDialog_remark);
		text = new Text(area, SWT.BORDER);
		Named.as(Messages.StageDialog_remark, text);
		GridDataFactory.fillDefaults().grab(true, false).applyTo(text);
		return area;
	}

	/** The one that a job comes to as a rule: the next in the line from enquiry to delivery. */
	private int next() {
		Stage after = StageStep.isAside(entry.stage()) || entry.stage() == Stage.DELIVERED ? entry.stage()
				: Stage.get(entry.stage().getValue() + 1);
		return Math.max(0, stages.indexOf(after));
	}

	@Override
	protected void createButtonsForButtonBar(Composite parent) {
		createButton(parent, IDialogConstants.OK_ID, Messages.StageDialog_ok, true);
		createButton(parent, IDialogConstants.CANCEL_ID, Words.CANCEL, false);
	}

	@Override
	protected void okPressed() {
		Stage stage = stages.get(Math.max(0, list.getSelectionIndex()));
		String remark = text.getText().strip();
		super.okPressed();
		chosen.accept(stage, remark);
	}
}
