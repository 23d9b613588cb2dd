package org.frisket.ui.bench.internal.looks;

import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.Rectangle;
import org.frisket.geometry.Bounds;
import org.frisket.geometry.Transform;

/**
 * A picture of pixels as a look finds it.
 *
 * @param image whoever has it disposes it
 * @param where in the units of the ground
 */
public record ShownPixels(Image image, Rectangle where) {

	/** @param toUnits takes the box there; a turn is not shown */
	public static ShownPixels of(Image image, Bounds box, Transform toUnits) {
		Bounds moved = Bounds.of(toUnits.apply(new org.frisket.geometry.Point(box.minX(), box.minY())))
				.with(toUnits.apply(new org.frisket.geometry.Point(box.maxX(), box.minY())))
				.with(toUnits.apply(new org.frisket.geometry.Point(box.minX(), box.maxY())))
				.with(toUnits.apply(new org.frisket.geometry.Point(box.maxX(), box.maxY())));
		int x = (int) Math.round(moved.minX());
		int y = (int) Math.round(moved.minY());
		return new ShownPixels(image, new Rectangle(x, y, (int) Math.max(1, Math.round(moved.maxX()) - x),
				(int) Math.max(1, Math.round(moved.maxY()) - y)));
	}
}
