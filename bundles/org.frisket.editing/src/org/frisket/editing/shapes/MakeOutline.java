package org.frisket.editing.shapes;

import java.util.List;
import java.util.Map;

import org.eclipse.emf.ecore.EStructuralFeature.Setting;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.osgi.util.NLS;
import org.frisket.editing.internal.Targets;
import org.frisket.model.Element;
import org.frisket.model.Job;
import org.frisket.model.Jobs;
import org.frisket.model.Outline;
import org.frisket.model.Wording;

/**
 * Puts an outline in the place of each of some wordings, for good but for an undo: font and words are given up. The
 * outline has the id, name, place and operations of the wording; mats and groups that referred to the wording refer to
 * the outline.
 */
public final class MakeOutline extends OutlineMaking<Wording> {

	/** @param paths what each wording comes to: path data in mm of the wording's own frame */
	public MakeOutline(Map<Wording, String> paths) {
		super(NLS.bind(Messages.MakeOutline_name, Targets.spoken(paths.keySet())), paths);
	}

	@Override
	void put(Job job, Wording wording, Outline outline) {
		outline.setId(wording.getId());
		outline.setLocked(wording.isLocked());
		outline.getOperations().addAll(EcoreUtil.copyAll(wording.getOperations()));
		for (Setting use : EcoreUtil.UsageCrossReferencer.find(wording, job)) {
			EcoreUtil.replace(use, wording, outline);
		}
		List<Element> elements = Jobs.layerOf(wording).getElements();
		elements.set(elements.indexOf(wording), outline);
	}
}
