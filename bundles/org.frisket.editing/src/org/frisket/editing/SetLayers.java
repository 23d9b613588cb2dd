package org.frisket.editing;

import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.function.Predicate;

import org.eclipse.emf.ecore.EObject;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;

/** Shows or hides, locks or frees whole layers; both also for layers that are locked. */
public final class SetLayers extends RecordingEdit {

	private final Set<Layer> layers;
	private final Predicate<Layer> has;
	private final BiConsumer<Layer, Boolean> setter;
	private final boolean value;

	private SetLayers(String verb, List<Layer> layers, Predicate<Layer> has, BiConsumer<Layer, Boolean> setter,
			boolean value) {
		super(verb + (layers.size() == 1 ? " layer" : " " + layers.size() + " layers"));
		this.layers = new LinkedHashSet<>(layers);
		this.has = has;
		this.setter = setter;
		this.value = value;
	}

	/** Shows layers, or pulls them aside. */
	public static SetLayers visible(List<Layer> layers, boolean visible) {
		return new SetLayers(visible ? "Show" : "Hide", layers, Layer::isVisible, Layer::setVisible, visible);
	}

	/** Locks layers against every edit of their elements, or frees them. */
	public static SetLayers locked(List<Layer> layers, boolean locked) {
		return new SetLayers(locked ? "Lock" : "Unlock", layers, Layer::isLocked, Layer::setLocked, locked);
	}

	@Override
	public boolean canApply() {
		return layers.stream().map(Jobs::jobOf).distinct().count() == 1
				&& layers.stream().allMatch(layer -> Jobs.jobOf(layer) != null)
				&& layers.stream().anyMatch(layer -> has.test(layer) != value);
	}

	@Override
	protected Collection<? extends EObject> scope() {
		return layers;
	}

	@Override
	protected void change() {
		layers.forEach(layer -> setter.accept(layer, value));
	}
}
