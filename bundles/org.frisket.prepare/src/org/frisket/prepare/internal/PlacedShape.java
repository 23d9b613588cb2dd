package org.frisket.prepare.internal;

import java.util.List;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Region;
import org.frisket.geometry.Transform;
import org.frisket.prepare.Finding;

/**
 * A shape with the transform that puts it into the job's frame.
 *
 * @param content what the shape was computed from, equal for equal shapes; a mat's key is built of those before it
 */
public record PlacedShape(Object content, Shape shape, Transform transform, Region region, List<Contour> lines) {

	public PlacedShape {
		lines = List.copyOf(lines);
	}

	static PlacedShape of(Object content, Shape shape, Transform transform) {
		boolean moved = !transform.equals(Transform.IDENTITY);
		return new PlacedShape(content, shape, transform,
				moved ? shape.region().transformed(transform) : shape.region(),
				moved ? shape.lines().stream().map(line -> line.transformed(transform)).toList() : shape.lines());
	}

	public List<Finding> findings(String element) {
		return shape.remarks().stream().map(remark -> remark.at(element, transform)).toList();
	}
}
