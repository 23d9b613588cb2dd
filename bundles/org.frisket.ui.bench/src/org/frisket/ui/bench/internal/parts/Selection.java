package org.frisket.ui.bench.internal.parts;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

import org.eclipse.gef.EditPartViewer;
import org.eclipse.jface.viewers.StructuredSelection;
import org.frisket.model.Element;
import org.frisket.model.Jobs;

/** What is selected in a viewer of the bench; the one place that knows GEF's untyped lists. */
public final class Selection {

	private Selection() {
	}

	/** The parts of the selected elements, in the order of selection. */
	public static List<ElementPart> parts(EditPartViewer viewer) {
		return elementParts(viewer.getSelectedEditParts());
	}

	/** The parts of all elements, the lowest first. */
	public static List<ElementPart> all(EditPartViewer viewer) {
		return viewer.getContents() == null ? List.of() : elementParts(viewer.getContents().getChildren());
	}

	/** The selected elements, in the order of selection. */
	public static List<Element> elements(EditPartViewer viewer) {
		return parts(viewer).stream().map(ElementPart::element).toList();
	}

	/** The selected parts that a move shifts itself; a mat or a combination comes along when what it follows
	 * is moved. */
	public static List<ElementPart> movableParts(EditPartViewer viewer) {
		Set<Element> selected = new HashSet<>(elements(viewer));
		return parts(viewer).stream().filter(part -> !follows(part.element(), selected, new HashSet<>())).toList();
	}

	private static boolean follows(Element element, Set<Element> moved, Set<Element> seen) {
		return seen.add(element) && Jobs.sources(element).stream().anyMatch(other -> moved.contains(other) || follows(other, moved, seen));
	}

	/** Selects these elements, as far as they can be seen and are not locked, and no others. */
	public static void select(EditPartViewer viewer, List<? extends Element> elements) {
		Set<Element> wanted = new HashSet<>(elements);
		viewer.setSelection(new StructuredSelection(all(viewer).stream()
				.filter(part -> wanted.contains(part.element()) && part.isSelectable()).toList()));
	}

	private static List<ElementPart> elementParts(List<?> parts) {
		List<ElementPart> found = new ArrayList<>();
		for (Object part : parts) {
			if (part instanceof ElementPart elementPart) {
				found.add(elementPart);
			}
		}
		return found;
	}
}
