package org.frisket.geometry.clean;

import org.frisket.geometry.Point;
import org.locationtech.jts.geom.Coordinate;

/** A place where arcs start, end or meet. Identity counts: places closer than the weld distance are one node. */
final class Node {

	final int id;
	final Point point;
	final Coordinate coordinate;

	Node(int id, Point point) {
		this.id = id;
		this.point = point;
		this.coordinate = new Coordinate(point.x(), point.y());
	}
}
