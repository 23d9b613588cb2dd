package org.frisket.ui.bench.internal.handlers.elements;

import java.util.List;

import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.frisket.editing.arranging.MoveElements;
import org.frisket.model.Element;
import org.frisket.ui.bench.internal.editor.BenchEditor;
import org.frisket.ui.bench.internal.editor.EditCommand;
import org.frisket.ui.bench.internal.handlers.BenchHandler;
import org.frisket.ui.bench.internal.parts.Selection;

/** Moves the selected elements, or nodes or letters while those are edited, by a distance that the key binding states. */
public final class NudgeHandler extends BenchHandler {

	private static final String RIGHT = "org.frisket.ui.bench.command.nudge.right"; //$NON-NLS-1$
	private static final String DOWN = "org.frisket.ui.bench.command.nudge.down"; //$NON-NLS-1$

	@Override
	protected void execute(BenchEditor bench, ExecutionEvent event) throws ExecutionException {
		if (bench.nodes().isActive()) {
			bench.nodes().nudge(mm(event, RIGHT), mm(event, DOWN));
			return;
		}
		if (bench.letters().isActive()) {
			bench.letters().nudge(mm(event, RIGHT), mm(event, DOWN));
			return;
		}
		List<Element> elements = Selection.elements(bench.viewer());
		if (!elements.isEmpty()) {
			bench.commandStack()
					.execute(new EditCommand(new MoveElements(elements, mm(event, RIGHT), mm(event, DOWN))));
		}
	}

	private static double mm(ExecutionEvent event, String parameter) throws ExecutionException {
		String text = event.getParameter(parameter);
		try {
			return text == null ? 0 : Double.parseDouble(text);
		} catch (NumberFormatException e) {
			throw new ExecutionException("not a distance in mm: " + text, e); //$NON-NLS-1$
		}
	}
}
