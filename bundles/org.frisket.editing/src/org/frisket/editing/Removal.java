package org.frisket.editing;

import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

import org.frisket.model.Element;
import org.frisket.model.Job;
import org.frisket.model.Jobs;
import org.frisket.model.Mat;
import org.frisket.model.Wording;

/** Taking elements out of a job together with all that depends on them alone. */
final class Removal {

	private Removal() {
	}

	/** The elements and the mats that would then have nothing left to stand behind. */
	static Set<Element> of(Job job, Collection<? extends Element> elements) {
		Set<Element> doomed = new LinkedHashSet<>(elements);
		List<Mat> mats = Targets.mats(job);
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

	/** Removes them, and every mention of them. */
	static void remove(Job job, Collection<? extends Element> elements) {
		Set<Element> doomed = of(job, elements);
		for (Mat mat : Targets.mats(job)) {
			if (mat.getBehind().stream().anyMatch(doomed::contains)) {
				mat.getBehind().removeAll(doomed);
			}
		}
		for (Element element : Jobs.elements(job)) {
			if (element instanceof Wording wording && doomed.contains(wording.getPath())) {
				wording.setPath(null);
			}
		}
		Groupings.leave(job, doomed);
		for (Element element : doomed) {
			Jobs.layerOf(element).getElements().remove(element);
		}
	}
}
