package org.frisket.editing;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

import org.frisket.model.Element;
import org.frisket.model.Job;
import org.frisket.model.Jobs;
import org.frisket.model.Mat;
import org.frisket.model.Outline;
import org.frisket.model.Wording;

/** What edits ask of the elements they are given. */
final class Targets {

	private Targets() {
	}

	/** Whether an element lies on a layer of a job, and neither is locked. */
	static boolean free(Element element) {
		return Jobs.layerOf(element) != null && !Jobs.isLocked(element) && Jobs.jobOf(element) != null;
	}

	/** Whether there are elements, all of one job and none of them locked. */
	static boolean freeInOneJob(Collection<? extends Element> elements) {
		return elements.stream().allMatch(Targets::free)
				&& elements.stream().map(Jobs::jobOf).distinct().count() == 1;
	}

	/** The mats of the job that follow one of the elements, directly or through other mats. */
	static Set<Mat> followers(Job job, Collection<? extends Element> elements) {
		Set<Element> reached = new LinkedHashSet<>(elements);
		Set<Mat> followers = new LinkedHashSet<>();
		List<Mat> mats = mats(job);
		boolean grew = true;
		while (grew) {
			grew = false;
			for (Mat mat : mats) {
				if (!followers.contains(mat) && mat.getBehind().stream().anyMatch(reached::contains)) {
					followers.add(mat);
					reached.add(mat);
					grew = true;
				}
			}
		}
		return followers;
	}

	/** Those that a map of the plane is applied to: a mat that follows another of them comes along by itself. */
	static List<Element> leaders(Collection<? extends Element> elements) {
		List<Element> leaders = new ArrayList<>(elements);
		leaders.removeAll(followers(Jobs.jobOf(elements.iterator().next()), elements));
		// Mats in a ring all follow each other, and nothing else would carry them along.
		return leaders.isEmpty() ? List.copyOf(elements) : leaders;
	}

	static List<Mat> mats(Job job) {
		List<Mat> mats = new ArrayList<>();
		for (Element element : Jobs.elements(job)) {
			if (element instanceof Mat mat) {
				mats.add(mat);
			}
		}
		return mats;
	}

	/** "wording" or "3 elements". */
	static String spoken(Collection<? extends Element> elements) {
		return elements.size() == 1 ? spoken(elements.iterator().next())
				: Messages.named(Messages.Targets_several, elements.size());
	}

	private static String spoken(Element element) {
		if (element instanceof Wording) {
			return Messages.Targets_wording;
		}
		if (element instanceof Outline) {
			return Messages.Targets_outline;
		}
		return element instanceof Mat ? Messages.Targets_mat : Messages.Targets_element;
	}
}
