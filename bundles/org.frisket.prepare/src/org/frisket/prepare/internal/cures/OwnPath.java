package org.frisket.prepare.internal.cures;

import java.util.List;
import java.util.Optional;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Outline;
import org.frisket.geometry.PathData;
import org.frisket.geometry.PathDataException;
import org.frisket.geometry.Transform;
import org.frisket.model.Element;
import org.frisket.model.Matrix;
import org.frisket.prepare.Finding;
import org.frisket.prepare.checks.Trial;

/**
 * The contours of an outline as it holds them.
 *
 * @param transform from the outline's own frame into the job's
 */
record OwnPath(List<Contour> contours, Transform transform) {

	/** Fine enough for an outline that is shown a hundred times as large. */
	private static final int DECIMALS = 6;

	/** Empty unless the finding is on an outline that can be read and has a size. */
	static Optional<OwnPath> of(Finding finding, Trial trial) {
		Element element = trial.element(finding).orElse(null);
		if (!(element instanceof org.frisket.model.Outline outline) || outline.getPathData() == null) {
			return Optional.empty();
		}
		Transform transform = transform(outline.getTransform());
		try {
			return Math.abs(transform.determinant()) > 0
					? Optional.of(new OwnPath(PathData.parse(outline.getPathData()).contours(), transform))
					: Optional.empty();
		} catch (PathDataException e) {
			return Optional.empty();
		}
	}

	static Transform transform(Matrix m) {
		return m == null ? Transform.IDENTITY : new Transform(m.a(), m.b(), m.c(), m.d(), m.e(), m.f());
	}

	static String data(Outline outline) {
		return PathData.format(outline, DECIMALS);
	}
}
