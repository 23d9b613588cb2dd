package org.frisket.editing;

import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Predicate;

import org.eclipse.emf.ecore.EObject;
import org.frisket.model.Element;
import org.frisket.model.Jobs;
import org.frisket.model.Operation;
import org.frisket.model.OperationKind;

/** Changes what is done along the outlines of elements, and with what. */
public final class ChangeOperation extends RecordingEdit {

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

	/** One operation of this kind and no other; one that is there already keeps its tool and passes. */
	public static ChangeOperation kind(List<? extends Element> elements, OperationKind kind) {
		return new ChangeOperation(Messages.ChangeOperation_kind, elements,
				element -> element.getOperations().size() != 1 || element.getOperations().get(0).getKind() != kind,
				element -> setKind(element, kind));
	}

	/** The tool of all operations of the elements; null leaves it open. */
	public static ChangeOperation tool(List<? extends Element> elements, String tool) {
		return new ChangeOperation(Messages.ChangeOperation_tool, elements,
				element -> element.getOperations().stream().anyMatch(o -> !Objects.equals(o.getTool(), tool)),
				element -> element.getOperations().forEach(operation -> operation.setTool(tool)));
	}

	/** How often the tool goes along all outlines of the elements; at least once. */
	public static ChangeOperation passes(List<? extends Element> elements, int passes) {
		return new ChangeOperation(Messages.ChangeOperation_passes, elements,
				element -> passes > 0 && element.getOperations().stream().anyMatch(o -> o.getPasses() != passes),
				element -> element.getOperations().forEach(operation -> operation.setPasses(passes)));
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

	@Override
	public boolean canApply() {
		return Targets.freeInOneJob(elements) && elements.stream().anyMatch(differs);
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
