package org.frisket.ui.bench.internal.tools;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.gef.EditPartViewer;
import org.frisket.geometry.Bounds;
import org.frisket.geometry.Point;
import org.frisket.geometry.Transform;
import org.frisket.ui.bench.internal.parts.ElementPart;
import org.frisket.ui.bench.internal.parts.GroupSelection;
import org.frisket.ui.bench.internal.parts.Selection;

/**
 * What a box on the bench gathers: all that it encloses, or all that it touches. A group is enclosed with its last
 * member, and touched with its first.
 */
final class Gathering {

	private final EditPartViewer viewer;
	private final Rectangle box;
	private final boolean touching;

	/** @param box in pixels of the canvas */
	Gathering(EditPartViewer viewer, Rectangle box, boolean touching) {
		this.viewer = viewer;
		this.box = box;
		this.touching = touching;
	}

	/** The lowest first. */
	List<ElementPart> parts() {
		GroupSelection groups = new GroupSelection(viewer);
		List<ElementPart> hit = Selection.all(viewer).stream().filter(part -> part.isSelectable() && isHit(part)).toList();
		Set<ElementPart> gathered = new LinkedHashSet<>();
		for (ElementPart part : hit) {
			List<ElementPart> whole = groups.whole(part);
			if (touching || hit.containsAll(whole)) {
				gathered.addAll(whole);
			}
		}
		return List.copyOf(gathered);
	}

	private boolean isHit(ElementPart part) {
		if (!touching) {
			return box.contains(part.boundsInPixels());
		}
		Point from = part.zoom().toMm(box.x, box.y);
		Point to = part.zoom().toMm(box.x + box.width, box.y + box.height);
		if (!new Bounds(from.x(), from.y(), to.x(), to.y()).intersects(part.boundsInMm())) {
			return false;
		}
		Transform shift = part.shift();
		if (shift.determinant() == 0) {
			return true;
		}
		// the box is brought to where the picture was made, rather than the whole picture to the box
		Transform back = shift.inverse();
		return part.picture().flat().meets(List.of(back.apply(from), back.apply(new Point(to.x(), from.y())),
				back.apply(to), back.apply(new Point(from.x(), to.y()))));
	}
}
