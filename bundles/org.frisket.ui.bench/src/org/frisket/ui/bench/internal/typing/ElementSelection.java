package org.frisket.ui.bench.internal.typing;

import java.util.List;

import org.eclipse.gef.GraphicalViewer;
import org.frisket.model.Element;
import org.frisket.ui.bench.internal.parts.Selection;

/** What the selection of elements means for a wording that is typed: another one ends it, its own is taken back. */
final class ElementSelection {

	private final GraphicalViewer viewer;
	private final Typing typing;

	ElementSelection(GraphicalViewer viewer, Typing typing) {
		this.viewer = viewer;
		this.typing = typing;
	}

	void changed() {
		if (!typing.isActive()) {
			return;
		}
		List<Element> selected = Selection.elements(viewer);
		if (selected.equals(List.of(typing.wording()))) {
			// a click into the words sets the caret; the accent would only hide them
			viewer.getControl().getDisplay().asyncExec(() -> {
				if (typing.isActive() && !viewer.getControl().isDisposed()) {
					viewer.deselectAll();
				}
			});
		} else if (!selected.isEmpty()) {
			typing.end(false);
		}
	}
}
