package org.frisket.app.internal.keys;

import java.util.Map;

import org.eclipse.core.commands.ParameterizedCommand;
import org.eclipse.core.commands.common.CommandException;
import org.eclipse.core.runtime.Status;
import org.eclipse.jface.dialogs.Dialog;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.window.IShellProvider;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Listener;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.handlers.IHandlerService;
import org.eclipse.ui.statushandlers.StatusManager;

/** All commands with their keys, found by word and by key; the one chosen is done. Stands beside the window. */
final class KeyListDialog extends Dialog {

	private static final Point SIZE = new Point(680, 560);
	private static final int[] WIDTHS = { 300, 170, 160 };
	private static final String COMMAND = "command"; //$NON-NLS-1$

	private final IWorkbenchWindow window;
	private final Map<KeyRow, ParameterizedCommand> rows;
	private Text search;
	private Table table;
	private Label count;

	KeyListDialog(IWorkbenchWindow window) {
		super((IShellProvider) window::getShell);
		this.window = window;
		rows = new KeyList(window).rows();
		setShellStyle(SWT.CLOSE | SWT.TITLE | SWT.BORDER | SWT.RESIZE | SWT.MODELESS);
		setBlockOnOpen(false);
	}

	@Override
	protected void configureShell(Shell shell) {
		super.configureShell(shell);
		shell.setText(Messages.KeyListDialog_title);
	}

	@Override
	protected Point getInitialSize() {
		return SIZE;
	}

	@Override
	protected Control createDialogArea(Composite parent) {
		Composite area = (Composite) super.createDialogArea(parent);
		search = new Text(area, SWT.SEARCH | SWT.ICON_CANCEL | SWT.ICON_SEARCH);
		search.setMessage(Messages.KeyListDialog_search);
		search.addListener(SWT.Modify, event -> list());
		search.addListener(SWT.KeyDown, this::searchKey);
		search.addListener(SWT.DefaultSelection, event -> run());
		GridDataFactory.fillDefaults().grab(true, false).applyTo(search);
		table = new Table(area, SWT.SINGLE | SWT.FULL_SELECTION | SWT.BORDER);
		table.setHeaderVisible(true);
		String[] heads = { Messages.KeyListDialog_command, Messages.KeyListDialog_keys, Messages.KeyListDialog_where };
		for (int i = 0; i < heads.length; i++) {
			TableColumn column = new TableColumn(table, SWT.NONE);
			column.setText(heads[i]);
			column.setWidth(WIDTHS[i]);
		}
		table.addListener(SWT.DefaultSelection, event -> run());
		GridDataFactory.fillDefaults().grab(true, true).applyTo(table);
		count = new Label(area, SWT.NONE);
		GridDataFactory.fillDefaults().grab(true, false).applyTo(count);
		list();
		return area;
	}

	private void list() {
		table.setRedraw(false);
		table.removeAll();
		rows.forEach((row, command) -> {
			if (row.answers(search.getText())) {
				TableItem item = new TableItem(table, SWT.NONE);
				item.setText(new String[] { row.command(), row.keys(), row.where() });
				item.setData(COMMAND, command);
			}
		});
		table.setRedraw(true);
		if (table.getItemCount() > 0) {
			table.setSelection(0);
		}
		count.setText(NLS.bind(Messages.KeyListDialog_count, table.getItemCount(), rows.size()));
		count.requestLayout();
	}

	private void searchKey(Event event) {
		if (event.keyCode == SWT.ARROW_DOWN && table.getItemCount() > 0) {
			table.setFocus();
			event.doit = false;
		}
	}

	/** Closes first: the command is meant for what is worked in. */
	private void run() {
		if (table.getSelectionIndex() < 0) {
			return;
		}
		ParameterizedCommand command = (ParameterizedCommand) table.getItem(table.getSelectionIndex()).getData(COMMAND);
		Shell shell = window.getShell();
		// what a command is meant for is known again only when the window is in front
		Listener inFront = new Listener() {
			@Override
			public void handleEvent(Event event) {
				shell.removeListener(SWT.Activate, this);
				shell.getDisplay().asyncExec(() -> execute(command));
			}
		};
		shell.addListener(SWT.Activate, inFront);
		close();
		shell.setActive();
	}

	private void execute(ParameterizedCommand command) {
		try {
			if (command.getCommand().isHandled() && command.getCommand().isEnabled()) {
				window.getService(IHandlerService.class).executeCommand(command, null);
			}
		} catch (CommandException e) {
			StatusManager.getManager().handle(Status.error(e.getMessage(), e), StatusManager.SHOW);
		}
	}

	@Override
	protected void createButtonsForButtonBar(Composite parent) {
		createButton(parent, IDialogConstants.CLOSE_ID, Messages.KeyListDialog_close, false);
	}

	@Override
	protected void buttonPressed(int id) {
		close();
	}
}
