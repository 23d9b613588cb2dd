package org.frisket.ui.orders.internal.book;

import java.util.List;

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
import org.frisket.ui.orders.internal.Words;
import org.frisket.ui.orders.internal.Named;

/** Lists the jobs that stayed at their stages, each with the reason. */
final class RefusedDialog extends Dialog {

	private static final int WIDTH_PX = 520;
	private static final int HEIGHT_PX = 160;

	private final List<StageMoves.Refused> refused;

	RefusedDialog(Shell parent, List<StageMoves.Refused> refused) {
		super(parent);
		setBlockOnOpen(false);
		this.refused = refused;
	}

	@Override
	protected void configureShell(Shell shell) {
		super.configureShell(shell);
		shell.setText(Messages.RefusedDialog_title);
	}

	@Override
	protected boolean isResizable() {
		return true;
	}

	@Override
	protected Control createDialogArea(Composite parent) {
		Composite area = (Composite) super.createDialogArea(parent);
		Label words = new Label(area, SWT.WRAP);
		words.setText(Messages.RefusedDialog_words);
		GridDataFactory.fillDefaults().grab(true, false).hint(WIDTH_PX, SWT.DEFAULT).applyTo(words);
		Text list = new Text(area, SWT.MULTI | SWT.READ_ONLY | SWT.BORDER | SWT.V_SCROLL | SWT.WRAP);
		Named.as(Messages.RefusedDialog_words, list);
		list.setText(String.join("\n", refused.stream().map(RefusedDialog::line).toList())); //$NON-NLS-1$
		GridDataFactory.fillDefaults().grab(true, true).hint(WIDTH_PX, HEIGHT_PX).applyTo(list);
		return area;
	}

	static String line(StageMoves.Refused each) {
		return NLS.bind(Messages.RefusedDialog_line,
				new Object[] { each.job().number(), each.job().title(), each.reason() });
	}

	@Override
	protected void createButtonsForButtonBar(Composite parent) {
		createButton(parent, IDialogConstants.OK_ID, Words.CLOSE, true);
	}
}
