package org.frisket.ui.bench.internal.grips;

import org.eclipse.gef.GraphicalViewer;
import org.frisket.editing.Edit;
import org.frisket.editing.wording.ChangeFlow;
import org.frisket.geometry.Point;
import org.frisket.model.Wording;
import org.frisket.ui.LengthText;
import org.frisket.ui.bench.internal.canvas.CanvasZoom;
import org.frisket.ui.bench.internal.nodes.LivePicture;
import org.frisket.ui.bench.internal.parts.ElementPart;

/** Changes one side of the box that a wording is fitted into; the wording grows or shrinks with it. */
final class BoxTracker extends LiveTracker {

	private static final double LEAST = 1;

	private final boolean wide;

	/** @param wide whether the width is dragged, otherwise the height */
	BoxTracker(GraphicalViewer viewer, CanvasZoom zoom, ElementPart part, boolean wide, LivePicture live) {
		super(viewer, zoom, part, live);
		this.wide = wide;
	}

	private double width() {
		return wide ? grown(wording.getBoxWidth(), dragged(Point.ORIGIN).x()) : wording.getBoxWidth();
	}

	private double height() {
		return wide ? wording.getBoxHeight() : grown(wording.getBoxHeight(), dragged(Point.ORIGIN).y());
	}

	private double grown(double side, double by) {
		return Math.max(LEAST, zoom.rounded(side + by));
	}

	@Override
	Edit edit(Wording target) {
		return ChangeFlow.box(target, width(), height());
	}

	@Override
	String measure() {
		return LengthText.size(width(), height());
	}
}
