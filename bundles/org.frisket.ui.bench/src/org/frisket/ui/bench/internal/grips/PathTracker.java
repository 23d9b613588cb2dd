package org.frisket.ui.bench.internal.grips;

import org.eclipse.gef.GraphicalViewer;
import org.eclipse.osgi.util.NLS;
import org.frisket.editing.Edit;
import org.frisket.editing.wording.ChangeFlow;
import org.frisket.model.Wording;
import org.frisket.prepare.wording.WordingPath;
import org.frisket.ui.LengthText;
import org.frisket.ui.bench.internal.canvas.CanvasZoom;
import org.frisket.ui.bench.internal.nodes.LivePicture;
import org.frisket.ui.bench.internal.parts.ElementPart;

/** Slides a wording along its path, to the place that is nearest to the pointer. */
final class PathTracker extends LiveTracker {

	private final WordingPath path;

	PathTracker(GraphicalViewer viewer, CanvasZoom zoom, ElementPart part, WordingPath path, LivePicture live) {
		super(viewer, zoom, part, live);
		this.path = path;
	}

	private double start() {
		return zoom.rounded(path.nearest(dragged(path.at(wording.getPathStart()))));
	}

	@Override
	Edit edit(Wording target) {
		return ChangeFlow.pathStart(target, start());
	}

	@Override
	String measure() {
		return NLS.bind(Messages.PathTracker_reading, LengthText.of(start()));
	}
}
