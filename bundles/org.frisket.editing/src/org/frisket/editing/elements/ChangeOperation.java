package org.frisket.editing.elements;

import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Predicate;

import org.eclipse.emf.common.util.EList;
import org.eclipse.emf.ecore.EObject;
import org.frisket.editing.RecordingEdit;
import org.frisket.editing.internal.Targets;
import org.frisket.model.Element;
import org.frisket.model.Jobs;
import org.frisket.model.Operation;
import org.frisket.model.OperationKind;

/**
 * Changes what is done along the outlines of elements, and with what: all of it, one operation by its place in their
 * order, or the order itself. Elements that have no operation at that place stay as they are.
 */
public final class ChangeOperation extends RecordingEdit {

	/** More would wear the stock through. */
	public static final int MOST_PASSES = 20;

	private final Set<Element> elements;
	private final Predicate<Element> differs;
	private final Consumer<Element> change;

	private ChangeOperation(String name, List<? extends Element> elements, Predicate<Element> differs,
			Consumer<Element> change) {
		super(name);
		this.elements = new LinkedHashSet<>(elements);
		this.differs = differs;
		this.change = change;
	}

	private static ChangeOperation at(String name, List<? extends Element> elements, int place,
			Predicate<Operation> differs, Consumer<Operation> change) {
		return new ChangeOperation(name, elements,
				element -> has(element, place) && differs.test(element.getOperations().get(place)),
				element -> change.accept(element.getOperations().get(place)));
	}

	private static boolean has(Element element, int place) {
		return place >= 0 && place < element.getOperations().size();
	}

	/** One operation of this kind and no other; one that is there already keeps its tool and passes. */
	public static ChangeOperation kind(List<? extends Element> elements, OperationKind kind) {
		return new ChangeOperation(Messages.ChangeOperation_kind, elements,
				element -> element.getOperations().size() != 1 || element.getOperations().get(0).getKind() != kind,
				element -> setKind(element, kind));
	}

	private static void setKind(Element element, OperationKind kind) {
		List<Operation> same = element.getOperations().stream().filter(o -> o.getKind() == kind).toList();
		if (same.isEmpty()) {
			element.getOperations().clear();
			Jobs.addOperation(element, kind);
		} else {
			element.getOperations().removeIf(operation -> operation != same.get(0));
		}
	}

	/** What is done at a place; tool and passes stay. */
	public static ChangeOperation kind(List<? extends Element> elements, int place, OperationKind kind) {
		return at(Messages.ChangeOperation_kind, elements, place, operation -> kind != null && operation.getKind() != kind,
				operation -> operation.setKind(kind));
	}

	/** The tool it is done with; null or blank leaves it to the settings of the stock. */
	public static ChangeOperation tool(List<? extends Element> elements, int place, String tool) {
		String id = tool == null || tool.isBlank() ? null : tool.strip();
		return at(Messages.ChangeOperation_tool, elements, place, operation -> !Objects.equals(operation.getTool(), id),
				operation -> operation.setTool(id));
	}

	/** How often it is done, from 1 to {@value #MOST_PASSES}. */
	public static ChangeOperation passes(List<? extends Element> elements, int place, int passes) {
		return at(Messages.ChangeOperation_passes, elements, place,
				operation -> passes >= 1 && passes <= MOST_PASSES && operation.getPasses() != passes,
				operation -> operation.setPasses(passes));
	}

	/** The length of the dashes it is broken into, in mm; 0 leaves its line whole. */
	public static ChangeOperation dash(List<? extends Element> elements, int place, double dash) {
		return at(Messages.ChangeOperation_dash, elements, place,
				operation -> Double.isFinite(dash) && dash >= 0 && operation.getDash() != dash,
				operation -> operation.setDash(dash));
	}

	/** The length of the gaps between the dashes, in mm; 0 leaves its line whole. */
	public static ChangeOperation gap(List<? extends Element> elements, int place, double gap) {
		return at(Messages.ChangeOperation_gap, elements, place,
				operation -> Double.isFinite(gap) && gap >= 0 && operation.getGap() != gap,
				operation -> operation.setGap(gap));
	}

	/** One more operation after those there are. */
	public static ChangeOperation add(List<? extends Element> elements, OperationKind kind) {
		return new ChangeOperation(Messages.ChangeOperation_add, elements, element -> kind != null,
				element -> Jobs.addOperation(element, kind));
	}

	/** One operation less. */
	public static ChangeOperation remove(List<? extends Element> elements, int place) {
		return new ChangeOperation(Messages.ChangeOperation_remove, elements, element -> has(element, place),
				element -> element.getOperations().remove(place));
	}

	/** Done one turn earlier. */
	public static ChangeOperation earlier(List<? extends Element> elements, int place) {
		return new ChangeOperation(Messages.ChangeOperation_order, elements, element -> place > 0 && has(element, place),
				element -> ((EList<Operation>) element.getOperations()).move(place - 1, place));
	}

	@Override
	public boolean canApply() {
		return !elements.isEmpty() && Targets.freeInOneJob(elements) && elements.stream().anyMatch(differs);
	}

	@Override
	protected Collection<? extends EObject> scope() {
		return elements;
	}

	@Override
	protected void change() {
		elements.stream().filter(differs).forEach(change);
	}
}
