package org.frisket.editing.layers;

import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.function.Predicate;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.osgi.util.NLS;
import org.frisket.editing.RecordingEdit;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;

/** Shows or hides, locks or frees whole layers; both also for layers that are locked. */
public final class SetLayers extends RecordingEdit {

	private final Set<Layer> layers;
	private final Predicate<Layer> has;
	private final BiConsumer<Layer, Boolean> setter;
	private final boolean value;

	private SetLayers(String one, String several, List<Layer> layers, Predicate<Layer> has,
			BiConsumer<Layer, Boolean> setter, boolean value) {
		super(layers.size() == 1 ? one : NLS.bind(several, layers.size()));
		this.layers = new LinkedHashSet<>(layers);
		this.has = has;
		this.setter = setter;
		this.value = value;
	}

	/** Shows layers, or pulls them aside. */
	public static SetLayers visible(List<Layer> layers, boolean visible) {
		return visible
				? new SetLayers(Messages.SetLayers_showOne, Messages.SetLayers_show, layers, Layer::isVisible, Layer::setVisible,
						true)
				: new SetLayers(Messages.SetLayers_hideOne, Messages.SetLayers_hide, layers, Layer::isVisible, Layer::setVisible,
						false);
	}

	/** Locks layers against every edit of their elements, or frees them. */
	public static SetLayers locked(List<Layer> layers, boolean locked) {
		return locked
				? new SetLayers(Messages.SetLayers_lockOne, Messages.SetLayers_lock, layers, Layer::isLocked, Layer::setLocked,
						true)
				: new SetLayers(Messages.SetLayers_unlockOne, Messages.SetLayers_unlock, layers, Layer::isLocked,
						Layer::setLocked, false);
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
