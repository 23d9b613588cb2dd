package org.frisket.ui.orders.internal.docket;

import java.util.Optional;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.core.runtime.IConfigurationElement;
import org.eclipse.core.runtime.IExecutableExtension;
import org.eclipse.ui.PartInitException;
import org.frisket.orders.Entry;

/** Brings the selected job to another stage, or back; which, stands behind the name of the class. */
public final class StageHandler extends AbstractHandler implements IExecutableExtension {

	private boolean undo;

	@Override
	public void setInitializationData(IConfigurationElement element, String property, Object data) {
		undo = "undo".equals(data); //$NON-NLS-1$
	}

	@Override
	public Object execute(ExecutionEvent event) throws ExecutionException {
		try {
			DocketView view = Selected.view(event);
			Optional<Entry> entry = Selected.entry(event, view);
			if (entry.isEmpty()) {
				view.say(Messages.Selected_nothing, null);
			} else if (undo) {
				StageMove.undo(view, entry.get());
			} else {
				new StageDialog(view.getSite().getShell(), entry.get(),
						(stage, remark) -> StageMove.move(view, entry.get(), stage, remark)).open();
			}
		} catch (PartInitException e) {
			throw new ExecutionException(e.getMessage(), e);
		}
		return null;
	}
}
