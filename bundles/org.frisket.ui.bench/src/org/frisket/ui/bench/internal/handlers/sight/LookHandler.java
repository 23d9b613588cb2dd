package org.frisket.ui.bench.internal.handlers.sight;

import java.util.Map;

import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.ui.commands.ICommandService;
import org.eclipse.ui.commands.IElementUpdater;
import org.eclipse.ui.menus.UIElement;
import org.eclipse.ui.services.IServiceLocator;
import org.frisket.ui.bench.internal.editor.BenchEditor;
import org.frisket.ui.bench.internal.handlers.BenchHandler;
import org.frisket.ui.bench.internal.handlers.ElementHandler;
import org.frisket.ui.bench.internal.looks.BenchLook;

/** Looks at the job in another way. */
public final class LookHandler extends BenchHandler implements IElementUpdater {

	public static final String COMMAND_ID = "org.frisket.ui.bench.command.look"; //$NON-NLS-1$

	private static final String LOOK = COMMAND_ID + ".look"; //$NON-NLS-1$

	@Override
	protected void execute(BenchEditor bench, ExecutionEvent event) throws ExecutionException {
		bench.looks().show(ElementHandler.choice(event, LOOK, BenchLook.class));
		// the item that was chosen has ticked itself, whatever came of it
		announce(bench.getSite());
	}

	/** Has the menus tick the look that is shown. */
	public static void announce(IServiceLocator site) {
		site.getService(ICommandService.class).refreshElements(COMMAND_ID, null);
	}

	@Override
	@SuppressWarnings("rawtypes")
	public void updateElement(UIElement element, Map parameters) {
		BenchEditor bench = front();
		element.setChecked(bench != null && bench.looks().look().name().equals(parameters.get(LOOK)));
	}
}
