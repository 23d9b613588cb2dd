package org.frisket.editing.elements;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.osgi.util.NLS;
import org.frisket.editing.RecordingEdit;
import org.frisket.editing.internal.Groupings;
import org.frisket.editing.internal.Targets;
import org.frisket.model.Element;
import org.frisket.model.FrisketFactory;
import org.frisket.model.Group;
import org.frisket.model.Ids;
import org.frisket.model.Job;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;
import org.frisket.model.Matrix;

/**
 * Lays the elements of a fragment on a job, with ids of that job. They go on layers of the same name, stock and colour
 * if those are free, else on new ones above the others.
 */
public final class PasteElements extends RecordingEdit {

	private final Job job;
	private final List<Layer> layers;
	private final List<Group> groups;
	private final double dx;
	private final double dy;
	private final List<Element> pasted = new ArrayList<>();

	/**
	 * @param fragment what {@link org.frisket.editing.JobFragment#read} found; it is copied and stays as it is
	 * @param dx       how far to the right of their old places the elements come to lie, in mm
	 * @param dy       how far down
	 */
	public PasteElements(Job job, Job fragment, double dx, double dy) {
		super(NLS.bind(Messages.PasteElements_name, Targets.spoken(Jobs.elements(fragment))));
		this.job = job;
		Job copy = EcoreUtil.copy(fragment);
		this.layers = List.copyOf(copy.getLayers());
		this.groups = List.copyOf(copy.getGroups());
		this.dx = dx;
		this.dy = dy;
	}

	@Override
	public boolean canApply() {
		return Double.isFinite(dx) && Double.isFinite(dy)
				&& layers.stream().anyMatch(layer -> !layer.getElements().isEmpty());
	}

	@Override
	protected Collection<? extends EObject> scope() {
		return List.of(job);
	}

	@Override
	protected void change() {
		for (Layer from : layers) {
			if (from.getElements().isEmpty()) {
				continue;
			}
			Layer to = layerFor(from);
			for (Element element : List.copyOf(from.getElements())) {
				// before it is there, for whoever sees it come asks for its id
				element.setId(Ids.nextElement(job));
				to.getElements().add(element);
				pasted.add(element);
			}
		}
		Map<Element, Element> themselves = new LinkedHashMap<>();
		pasted.forEach(element -> themselves.put(element, element));
		Groupings.copy(groups, themselves, job);
		for (Element leader : Targets.leaders(pasted)) {
			leader.setTransform(leader.getTransform().then(Matrix.translation(dx, dy)));
		}
	}

	private Layer layerFor(Layer from) {
		for (Layer layer : job.getLayers()) {
			if (!layer.isLocked() && layer.isVisible() && Objects.equals(layer.getName(), from.getName())
					&& Objects.equals(layer.getStock(), from.getStock())
					&& Objects.equals(layer.getColour(), from.getColour())) {
				return layer;
			}
		}
		Layer layer = FrisketFactory.INSTANCE.createLayer();
		layer.setId(Ids.nextLayer(job));
		layer.setName(from.getName());
		layer.setStock(from.getStock());
		layer.setColour(from.getColour());
		job.getLayers().add(layer);
		return layer;
	}

	/** What was pasted, the lowest first; empty before the edit is applied. */
	public List<Element> pasted() {
		return List.copyOf(pasted);
	}
}
