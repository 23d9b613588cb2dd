package org.frisket.ui.views.internal.stack;

import java.util.List;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Event;
import org.frisket.editing.MoveLayer;
import org.frisket.model.Layer;

/** Restacking by the pointer: a layer is pulled out and let go between two others. */
final class LayerDrag {

	private static final int SLACK_PX = 5;

	private final StackCanvas canvas;
	private Layer layer;
	private Point at;
	private int pressedY;
	private boolean moving;

	LayerDrag(StackCanvas canvas) {
		this.canvas = canvas;
		canvas.addListener(SWT.MouseMove, this::moved);
		canvas.addListener(SWT.MouseUp, this::released);
	}

	void press(Layer pressed, int y) {
		layer = pressed;
		pressedY = y;
		moving = false;
	}

	void cancel() {
		layer = null;
		moving = false;
		canvas.redraw();
	}

	private void moved(Event event) {
		if (layer != null) {
			moving |= Math.abs(event.y - pressedY) > SLACK_PX;
			at = new Point(event.x, event.y);
			if (moving) {
				canvas.redraw();
			}
		}
	}

	private void released(Event event) {
		if (layer != null && moving) {
			Layer dropped = layer;
			int above = layersAbove(event.y);
			cancel();
			drop(dropped, above);
		} else {
			layer = null;
		}
	}

	private List<Layer> topFirst() {
		return canvas.rows().stream().filter(Row::isLayer).map(Row::layer).toList();
	}

	/** How many layers stay above a place. */
	private int layersAbove(int y) {
		int above = 0;
		for (Layer each : topFirst()) {
			if (y > middleOf(each)) {
				above++;
			}
		}
		return above;
	}

	private int middleOf(Layer each) {
		Rectangle place = canvas.boundsOf(each);
		return place.y + place.height / 2;
	}

	private void drop(Layer dropped, int above) {
		List<Layer> layers = topFirst();
		int from = layers.indexOf(dropped);
		int to = above > from ? above - 1 : above;
		canvas.execute(new MoveLayer(dropped, layers.size() - 1 - to));
	}

	void paint(StackPainter painter, int width) {
		if (moving && at != null) {
			List<Layer> layers = topFirst();
			int above = layersAbove(at.y);
			Rectangle last = canvas.boundsOf(canvas.rows().get(canvas.rows().size() - 1));
			painter.paintDrop(above < layers.size() ? canvas.boundsOf(layers.get(above)).y : last.y + last.height, width);
			painter.paintDragged(layer, at, width);
		}
	}
}
