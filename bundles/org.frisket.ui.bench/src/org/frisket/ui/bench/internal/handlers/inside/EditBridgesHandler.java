package org.frisket.ui.bench.internal.handlers.inside;

import java.util.List;

import org.eclipse.core.commands.ExecutionEvent;
import org.frisket.model.Element;
import org.frisket.model.Wording;
import org.frisket.ui.bench.internal.editor.BenchEditor;
import org.frisket.ui.bench.internal.handlers.BenchHandler;
import org.frisket.ui.bench.internal.parts.Selection;

/** Sets the bridges of the selected wording by hand, or leaves them. */
public final class EditBridgesHandler extends BenchHandler {

	@Override
	protected void execute(BenchEditor bench, ExecutionEvent event) {
		bench.typing().end(true);
		List<Element> selected = Selection.elements(bench.viewer());
		if (!bench.bridges().isActive() && selected.size() == 1 && selected.get(0) instanceof Wording wording) {
			bench.bridges().begin(wording);
		} else {
			bench.bridges().end();
		}
	}
}
