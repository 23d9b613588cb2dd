package org.frisket.editing.layers;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

import org.eclipse.emf.common.util.EList;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.osgi.util.NLS;
import org.frisket.editing.RecordingEdit;
import org.frisket.editing.internal.Targets;
import org.frisket.model.Element;
import org.frisket.model.Job;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;

/**
 * Lays elements at another place of the stack, on their own layer or on another one, in the order they had. They keep
 * their operations and groups, and mats go on following them.
 */
public final class RestackElements extends RecordingEdit {

	private final Set<Element> elements;
	private final Layer layer;
	private final int index;

	/** @param index how many of the layer's other elements lie below them afterwards */
	public RestackElements(List<? extends Element> elements, Layer layer, int index) {
		super(NLS.bind(Messages.RestackElements_name, Targets.spoken(elements)));
		this.elements = new LinkedHashSet<>(elements);
		this.layer = layer;
		this.index = index;
	}

	/** Above all other elements of a layer. */
	public static RestackElements onto(List<? extends Element> elements, Layer layer) {
		return new RestackElements(elements, layer,
				(int) layer.getElements().stream().filter(element -> !elements.contains(element)).count());
	}

	@Override
	public boolean canApply() {
		return Targets.freeInOneJob(elements) && Jobs.jobOf(layer) == job() && !layer.isLocked() && index >= 0
				&& index <= others().size() && !wanted().equals(layer.getElements());
	}

	@Override
	protected Collection<? extends EObject> scope() {
		return List.of(job());
	}

	@Override
	protected void change() {
		List<Element> wanted = wanted();
		EList<Element> present = (EList<Element>) layer.getElements();
		for (int i = 0; i < wanted.size(); i++) {
			Element element = wanted.get(i);
			if (Jobs.layerOf(element) != layer) {
				present.add(i, element);
			} else if (present.get(i) != element) {
				present.move(i, element);
			}
		}
	}

	private List<Element> others() {
		return layer.getElements().stream().filter(element -> !elements.contains(element)).toList();
	}

	private List<Element> wanted() {
		List<Element> wanted = new ArrayList<>(others());
		wanted.addAll(index, Jobs.elements(job()).stream().filter(elements::contains).toList());
		return wanted;
	}

	private Job job() {
		return Jobs.jobOf(elements.iterator().next());
	}
}
