package org.frisket.editing.shapes;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Predicate;

import org.eclipse.emf.ecore.EObject;
import org.frisket.editing.RecordingEdit;
import org.frisket.editing.internal.Targets;
import org.frisket.model.Combination;
import org.frisket.model.CombinationRule;
import org.frisket.model.Element;

/** Changes how one or several combinations are made, and of what. */
public final class ChangeCombination extends RecordingEdit {

	private final Set<Combination> combinations;
	private final Predicate<Combination> differs;
	private final Consumer<Combination> change;

	private ChangeCombination(String name, Collection<Combination> combinations, Predicate<Combination> differs,
			Consumer<Combination> change) {
		super(name);
		this.combinations = new LinkedHashSet<>(combinations);
		this.differs = differs;
		this.change = change;
	}

	/** How they are made of their parts. */
	public static ChangeCombination rule(List<Combination> combinations, CombinationRule rule) {
		return new ChangeCombination(Messages.ChangeCombination_rule, combinations,
				combination -> rule != null && rule != combination.getRule(), combination -> combination.setRule(rule));
	}

	/** What one is made of, in this order; never of itself. */
	public static ChangeCombination parts(Combination combination, Collection<? extends Element> parts) {
		List<Element> wanted = List.copyOf(new LinkedHashSet<Element>(parts));
		return new ChangeCombination(Messages.ChangeCombination_parts, List.of(combination),
				each -> !wanted.isEmpty() && !wanted.equals(each.getParts()) && Targets.mayFollow(each, wanted),
				each -> Targets.follow(each, wanted));
	}

	/** Puts one of its parts first, which is the one that others are subtracted from. */
	public static ChangeCombination first(Combination combination, Element part) {
		List<Element> parts = new ArrayList<>(combination.getParts());
		if (parts.remove(part)) {
			parts.add(0, part);
		}
		return parts(combination, parts);
	}

	@Override
	public boolean canApply() {
		return Targets.freeInOneJob(combinations) && combinations.stream().anyMatch(differs);
	}

	@Override
	protected Collection<? extends EObject> scope() {
		return combinations;
	}

	@Override
	protected void change() {
		combinations.stream().filter(differs).forEach(change);
	}
}
