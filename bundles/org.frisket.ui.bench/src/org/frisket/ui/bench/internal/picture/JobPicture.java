package org.frisket.ui.bench.internal.picture;

import java.util.List;
import java.util.Map;

import org.frisket.geometry.Bounds;
import org.frisket.prepare.Finding;
import org.frisket.prepare.PreparedJob;

/**
 * What the bench shows of a job. While the mats of a changed job are worked out, they are still shown as they were; all
 * but the pictures of elements and the bounds is then of the job before the change.
 *
 * @param elements pictures by the id of their element
 * @param findings what makeready says, the gravest first
 * @param pieces   connected pieces of all elements together
 * @param bounds   of everything, in mm
 * @param prepared what the picture was made of; null before anything was worked through
 */
public record JobPicture(Map<String, ElementPicture> elements, List<Finding> findings, int pieces, Bounds bounds,
		PreparedJob prepared) {

	/** Before anything was worked through. */
	public static final JobPicture NONE = new JobPicture(Map.of(), List.of(), 0, Bounds.EMPTY, null);

	public JobPicture {
		elements = Map.copyOf(elements);
		findings = List.copyOf(findings);
	}

	/** The picture of an element; an empty one if the element is too new, be it even to have an id. */
	public ElementPicture element(String id) {
		return id == null ? ElementPicture.NONE : elements.getOrDefault(id, ElementPicture.NONE);
	}
}
