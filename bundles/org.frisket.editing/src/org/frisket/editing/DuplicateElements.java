package org.frisket.editing;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.frisket.model.Element;
import org.frisket.model.Ids;
import org.frisket.model.Job;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;
import org.frisket.model.Matrix;

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
		super(Messages.named(Messages.DuplicateElements_name, Targets.spoken(elements)));
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
		Job job = Jobs.jobOf(elements.get(0));
		EcoreUtil.Copier copier = new EcoreUtil.Copier();
		// in the order of the stack, which may not be the order of selection
		for (Element element : Jobs.elements(job)) {
			if (elements.contains(element)) {
				Element copy = (Element) copier.copy(element);
				copy.setId(null);
				copies.add(copy);
			}
		}
		copier.copyReferences();
		List<Layer> layers = Jobs.elements(job).stream().filter(elements::contains).map(Jobs::layerOf).toList();
		for (int i = 0; i < copies.size(); i++) {
			copies.get(i).setId(Ids.nextElement(job));
			layers.get(i).getElements().add(copies.get(i));
		}
		Map<Element, Element> grouped = new LinkedHashMap<>();
		elements.forEach(element -> grouped.put(element, (Element) copier.get(element)));
		Groupings.copy(List.copyOf(job.getGroups()), grouped, job);
		for (Element leader : Targets.leaders(copies)) {
			leader.setTransform(leader.getTransform().then(Matrix.translation(dx, dy)));
		}
	}

	/** The copies, the lowest first; empty before the edit is applied. */
	public List<Element> copies() {
		return List.copyOf(copies);
	}
}
