package org.frisket.ui.bench.internal.grips;

import java.util.Optional;

import org.eclipse.draw2d.Cursors;
import org.eclipse.swt.graphics.Cursor;
import org.frisket.geometry.Bounds;
import org.frisket.geometry.Point;
import org.frisket.model.Flow;
import org.frisket.model.Wording;
import org.frisket.prepare.wording.WordingPath;

/** A grip by which is changed what the lines of a wording run along or are fitted into. */
public enum FlowGrip {

	/** Where the text has its place on its circle: away from the middle and round it. */
	ARC,
	/** Where the text has its place on its path: along it. */
	PATH,
	/** On the right side of the box that the text is fitted into, clear of the grip of the text itself. */
	BOX_WIDTH,
	/** On the lower side of that box. */
	BOX_HEIGHT;

	/** How far along its side a grip of the box stands. */
	private static final double ALONG = 0.25;

	/** @param letters around them, in the wording's own frame; so is the place. Empty if the wording has no such grip */
	Optional<Point> place(Wording wording, Bounds letters) {
		return switch (this) {
		case ARC -> wording.getFlow() == Flow.ARC && wording.getArcRadius() > 0 ? Optional.of(onArc(wording))
				: Optional.empty();
		case PATH -> WordingPath.of(wording).map(path -> path.at(wording.getPathStart()));
		case BOX_WIDTH -> box(wording, letters)
				.map(box -> new Point(box.maxX(), box.minY() + ALONG * box.height()));
		case BOX_HEIGHT -> box(wording, letters)
				.map(box -> new Point(box.minX() + ALONG * box.width(), box.maxY()));
		};
	}

	static Point onArc(Wording wording) {
		double angle = Math.toRadians(wording.getArcAngle());
		return new Point(wording.getArcRadius() * Math.sin(angle), -wording.getArcRadius() * Math.cos(angle));
	}

	/** The box that a wording is fitted into, from the upper left corner of its letters. */
	static Optional<Bounds> box(Wording wording, Bounds letters) {
		return wording.getFlow() == Flow.STRAIGHT && wording.getBoxWidth() > 0 && wording.getBoxHeight() > 0
				&& !letters.isEmpty()
						? Optional.of(new Bounds(letters.minX(), letters.minY(), letters.minX() + wording.getBoxWidth(),
								letters.minY() + wording.getBoxHeight()))
						: Optional.empty();
	}

	Cursor cursor() {
		return switch (this) {
		case BOX_WIDTH -> Cursors.SIZEE;
		case BOX_HEIGHT -> Cursors.SIZES;
		case ARC, PATH -> Cursors.SIZEALL;
		};
	}
}
