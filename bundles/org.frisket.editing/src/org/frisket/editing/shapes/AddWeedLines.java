package org.frisket.editing.shapes;

import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.frisket.editing.RecordingEdit;
import org.frisket.editing.internal.Targets;
import org.frisket.model.Element;
import org.frisket.model.FrisketFactory;
import org.frisket.model.Ids;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;
import org.frisket.model.OperationKind;
import org.frisket.model.WeedLines;

/**
 * Puts weed lines around elements, on the layer of the first of them since they are cut into the same sheet, below all
 * that is on it. They are worked as the first element is.
 */
public final class AddWeedLines extends RecordingEdit {

	private final List<Element> elements;
	private WeedLines lines;

	public AddWeedLines(Collection<? extends Element> elements) {
		super(Messages.AddWeedLines_name);
		this.elements = List.copyOf(new LinkedHashSet<Element>(elements));
	}

	/** Lines around lines alone would part nothing. */
	@Override
	public boolean canApply() {
		return Targets.freeInOneJob(elements) && !elements.stream().allMatch(WeedLines.class::isInstance);
	}

	@Override
	protected Collection<? extends EObject> scope() {
		return List.of(Jobs.jobOf(elements.get(0)));
	}

	@Override
	protected void change() {
		Element first = elements.get(0);
		Layer layer = Jobs.layerOf(first);
		lines = FrisketFactory.INSTANCE.createWeedLines();
		lines.getAround().addAll(elements);
		lines.getOperations().addAll(EcoreUtil.copyAll(first.getOperations()));
		if (lines.getOperations().isEmpty()) {
			Jobs.addOperation(lines, OperationKind.CUT);
		}
		lines.setId(Ids.nextElement(Jobs.jobOf(first)));
		layer.getElements().add(0, lines);
	}

	/** What was added; null before the edit is applied. */
	public WeedLines lines() {
		return lines;
	}
}
