package org.frisket.ui.views.internal.stack;

import java.util.List;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Event;
import org.frisket.editing.layers.MoveLayer;
import org.frisket.editing.layers.RestackElements;
import org.frisket.model.Element;
import org.frisket.model.Layer;

/** Restacking by the pointer: a layer or elements are pulled out and let go between others. */
final class RowDrag {

	private static final int SLACK_PX = 5;

	private final StackCanvas canvas;
	private Row pressed;
	private List<Element> elements = List.of();
	private Point at;
	private int pressedY;
	private boolean moving;

	/** Where elements come to lie: above so many others of a layer; and where that is seen. */
	private record Slot(Layer layer, int index, int y) {
	}

	RowDrag(StackCanvas canvas) {
		this.canvas = canvas;
		canvas.addListener(SWT.MouseMove, this::moved);
		canvas.addListener(SWT.MouseUp, this::released);
	}

	/** @param along the elements that go along when it is the row of an element */
	void press(Row row, List<Element> along, int y) {
		pressed = row;
		elements = along;
		pressedY = y;
		moving = false;
	}

	void cancel() {
		pressed = null;
		moving = false;
		canvas.redraw();
	}

	boolean isMoving() {
		return moving;
	}

	private void moved(Event event) {
		if (pressed != null) {
			moving |= Math.abs(event.y - pressedY) > SLACK_PX;
			at = new Point(event.x, event.y);
			if (moving) {
				canvas.redraw();
			}
		}
	}

	private void released(Event event) {
		if (pressed == null) {
			return;
		}
		Row dropped = pressed;
		boolean moved = moving;
		cancel();
		if (!moved) {
			canvas.clicked(dropped);
		} else if (dropped.isLayer()) {
			drop(dropped.layer(), layersAbove(event.y));
		} else {
			Slot slot = slotAt(event.y);
			canvas.actions().restack(new RestackElements(elements, slot.layer, slot.index), elements);
		}
	}

	private List<Layer> topFirst() {
		return canvas.rows().stream().filter(Row::isLayer).map(Row::layer).toList();
	}

	/** How many layers stay above a place. */
	private int layersAbove(int y) {
		return (int) topFirst().stream().filter(each -> y > middleOf(canvas.boundsOf(each))).count();
	}

	private static int middleOf(Rectangle place) {
		return place.y + place.height / 2;
	}

	private void drop(Layer dropped, int above) {
		List<Layer> layers = topFirst();
		int from = layers.indexOf(dropped);
		int to = above > from ? above - 1 : above;
		canvas.execute(new MoveLayer(dropped, layers.size() - 1 - to));
	}

	/** On the row of a layer that is its top, on that of an element above or below it, under all rows the very bottom. */
	private Slot slotAt(int y) {
		Row row = canvas.rowAt(y);
		if (row == null) {
			List<Row> rows = canvas.rows();
			Row edge = y < 0 ? rows.get(0) : rows.get(rows.size() - 1);
			Rectangle place = canvas.boundsOf(edge);
			return y < 0 ? new Slot(edge.layer(), others(edge.layer(), null), place.y + place.height)
					: new Slot(edge.layer(), 0, place.y + place.height);
		}
		Rectangle place = canvas.boundsOf(row);
		if (row.isLayer()) {
			return new Slot(row.layer(), others(row.layer(), null), place.y + place.height);
		}
		boolean above = y < middleOf(place);
		int below = others(row.layer(), row.element());
		boolean counts = above && !elements.contains(row.element());
		return new Slot(row.layer(), below + (counts ? 1 : 0), above ? place.y : place.y + place.height);
	}

	/** How many elements of a layer that are not dragged lie below one of them; below all if it is null. */
	private int others(Layer layer, Element above) {
		int count = 0;
		for (Element each : layer.getElements()) {
			if (each == above) {
				break;
			}
			count += elements.contains(each) ? 0 : 1;
		}
		return count;
	}

	void paint(StackPainter painter, int width) {
		if (!moving || at == null) {
			return;
		}
		if (pressed.isLayer()) {
			List<Layer> layers = topFirst();
			int above = layersAbove(at.y);
			Rectangle last = canvas.boundsOf(canvas.rows().get(canvas.rows().size() - 1));
			painter.paintDrop(0, above < layers.size() ? canvas.boundsOf(layers.get(above)).y : last.y + last.height,
					width);
			painter.paintDragged(pressed.layer(), at, width);
		} else {
			painter.paintDrop(RowLayout.BRACKETS_PX, slotAt(at.y).y, width);
			painter.paintTag(canvas.actions().spoken(elements), at, width);
		}
	}
}
