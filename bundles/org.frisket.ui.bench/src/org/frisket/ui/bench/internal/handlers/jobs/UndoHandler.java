package org.frisket.ui.bench.internal.handlers.jobs;

import java.util.Map;

import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.osgi.util.NLS;
import org.eclipse.ui.commands.IElementUpdater;
import org.eclipse.ui.menus.UIElement;
import org.frisket.ui.bench.internal.editor.BenchEditor;
import org.frisket.ui.bench.internal.handlers.BenchHandler;
import org.frisket.ui.bench.internal.nodes.PenTool;

/** Takes back the last edit, and names it in the menu; a node of the pen comes before any edit. */
public final class UndoHandler extends BenchHandler implements IElementUpdater {

	@Override
	protected void execute(BenchEditor bench, ExecutionEvent event) {
		if (bench.viewer().getEditDomain().getActiveTool() instanceof PenTool pen && pen.takeBack()) {
			return;
		}
		if (bench.commandStack().canUndo()) {
			bench.commandStack().undo();
		}
	}

	@Override
	protected boolean isEnabled(BenchEditor bench) {
		return bench.commandStack().canUndo();
	}

	@Override
	@SuppressWarnings("rawtypes")
	public void updateElement(UIElement element, Map parameters) {
		BenchEditor bench = front();
		element.setText(bench == null || !bench.commandStack().canUndo() ? Messages.UndoHandler_nothing
				: NLS.bind(Messages.UndoHandler_named, bench.commandStack().getUndoCommand().getLabel()));
	}
}
