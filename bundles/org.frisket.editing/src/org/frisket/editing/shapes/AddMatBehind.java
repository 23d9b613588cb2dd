package org.frisket.editing.shapes;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.function.DoubleFunction;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.osgi.util.NLS;
import org.frisket.editing.RecordingEdit;
import org.frisket.editing.internal.Targets;
import org.frisket.model.Element;
import org.frisket.model.FrisketFactory;
import org.frisket.model.Ids;
import org.frisket.model.Job;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;
import org.frisket.model.Mat;
import org.frisket.model.OperationKind;
import org.frisket.model.PreviewColours;

/**
 * Puts mats behind elements, each cut from a layer of its own. A mat lies below the elements and below every narrower
 * mat that they have already, so that the widest is always at the back.
 */
public final class AddMatBehind extends RecordingEdit {

	private final List<Element> elements;
	private final List<Double> distances;
	private final DoubleFunction<String> layerName;
	private final List<Mat> mats = new ArrayList<>();

	/**
	 * @param distances of the mats from the elements, in mm
	 * @param layerName what the layer of a mat at a distance is called
	 */
	public AddMatBehind(List<? extends Element> elements, List<Double> distances, DoubleFunction<String> layerName) {
		super(distances.size() == 1 ? Messages.AddMatBehind_one
				: NLS.bind(Messages.AddMatBehind_several, distances.size()));
		this.elements = List.copyOf(new LinkedHashSet<Element>(elements));
		this.distances = distances.stream().sorted().toList();
		this.layerName = layerName;
	}

	@Override
	public boolean canApply() {
		return !distances.isEmpty() && distances.stream().allMatch(Double::isFinite)
				&& Targets.freeInOneJob(elements);
	}

	@Override
	protected Collection<? extends EObject> scope() {
		return List.of(job());
	}

	@Override
	protected void change() {
		for (double distance : distances) {
			Layer layer = FrisketFactory.INSTANCE.createLayer();
			layer.setId(Ids.nextLayer(job()));
			layer.setName(layerName.apply(distance));
			layer.setColour(PreviewColours.mat(matsOfElements().size()));
			job().getLayers().add(indexFor(distance), layer);
			Mat mat = Jobs.addMat(layer, distance, elements);
			mat.setName(layer.getName());
			Jobs.addOperation(mat, OperationKind.CUT);
			mats.add(mat);
		}
	}

	/** How many layers are to lie below a mat. */
	private int indexFor(double distance) {
		int index = job().getLayers().size();
		for (Element element : elements) {
			index = Math.min(index, indexOf(element));
		}
		for (Mat mat : matsOfElements()) {
			if (mat.getDistance() <= distance) {
				index = Math.min(index, indexOf(mat));
			}
		}
		return index;
	}

	private int indexOf(Element element) {
		return job().getLayers().indexOf(Jobs.layerOf(element));
	}

	private Collection<Mat> matsOfElements() {
		Collection<Mat> found = new LinkedHashSet<>();
		elements.forEach(element -> found.addAll(Jobs.matsOf(element)));
		return found;
	}

	private Job job() {
		return Jobs.jobOf(elements.get(0));
	}

	/** The new mats, the narrowest first; empty before the edit is applied. */
	public List<Mat> mats() {
		return List.copyOf(mats);
	}
}
