package org.frisket.ui.bench.internal.handlers.shapes;

import java.util.List;
import java.util.Map;

import org.eclipse.core.commands.ExecutionEvent;
import org.frisket.editing.Edit;
import org.frisket.editing.shapes.MakeOutline;
import org.frisket.model.Element;
import org.frisket.model.Wording;
import org.frisket.ui.bench.internal.editor.BenchEditor;
import org.frisket.ui.bench.internal.handlers.ElementHandler;
import org.frisket.ui.bench.internal.parts.Selection;

/** Makes outlines of the selected wordings, for good but for an undo. */
public final class MakeOutlineHandler extends ElementHandler {

	@Override
	protected Edit edit(BenchEditor bench, List<Element> elements, ExecutionEvent event) {
		Map<Wording, String> paths = paths(bench, elements, Wording.class);
		bench.say(paths.isEmpty() ? Messages.MakeOutlineHandler_noWording
				: paths.containsValue("") ? Messages.MakeOutlineHandler_notYet : null); //$NON-NLS-1$
		return new MakeOutline(paths);
	}

	@Override
	protected void done(BenchEditor bench, Edit edit) {
		List<? extends Element> outlines = ((MakeOutline) edit).outlines();
		if (!outlines.isEmpty()) {
			Selection.select(bench.viewer(), outlines);
		}
	}
}
