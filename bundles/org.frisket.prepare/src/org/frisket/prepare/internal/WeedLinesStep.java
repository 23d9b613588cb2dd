package org.frisket.prepare.internal;

import java.util.List;

import org.frisket.geometry.Monitor;
import org.frisket.geometry.Region;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.clean.Combining;
import org.frisket.geometry.lines.Weeding;
import org.frisket.model.WeedLines;
import org.frisket.prepare.Severity;
import org.frisket.prepare.Uncleaned;

/** Weed lines from the regions they go round. They enclose nothing that is meant, so that they are lines, box and all. */
final class WeedLinesStep {

	private WeedLinesStep() {
	}

	static Shape shape(WeedLines lines, List<Region> regions, Tolerance tolerance, Monitor monitor) {
		Region whole = Combining.UNITE.of(regions, tolerance, monitor);
		if (whole.isEmpty()) {
			return Shape.EMPTY;
		}
		if (!(lines.getMargin() > 0)) {
			return Shape.nothing(new Shape.Remark("weed-lines-no-margin", Severity.CAUTION, whole.bounds().centre(),
					Messages.WeedLinesStep_noMargin, Messages.WeedLinesStep_noMarginCure));
		}
		Weeding weeding = new Weeding(lines.getMargin(), lines.isBetween(), Math.max(0, lines.getSpacing()),
				Math.max(0, lines.getClearance()));
		return Shape.drawn(Region.EMPTY, weeding.of(whole, tolerance, monitor), Uncleaned.NOTHING, List.of());
	}
}
