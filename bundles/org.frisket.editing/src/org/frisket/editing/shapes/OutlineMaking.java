package org.frisket.editing.shapes;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.eclipse.emf.ecore.EObject;
import org.frisket.editing.RecordingEdit;
import org.frisket.editing.internal.Targets;
import org.frisket.model.Element;
import org.frisket.model.FrisketFactory;
import org.frisket.model.Job;
import org.frisket.model.Jobs;
import org.frisket.model.Outline;

/** Makes an outline of each of some elements, along the curves that it comes to, with its name and its place. */
public abstract class OutlineMaking<E extends Element> extends RecordingEdit {

	private final Map<E, String> paths;
	private final List<Outline> outlines = new ArrayList<>();

	/** @param paths what each element comes to: path data in mm of its own frame */
	OutlineMaking(String name, Map<E, String> paths) {
		super(name);
		this.paths = new LinkedHashMap<>(paths);
	}

	/** An element without any curve gives no outline. */
	@Override
	public boolean canApply() {
		return Targets.freeInOneJob(paths.keySet())
				&& paths.values().stream().allMatch(path -> path != null && !path.isBlank());
	}

	@Override
	protected Collection<? extends EObject> scope() {
		return List.of(job());
	}

	private Job job() {
		return Jobs.jobOf(paths.keySet().iterator().next());
	}

	@Override
	protected void change() {
		Job job = job();
		paths.forEach((element, path) -> {
			Outline outline = FrisketFactory.INSTANCE.createOutline();
			outline.setPathData(path);
			outline.setName(element.getName());
			outline.setTransform(element.getTransform());
			outline.setVisible(element.isVisible());
			put(job, element, outline);
			outlines.add(outline);
		});
	}

	/** Gives an outline its id, its layer and what is done with it. */
	abstract void put(Job job, E element, Outline outline);

	/** The outlines, in the order of the elements; empty before the edit is applied. */
	public List<Outline> outlines() {
		return List.copyOf(outlines);
	}
}
