package org.frisket.editing;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature.Setting;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.frisket.model.Element;
import org.frisket.model.FrisketFactory;
import org.frisket.model.Job;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;
import org.frisket.model.Outline;
import org.frisket.model.Wording;

/**
 * Puts an outline in the place of each of some wordings, for good but for an undo: font and words are given up. The
 * outline has the id, name, place and operations of the wording; mats and groups that referred to the wording refer to
 * the outline.
 */
public final class MakeOutline extends RecordingEdit {

	private final Map<Wording, String> paths;
	private final List<Outline> outlines = new ArrayList<>();

	/** @param paths what each wording comes to: path data in mm of the wording's own frame */
	public MakeOutline(Map<Wording, String> paths) {
		super(Messages.named(Messages.MakeOutline_name, Targets.spoken(paths.keySet())));
		this.paths = new LinkedHashMap<>(paths);
	}

	/** A wording without any curve cannot become an outline. */
	@Override
	public boolean canApply() {
		return Targets.freeInOneJob(paths.keySet())
				&& paths.values().stream().allMatch(path -> path != null && !path.isBlank());
	}

	@Override
	protected Collection<? extends EObject> scope() {
		return List.of(job());
	}

	@Override
	protected void change() {
		Job job = job();
		paths.forEach((wording, path) -> outlines.add(replaced(job, wording, path)));
	}

	private Job job() {
		return Jobs.jobOf(paths.keySet().iterator().next());
	}

	private static Outline replaced(Job job, Wording wording, String path) {
		Outline outline = FrisketFactory.INSTANCE.createOutline();
		outline.setId(wording.getId());
		outline.setPathData(path);
		outline.setName(wording.getName());
		outline.setTransform(wording.getTransform());
		outline.setVisible(wording.isVisible());
		outline.setLocked(wording.isLocked());
		outline.getOperations().addAll(EcoreUtil.copyAll(wording.getOperations()));
		for (Setting use : EcoreUtil.UsageCrossReferencer.find(wording, job)) {
			EcoreUtil.replace(use, wording, outline);
		}
		Layer layer = Jobs.layerOf(wording);
		List<Element> elements = layer.getElements();
		elements.set(elements.indexOf(wording), outline);
		return outline;
	}

	/** The outlines, in the order of the wordings; empty before the edit is applied. */
	public List<Outline> outlines() {
		return List.copyOf(outlines);
	}
}
