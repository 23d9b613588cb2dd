package org.frisket.editing.elements;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

import org.eclipse.emf.common.util.EList;
import org.eclipse.emf.ecore.EObject;
import org.frisket.editing.RecordingEdit;
import org.frisket.editing.internal.Targets;
import org.frisket.model.Element;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;

/** Changes which elements of a layer lie above which; each stays on its layer, and moved ones keep their order. */
public final class ReorderElements extends RecordingEdit {

	/** Where elements go within their layer. */
	public enum Way {
		/** Above the next element. */
		FORWARD(Messages.ReorderElements_forward),
		/** Below the next element. */
		BACKWARD(Messages.ReorderElements_backward),
		/** Above all others. */
		FRONT(Messages.ReorderElements_front),
		/** Below all others. */
		BOTTOM(Messages.ReorderElements_bottom);

		private final String name;

		Way(String name) {
			this.name = name;
		}
	}

	private final Set<Element> elements;
	private final Way way;

	public ReorderElements(List<? extends Element> elements, Way way) {
		super(way.name);
		this.elements = new LinkedHashSet<>(elements);
		this.way = way;
	}

	@Override
	public boolean canApply() {
		return Targets.freeInOneJob(elements)
				&& layers().stream().anyMatch(layer -> !order(layer).equals(layer.getElements()));
	}

	@Override
	protected Collection<? extends EObject> scope() {
		return layers();
	}

	@Override
	protected void change() {
		for (Layer layer : layers()) {
			List<Element> wanted = order(layer);
			EList<Element> present = (EList<Element>) layer.getElements();
			for (int i = 0; i < wanted.size(); i++) {
				if (present.get(i) != wanted.get(i)) {
					present.move(i, wanted.get(i));
				}
			}
		}
	}

	private Set<Layer> layers() {
		Set<Layer> layers = new LinkedHashSet<>();
		elements.forEach(element -> layers.add(Jobs.layerOf(element)));
		return layers;
	}

	private List<Element> order(Layer layer) {
		List<Element> order = new ArrayList<>(layer.getElements());
		switch (way) {
		case FORWARD -> {
			for (int i = order.size() - 2; i >= 0; i--) {
				exchange(order, i, i + 1);
			}
		}
		case BACKWARD -> {
			for (int i = 1; i < order.size(); i++) {
				exchange(order, i, i - 1);
			}
		}
		case FRONT -> order.sort((a, b) -> Boolean.compare(elements.contains(a), elements.contains(b)));
		case BOTTOM -> order.sort((a, b) -> Boolean.compare(elements.contains(b), elements.contains(a)));
		}
		return order;
	}

	private void exchange(List<Element> order, int moved, int other) {
		if (elements.contains(order.get(moved)) && !elements.contains(order.get(other))) {
			order.set(moved, order.set(other, order.get(moved)));
		}
	}
}
