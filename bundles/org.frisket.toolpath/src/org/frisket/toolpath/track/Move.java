package org.frisket.toolpath.track;

import org.frisket.geometry.Point;

/** One straight stretch or arc of a circle, with its direction. */
public sealed interface Move permits Straight, Arc {

	Point start();

	Point end();

	/** In mm. */
	double length();

	/** Of travel at the start, in radians from the x axis towards y. */
	double startHeading();

	double endHeading();

	/** 1 / radius in 1/mm, positive when the heading grows; 0 for straight moves. */
	double curvature();

	/** The place after a way from the start. @param way in mm, from 0 to the length */
	Point at(double way);

	/** The stretch between two ways from the start, in mm. */
	Move between(double from, double to);

	Move reversed();
}
