package org.frisket.ui.bench.internal.handlers.jobs;

import java.util.Map;

import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.osgi.util.NLS;
import org.eclipse.ui.commands.IElementUpdater;
import org.eclipse.ui.menus.UIElement;
import org.frisket.ui.bench.internal.editor.BenchEditor;
import org.frisket.ui.bench.internal.handlers.BenchHandler;

/** Does again the edit that was taken back last, and names it in the menu. */
public final class RedoHandler extends BenchHandler implements IElementUpdater {

	@Override
	protected void execute(BenchEditor bench, ExecutionEvent event) {
		if (bench.commandStack().canRedo()) {
			bench.commandStack().redo();
		}
	}

	@Override
	protected boolean isEnabled(BenchEditor bench) {
		return bench.commandStack().canRedo();
	}

	@Override
	@SuppressWarnings("rawtypes")
	public void updateElement(UIElement element, Map parameters) {
		BenchEditor bench = front();
		element.setText(bench == null || !bench.commandStack().canRedo() ? Messages.RedoHandler_nothing
				: NLS.bind(Messages.RedoHandler_named, bench.commandStack().getRedoCommand().getLabel()));
	}
}
