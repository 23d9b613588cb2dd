package org.frisket.editing.shapes;

import java.util.List;
import java.util.Map;

import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.osgi.util.NLS;
import org.frisket.editing.internal.Targets;
import org.frisket.model.Element;
import org.frisket.model.Ids;
import org.frisket.model.Job;
import org.frisket.model.Jobs;
import org.frisket.model.Operation;
import org.frisket.model.OperationKind;
import org.frisket.model.Outline;
import org.frisket.model.Picture;

/**
 * Lays an outline over each of some pictures, along the contour that was found, so that it can be drawn on by hand. The
 * outline takes over all that tools do and what followed the picture; the picture is only printed from then on, with all of
 * its rectangle, so that its print goes on wherever the outline is moved to.
 */
public final class EdgeAsOutline extends OutlineMaking<Picture> {

	/** @param paths the contour of each picture: path data in mm of the picture's own frame */
	public EdgeAsOutline(Map<Picture, String> paths) {
		super(NLS.bind(Messages.EdgeAsOutline_name, Targets.spoken(paths.keySet())), paths);
	}

	@Override
	void put(Job job, Picture picture, Outline outline) {
		outline.setId(Ids.nextElement(job));
		List<Operation> worked = picture.getOperations().stream().filter(each -> each.getKind() != OperationKind.PRINT).toList();
		// copies: what an outline that is not in the job yet is given is not recorded
		outline.getOperations().addAll(EcoreUtil.copyAll(worked));
		picture.getOperations().removeAll(worked);
		if (worked.isEmpty()) {
			Jobs.addOperation(outline, OperationKind.CUT);
		}
		picture.setEdge(null);
		for (Element element : Jobs.elements(job)) {
			List<Element> sources = Jobs.isFollower(element) ? Jobs.sources(element) : List.of();
			if (sources.contains(picture)) {
				sources.set(sources.indexOf(picture), outline);
			}
		}
		List<Element> elements = Jobs.layerOf(picture).getElements();
		elements.add(elements.indexOf(picture) + 1, outline);
		Jobs.groups(job).stream().filter(group -> group.getElements().contains(picture)).toList()
				.forEach(group -> group.getElements().add(outline));
	}
}
