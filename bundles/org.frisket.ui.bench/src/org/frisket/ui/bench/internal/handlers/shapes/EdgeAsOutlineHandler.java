package org.frisket.ui.bench.internal.handlers.shapes;

import java.util.List;
import java.util.Map;

import org.eclipse.core.commands.ExecutionEvent;
import org.frisket.editing.Edit;
import org.frisket.editing.shapes.EdgeAsOutline;
import org.frisket.model.Element;
import org.frisket.model.Picture;
import org.frisket.ui.bench.internal.editor.BenchEditor;
import org.frisket.ui.bench.internal.handlers.ElementHandler;
import org.frisket.ui.bench.internal.parts.Selection;

/** Lays outlines over the selected pictures, along their contours, for drawing on by hand. */
public final class EdgeAsOutlineHandler extends ElementHandler {

	@Override
	protected Edit edit(BenchEditor bench, List<Element> elements, ExecutionEvent event) {
		Map<Picture, String> paths = paths(bench, elements, Picture.class);
		bench.say(paths.isEmpty() ? Messages.EdgeAsOutlineHandler_noPicture
				: paths.containsValue("") ? Messages.EdgeAsOutlineHandler_noContour : null); //$NON-NLS-1$
		return new EdgeAsOutline(paths);
	}

	@Override
	protected void done(BenchEditor bench, Edit edit) {
		List<? extends Element> outlines = ((EdgeAsOutline) edit).outlines();
		if (!outlines.isEmpty()) {
			Selection.select(bench.viewer(), outlines);
		}
	}
}
