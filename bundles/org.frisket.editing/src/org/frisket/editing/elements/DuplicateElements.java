package org.frisket.editing.elements;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.osgi.util.NLS;
import org.frisket.editing.RecordingEdit;
import org.frisket.editing.internal.CopiedElements;
import org.frisket.editing.internal.Targets;
import org.frisket.model.Element;
import org.frisket.model.Jobs;

/**
 * Lays copies of elements above the others of their layers. A mat that is copied together with what it follows follows
 * the copy; one that is copied alone follows the same elements as before. Copies are grouped as the originals are.
 */
public final class DuplicateElements extends RecordingEdit {

	private final List<Element> elements;
	private final double dx;
	private final double dy;
	private final List<Element> copies = new ArrayList<>();

	/**
	 * @param dx how far to the right the copies lie of the originals, in mm
	 * @param dy how far down
	 */
	public DuplicateElements(List<? extends Element> elements, double dx, double dy) {
		super(NLS.bind(Messages.DuplicateElements_name, Targets.spoken(elements)));
		this.elements = elements.stream().<Element>map(element -> element).distinct().toList();
		this.dx = dx;
		this.dy = dy;
	}

	@Override
	public boolean canApply() {
		return Double.isFinite(dx) && Double.isFinite(dy) && Targets.freeInOneJob(elements);
	}

	@Override
	protected Collection<? extends EObject> scope() {
		return List.of(Jobs.jobOf(elements.get(0)));
	}

	@Override
	protected void change() {
		copies.addAll(CopiedElements.lay(elements, dx, dy).values());
	}

	/** The copies, the lowest first; empty before the edit is applied. */
	public List<Element> copies() {
		return List.copyOf(copies);
	}
}
