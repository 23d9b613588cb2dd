package org.frisket.ui.bench.internal.looks;

import java.util.function.Consumer;

import org.eclipse.draw2d.FreeformLayer;
import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.geometry.Rectangle;

/** Above all others, and not scaled: what a look writes beside the job. It takes no room and no clicks. */
public final class LookLayer extends FreeformLayer {

	private Consumer<Graphics> legend = graphics -> {
		// nothing to say yet
	};

	public LookLayer() {
		setEnabled(false);
	}

	/** @param painter paints in pixels from the origin of the job */
	void setLegend(Consumer<Graphics> painter) {
		legend = painter;
		repaint();
	}

	@Override
	public Rectangle getFreeformExtent() {
		return new Rectangle();
	}

	@Override
	public boolean containsPoint(int x, int y) {
		return false;
	}

	@Override
	protected void paintFigure(Graphics graphics) {
		legend.accept(graphics);
	}
}
