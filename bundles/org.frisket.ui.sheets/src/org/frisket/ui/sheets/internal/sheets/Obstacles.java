package org.frisket.ui.sheets.internal.sheets;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.frisket.geometry.Outline;
import org.frisket.geometry.Point;
import org.frisket.geometry.Polygons;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.Transform;
import org.frisket.model.Sheet;
import org.frisket.sheets.LaidPart;
import org.frisket.sheets.SheetSpace;
import org.frisket.ui.sheets.internal.sheets.surface.Board;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.TopologyException;
import org.locationtech.jts.operation.distance.DistanceOp;

/** What is in the way of parts that are dragged over the sheets of a reading. Quick enough for each move of the pointer. */
final class Obstacles {

	/** Finer than a pixel at the usual zoom. */
	private static final double FLATNESS = 0.1;
	/** Of more nobody sees more. */
	private static final int MOST_SHOWN = 4;
	/** In mm: how far a free place is looked for, ring by ring. */
	private static final double[] RINGS = { 1, 2, 4, 7, 11, 16, 24, 36 };
	private static final int DIRECTIONS = 16;

	private final Reading reading;
	private final Map<Sheet, SheetSpace> spaces = new IdentityHashMap<>();

	Obstacles(Reading reading) {
		this.reading = reading;
	}

	private Optional<SheetSpace> space(Sheet sheet) {
		return reading.of(sheet)
				.map(laid -> spaces.computeIfAbsent(sheet, key -> SheetSpace.of(laid, Tolerance.DEFAULT)));
	}

	/** What is in the way, of those that go from one sheet to another together. */
	List<Board.Obstacle> of(List<Board.Move> moves) {
		List<Board.Obstacle> obstacles = new ArrayList<>();
		for (List<Board.Move> together : Board.Move.together(moves)) {
			Sheet to = together.get(0).sheet();
			space(to).ifPresent(space -> obstacles.add(of(to, space, together)));
		}
		return obstacles;
	}

	/** @param moves all by the same shift */
	private Board.Obstacle of(Sheet sheet, SheetSpace space, List<Board.Move> moves) {
		List<LaidPart> parts = moves.stream().flatMap(move -> reading.part(move.placement()).stream()).toList();
		if (parts.isEmpty()) {
			return new Board.Obstacle(sheet, Outline.EMPTY, Double.POSITIVE_INFINITY, null, null);
		}
		Board.Move first = moves.get(0);
		Transform by = parts.get(0).place().inverse().then(place(parts.get(0), first));
		SheetSpace.Answer answer = space.moved(parts, by);
		List<Geometry> moved = parts.stream().map(part -> Polygons.of(part.room().transformed(by), FLATNESS)).toList();
		List<Outline> common = new ArrayList<>();
		answer.overlapped().stream().limit(MOST_SHOWN).forEach(other -> {
			Geometry still = Polygons.of(other.room(), FLATNESS);
			moved.forEach(each -> common.add(common(each, still)));
		});
		if (answer.edge() < 0) {
			Geometry paper = Polygons.factory().toGeometry(
					new org.locationtech.jts.geom.Envelope(0, sheet.getWidth(), 0, sheet.getHeight()));
			moved.forEach(each -> common.add(beyond(each, paper)));
		}
		Outline overlaps = common.stream().reduce(Outline.EMPTY, Outline::plus);
		double distance = Double.POSITIVE_INFINITY;
		Coordinate[] ends = null;
		for (LaidPart other : answer.near()) {
			Geometry still = Polygons.of(other.room(), FLATNESS);
			for (Geometry each : moved) {
				DistanceOp between = new DistanceOp(each, still);
				if (between.distance() < distance) {
					distance = between.distance();
					ends = between.nearestPoints();
				}
			}
		}
		return new Board.Obstacle(sheet, overlaps, distance, ends == null ? null : new Point(ends[0].x, ends[0].y),
				ends == null ? null : new Point(ends[1].x, ends[1].y));
	}

	/** From the frame of the part's job to a place on a sheet. */
	private static Transform place(LaidPart part, Board.Move move) {
		Point centre = part.part().room().bounds().centre();
		return Transform.translation(-centre.x(), -centre.y()).then(Transform.rotation(Math.toRadians(move.turn())))
				.then(Transform.translation(move.x(), move.y()));
	}

	private static Outline common(Geometry one, Geometry other) {
		try {
			return Polygons.toOutline(one.intersection(other));
		} catch (TopologyException e) {
			// only a picture: what is drawn is the whole part then
			return Polygons.toOutline(other);
		}
	}

	private static Outline beyond(Geometry one, Geometry paper) {
		try {
			return Polygons.toOutline(one.difference(paper));
		} catch (TopologyException e) {
			return Polygons.toOutline(one);
		}
	}

	/** The nearest free place on the sheet of a move; empty if none is near. */
	Optional<Point> freePlace(Board.Move move) {
		LaidPart part = reading.part(move.placement()).orElse(null);
		SheetSpace space = space(move.sheet()).orElse(null);
		if (part == null || space == null) {
			return Optional.empty();
		}
		if (space.at(part, move.x(), move.y(), move.turn()).isFree()) {
			return Optional.of(new Point(move.x(), move.y()));
		}
		for (double ring : RINGS) {
			for (int i = 0; i < DIRECTIONS; i++) {
				double angle = 2 * Math.PI * i / DIRECTIONS;
				double x = move.x() + ring * Math.cos(angle);
				double y = move.y() + ring * Math.sin(angle);
				if (space.at(part, x, y, move.turn()).isFree()) {
					return Optional.of(nearer(space, part, move, x, y));
				}
			}
		}
		return Optional.empty();
	}

	/** Halfway again and again, as near to where it was let go as it stays free. */
	private static Point nearer(SheetSpace space, LaidPart part, Board.Move move, double x, double y) {
		double free = 1;
		double taken = 0;
		for (int i = 0; i < 5; i++) {
			double middle = (free + taken) / 2;
			if (space.at(part, move.x() + middle * (x - move.x()), move.y() + middle * (y - move.y()), move.turn())
					.isFree()) {
				free = middle;
			} else {
				taken = middle;
			}
		}
		return new Point(move.x() + free * (x - move.x()), move.y() + free * (y - move.y()));
	}
}
