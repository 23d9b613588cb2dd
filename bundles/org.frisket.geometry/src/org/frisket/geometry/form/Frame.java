package org.frisket.geometry.form;

import java.util.List;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Contour;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Outline;
import org.frisket.geometry.OutlineBuilder;
import org.frisket.geometry.Point;
import org.frisket.geometry.Region;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.clean.Combining;
import org.frisket.geometry.clean.FillRule;
import org.frisket.geometry.clean.OutlineCleaner;
import org.frisket.geometry.offset.Corners;
import org.frisket.geometry.offset.Holes;
import org.frisket.geometry.offset.Offset;

/**
 * A ring about a region, of the same width everywhere.
 *
 * @param kind   what the ring follows
 * @param margin of its inner edge from the box about the region, in mm; for an ellipse that runs through the corners of
 *               the box. It may be negative
 * @param width  of the ring in mm, positive
 * @param radius of a rectangle's outer corners in mm, not below 0; as much of it as fits. The inner edge keeps the width
 */
public record Frame(Kind kind, double margin, double width, double radius) {

	/** What a ring follows. */
	public enum Kind {
		RECTANGLE, ELLIPSE
	}

	private static final double ARC_SHARE = 0.25;
	/** Of the smallest ellipse about a rectangle, the one with its sides' ratio. */
	private static final double ROUND_THE_CORNERS = Math.sqrt(2);

	/** @throws IllegalArgumentException if a value is out of range */
	public Frame {
		if (!(width > 0 && radius >= 0) || !Double.isFinite(margin + width + radius)) {
			throw new IllegalArgumentException(
					"a frame " + width + " mm wide at a margin of " + margin + " with corners of " + radius);
		}
	}

	/**
	 * @return empty for an empty region; without a hole if the margin leaves no opening
	 * @throws java.util.concurrent.CancellationException if the monitor says so
	 */
	public Region around(Region region, Tolerance tolerance, Monitor monitor) {
		return region.isEmpty() ? region
				: Combining.SUBTRACT.of(List.of(plate(region, tolerance, monitor), opening(region, tolerance, monitor)),
						tolerance, monitor);
	}

	/** The frame with its opening filled. */
	public Region plate(Region region, Tolerance tolerance, Monitor monitor) {
		if (region.isEmpty()) {
			return region;
		}
		Bounds outer = region.bounds().grown(margin + width);
		if (kind == Kind.ELLIPSE) {
			Region opening = opening(region, tolerance, monitor);
			return opening.isEmpty() ? opening
					: Offset.of(opening, width, Corners.ROUND, Holes.KEEP, tolerance, monitor);
		}
		return rectangle(outer, radius, tolerance, monitor);
	}

	private Region opening(Region region, Tolerance tolerance, Monitor monitor) {
		Bounds box = region.bounds();
		if (kind == Kind.ELLIPSE) {
			double rx = box.width() / 2 * ROUND_THE_CORNERS + margin;
			double ry = box.height() / 2 * ROUND_THE_CORNERS + margin;
			return rx > tolerance.mm() && ry > tolerance.mm() ? ellipse(box.centre(), rx, ry, tolerance, monitor)
					: Region.EMPTY;
		}
		Bounds inner = box.grown(margin);
		double most = Math.min(inner.width(), inner.height()) / 2 + width;
		return rectangle(inner, Math.max(0, Math.min(radius, most) - width), tolerance, monitor);
	}

	private static Region ellipse(Point centre, double rx, double ry, Tolerance tolerance, Monitor monitor) {
		OutlineBuilder pen = new OutlineBuilder(tolerance.mm() * ARC_SHARE);
		pen.startArc(centre, rx, ry, 0, 0, -2 * Math.PI);
		pen.close();
		return clean(pen.build(), tolerance, monitor);
	}

	private static Region rectangle(Bounds box, double radius, Tolerance tolerance, Monitor monitor) {
		if (!(box.width() > tolerance.mm() && box.height() > tolerance.mm())) {
			return Region.EMPTY;
		}
		Contour contour = Contour.polygon(List.of(new Point(box.minX(), box.minY()), new Point(box.minX(), box.maxY()),
				new Point(box.maxX(), box.maxY()), new Point(box.maxX(), box.minY())));
		double fitting = Math.min(radius, Math.min(box.width(), box.height()) / 2);
		return RoundedCorners.of(clean(Outline.of(contour), tolerance, monitor), fitting, tolerance, monitor);
	}

	private static Region clean(Outline outline, Tolerance tolerance, Monitor monitor) {
		return new OutlineCleaner().clean(outline, FillRule.NON_ZERO, tolerance, monitor).region();
	}
}
