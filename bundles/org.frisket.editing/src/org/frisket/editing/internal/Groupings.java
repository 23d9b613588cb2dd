package org.frisket.editing.internal;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import org.frisket.model.Element;
import org.frisket.model.FrisketFactory;
import org.frisket.model.Group;
import org.frisket.model.Ids;
import org.frisket.model.Job;
import org.frisket.model.Jobs;

/** What edits do to groups. One that holds a single thing or nothing is no group, and never stays. */
public final class Groupings {

	private Groupings() {
	}

	/** Takes elements out of all groups, and gives up the groups that are none any more. */
	public static void leave(Job job, Collection<? extends Element> elements) {
		for (Group group : Jobs.groups(job)) {
			// a call that removes nothing would still be told to whoever listens
			if (group.getElements().stream().anyMatch(elements::contains)) {
				group.getElements().removeAll(elements);
			}
		}
		tidy(job.getGroups(), null);
	}

	/** Gives up the groups of a list that are none; what one of them still held is left to the group around it. */
	private static void tidy(List<Group> groups, Group around) {
		for (Group group : List.copyOf(groups)) {
			tidy(group.getGroups(), group);
			if (group.getElements().size() + group.getGroups().size() < 2) {
				int index = groups.indexOf(group);
				List<Group> inner = List.copyOf(group.getGroups());
				List<Element> left = List.copyOf(group.getElements());
				group.getElements().clear();
				groups.remove(group);
				groups.addAll(index, inner);
				if (around != null) {
					around.getElements().addAll(left);
				}
			}
		}
	}

	/** The outermost groups that hold any of the elements, in the order of the job. */
	public static List<Group> outermost(Job job, Collection<? extends Element> elements) {
		return job.getGroups().stream().filter(group -> Jobs.elements(group).stream().anyMatch(elements::contains))
				.toList();
	}

	/** The largest groups of which these elements hold all that can be reached: neither hidden nor locked. */
	public static List<List<Element>> blocks(Job job, Collection<? extends Element> elements) {
		List<List<Element>> blocks = new ArrayList<>();
		addBlocks(job.getGroups(), elements, blocks);
		return blocks;
	}

	private static void addBlocks(List<Group> groups, Collection<? extends Element> elements,
			List<List<Element>> blocks) {
		for (Group group : groups) {
			List<Element> reached = Jobs.elements(group).stream()
					.filter(element -> Jobs.isShown(element) && !Jobs.isLocked(element)).toList();
			if (!reached.isEmpty() && elements.containsAll(reached)) {
				blocks.add(reached);
			} else {
				addBlocks(group.getGroups(), elements, blocks);
			}
		}
	}

	/** Groups copies as their originals are grouped, as far as at least two of a group were copied. */
	public static void copy(List<Group> originals, Map<? extends Element, ? extends Element> copies, Job job) {
		for (Group original : originals) {
			copyOf(original, copies).ifPresent(job.getGroups()::add);
		}
		Ids.complete(job);
	}

	private static Optional<Group> copyOf(Group original, Map<? extends Element, ? extends Element> copies) {
		Group copy = FrisketFactory.INSTANCE.createGroup();
		copy.setName(original.getName());
		for (Element element : original.getElements()) {
			if (copies.containsKey(element)) {
				copy.getElements().add(copies.get(element));
			}
		}
		for (Group inner : original.getGroups()) {
			List<Element> left = Jobs.elements(inner).stream().filter(copies::containsKey).toList();
			if (left.size() == 1) {
				copy.getElements().add(copies.get(left.get(0)));
			} else {
				copyOf(inner, copies).ifPresent(copy.getGroups()::add);
			}
		}
		if (copy.getElements().isEmpty() && copy.getGroups().size() == 1) {
			return Optional.of(copy.getGroups().get(0));
		}
		return copy.getElements().size() + copy.getGroups().size() < 2 ? Optional.empty() : Optional.of(copy);
	}

	/** What is made one group: the groups that are wholly among the elements, and those elements that are in none. */
	public static final class Parts {

		private final List<Group> groups = new ArrayList<>();
		private final Set<Element> elements = new LinkedHashSet<>();
		/** The innermost group that holds the elements and others besides; null for the job. */
		private final Group around;

		public Parts(Job job, Set<? extends Element> chosen) {
			around = around(job.getGroups(), chosen);
			List<Group> within = around == null ? job.getGroups() : around.getGroups();
			within.forEach(group -> add(group, chosen));
			for (Element element : Jobs.elements(job)) {
				if (chosen.contains(element)
						&& groups.stream().noneMatch(group -> Jobs.elements(group).contains(element))) {
					elements.add(element);
				}
			}
		}

		private void add(Group group, Set<? extends Element> chosen) {
			if (chosen.containsAll(Jobs.elements(group))) {
				groups.add(group);
			} else {
				group.getGroups().forEach(inner -> add(inner, chosen));
			}
		}

		private static Group around(List<Group> groups, Set<? extends Element> chosen) {
			for (Group group : groups) {
				List<Element> all = Jobs.elements(group);
				if (all.size() > chosen.size() && all.containsAll(chosen)) {
					Group closer = around(group.getGroups(), chosen);
					return closer != null ? closer : group;
				}
			}
			return null;
		}

		public int size() {
			return groups.size() + elements.size();
		}

		public Group join(Job job) {
			Group group = FrisketFactory.INSTANCE.createGroup();
			group.setId(Ids.nextGroup(job));
			for (Group other : Jobs.groups(job)) {
				if (other.getElements().stream().anyMatch(elements::contains)) {
					other.getElements().removeAll(elements);
				}
			}
			List<Group> target = around == null ? job.getGroups() : around.getGroups();
			target.add(group);
			group.getElements().addAll(elements);
			group.getGroups().addAll(groups);
			tidy(job.getGroups(), null);
			return group;
		}
	}
}
