package org.frisket.ui.orders.internal.customers;

import java.util.List;

import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.dialogs.TitleAreaDialog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.frisket.studio.NameKey;
import org.frisket.ui.orders.internal.Named;

/** Says what is about to be done to somebody, and does it once the name is typed. */
final class NameDialog extends TitleAreaDialog {

	private static final int WIDTH_PX = 520;

	private final String title;
	private final String message;
	private final List<String> lines;
	private final String name;
	private final String button;
	private final Runnable done;

	/** @param lines what will be, one a line @param name to be typed @param done what is done then */
	NameDialog(Shell parent, String title, String message, List<String> lines, String name, String button,
			Runnable done) {
		super(parent);
		this.title = title;
		this.message = message;
		this.lines = lines;
		this.name = name;
		this.button = button;
		this.done = done;
		setShellStyle(SWT.CLOSE | SWT.TITLE | SWT.BORDER | SWT.RESIZE | SWT.APPLICATION_MODAL);
		setBlockOnOpen(false);
		setHelpAvailable(false);
	}

	@Override
	protected void configureShell(Shell shell) {
		super.configureShell(shell);
		shell.setText(title);
	}

	@Override
	protected Control createDialogArea(Composite parent) {
		Composite area = new Composite((Composite) super.createDialogArea(parent), SWT.NONE);
		GridDataFactory.fillDefaults().grab(true, true).applyTo(area);
		GridLayoutFactory.swtDefaults().applyTo(area);
		for (String line : lines) {
			Label label = new Label(area, SWT.WRAP);
			label.setText(line.replace("&", "&&")); //$NON-NLS-1$ //$NON-NLS-2$
			GridDataFactory.fillDefaults().grab(true, false).hint(WIDTH_PX, SWT.DEFAULT).applyTo(label);
		}
		Label label = new Label(area, SWT.WRAP);
		label.setText(NLS.bind(Messages.NameDialog_type, name).replace("&", "&&")); //$NON-NLS-1$ //$NON-NLS-2$
		GridDataFactory.fillDefaults().grab(true, false).indent(0, 8).applyTo(label);
		Text typed = new Text(area, SWT.BORDER);
		Named.as(NLS.bind(Messages.NameDialog_type, name), typed);
		GridDataFactory.fillDefaults().grab(true, false).applyTo(typed);
		typed.addListener(SWT.Modify, event -> getButton(IDialogConstants.OK_ID)
				.setEnabled(NameKey.of(typed.getText()).equals(NameKey.of(name))));
		typed.setFocus();
		return area;
	}

	@Override
	protected Control createContents(Composite parent) {
		Control contents = super.createContents(parent);
		setTitle(title);
		setMessage(message);
		getButton(IDialogConstants.OK_ID).setEnabled(false);
		return contents;
	}

	@Override
	protected void createButtonsForButtonBar(Composite parent) {
		createButton(parent, IDialogConstants.OK_ID, button, true);
		createButton(parent, IDialogConstants.CANCEL_ID, Messages.NameDialog_cancel, false);
	}

	@Override
	protected void okPressed() {
		super.okPressed();
		done.run();
	}
}
