package org.frisket.ui.orders.internal.docket;

import java.util.Locale;
import java.util.Optional;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.core.runtime.IConfigurationElement;
import org.eclipse.core.runtime.IExecutableExtension;
import org.eclipse.ui.PartInitException;
import org.frisket.orders.Entry;
import org.frisket.orders.PaperKind;

/** Writes a paper of the selected job; which, stands behind the name of the class. */
public final class PaperHandler extends AbstractHandler implements IExecutableExtension {

	private PaperKind kind = PaperKind.DOCKET;

	@Override
	public void setInitializationData(IConfigurationElement element, String property, Object data) {
		kind = PaperKind.valueOf(String.valueOf(data).toUpperCase(Locale.ROOT));
	}

	@Override
	public Object execute(ExecutionEvent event) throws ExecutionException {
		try {
			DocketView view = Selected.view(event);
			Optional<Entry> entry = Selected.entry(event, view);
			if (entry.isEmpty()) {
				view.say(Messages.Selected_nothing, null);
			} else if (kind == PaperKind.QUOTE) {
				QuoteRun.ask(view, entry.get());
			} else {
				PaperRun.ask(view, entry.get(), kind);
			}
		} catch (PartInitException e) {
			throw new ExecutionException(e.getMessage(), e);
		}
		return null;
	}
}
