package org.frisket.print.output;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.frisket.geometry.Monitor;
import org.frisket.geometry.Region;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.clean.RegionBoolean;
import org.frisket.geometry.offset.Corners;
import org.frisket.geometry.offset.Holes;
import org.frisket.geometry.offset.Offset;
import org.frisket.model.Layer;
import org.frisket.model.OperationKind;
import org.frisket.prepare.PreparedElement;
import org.frisket.prepare.PreparedJob;
import org.frisket.prepare.PreparedLayer;

/** What of a layer is covered once the pieces of the layers above it, mats and lettering, are put on it. */
final class Covers {

	/** Print goes on so far below a piece that is put on by hand, mm; common practice, no source. */
	private static final double OVERLAP = 1;

	private final PreparedJob job;
	private final Tolerance tolerance;
	private final Monitor monitor;
	private final Map<Layer, Region> known = new HashMap<>();

	Covers(PreparedJob job, Tolerance tolerance, Monitor monitor) {
		this.job = job;
		this.tolerance = tolerance;
		this.monitor = monitor;
	}

	/** In the frame of the job. */
	Region above(Layer layer) {
		return known.computeIfAbsent(layer, this::find);
	}

	private Region find(Layer layer) {
		List<Region> pieces = new ArrayList<>();
		boolean above = false;
		for (PreparedLayer each : job.layers()) {
			if (above && !each.layer().isBack()) {
				each.shown().stream().filter(element -> element.has(OperationKind.CUT)).map(PreparedElement::region)
						.forEach(pieces::add);
			}
			above |= each.layer() == layer;
		}
		if (pieces.isEmpty()) {
			return Region.EMPTY;
		}
		Region whole = new RegionBoolean().union(pieces, tolerance, monitor);
		return Offset.of(whole, -OVERLAP, Corners.ROUND, Holes.KEEP, tolerance, monitor);
	}
}
