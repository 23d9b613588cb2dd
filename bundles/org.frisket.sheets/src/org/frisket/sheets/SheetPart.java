package org.frisket.sheets;

import java.util.List;

import org.frisket.geometry.Region;
import org.frisket.model.Job;
import org.frisket.model.Layer;
import org.frisket.prepare.PreparedElement;

/**
 * What comes off a sheet as one: what is cut round, with all that is drawn, creased and cut on it.
 *
 * @param key      names it within its job: the id of the element it is made of, with # and a number for a single piece
 * @param job      whose it is
 * @param layer    on which it lies
 * @param elements what it is made of, in the frame of the job; of a single piece no more than belongs to it
 * @param room     what it takes up on a sheet, in the frame of the job
 */
public record SheetPart(String key, Job job, Layer layer, List<PreparedElement> elements, Region room) {

	public SheetPart {
		elements = List.copyOf(elements);
	}
}
