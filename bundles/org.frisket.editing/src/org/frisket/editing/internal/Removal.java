package org.frisket.editing.internal;

import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

import org.frisket.model.Element;
import org.frisket.model.Job;
import org.frisket.model.Jobs;
import org.frisket.model.Wording;

/** Taking elements out of a job together with all that depends on them alone. */
public final class Removal {

	private Removal() {
	}

	/** The elements, and the mats, combinations and weed lines that would then have nothing left to follow. */
	public static Set<Element> of(Job job, Collection<? extends Element> elements) {
		Set<Element> doomed = new LinkedHashSet<>(elements);
		List<Element> followers = Targets.followers(job);
		boolean grew = true;
		while (grew) {
			grew = false;
			for (Element follower : followers) {
				List<Element> sources = Jobs.sources(follower);
				if (!sources.isEmpty() && doomed.containsAll(sources)) {
					grew |= doomed.add(follower);
				}
			}
		}
		return doomed;
	}

	/** Removes them, and every mention of them. */
	public static void remove(Job job, Collection<? extends Element> elements) {
		Set<Element> doomed = of(job, elements);
		for (Element follower : Targets.followers(job)) {
			if (Jobs.sources(follower).stream().anyMatch(doomed::contains)) {
				Jobs.sources(follower).removeAll(doomed);
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
