package org.frisket.ui.orders.internal.place;

import java.util.Arrays;

import org.eclipse.jface.dialogs.Dialog;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.frisket.ui.orders.internal.Words;
import org.frisket.ui.orders.internal.Named;

/** Asks for the word that locks kept passwords, or for a new one; whoever wants none of it may say so. */
final class MasterPasswordDialog extends Dialog {

	private static final int LINE_PX = 380;

	private final boolean fresh;
	private final boolean wasWrong;
	private Text word;
	private Text again;
	private char[] answer;

	/**
	 * @param fresh    whether there is none yet
	 * @param wasWrong whether another one was tried before
	 */
	MasterPasswordDialog(Shell parent, boolean fresh, boolean wasWrong) {
		super(parent);
		this.fresh = fresh;
		this.wasWrong = wasWrong;
	}

	@Override
	protected void configureShell(Shell shell) {
		super.configureShell(shell);
		shell.setText(Messages.MasterPasswordDialog_title);
	}

	@Override
	protected Control createDialogArea(Composite parent) {
		Composite area = (Composite) super.createDialogArea(parent);
		GridLayoutFactory.swtDefaults().numColumns(2).margins(12, 12).spacing(8, 8).applyTo(area);
		Label note = new Label(area, SWT.WRAP);
		note.setText(fresh ? Messages.MasterPasswordDialog_new
				: wasWrong ? Messages.MasterPasswordDialog_wrong : Messages.MasterPasswordDialog_asked);
		GridDataFactory.fillDefaults().span(2, 1).hint(LINE_PX, SWT.DEFAULT).applyTo(note);
		word = field(area, Messages.MasterPasswordDialog_word);
		if (fresh) {
			again = field(area, Messages.MasterPasswordDialog_again);
		}
		return area;
	}

	private Text field(Composite area, String label) {
		new Label(area, SWT.NONE).setText(label);
		Text field = new Text(area, SWT.BORDER | SWT.PASSWORD);
		Named.as(label, field);
		GridDataFactory.fillDefaults().grab(true, false).applyTo(field);
		field.addModifyListener(event -> check());
		return field;
	}

	@Override
	protected void createButtonsForButtonBar(Composite parent) {
		createButton(parent, IDialogConstants.OK_ID,
				fresh ? Messages.MasterPasswordDialog_lock : Messages.MasterPasswordDialog_unlock, true);
		createButton(parent, IDialogConstants.CANCEL_ID,
				fresh ? Messages.MasterPasswordDialog_doNotKeep : Words.CANCEL, false);
		check();
	}

	private void check() {
		if (getButton(IDialogConstants.OK_ID) != null) {
			boolean same = !fresh || Arrays.equals(word.getTextChars(), again.getTextChars());
			getButton(IDialogConstants.OK_ID).setEnabled(word.getCharCount() > 0 && same);
		}
	}

	@Override
	protected void okPressed() {
		answer = word.getTextChars();
		super.okPressed();
	}

	/** What was typed. */
	char[] word() {
		return answer;
	}
}
