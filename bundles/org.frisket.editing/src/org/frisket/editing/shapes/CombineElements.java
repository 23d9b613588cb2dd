package org.frisket.editing.shapes;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.frisket.editing.RecordingEdit;
import org.frisket.editing.internal.Targets;
import org.frisket.model.Combination;
import org.frisket.model.CombinationRule;
import org.frisket.model.Element;
import org.frisket.model.FrisketFactory;
import org.frisket.model.Ids;
import org.frisket.model.Job;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;
import org.frisket.model.OperationKind;

/**
 * Makes one shape of several elements, or two of what lies on either side of a line. The elements stay, are no longer
 * worked by themselves, and are followed whenever they change. The shape lies on the layer of the first of them, above
 * all that is on it, and is worked as the first is.
 */
public final class CombineElements extends RecordingEdit {

	private final List<Element> parts;
	private final List<CombinationRule> rules;
	private final List<Combination> combinations = new ArrayList<>();

	private CombineElements(String name, Collection<? extends Element> parts, List<CombinationRule> rules) {
		super(name);
		this.parts = List.copyOf(new LinkedHashSet<Element>(parts));
		this.rules = rules;
	}

	/** @param parts in an order that matters where the others are subtracted from the first */
	public static CombineElements by(CombinationRule rule, Collection<? extends Element> parts) {
		return new CombineElements(name(rule), parts, List.of(rule));
	}

	/** @param parts what is split, all together, and at last the line */
	public static CombineElements split(Collection<? extends Element> parts) {
		return new CombineElements(Messages.CombineElements_split, parts,
				List.of(CombinationRule.LEFT, CombinationRule.RIGHT));
	}

	private static String name(CombinationRule rule) {
		return switch (rule) {
		case UNITE -> Messages.CombineElements_unite;
		case SUBTRACT -> Messages.CombineElements_subtract;
		case INTERSECT -> Messages.CombineElements_intersect;
		case EXCLUDE -> Messages.CombineElements_exclude;
		case LEFT, RIGHT -> Messages.CombineElements_split;
		};
	}

	@Override
	public boolean canApply() {
		return parts.size() > 1 && Targets.freeInOneJob(parts);
	}

	@Override
	protected Collection<? extends EObject> scope() {
		return List.of(Jobs.jobOf(parts.get(0)));
	}

	@Override
	protected void change() {
		Job job = Jobs.jobOf(parts.get(0));
		Layer layer = Jobs.layerOf(parts.get(0));
		for (CombinationRule rule : rules) {
			Combination combination = FrisketFactory.INSTANCE.createCombination();
			combination.setRule(rule);
			combination.getParts().addAll(parts);
			combination.getOperations().addAll(EcoreUtil.copyAll(parts.get(0).getOperations()));
			if (combination.getOperations().isEmpty()) {
				Jobs.addOperation(combination, OperationKind.CUT);
			}
			combination.setId(Ids.nextElement(job));
			layer.getElements().add(combination);
			combinations.add(combination);
		}
	}

	/** What was made; empty before the edit is applied. */
	public List<Combination> combinations() {
		return List.copyOf(combinations);
	}
}
