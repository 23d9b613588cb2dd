package org.frisket.ui.bench.internal.lines;

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
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.frisket.editing.wording.RepeatForLines;

/** Asks for a list, as it is typed or pasted: the guests of a table, for instance. */
public final class LinesDialog extends TitleAreaDialog {

	private static final int MARGIN_PX = 12;
	private static final int WIDTH_PX = 420;
	private static final int HEIGHT_PX = 260;

	private final String first;
	private final Consumer<List<String>> taken;
	private Text list;
	private Label count;

	/**
	 * @param first what stands in the list at first, and is replaced by what is typed or pasted
	 * @param taken told of the lines, see {@link RepeatForLines#lines(String)}, once somebody says that they are all
	 */
	public LinesDialog(Shell parent, String first, Consumer<List<String>> taken) {
		super(parent);
		this.first = first;
		this.taken = taken;
		setShellStyle(SWT.CLOSE | SWT.TITLE | SWT.BORDER | SWT.RESIZE | SWT.APPLICATION_MODAL);
		setBlockOnOpen(false);
		setHelpAvailable(false);
	}

	@Override
	protected void configureShell(Shell shell) {
		super.configureShell(shell);
		shell.setText(Messages.LinesDialog_title);
	}

	@Override
	protected Control createDialogArea(Composite parent) {
		Composite area = new Composite((Composite) super.createDialogArea(parent), SWT.NONE);
		GridDataFactory.fillDefaults().grab(true, true).applyTo(area);
		GridLayoutFactory.fillDefaults().margins(MARGIN_PX, MARGIN_PX).applyTo(area);
		list = new Text(area, SWT.MULTI | SWT.BORDER | SWT.V_SCROLL | SWT.H_SCROLL);
		list.setText(first);
		list.selectAll();
		list.addListener(SWT.Modify, event -> validate());
		list.addListener(SWT.KeyDown, this::pressed);
		GridDataFactory.fillDefaults().grab(true, true).hint(WIDTH_PX, HEIGHT_PX).applyTo(list);
		count = new Label(area, SWT.NONE);
		GridDataFactory.fillDefaults().grab(true, false).applyTo(count);
		return area;
	}

	/** Enter begins a line of the list, so that another key has to say that this was all. */
	private void pressed(Event event) {
		if ((event.keyCode == SWT.CR || event.keyCode == SWT.KEYPAD_CR) && event.stateMask == SWT.MOD1) {
			event.doit = false;
			if (getButton(IDialogConstants.OK_ID).isEnabled()) {
				okPressed();
			}
		}
	}

	@Override
	protected void createButtonsForButtonBar(Composite parent) {
		createButton(parent, IDialogConstants.OK_ID, Messages.LinesDialog_make, true);
		createButton(parent, IDialogConstants.CANCEL_ID, Messages.LinesDialog_cancel, false);
	}

	@Override
	protected Control createContents(Composite parent) {
		Control contents = super.createContents(parent);
		setTitle(Messages.LinesDialog_heading);
		setMessage(Messages.LinesDialog_message);
		validate();
		list.setFocus();
		return contents;
	}

	private void validate() {
		int lines = RepeatForLines.lines(list.getText()).size();
		count.setText(NLS.bind(Messages.LinesDialog_count, lines));
		boolean many = lines > RepeatForLines.MOST;
		setErrorMessage(many ? NLS.bind(Messages.LinesDialog_tooMany, lines, RepeatForLines.MOST) : null);
		Button make = getButton(IDialogConstants.OK_ID);
		if (make != null) {
			make.setEnabled(lines > 0 && !many);
		}
	}

	@Override
	protected void okPressed() {
		List<String> lines = RepeatForLines.lines(list.getText());
		super.okPressed();
		taken.accept(lines);
	}
}
