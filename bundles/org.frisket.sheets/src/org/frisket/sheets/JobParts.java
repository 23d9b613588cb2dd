package org.frisket.sheets;

import java.util.ArrayList;
import java.util.List;

import org.frisket.geometry.Monitor;
import org.frisket.geometry.Tolerance;
import org.frisket.prepare.PreparedElement;
import org.frisket.prepare.PreparedJob;
import org.frisket.prepare.PreparedLayer;

/** The parts of a job. */
public final class JobParts {

	private JobParts() {
	}

	/**
	 * What has to find room on sheets, in the order of layers and elements; one copy of each.
	 *
	 * @param apart whether the pieces of an element are parts by themselves
	 * @throws java.util.concurrent.CancellationException if the monitor cancels
	 */
	public static List<SheetPart> of(PreparedJob job, boolean apart, Tolerance tolerance, Monitor monitor) {
		List<SheetPart> parts = new ArrayList<>();
		for (PreparedLayer layer : job.layers()) {
			for (PreparedElement element : layer.shown()) {
				if (!element.region().isEmpty()) {
					parts.add(new SheetPart(element.element().getId(), job.job(), layer.layer(), List.of(element),
							element.region()));
				}
			}
		}
		return parts;
	}
}
