package org.frisket.editing.shapes;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

import org.eclipse.emf.ecore.EObject;
import org.frisket.editing.RecordingEdit;
import org.frisket.editing.internal.Targets;
import org.frisket.model.Element;
import org.frisket.model.Jobs;
import org.frisket.model.Mat;

/** Has a mat follow other elements than before. */
public final class StandMatBehind extends RecordingEdit {

	private final Mat mat;
	private final List<Element> elements;

	private StandMatBehind(String name, Mat mat, Collection<? extends Element> elements) {
		super(name);
		this.mat = mat;
		this.elements = List.copyOf(new LinkedHashSet<Element>(elements));
	}

	/** Follows these elements and no others. */
	public static StandMatBehind elements(Mat mat, Collection<? extends Element> elements) {
		return new StandMatBehind(Messages.StandMatBehind_elements, mat, elements);
	}

	/** Follows no longer what leads back to the mat itself. */
	public static StandMatBehind outOfRing(Mat mat) {
		List<Element> sound = new ArrayList<>(mat.getBehind());
		sound.removeIf(element -> Jobs.leadsTo(element, mat));
		return new StandMatBehind(Messages.StandMatBehind_outOfRing, mat, sound);
	}

	/** What it follows afterwards. */
	public List<Element> behind() {
		return elements;
	}

	/** A mat that follows nothing would be nothing: deleting it is another edit. */
	@Override
	public boolean canApply() {
		return !elements.isEmpty() && Targets.free(mat) && !Set.copyOf(elements).equals(Set.copyOf(mat.getBehind()))
				&& Targets.mayFollow(mat, elements);
	}

	@Override
	protected Collection<? extends EObject> scope() {
		return List.of(mat);
	}

	@Override
	protected void change() {
		mat.getBehind().retainAll(elements);
		elements.stream().filter(element -> !mat.getBehind().contains(element)).forEach(mat.getBehind()::add);
	}
}
