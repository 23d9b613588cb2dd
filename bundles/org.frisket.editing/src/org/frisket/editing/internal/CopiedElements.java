package org.frisket.editing.internal;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.eclipse.emf.ecore.util.EcoreUtil;
import org.frisket.model.Element;
import org.frisket.model.Ids;
import org.frisket.model.Job;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;
import org.frisket.model.Matrix;

/**
 * Copies of elements above the others of their layers. A mat that is copied together with what it follows follows the
 * copy; one that is copied alone follows the same elements as before. Copies are grouped as the originals are.
 */
public final class CopiedElements {

	private CopiedElements() {
	}

	/**
	 * Lays one copy of each.
	 *
	 * @param dx how far to the right the copies lie of the originals, in mm
	 * @param dy how far down
	 * @return the copy of each original, the lowest first
	 */
	public static Map<Element, Element> lay(List<Element> elements, double dx, double dy) {
		Job job = Jobs.jobOf(elements.get(0));
		// in the order of the stack, which may not be the order of selection
		List<Element> originals = Jobs.elements(job).stream().filter(elements::contains).toList();
		List<Layer> layers = originals.stream().map(Jobs::layerOf).toList();
		EcoreUtil.Copier copier = new EcoreUtil.Copier();
		List<Element> copies = new ArrayList<>();
		for (Element element : originals) {
			Element copy = (Element) copier.copy(element);
			copy.setId(null);
			copies.add(copy);
		}
		copier.copyReferences();
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
		Map<Element, Element> laid = new LinkedHashMap<>();
		for (int i = 0; i < copies.size(); i++) {
			laid.put(originals.get(i), copies.get(i));
		}
		return laid;
	}
}
