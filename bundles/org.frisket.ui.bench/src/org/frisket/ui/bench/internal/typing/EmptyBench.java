package org.frisket.ui.bench.internal.typing;

import org.eclipse.gef.GraphicalViewer;
import org.eclipse.swt.graphics.Point;
import org.frisket.model.Job;
import org.frisket.ui.bench.internal.parts.JobPart;

/** A bench that waits for its first words, and where new ones begin. */
final class EmptyBench {

	private final GraphicalViewer viewer;
	private final Job job;

	EmptyBench(GraphicalViewer viewer, Job job) {
		this.viewer = viewer;
		this.job = job;
	}

	/** At the left of an empty sheet, otherwise at the left of what is seen; in mm. */
	org.frisket.geometry.Point openPlace() {
		JobPart part = (JobPart) viewer.getContents();
		if (isBlank() && !part.sheet().isEmpty()) {
			return NewWording.firstPlace(part.sheet());
		}
		Point size = viewer.getControl().getSize();
		return part.zoom().toMm(size.x / 4.0, size.y / 2.0);
	}

	/** Whether a first character begins a wording: nothing is there, and no tool of its own in use, such as the pen. */
	boolean isTypedOn() {
		return isBlank() && viewer.getEditDomain().getActiveTool() == viewer.getEditDomain().getDefaultTool();
	}

	private boolean isBlank() {
		return job.getLayers().stream().allMatch(layer -> layer.getElements().isEmpty());
	}
}
