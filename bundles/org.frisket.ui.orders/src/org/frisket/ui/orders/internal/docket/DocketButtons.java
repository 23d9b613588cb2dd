package org.frisket.ui.orders.internal.docket;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.core.commands.common.CommandException;
import org.eclipse.core.runtime.ILog;
import org.eclipse.jface.bindings.TriggerSequence;
import org.eclipse.jface.layout.RowLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.handlers.IHandlerService;
import org.eclipse.ui.keys.IBindingService;

/** What can be done with the job of a docket; each button is a command of the workbench. */
final class DocketButtons extends Composite {

	private static final String COMMAND = "org.frisket.ui.orders.command.docket."; //$NON-NLS-1$

	private final List<Button> buttons = new ArrayList<>();
	private final Button undo;

	DocketButtons(Composite parent) {
		super(parent, SWT.NONE);
		RowLayoutFactory.fillDefaults().margins(8, 4).spacing(4).wrap(true).applyTo(this);
		button(Messages.DocketButtons_docket, Messages.DocketButtons_docketTip, "print"); //$NON-NLS-1$
		button(Messages.DocketButtons_proof, Messages.DocketButtons_proofTip, "proof"); //$NON-NLS-1$
		button(Messages.DocketButtons_quote, Messages.DocketButtons_quoteTip, "quote"); //$NON-NLS-1$
		button(Messages.DocketButtons_ticket, Messages.DocketButtons_ticketTip, "ticket"); //$NON-NLS-1$
		button(Messages.DocketButtons_stage, Messages.DocketButtons_stageTip, "stage"); //$NON-NLS-1$
		undo = button(Messages.DocketButtons_undo, Messages.DocketButtons_undoTip, "undoStage"); //$NON-NLS-1$
	}

	private Button button(String word, String tip, String command) {
		Button button = new Button(this, SWT.PUSH);
		button.setText(word);
		TriggerSequence keys = PlatformUI.getWorkbench().getService(IBindingService.class)
				.getBestActiveBindingFor(COMMAND + command);
		button.setToolTipText(keys == null ? tip : tip + " (" + keys.format() + ")"); //$NON-NLS-1$ //$NON-NLS-2$
		button.addListener(SWT.Selection, event -> execute(COMMAND + command));
		buttons.add(button);
		return button;
	}

	private static void execute(String command) {
		try {
			PlatformUI.getWorkbench().getService(IHandlerService.class).executeCommand(command, null);
		} catch (CommandException e) {
			ILog.of(DocketButtons.class).error(e.getMessage(), e);
		}
	}

	void show(Sight sight) {
		buttons.forEach(button -> button.setEnabled(sight != null));
		undo.setEnabled(sight != null && !sight.history().isEmpty());
	}
}
