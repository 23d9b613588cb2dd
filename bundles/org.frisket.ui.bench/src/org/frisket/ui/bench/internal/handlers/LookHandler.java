package org.frisket.ui.bench.internal.handlers;

import java.util.Map;

import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.ui.commands.IElementUpdater;
import org.eclipse.ui.menus.UIElement;
import org.frisket.ui.bench.internal.editor.BenchEditor;
import org.frisket.ui.bench.internal.looks.BenchLook;

/** Looks at the job in another way. */
public final class LookHandler extends BenchHandler implements IElementUpdater {

	public static final String COMMAND_ID = "org.frisket.ui.bench.command.look"; //$NON-NLS-1$

	private static final String LOOK = COMMAND_ID + ".look"; //$NON-NLS-1$

	@Override
	void execute(BenchEditor bench, ExecutionEvent event) throws ExecutionException {
		bench.looks().show(ElementHandler.choice(event, LOOK, BenchLook.class));
		// the item that was chosen has ticked itself, whatever came of it
		bench.announceLook();
	}

	@Override
	@SuppressWarnings("rawtypes")
	public void updateElement(UIElement element, Map parameters) {
		BenchEditor bench = front();
		element.setChecked(bench != null && bench.looks().look().name().equals(parameters.get(LOOK)));
	}
}
