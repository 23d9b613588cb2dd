package org.frisket.editing.shapes;

import java.util.Collection;
import java.util.List;

import org.eclipse.emf.ecore.EObject;
import org.frisket.editing.RecordingEdit;
import org.frisket.editing.internal.Groupings;
import org.frisket.editing.internal.Targets;
import org.frisket.model.Element;
import org.frisket.model.Job;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;
import org.frisket.model.Mat;

/**
 * Takes a mat away, and the layer that was made for it once nothing is left on it. Mats that stood behind it stand
 * behind what it stood behind from then on, and keep their distance; so do combinations and weed lines that followed it.
 */
public final class RemoveMat extends RecordingEdit {

	private final Mat mat;

	public RemoveMat(Mat mat) {
		super(Messages.RemoveMat_name);
		this.mat = mat;
	}

	@Override
	public boolean canApply() {
		return Targets.free(mat) && followers(Jobs.jobOf(mat)).stream().allMatch(Targets::free);
	}

	private List<Element> followers(Job job) {
		return Targets.followers(job).stream().filter(follower -> Jobs.sources(follower).contains(mat)).toList();
	}

	@Override
	protected Collection<? extends EObject> scope() {
		return List.of(Jobs.jobOf(mat));
	}

	@Override
	protected void change() {
		Job job = Jobs.jobOf(mat);
		for (Element outer : followers(job)) {
			List<Element> followed = Jobs.sources(outer);
			int at = followed.indexOf(mat);
			followed.remove(mat);
			followed.addAll(at, mat.getBehind().stream()
					.filter(element -> element != outer && !followed.contains(element)).toList());
		}
		Groupings.leave(job, List.of(mat));
		Layer layer = Jobs.layerOf(mat);
		layer.getElements().remove(mat);
		if (layer.getElements().isEmpty()) {
			job.getLayers().remove(layer);
		}
	}
}
