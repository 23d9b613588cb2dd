package org.frisket.ui.bench.internal.parts;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;

import org.eclipse.gef.GraphicalViewer;
import org.eclipse.gef.commands.CommandStackEvent;
import org.eclipse.jface.viewers.StructuredSelection;

/**
 * Keeps elements selected through changes of the job, undone ones too, that take them from one layer to another or put
 * an element with the same id in their place.
 */
public final class KeptSelection {

	private final GraphicalViewer viewer;
	/** Ids of the elements that were selected before the change under way, in the order of selection. */
	private List<String> before = List.of();

	public KeptSelection(GraphicalViewer viewer) {
		this.viewer = viewer;
		viewer.getEditDomain().getCommandStack().addCommandStackEventListener(this::stackEvent);
	}

	private void stackEvent(CommandStackEvent event) {
		if (event.isPreChangeEvent()) {
			before = selected();
		} else if (event.isPostChangeEvent() && !new HashSet<>(selected()).containsAll(before)) {
			selectAgain();
		}
	}

	private List<String> selected() {
		return Selection.elements(viewer).stream().map(element -> element.getId()).filter(Objects::nonNull).toList();
	}

	private void selectAgain() {
		Map<String, ElementPart> parts = new HashMap<>();
		Selection.all(viewer).stream().filter(ElementPart::isSelectable)
				.forEach(part -> parts.put(part.element().getId(), part));
		List<ElementPart> kept = before.stream().map(parts::get).filter(Objects::nonNull).toList();
		if (!kept.equals(Selection.parts(viewer))) {
			viewer.setSelection(new StructuredSelection(kept));
		}
	}
}
