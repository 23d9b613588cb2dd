package org.frisket.editing.internal;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

import org.eclipse.emf.common.util.EList;
import org.eclipse.osgi.util.NLS;
import org.frisket.model.Combination;
import org.frisket.model.Element;
import org.frisket.model.Job;
import org.frisket.model.Jobs;
import org.frisket.model.Mat;
import org.frisket.model.Outline;
import org.frisket.model.Picture;
import org.frisket.model.WeedLines;
import org.frisket.model.Wording;

/** What edits ask of the elements they are given. */
public final class Targets {

	private Targets() {
	}

	/** Whether an element lies on a layer of a job, and neither is locked. */
	public static boolean free(Element element) {
		return Jobs.layerOf(element) != null && !Jobs.isLocked(element) && Jobs.jobOf(element) != null;
	}

	/** Whether there are elements, all of one job and none of them locked. */
	public static boolean freeInOneJob(Collection<? extends Element> elements) {
		return elements.stream().allMatch(Targets::free)
				&& elements.stream().map(Jobs::jobOf).distinct().count() == 1;
	}

	/** The mats, combinations and weed lines of the job that follow one of the elements, directly or through others. */
	public static Set<Element> followers(Job job, Collection<? extends Element> elements) {
		Set<Element> reached = new LinkedHashSet<>(elements);
		Set<Element> followers = new LinkedHashSet<>();
		List<Element> all = followers(job);
		boolean grew = true;
		while (grew) {
			grew = false;
			for (Element follower : all) {
				if (!followers.contains(follower) && Jobs.sources(follower).stream().anyMatch(reached::contains)) {
					followers.add(follower);
					reached.add(follower);
					grew = true;
				}
			}
		}
		return followers;
	}

	/** Those that a map of the plane is applied to: what follows another of them comes along by itself. */
	public static List<Element> leaders(Collection<? extends Element> elements) {
		List<Element> leaders = new ArrayList<>(elements);
		leaders.removeAll(followers(Jobs.jobOf(elements.iterator().next()), elements));
		// Those in a ring all follow each other, and nothing else would carry them along.
		return leaders.isEmpty() ? List.copyOf(elements) : leaders;
	}

	/** All elements of the job that follow others. */
	public static List<Element> followers(Job job) {
		return Jobs.elements(job).stream().filter(Jobs::isFollower).toList();
	}

	/** Whether an element may follow others: they are of its job, and none of them is made from it. */
	public static boolean mayFollow(Element follower, Collection<? extends Element> sources) {
		return sources.stream().noneMatch(source -> Jobs.leadsTo(source, follower))
				&& sources.stream().allMatch(source -> Jobs.jobOf(source) == Jobs.jobOf(follower));
	}

	/** Has an element follow these and no others, in their order. */
	public static void follow(Element follower, Collection<? extends Element> sources) {
		List<Element> followed = Jobs.sources(follower);
		followed.retainAll(sources);
		int at = 0;
		for (Element source : sources) {
			if (!followed.contains(source)) {
				followed.add(at, source);
			} else if (followed.indexOf(source) != at) {
				((EList<Element>) followed).move(at, source);
			}
			at++;
		}
	}

	/** "wording" or "3 elements". */
	public static String spoken(Collection<? extends Element> elements) {
		return elements.size() == 1 ? spoken(elements.iterator().next())
				: NLS.bind(Messages.Targets_several, elements.size());
	}

	private static String spoken(Element element) {
		if (element instanceof Wording) {
			return Messages.Targets_wording;
		}
		if (element instanceof Outline) {
			return Messages.Targets_outline;
		}
		if (element instanceof Combination) {
			return Messages.Targets_combination;
		}
		if (element instanceof WeedLines) {
			return Messages.Targets_weedLines;
		}
		if (element instanceof Picture) {
			return Messages.Targets_picture;
		}
		return element instanceof Mat ? Messages.Targets_mat : Messages.Targets_element;
	}
}
