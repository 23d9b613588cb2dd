package org.frisket.ui.bench.internal.parts;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.eclipse.gef.EditPartViewer;
import org.eclipse.jface.viewers.StructuredSelection;
import org.frisket.model.Element;
import org.frisket.model.Group;
import org.frisket.model.Jobs;

/** Selects by groups: each element stands for its whole outermost group, unless it is reached for by itself. */
public final class GroupSelection {

	private final EditPartViewer viewer;

	public GroupSelection(EditPartViewer viewer) {
		this.viewer = viewer;
	}

	/** The part itself with all others of its outermost group that can be selected. */
	public List<ElementPart> whole(ElementPart part) {
		Optional<Group> group = Jobs.groupOf(part.element());
		if (group.isEmpty()) {
			return List.of(part);
		}
		List<Element> elements = Jobs.elements(group.get());
		return Selection.all(viewer).stream()
				.filter(each -> elements.contains(each.element()) && each.isSelectable()).toList();
	}

	/** Selects it with its group, and nothing else. */
	public void select(ElementPart part) {
		show(new LinkedHashSet<>(whole(part)), part);
	}

	/** Selects it with its group besides what is selected already. */
	public void add(ElementPart part) {
		Set<ElementPart> chosen = new LinkedHashSet<>(Selection.parts(viewer));
		chosen.addAll(whole(part));
		show(chosen, part);
	}

	/** Takes it by itself: alone out of its group if that is selected whole, else besides or out of the selection. */
	public void reach(ElementPart part) {
		Set<ElementPart> chosen = new LinkedHashSet<>(Selection.parts(viewer));
		List<ElementPart> whole = whole(part);
		if (whole.size() > 1 && chosen.containsAll(whole)) {
			chosen.removeAll(whole);
			chosen.add(part);
		} else if (!chosen.remove(part)) {
			chosen.add(part);
		}
		show(chosen, part);
	}

	/** The part that was clicked comes last, and so has the focus. */
	private void show(Set<ElementPart> chosen, ElementPart clicked) {
		if (chosen.remove(clicked)) {
			chosen.add(clicked);
		}
		viewer.setSelection(new StructuredSelection(List.copyOf(chosen)));
	}
}
