package org.frisket.ui.views.internal.way;

import java.util.Locale;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.core.runtime.Adapters;
import org.eclipse.core.runtime.IConfigurationElement;
import org.eclipse.core.runtime.IExecutableExtension;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.handlers.HandlerUtil;
import org.frisket.ui.bench.JobOnBench;

/** Goes to a station of the way; which one is named after the class in the contribution. */
public final class StationHandler extends AbstractHandler implements IExecutableExtension {

	private Station station;

	@Override
	public void setInitializationData(IConfigurationElement element, String property, Object data) {
		station = Station.valueOf(String.valueOf(data).toUpperCase(Locale.ROOT));
	}

	@Override
	public Object execute(ExecutionEvent event) throws ExecutionException {
		IWorkbenchPage page = HandlerUtil.getActiveWorkbenchWindowChecked(event).getActivePage();
		IEditorPart editor = page.getActiveEditor();
		try {
			station.open(page, editor == null ? null : Adapters.adapt(editor, JobOnBench.class));
		} catch (PartInitException e) {
			throw new ExecutionException(e.getMessage(), e);
		}
		return null;
	}
}
