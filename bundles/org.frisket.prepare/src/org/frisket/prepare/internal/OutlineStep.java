package org.frisket.prepare.internal;

import java.util.List;

import org.eclipse.osgi.util.NLS;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.PathData;
import org.frisket.geometry.PathDataException;
import org.frisket.geometry.Point;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.Transform;
import org.frisket.geometry.clean.CleanResult;
import org.frisket.geometry.clean.FillRule;
import org.frisket.geometry.clean.OutlineCleaner;
import org.frisket.geometry.form.RoundedCorners;
import org.frisket.model.Outline;
import org.frisket.prepare.Severity;
import org.frisket.prepare.Uncleaned;

/** Path data to a clean region; what encloses nothing stays a line. */
final class OutlineStep {

	private OutlineStep() {
	}

	static Shape shape(Outline outline, Tolerance tolerance, Monitor monitor) {
		String data = outline.getPathData();
		if (data == null || data.isBlank()) {
			return Shape.EMPTY;
		}
		try {
			org.frisket.geometry.Outline curves = PathData.parse(data);
			CleanResult clean = new OutlineCleaner().clean(curves, FillRule.NON_ZERO, tolerance, monitor);
			double radius = outline.getCornerRadius();
			if (radius > 0) {
				return new Shape(RoundedCorners.of(clean.region(), radius, tolerance, monitor),
						clean.open().stream().map(line -> RoundedCorners.ofLine(line, radius, tolerance)).toList(),
						new Uncleaned(curves, clean.repairs(), Transform.IDENTITY), List.of());
			}
			return new Shape(clean.region(), clean.open(), new Uncleaned(curves, clean.repairs(), Transform.IDENTITY),
					List.of());
		} catch (PathDataException e) {
			return Shape.nothing(new Shape.Remark("path-unreadable", Severity.BLOCKING, Point.ORIGIN,
					NLS.bind(Messages.OutlineStep_unreadable, e.getMessage()), Messages.OutlineStep_unreadableCure));
		}
	}
}
