package org.frisket.editing.shapes;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.eclipse.emf.ecore.EObject;
import org.frisket.editing.RecordingEdit;
import org.frisket.editing.internal.Targets;
import org.frisket.model.Combination;
import org.frisket.model.Element;
import org.frisket.model.Mat;
import org.frisket.model.Outline;

/** Has the corners of outlines, mats and combinations rounded; what they are made of stays as it is. */
public final class RoundCorners extends RecordingEdit {

	private final Map<Element, Double> before = new LinkedHashMap<>();
	private final double radius;

	/** @param radius in mm; 0 leaves the corners as they are */
	public RoundCorners(List<? extends Element> elements, double radius) {
		super(Messages.RoundCorners_name);
		elements.forEach(element -> before.put(element, radius(element)));
		this.radius = radius;
	}

	/** Whether an element can have its corners rounded. */
	public static boolean concerns(Element element) {
		return element instanceof Outline || element instanceof Mat || element instanceof Combination;
	}

	/** The radius in mm that an element's corners are rounded with now; 0 if they are not. */
	public static double radius(Element element) {
		if (element instanceof Outline outline) {
			return outline.getCornerRadius();
		}
		if (element instanceof Mat mat) {
			return mat.getCornerRadius();
		}
		return element instanceof Combination combination ? combination.getCornerRadius() : 0;
	}

	@Override
	public boolean canApply() {
		return Double.isFinite(radius) && radius >= 0 && Targets.freeInOneJob(before.keySet())
				&& before.keySet().stream().allMatch(RoundCorners::concerns)
				&& before.values().stream().anyMatch(each -> each != radius);
	}

	@Override
	protected Collection<? extends EObject> scope() {
		return before.keySet();
	}

	@Override
	protected void change() {
		before.keySet().forEach(element -> {
			if (element instanceof Outline outline) {
				outline.setCornerRadius(radius);
			} else if (element instanceof Mat mat) {
				mat.setCornerRadius(radius);
			} else if (element instanceof Combination combination) {
				combination.setCornerRadius(radius);
			}
		});
	}
}
