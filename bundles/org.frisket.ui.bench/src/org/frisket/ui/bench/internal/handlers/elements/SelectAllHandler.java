package org.frisket.ui.bench.internal.handlers.elements;

import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.jface.viewers.StructuredSelection;
import org.frisket.geometry.nodes.NodeSelection;
import org.frisket.ui.bench.internal.editor.BenchEditor;
import org.frisket.ui.bench.internal.handlers.BenchHandler;
import org.frisket.ui.bench.internal.letters.LetterChoice;
import org.frisket.ui.bench.internal.parts.ElementPart;
import org.frisket.ui.bench.internal.parts.Selection;

/** Selects everything that is neither hidden nor locked, all nodes while those are edited, or all that is typed. */
public final class SelectAllHandler extends BenchHandler {

	@Override
	protected void execute(BenchEditor bench, ExecutionEvent event) {
		if (bench.typing().isActive()) {
			bench.typing().selectAll();
			return;
		}
		if (bench.letters().isActive()) {
			bench.letters().choose(LetterChoice.all(bench.letters().letters()));
			return;
		}
		if (bench.nodes().isActive()) {
			bench.nodes().select(NodeSelection.all(bench.nodes().path()));
			return;
		}
		bench.viewer().setSelection(new StructuredSelection(
				Selection.all(bench.viewer()).stream().filter(ElementPart::isSelectable).toList()));
	}
}
