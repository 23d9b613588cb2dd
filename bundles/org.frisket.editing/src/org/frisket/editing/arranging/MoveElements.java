package org.frisket.editing.arranging;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.osgi.util.NLS;
import org.frisket.editing.RecordingEdit;
import org.frisket.editing.internal.Targets;
import org.frisket.model.Element;
import org.frisket.model.Matrix;

/**
 * Shifts elements on the bench. A mat that follows one of them comes along by itself, and is therefore not shifted a
 * second time when it is among them.
 */
public final class MoveElements extends RecordingEdit {

	private final Set<Element> elements;
	private final double dx;
	private final double dy;

	/**
	 * @param dx to the right, in mm
	 * @param dy downwards, in mm
	 */
	public MoveElements(List<? extends Element> elements, double dx, double dy) {
		super(NLS.bind(Messages.MoveElements_name, Targets.spoken(elements)));
		this.elements = new LinkedHashSet<>(elements);
		this.dx = dx;
		this.dy = dy;
	}

	@Override
	public boolean canApply() {
		return Double.isFinite(dx) && Double.isFinite(dy) && (dx != 0 || dy != 0) && Targets.freeInOneJob(elements);
	}

	@Override
	protected Collection<? extends EObject> scope() {
		return elements;
	}

	@Override
	protected void change() {
		Matrix shift = Matrix.translation(dx, dy);
		for (Element element : Targets.leaders(elements)) {
			element.setTransform(element.getTransform().then(shift));
		}
	}
}
