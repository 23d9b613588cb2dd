package org.frisket.imports.dxf;

import java.util.ArrayList;
import java.util.List;

import org.frisket.geometry.Outline;
import org.frisket.geometry.OutlineBuilder;
import org.frisket.geometry.Point;
import org.frisket.geometry.Transform;
import org.frisket.imports.UnreadableArtException;

/** Draws single entities, in the unit and with the y axis of the file. */
final class EntityCurves {

	/** Flags of polylines and splines (group 70). */
	private static final int CLOSED = 1;
	private static final int SPLINE_FIT = 4;
	private static final int MESH = 16 | 64;
	/** Flag of a vertex that only guides the curve. */
	private static final int GUIDE = 16;
	/** Ends of a full ellipse, whose angles are written with few digits. */
	private static final double FULL_TURN = 2 * Math.PI - 1e-6;

	/** @param bulge of the segment that begins here */
	private record Vertex(Point place, double bulge) {
	}

	private final double deviation;

	/** @param deviation how far cubics may lie from arcs, in the unit of the file */
	EntityCurves(double deviation) {
		this.deviation = deviation;
	}

	/** Null if the entity is none of those that are drawn; empty if it is one without extent. */
	Outline of(Entity entity) throws UnreadableArtException {
		return switch (entity.type()) {
		case "LINE" -> line(entity);
		case "ARC", "CIRCLE" -> circle(entity);
		case "ELLIPSE" -> ellipse(entity);
		case "LWPOLYLINE" -> polyline(light(entity), entity.flag(70, CLOSED)).transformed(Frame.of(entity));
		case "POLYLINE" -> heavy(entity);
		case "SPLINE" -> spline(entity);
		default -> null;
		};
	}

	private Outline line(Entity entity) throws UnreadableArtException {
		OutlineBuilder builder = new OutlineBuilder();
		builder.moveTo(entity.point(10));
		builder.lineTo(entity.point(11));
		return builder.build();
	}

	private Outline circle(Entity entity) throws UnreadableArtException {
		double radius = Math.abs(entity.number(40, 0));
		double from = 0;
		double sweep = 2 * Math.PI;
		boolean whole = entity.type().equals("CIRCLE");
		if (!whole) {
			from = Math.toRadians(entity.number(50, 0));
			sweep = turn(from, Math.toRadians(entity.number(51, 360)));
		}
		Outline drawn = radius == 0 ? Outline.EMPTY : arc(entity.point(10), radius, radius, 0, from, sweep, whole);
		return drawn.transformed(Frame.of(entity));
	}

	private Outline ellipse(Entity entity) throws UnreadableArtException {
		Point major = entity.point(11);
		double length = major.length();
		if (length == 0) {
			return Outline.EMPTY;
		}
		double from = entity.number(41, 0);
		double sweep = turn(from, entity.number(42, 2 * Math.PI));
		// seen from below, angles grow the other way
		int way = entity.number(230, 1) < 0 ? -1 : 1;
		return arc(entity.point(10), length, length * Math.abs(entity.number(40, 1)), Math.atan2(major.y(), major.x()),
				way * from, way * sweep, sweep >= FULL_TURN);
	}

	/** Counter-clockwise, more than nothing, a full turn at most. */
	private static double turn(double from, double to) {
		double turn = (to - from) % (2 * Math.PI);
		return turn <= 1e-12 ? turn + 2 * Math.PI : turn;
	}

	private Outline arc(Point centre, double rx, double ry, double turn, double from, double sweep, boolean whole) {
		OutlineBuilder builder = new OutlineBuilder(deviation);
		builder.startArc(centre, rx, ry, turn, from, sweep);
		if (whole) {
			builder.close();
		}
		return builder.build();
	}

	private static List<Vertex> light(Entity entity) throws UnreadableArtException {
		List<Vertex> vertices = new ArrayList<>();
		for (Group group : entity.groups()) {
			int last = vertices.size() - 1;
			if (group.code() == 10) {
				vertices.add(new Vertex(new Point(entity.number(group), 0), 0));
			} else if (group.code() == 20 && last >= 0) {
				Vertex vertex = vertices.get(last);
				vertices.set(last, new Vertex(new Point(vertex.place().x(), entity.number(group)), vertex.bulge()));
			} else if (group.code() == 42 && last >= 0) {
				vertices.set(last, new Vertex(vertices.get(last).place(), entity.number(group)));
			}
		}
		return vertices;
	}

	private Outline heavy(Entity entity) throws UnreadableArtException {
		int flags = entity.integer(70, 0);
		if ((flags & MESH) != 0) {
			return null;
		}
		List<Vertex> vertices = new ArrayList<>();
		for (Entity part : entity.parts()) {
			if ((flags & SPLINE_FIT) == 0 || !part.flag(70, GUIDE)) {
				vertices.add(new Vertex(part.point(10), part.number(42, 0)));
			}
		}
		Transform frame = (flags & 8) != 0 ? Transform.IDENTITY : Frame.of(entity);
		return polyline(vertices, (flags & CLOSED) != 0).transformed(frame);
	}

	private Outline polyline(List<Vertex> vertices, boolean closed) {
		OutlineBuilder builder = new OutlineBuilder(deviation);
		if (vertices.isEmpty()) {
			return Outline.EMPTY;
		}
		builder.moveTo(vertices.get(0).place());
		for (int i = 1; i < vertices.size(); i++) {
			Vertex from = vertices.get(i - 1);
			Bulges.add(builder, from.place(), from.bulge(), vertices.get(i).place());
		}
		if (closed) {
			Vertex last = vertices.get(vertices.size() - 1);
			Bulges.add(builder, last.place(), last.bulge(), vertices.get(0).place());
			builder.close();
		}
		return builder.build();
	}

	/** @return empty if there are too few points, or counts that do not fit */
	private Outline spline(Entity entity) throws UnreadableArtException {
		OutlineBuilder builder = new OutlineBuilder(deviation);
		List<Point> poles = entity.points(10);
		List<Point> through = distinct(entity.points(11));
		if (!poles.isEmpty()) {
			try {
				new BSpline(entity.integer(71, 3), entity.numbers(40), poles, entity.numbers(41)).addTo(builder,
						deviation);
			} catch (IllegalArgumentException e) {
				return Outline.EMPTY;
			}
		} else if (through.size() > 1) {
			FitPoints.add(builder, through);
		}
		if (entity.flag(70, CLOSED)) {
			builder.close();
		}
		return builder.build();
	}

	private static List<Point> distinct(List<Point> points) {
		List<Point> distinct = new ArrayList<>();
		for (Point point : points) {
			if (distinct.isEmpty() || !distinct.get(distinct.size() - 1).equals(point)) {
				distinct.add(point);
			}
		}
		return distinct;
	}
}
