package org.frisket.ui.material.internal.trials;

import java.util.Optional;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.ui.handlers.HandlerUtil;
import org.frisket.material.trials.Verdict;

/** Judges the cell that is looked at. */
public final class VerdictHandler extends AbstractHandler {

	private static final String VERDICT = "org.frisket.ui.material.command.verdict.verdict"; //$NON-NLS-1$

	@Override
	public Object execute(ExecutionEvent event) {
		if (HandlerUtil.getActiveEditor(event) instanceof TestSheetEditor editor) {
			editor.judge(Verdict.of(event.getParameter(VERDICT) == null ? "" : event.getParameter(VERDICT))); //$NON-NLS-1$
		}
		return null;
	}
}
