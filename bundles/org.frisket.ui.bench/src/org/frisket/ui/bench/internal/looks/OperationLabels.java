package org.frisket.ui.bench.internal.looks;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.draw2d.FigureUtilities;
import org.eclipse.draw2d.Graphics;
import org.eclipse.swt.graphics.Font;
import org.frisket.geometry.Bounds;
import org.frisket.model.OperationKind;
import org.frisket.prepare.layout.LabelPlacement;
import org.frisket.ui.OperationName;
import org.frisket.ui.ThemeColour;
import org.frisket.ui.bench.OperationLook;
import org.frisket.ui.bench.internal.parts.ElementPart;

/** The names of the operations of each element, near its outline and never on each other. */
final class OperationLabels {

	private static final int GAP_PX = 3;
	private static final int SPACE_PX = 3;
	private static final int GROUND_ALPHA = 225;

	private final List<ElementPart> parts;
	private final Font font;
	private final int height;

	OperationLabels(List<ElementPart> parts, Font font) {
		this.parts = parts.stream().filter(part -> !part.picture().curves().isEmpty() && !part.picture().part())
				.toList();
		this.font = font;
		height = FigureUtilities.getFontMetrics(font).getHeight();
	}

	void paint(Graphics graphics) {
		List<LabelPlacement.Label> labels = new ArrayList<>();
		for (ElementPart part : parts) {
			double scale = part.zoom().pixelsPerMm();
			Bounds box = part.boundsInMm();
			labels.add(new LabelPlacement.Label(
					new Bounds(box.minX() * scale, box.minY() * scale, box.maxX() * scale, box.maxY() * scale),
					width(part.picture().strokes()), height));
		}
		List<Bounds> places = LabelPlacement.place(labels, GAP_PX);
		for (int i = 0; i < places.size(); i++) {
			if (!places.get(i).isEmpty()) {
				paint(graphics, parts.get(i).picture().strokes(), places.get(i));
			}
		}
	}

	private int width(List<OperationKind> kinds) {
		return kinds.stream().mapToInt(kind -> textWidth(kind) + SPACE_PX).sum() + SPACE_PX;
	}

	private int textWidth(OperationKind kind) {
		return FigureUtilities.getTextWidth(OperationName.of(kind), font);
	}

	private void paint(Graphics graphics, List<OperationKind> kinds, Bounds place) {
		int x = (int) Math.round(place.minX());
		int y = (int) Math.round(place.minY());
		graphics.setAlpha(GROUND_ALPHA);
		graphics.setBackgroundColor(ThemeColour.BENCH_SHEET.colour());
		graphics.fillRectangle(x, y, width(kinds), height);
		graphics.setAlpha(Ink.OPAQUE);
		x += SPACE_PX;
		for (OperationKind kind : kinds) {
			graphics.setForegroundColor(OperationLook.of(kind).hue().colour());
			graphics.drawText(OperationName.of(kind), x, y);
			x += textWidth(kind) + SPACE_PX;
		}
	}
}
