package org.frisket.ui.bench.internal.canvas;

import org.eclipse.draw2d.LightweightSystem;
import org.eclipse.gef.ui.parts.ScrollingGraphicalViewer;

/** The viewer of the bench, which is painted in pieces. */
public final class BenchViewer extends ScrollingGraphicalViewer {

	@Override
	protected LightweightSystem createLightweightSystem() {
		return new KeptCanvas();
	}

	/** What the bench is painted through. */
	public KeptCanvas kept() {
		return (KeptCanvas) getLightweightSystem();
	}
}
