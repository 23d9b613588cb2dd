package org.frisket.sheets;

import java.util.List;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Contour;
import org.frisket.geometry.Piece;
import org.frisket.geometry.Point;
import org.frisket.geometry.Polygons;
import org.frisket.prepare.PreparedElement;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;

/** What is never parted: a piece of an element's region, or one of its lines. */
final class Atom {

	/** What is done along it. */
	enum Kind {
		/** A piece that is cut round: whatever lies in it comes along. */
		CUT,
		/** A line, or a piece that is only drawn or creased. */
		LINE,
		/** A piece that is only printed. */
		PRINT
	}

	final Kind kind;
	final PreparedElement element;
	/** Of the element on its layer. */
	final int order;
	/** Null for a line. */
	final Piece piece;
	/** Of the piece in the element's region, from 1. */
	final int number;
	/** Null for a piece. */
	final Contour line;
	final Bounds bounds;
	/** Whether it lies in another one that is cut round. */
	boolean enclosed;
	private final double deviation;
	private Geometry geometry;
	private PreparedGeometry prepared;

	private Atom(Kind kind, PreparedElement element, int order, Piece piece, int number, Contour line, double deviation) {
		this.kind = kind;
		this.element = element;
		this.order = order;
		this.piece = piece;
		this.number = number;
		this.line = line;
		this.deviation = deviation;
		bounds = piece != null ? piece.bounds() : line.bounds();
	}

	static Atom of(Kind kind, PreparedElement element, int order, int number, double deviation) {
		return new Atom(kind, element, order, element.region().pieces().get(number - 1), number, null, deviation);
	}

	static Atom of(PreparedElement element, int order, Contour line, double deviation) {
		return new Atom(Kind.LINE, element, order, null, 0, line, deviation);
	}

	boolean isCut() {
		return kind == Kind.CUT;
	}

	/** An area of what is cut or printed, lines of what is drawn. */
	Geometry geometry() {
		if (geometry == null) {
			if (kind != Kind.LINE) {
				geometry = Polygons.of(piece, deviation);
			} else {
				List<Contour> contours = piece == null ? List.of(line) : piece.contours();
				geometry = Polygons.factory().createMultiLineString(
						contours.stream().map(contour -> line(contour, deviation)).toArray(LineString[]::new));
			}
		}
		return geometry;
	}

	Polygon polygon() {
		return (Polygon) geometry();
	}

	PreparedGeometry prepared() {
		if (prepared == null) {
			prepared = PreparedGeometryFactory.prepare(geometry());
		}
		return prepared;
	}

	Envelope envelope() {
		return envelope(bounds);
	}

	static Envelope envelope(Bounds bounds) {
		return new Envelope(bounds.minX(), bounds.maxX(), bounds.minY(), bounds.maxY());
	}

	private static LineString line(Contour contour, double deviation) {
		List<Point> points = contour.flattened(deviation);
		int count = points.size() + (contour.isClosed() || points.size() == 1 ? 1 : 0);
		Coordinate[] coordinates = new Coordinate[count];
		for (int i = 0; i < count; i++) {
			Point point = points.get(i % points.size());
			coordinates[i] = new Coordinate(point.x(), point.y());
		}
		return Polygons.factory().createLineString(coordinates);
	}
}
