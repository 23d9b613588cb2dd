package org.frisket.editing;

import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

import org.eclipse.emf.ecore.EObject;
import org.frisket.model.Element;
import org.frisket.model.Job;
import org.frisket.model.Jobs;
import org.frisket.model.Mat;

/** Deletes elements, and the mats that then have nothing left to stand behind. */
public final class DeleteElements extends RecordingEdit {

	private final Set<Element> elements;

	public DeleteElements(List<? extends Element> elements) {
		super("Delete " + Targets.spoken(elements));
		this.elements = new LinkedHashSet<>(elements);
	}

	/** Nothing is deleted from a locked layer, not even a mat that has lost what it followed. */
	@Override
	public boolean canApply() {
		return Targets.freeInOneJob(elements) && Targets.freeInOneJob(doomed());
	}

	@Override
	protected Collection<? extends EObject> scope() {
		return List.of(job());
	}

	@Override
	protected void change() {
		Set<Element> doomed = doomed();
		for (Mat mat : Targets.mats(job())) {
			if (mat.getBehind().stream().anyMatch(doomed::contains)) {
				mat.getBehind().removeAll(doomed);
			}
		}
		for (Element element : doomed) {
			Jobs.layerOf(element).getElements().remove(element);
		}
	}

	private Job job() {
		return Jobs.jobOf(elements.iterator().next());
	}

	private Set<Element> doomed() {
		Set<Element> doomed = new LinkedHashSet<>(elements);
		List<Mat> mats = Targets.mats(job());
		boolean grew = true;
		while (grew) {
			grew = false;
			for (Mat mat : mats) {
				if (!mat.getBehind().isEmpty() && doomed.containsAll(mat.getBehind())) {
					grew |= doomed.add(mat);
				}
			}
		}
		return doomed;
	}
}
